/** The high pressure of a transcritical carbon dioxide machine: published relations, and the cycle's own optimum. */
import { equation, symbol } from "../kernel/define/equation";
import type { Trace } from "../kernel/define/steps";
import { notAvailable } from "../kernel/values/fault";
import { quantityMark } from "../kernel/values/quantityMark";
import { clamp } from "../numeric/series";
import { loadRefrigerant } from "../refrigerant/refrigerant";
import { refrigerantSaturationPressure, saturatedStateAtPressure } from "../refrigerant/saturation/saturation";
import { stateAt } from "../refrigerant/state/state";
import { stateByEnthalpy, stateByEntropy } from "../refrigerant/state/stateBy";

const Te = symbol("temperature", "evaporating temperature", 250, 285);
const Tc = symbol("temperature", "gas cooler outlet", 305, 325);
const base = (name: string) => ({ name: `Best high pressure by ${name}`, kind: "pressure" }) as const;

export const byLiao = equation({
  ...base("Liao and others"),
  form: "p = 1e5 * ((2.778 - 0.0157 * (Te - 273.15)) * (Tc - 273.15) + 0.381 * (Te - 273.15) - 9.34)",
  symbols: { Te, Tc },
  source: "liao2000",
  code: (x) => 1e5 * ((2.778 - 0.0157 * (x.Te - 273.15)) * (x.Tc - 273.15) + 0.381 * (x.Te - 273.15) - 9.34),
});

export const bySawalha = equation({
  ...base("Sawalha"),
  form: "p = 1e5 * (2.7 * (Tc - 273.15) - 6)",
  symbols: { Tc },
  source: "gasCoolerRules",
  code: (x) => 1e5 * (2.7 * (x.Tc - 273.15) - 6),
});

export const byChen = equation({
  ...base("Chen and Gu"),
  form: "p = 1e5 * (2.68 * (Tc - 273.15) - 6.797)",
  symbols: { Tc },
  source: "gasCoolerRules",
  code: (x) => 1e5 * (2.68 * (x.Tc - 273.15) - 6.797),
});

export const bySarkar = equation({
  ...base("Sarkar and others"),
  form: "p = 1e5 * (4.9 + 2.256 * (Tc - 273.15) - 0.17 * (Te - 273.15) + 0.002 * (Tc - 273.15)^2)",
  symbols: { Te, Tc },
  source: "gasCoolerRules",
  code: (x) => 1e5 * (4.9 + 2.256 * (x.Tc - 273.15) - 0.17 * (x.Te - 273.15) + 0.002 * (x.Tc - 273.15) ** 2),
});

type Rule = (trace: Trace, x: { readonly Te: number; readonly Tc: number }) => number;

/** The optimum of a published relation, Pa absolute. */
export const RULES: Readonly<Record<Exclude<Relation, "cycle">, Rule>> = {
  "Liao 2000": (trace, x) => trace.step(byLiao, x),
  "Sawalha 2008": (trace, { Tc: outlet }) => trace.step(bySawalha, { Tc: outlet }),
  "Chen and Gu 2005": (trace, { Tc: outlet }) => trace.step(byChen, { Tc: outlet }),
  "Sarkar 2004": (trace, x) => trace.step(bySarkar, x),
};
export const OPTIMUM_RELATIONS = ["Liao 2000", "Sawalha 2008", "Chen and Gu 2005", "Sarkar 2004", "cycle"] as const;
type Relation = (typeof OPTIMUM_RELATIONS)[number];

/** Isentropic over electrical. */
const EFFICIENCY = 0.7;
/** Highest pressure tried, Pa. */
const HIGHEST = 20e6;

export interface GasCoolerCycle {
  readonly pressure: number;
  readonly cop: number;
  /** Heat rejected over cooling. */
  readonly heatRatio: number;
  readonly discharge: number;
  /** J/kg */
  readonly work: number;
  readonly cooling: number;
  /** Share of the rejected heat given off above a temperature in K. */
  readonly shareAbove: (temperature: number) => number;
}

/** The cycle by high pressure, between an evaporating temperature and a gas cooler outlet, both K; all superheat (K) is useful. */
export function gasCoolerCycle(
  evaporating: number,
  outlet: number,
  superheat: number,
): (pressure: number) => GasCoolerCycle {
  const fluid = loadRefrigerant("R-744");
  const low = refrigerantSaturationPressure(fluid, evaporating, "dew");
  const suction =
    superheat > 0 ? stateAt(fluid, low, evaporating + superheat) : saturatedStateAtPressure(fluid, low, "dew");
  return (pressure) => {
    const work = (stateByEntropy(fluid, pressure, suction.entropy).enthalpy - suction.enthalpy) / EFFICIENCY;
    const hot = suction.enthalpy + work;
    const cold = stateAt(fluid, pressure, outlet).enthalpy;
    const discharge = stateByEnthalpy(fluid, pressure, hot).temperature;
    const cooling = suction.enthalpy - cold;
    const shareAbove = (temperature: number): number =>
      temperature >= discharge ? 0 : clamp((hot - stateAt(fluid, pressure, temperature).enthalpy) / (hot - cold), 0, 1);
    return { pressure, cop: cooling / work, heatRatio: (hot - cold) / cooling, discharge, work, cooling, shareAbove };
  };
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** The pressure of the greatest cooling for power: by golden section, to 100 Pa. */
export function bestPressure(at: (pressure: number) => GasCoolerCycle, trace: Trace): number {
  const bracket = [1.01 * loadRefrigerant("R-744").critical.pressure, HIGHEST] as [number, number];
  let [low, high]: readonly [number, number] = bracket;
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [copLeft, copRight] = [at(left).cop, at(right).cop];
  let iterations = 0;
  for (; high - low > 100; iterations++)
    if (copLeft > copRight) {
      [high, right, copRight] = [right, left, copLeft];
      left = high - GOLDEN * (high - low);
      copLeft = at(left).cop;
    } else {
      [low, left, copLeft] = [left, right, copRight];
      right = low + GOLDEN * (high - low);
      copRight = at(right).cop;
    }
  const answer = (low + high) / 2;
  trace.solution({
    unknown: "high pressure",
    kind: "pressure",
    solves: "the greatest cooling for power of the cycle",
    bracket,
    iterations,
    residual: high - low,
    answer,
  });
  return answer;
}

/** @throws below the critical pressure: there the gas condenses, and the outlet doesn't set the pressure */
export function checkTranscritical(pressure: number): void {
  const { critical } = loadRefrigerant("R-744");
  if (!(pressure > critical.pressure))
    throw notAvailable(
      `high pressure: ${quantityMark("pressure", pressure)} is below the critical pressure of R-744, ${quantityMark("pressure", critical.pressure)}: it condenses there; use CYCLE.STATES`,
    );
}
