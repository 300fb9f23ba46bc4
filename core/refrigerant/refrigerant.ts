import { outOfRange } from "../kernel/values/fault";
import { BLENDS } from "./data/blends";
import type { BlendData, FluidData } from "./data/fluidData";
import { PURE_FLUIDS } from "./data/fluids/index";
import { PAIRS } from "./data/pairs";
import { SATURATION_LINES } from "./data/saturation/index";
import type { SaturationData } from "./data/saturationData";
import { blendParts } from "./helmholtz/blendParts";
import type { Mixture } from "./helmholtz/mixture";
import { compileBlend, compileMixture, compilePure } from "./helmholtz/mixture";
import type { Substance } from "./helmholtz/substance";
import type { SaturationCurve } from "./saturation/saturationCurve";
import { compileCurve } from "./saturation/saturationCurve";

/** How far above the hottest published temperature the equations may be used: they stay well behaved in the vapour. */
const HOTTER = 1.1;

/** One component of a refrigerant. */
export interface Component {
  readonly fluid: FluidData;
  readonly massFraction: number;
  readonly moleFraction: number;
}

/** A refrigerant compiled for evaluation: evaluation overwrites its arrays, so use one at a time. K and Pa. */
export interface Fluid {
  readonly name: string;
  readonly components: readonly Component[];
  readonly substance: Substance;
  /** Blends: the same model at any composition. */
  readonly mixture: Mixture | undefined;
  readonly bubble: SaturationCurve;
  /** The same object as `bubble` for a pure fluid. */
  readonly dew: SaturationCurve;
  readonly critical: { readonly temperature: number; readonly pressure: number };
  /** Ends of the saturation lines. */
  readonly coldest: number;
  readonly warmestSaturated: number;
  /** `hottest`: end of the published range; `limit`: temperatures above it are refused. */
  readonly range: { readonly hottest: number; readonly limit: number; readonly pressure: number };
  readonly lines: SaturationData;
}

const simple = (name: string) => name.toLowerCase().replace(/[\s-]/g, "");

function lineOf(name: string): SaturationData {
  const line = SATURATION_LINES.find((data) => data.name === name);
  if (!line) throw new Error(`${name}: no saturation line`);
  return line;
}

const common = (lines: SaturationData) => {
  const bubble = compileCurve(lines.bubble, lines.critical.temperature);
  return {
    name: lines.name,
    bubble,
    dew: lines.dew ? compileCurve(lines.dew, lines.critical.temperature) : bubble,
    critical: lines.critical,
    coldest: lines.from,
    warmestSaturated: lines.to,
    lines,
  };
};

function pure(fluid: FluidData): Fluid {
  const lines = lineOf(fluid.name);
  const { hottest, pressure } = fluid.range;
  return {
    ...common(lines),
    components: [{ fluid, massFraction: 1, moleFraction: 1 }],
    substance: compilePure(fluid, lines.zero),
    mixture: undefined,
    range: { hottest, limit: hottest * HOTTER, pressure },
  };
}

function blend(data: BlendData): Fluid {
  const lines = lineOf(data.name);
  const parts = blendParts(data, PURE_FLUIDS, PAIRS);
  const hottest = Math.min(...parts.components.map((fluid) => fluid.range.hottest));
  return {
    ...common(lines),
    components: parts.components.map((fluid, i) => ({
      fluid,
      massFraction: data.parts[i]![1],
      moleFraction: parts.moleFractions[i]!,
    })),
    substance: compileBlend(parts, lines.zero),
    mixture: compileMixture(parts, lines.zero),
    range: {
      hottest,
      limit: hottest * HOTTER,
      pressure: Math.min(...parts.components.map((fluid) => fluid.range.pressure)),
    },
  };
}

// Compiled on first use: an unused refrigerant costs nothing at start.
const once = <T>(make: () => T): (() => T) => {
  let made: T | undefined;
  return () => (made ??= make());
};

const FLUIDS: ReadonlyMap<string, () => Fluid> = new Map<string, () => Fluid>([
  ...PURE_FLUIDS.map((data) => [simple(data.name), once(() => pure(data))] as const),
  ...BLENDS.map((data) => [simple(data.name), once(() => blend(data))] as const),
]);

/** The refrigerants offered, in the trade's order; later ones last. R-125 and R-143a are known too, as components. */
export const REFRIGERANTS: readonly string[] = [
  "R-22",
  "R-32",
  "R-134a",
  "R-290",
  "R-600a",
  "R-744",
  "R-1234yf",
  "R-1234ze(E)",
  "R-404A",
  "R-407C",
  "R-410A",
  "R-452B",
  "R-454B",
  "R-507A",
  "R-513A",
  "R-407A",
  "R-449A",
];

/**
 * The refrigerant of that name; case, spaces and hyphens don't matter.
 * @throws where no refrigerant has the name
 */
export function loadRefrigerant(name: string): Fluid {
  const found = FLUIDS.get(name) ?? FLUIDS.get(simple(name));
  if (!found) throw outOfRange({ quantity: "refrigerant", limit: `one of ${REFRIGERANTS.join(", ")}`, got: name });
  return found();
}

/** Whether a refrigerant is a pure fluid: one saturation line, no glide. */
export const isPure = (fluid: Fluid): boolean => fluid.mixture === undefined;
