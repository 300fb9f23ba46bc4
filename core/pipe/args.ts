/** Arguments of the pipe functions. */
import { choice, normalizeKey, quantity } from "../kernel/define/argument";
import { WATER_TEMPERATURE } from "../kernel/define/glossary";
import { inchesOfSize } from "../kernel/values/numberText";
import { us } from "../kernel/values/quantity";
import { FITTINGS, type Fitting } from "./data/fittings";
import { PVC_PIPE } from "./data/pvcPipe";

const SIZES = [...new Set(PVC_PIPE.map((each) => each.size))];

/** Metric names of the same sizes (ISO 6708, alongside nominal inches). */
const METRIC: Readonly<Record<string, string>> = {
  DN15: "1/2 in",
  DN20: "3/4 in",
  DN25: "1 in",
  DN32: "1-1/4 in",
  DN40: "1-1/2 in",
  DN50: "2 in",
  DN65: "2-1/2 in",
  DN80: "3 in",
  DN90: "3-1/2 in",
  DN100: "4 in",
  DN125: "5 in",
  DN150: "6 in",
  DN200: "8 in",
};

/** "2", "2.5", "1-1/2": the inches alone. */
const inchesOnly = (size: string): readonly string[] => {
  const bare = size.replace(" in", "");
  const decimal = inchesOfSize(size);
  return [bare, String(decimal), `${decimal} in`];
};

const SIZE_ALIASES: Readonly<Record<string, string>> = {
  ...METRIC,
  ...Object.fromEntries(SIZES.flatMap((size) => inchesOnly(size).map((alias) => [alias, size]))),
};

export const NOMINAL_SIZE = choice("PipeSize", SIZES, "nominal pipe size, such as 2 in or DN50", SIZE_ALIASES);

export const SCHEDULE_NEEDED = choice("PipeSchedule", ["40", "80"], "schedule of the PVC pipe, 40 or 80", {
  "sch 40": "40",
  "sch. 40": "40",
  "schedule 40": "40",
  "sch 80": "80",
  "sch. 80": "80",
  "schedule 80": "80",
});

export const SCHEDULE = SCHEDULE_NEEDED.default("40");

export const BORE_RULE = choice(
  "PipeBore",
  ["average", "minimum wall"],
  "bore: the published average, or outside less two minimum walls",
  { minimum: "minimum wall" },
).default("average");

export const STRAIGHT_LENGTH = quantity("length", "length of straight pipe", {
  from: 0,
  usual: [0, us("length", 2000)],
});

export const LOOP_WATER = WATER_TEMPERATURE.default(us("temperature", 80));

const FITTING_NAMES = FITTINGS.map(({ fitting }) => fitting);

/** Trade names; a sweep elbow loses less than the elbow used for it. */
const FITTING_ALIASES: Readonly<Record<string, Fitting>> = {
  ...Object.fromEntries(
    ["elbow", "ell", "90", "90 elbow", "90 ell", "sweep", "sweep elbow", "sweep 90"].map(
      (name) => [name, "elbow 90"] as const,
    ),
  ),
  "45": "elbow 45",
  "45 elbow": "elbow 45",
  "45 ell": "elbow 45",
  "3-way valve": "three-way valve",
  "check valve": "swing check",
};

export const FITTING = choice("PipeFitting", FITTING_NAMES, "kind of fitting", FITTING_ALIASES);

/** Names and trade names of fittings, normalized for comparison. */
export const FITTING_WORDS: ReadonlyMap<string, Fitting> = new Map([
  ...Object.entries(FITTING_ALIASES).map(([alias, fitting]) => [normalizeKey(alias), fitting] as const),
  ...FITTING_NAMES.map((fitting) => [normalizeKey(fitting), fitting] as const),
]);
