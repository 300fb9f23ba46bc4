import { block, choice, labelOf, quantity, yesNo, type ValueOf } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { silent } from "../../kernel/define/steps";
import { listResult, NO_VALUE, quantityResult, wordResult } from "../../kernel/define/result";
import { valueError } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { COOLING, MACHINE_POWER } from "../args";
import { assumedLoss, seasonNotField } from "../season/cautions";
import { singleSpeedSeason, stagedSeason, type RatingTest } from "../season/season";
import { MACHINE_TYPE, STAGE_LOSS } from "../../cycle/machine/inputs";

const cooling = (at: string) => COOLING.describedAs(`net cooling ${at}`).optional();
const power = (at: string) => MACHINE_POWER.describedAs(`power of the whole machine ${at}`).optional();

const SEASON_INPUTS = block(
  {
    machineType: MACHINE_TYPE,
    fullCoolingAt95: cooling("at full capacity, 95 °F outdoors (test A)"),
    fullPowerAt95: power("there"),
    fullCoolingAt82: cooling("at full capacity, 82 °F outdoors (test B)"),
    fullPowerAt82: power("there"),
    lowCoolingAt82: cooling("at low stage or least speed, 82 °F outdoors"),
    lowPowerAt82: power("there"),
    lowCoolingAt67: cooling("at low stage or least speed, 67 °F outdoors (test F)"),
    lowPowerAt67: power("there"),
    intermediateCoolingAt87: cooling("at the intermediate speed, 87 °F outdoors (test E)"),
    intermediatePowerAt87: power("there"),
    cyclingLoss: STAGE_LOSS.default(0.25),
    lowCyclingLoss: STAGE_LOSS.describedAs(
      "the same at low stage or least speed; left out: as cycling loss",
    ).optional(),
    lockout: quantity("temperature", "outdoor temperature from which the low stage is locked out", {
      from: us("temperature", 60),
      to: us("temperature", 130),
    }).optional(),
    heatPump: yesNo("a heat pump: with variable speed its load counts 0.93").default(false),
    edition: choice("SeasonEdition", ["2023", "2008"], "edition of the standard: matters for variable speed").default(
      "2023",
    ),
  },
  "input block: tests of the machine by its stages",
);

type Inputs = ValueOf<typeof SEASON_INPUTS>;
type TestKey = "full95" | "full82" | "low82" | "low67" | "intermediate87";

/** A test that the machine's type needs. */
function testOf(inputs: Inputs, key: TestKey): RatingTest {
  const [stage, at] = [key.slice(0, -2), key.slice(-2)];
  const value = (figure: "Cooling" | "Power"): number => {
    const name = `${stage}${figure}At${at}` as keyof Inputs;
    const found = inputs[name];
    if (typeof found === "number") return found;
    throw valueError(`inputs: the label "${labelOf(name)}" is needed for ${inputs.machineType}, and is blank`);
  };
  return { cooling: value("Cooling"), power: value("Power") };
}

const ratingIf = (q: number | undefined, p: number | undefined) =>
  q === undefined || p === undefined ? NO_VALUE : q / p;

/** Ratings are published to the nearest 0.05 BTU/(W·h). */
const STEP = us("cooling rating", 0.05);
const rounded = (rating: number): number => STEP * Math.round(rating / STEP);

/** "low 67 to 87, full 92 to 102": runs of bins met alike, °F. */
const binsText = (bins: readonly string[]): string =>
  bins
    .map((met, place) => ({ met, place }))
    .filter(({ met, place }) => bins[place - 1] !== met)
    .map(({ met, place }) => {
      const next = bins.findIndex((other, at) => at > place && other !== met);
      const last = (next < 0 ? bins.length : next) - 1;
      return `${met} ${67 + 5 * place}${last > place ? ` to ${67 + 5 * last}` : ""} °F`;
    })
    .join(", ");

const two = {
  machineType: "two stage",
  fullCoolingAt95: 36_000,
  fullPowerAt95: 3,
  fullCoolingAt82: 38_500,
  fullPowerAt82: 2.52,
  lowCoolingAt82: 28_000,
  lowPowerAt82: 1.7,
  lowCoolingAt67: 30_200,
  lowPowerAt67: 1.38,
  cyclingLoss: 0.1,
} as const;
const variable = {
  ...two,
  machineType: "variable speed",
  fullPowerAt82: 2.48,
  lowCoolingAt82: 14_000,
  lowPowerAt82: 0.7,
  lowCoolingAt67: 15_200,
  lowPowerAt67: 0.52,
  intermediateCoolingAt87: 23_500,
  intermediatePowerAt87: 1.35,
  cyclingLoss: 0.25,
} as const;
const single = { fullCoolingAt82: 38_500, fullPowerAt82: 2.52 } as const;
const rated = (inputs: Readonly<Record<string, string | number | boolean>>, value: number, remark: string) =>
  ({
    inputs: { inputs },
    expected: { seasonalRating: value },
    tolerance: "0.01 %",
    source: "ahri210Code",
    remark: `${remark}; another program with the same equations`,
  }) as const;

export const airconSeason = cellFunction({
  id: "AIRCON.SEASON",
  topic: "aircon",
  memoised: true,
  summary: "Seasonal rating (SEER2) of a single-speed, two-stage or variable-speed machine from its tests.",
  keywords: ["SEER", "SEER2", "EER2", "bins", "two stage", "inverter", "variable speed", "seasonal efficiency"],
  details: [
    "Bins of 5 °F from 67 to 102 °F; load in a straight line from none at 65 °F to capacity at 95 °F over 1.1. Capacity and power in a straight line between the tests. Off-mode power is left out.",
    "Single speed: test B alone. Two stages: below the low stage's capacity it cycles, above it staging mixes low and full; from lockout on the full stage cycles. Variable speed: between least and full the rating is straight over the load through the intermediate speed (2023), or a parabola over the outdoor temperature through three balance points (2008).",
    "The labels name the tests by °F: 95, 87, 82 and 67 °F are 35, 30.6, 27.8 and 19.4 °C.",
  ],
  args: { inputs: SEASON_INPUTS },
  returns: listResult("the seasonal rating", {
    seasonalRating: quantityResult(
      "cooling rating",
      "cooling over electricity through the season (SEER2 with tests at its duct resistance)",
    ),
    publishedRating: quantityResult("cooling rating", "the same to the nearest 0.05 BTU/(W·h)"),
    ratingAt95: quantityResult("cooling rating", "EER2 at 95 °F, full capacity"),
    ratingAt82: quantityResult("cooling rating", "the same at 82 °F"),
    meanCooling: quantityResult("heat rate", "cooling, mean of the bins by their hours"),
    meanPower: quantityResult("electric power", "power, mean of the bins by their hours"),
    bins: wordResult("how the bins are met"),
  }),
  facts: { lossAssumed: "yes/no" },
  cautions: [
    { rule: seasonNotField, raisedBy: { inputs: two } },
    { rule: assumedLoss, raisedBy: { inputs: single } },
  ],
  example: { inputs: two },
  checks: [
    rated(single, 13.368, "single speed, loss 0.25"),
    rated({ ...single, cyclingLoss: 0.1 }, 14.514, "single speed, loss 0.10"),
    rated(two, 15.6245, "two stages"),
    rated({ ...two, cyclingLoss: 0 }, 16.149, "two stages without cycling loss"),
    rated({ ...two, lockout: 87 }, 15.097, "low stage locked out from 87 °F"),
    rated(variable, 18.407, "variable speed, 2023"),
    rated({ ...variable, edition: "2008" }, 18.538, "variable speed, 2008"),
    rated({ ...variable, heatPump: true }, 18.518, "variable-speed heat pump"),
  ],
  compute({ inputs }, { trace, recordFacts }) {
    const { machineType, cyclingLoss, lockout, heatPump, edition } = inputs;
    // An entry equal to its default counts as blank.
    recordFacts({ lossAssumed: cyclingLoss === 0.25 });
    const ratings = {
      ratingAt95: ratingIf(inputs.fullCoolingAt95, inputs.fullPowerAt95),
      ratingAt82: ratingIf(inputs.fullCoolingAt82, inputs.fullPowerAt82),
    };
    const full82 = testOf(inputs, "full82");
    if (machineType === "single speed") {
      const seasonal = singleSpeedSeason(full82, cyclingLoss, trace);
      const none = { meanCooling: NO_VALUE, meanPower: NO_VALUE, bins: "one test at 82 °F" } as const;
      return { seasonalRating: seasonal, publishedRating: rounded(seasonal), ...ratings, ...none };
    }
    const variableSpeed = machineType === "variable speed";
    const tests = {
      full95: testOf(inputs, "full95"),
      full82,
      low82: testOf(inputs, "low82"),
      low67: testOf(inputs, "low67"),
      ...(variableSpeed && { intermediate87: testOf(inputs, "intermediate87") }),
    };
    const { low82, full95 } = tests;
    if (!(low82.cooling < full82.cooling && low82.power < full82.power))
      throw valueError("inputs: low cooling and power at 82 must be below those at full capacity");
    if (!(full95.cooling > 0.5 * full82.cooling && full95.cooling < 1.5 * full82.cooling))
      throw valueError("inputs: full cooling at 95 must be within half and one and a half times that at 82");
    const rules = {
      lowLoss: inputs.lowCyclingLoss ?? cyclingLoss,
      fullLoss: cyclingLoss,
      lockout,
      loadFactor: heatPump && variableSpeed ? 0.93 : 1,
      parabola: edition === "2008",
    };
    const season = stagedSeason(tests, rules, trace, silent);
    return {
      seasonalRating: season.rating,
      publishedRating: rounded(season.rating),
      ...ratings,
      meanCooling: season.cooling,
      meanPower: season.power,
      bins: binsText(season.bins),
    };
  },
});
