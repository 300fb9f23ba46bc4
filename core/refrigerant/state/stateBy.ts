import { clamp } from "../../numeric/series";
import { outOfRange } from "../../kernel/values/fault";
import { quantityMark } from "../../kernel/values/quantityMark";
import { regulaFalsi } from "../../numeric/regulaFalsi";
import type { PhaseState, Substance } from "../helmholtz/substance";
import { evaluateHelmholtz, stateFrom } from "../helmholtz/substance";
import { densityOf } from "./density";
import type { Fluid } from "../refrigerant";
import { saturatedStateAtPressure } from "../saturation/saturation";
import type { RefrigerantState } from "./state";
import { checkRange, stateAt } from "./state";
import { markPressure, markTemperature } from "../marks";
import { twoPhaseState, mixPhases } from "./twoPhase";

/** The quantity known besides the pressure. */
export type Coordinate = "entropy" | "enthalpy";

/**
 * The state at a pressure (Pa, absolute) and an entropy (J/(kg K)).
 * @throws a fault where no state within the equation's range has it
 */
export const stateByEntropy = (fluid: Fluid, pressure: number, entropy: number): RefrigerantState =>
  stateBy(fluid, pressure, entropy, "entropy");

/**
 * The state at a pressure (Pa, absolute) and an enthalpy (J/kg).
 * @throws a fault where no state within the equation's range has it
 */
export const stateByEnthalpy = (fluid: Fluid, pressure: number, enthalpy: number): RefrigerantState =>
  stateBy(fluid, pressure, enthalpy, "enthalpy");

function stateBy(fluid: Fluid, pressure: number, target: number, coordinate: Coordinate): RefrigerantState {
  if (!Number.isFinite(target)) return refuse(fluid, target, coordinate, pressure);
  const log = Math.log(pressure);
  // Above the saturation lines, or below their coldest pressure (where only vapour is in range), one bracket is enough.
  if (!(log <= fluid.dew.highest && log >= fluid.dew.lowest)) return bracketed(fluid, pressure, target, coordinate);
  const dew = saturatedStateAtPressure(fluid, pressure, "dew");
  if (target >= dew[coordinate]) return stateOnIsobar(fluid, dew, target, coordinate);
  if (!(log >= fluid.bubble.lowest)) return refuse(fluid, target, coordinate, pressure);
  const bubble = saturatedStateAtPressure(fluid, pressure, "bubble");
  if (target <= bubble[coordinate]) return stateOnIsobar(fluid, bubble, target, coordinate);
  if (!fluid.mixture) {
    const quality = (target - bubble[coordinate]) / (dew[coordinate] - bubble[coordinate]);
    return mixPhases(bubble, dew, quality);
  }
  return glideBy(fluid, bubble, dew, target, coordinate);
}

/** Inside the glide at one pressure: the temperature whose flash has the enthalpy or entropy. */
function glideBy(
  fluid: Fluid,
  bubble: PhaseState,
  dew: PhaseState,
  target: number,
  coordinate: Coordinate,
): RefrigerantState {
  const mixture = fluid.mixture!;
  const at = (temperature: number) => twoPhaseState(fluid, mixture, temperature, dew.pressure);
  const temperature = regulaFalsi(
    (T) => at(T)[coordinate] - target,
    {
      from: bubble.temperature,
      to: dew.temperature,
      fromValue: bubble[coordinate] - target,
      toValue: dew[coordinate] - target,
    },
    1e-11 * (dew.temperature - bubble.temperature),
  );
  return at(temperature);
}

/**
 * Newton along an isobar from a state in the same single phase to the state with an enthalpy or entropy; the density is
 * carried along. Checks the temperature range only: the caller guarantees that no phase boundary is in between.
 *
 * @param guess where Newton begins, K; else as if the heat capacity stayed that of `from`
 */
export function stateOnIsobar(
  fluid: Fluid,
  from: PhaseState,
  target: number,
  coordinate: Coordinate,
  guess?: number,
): PhaseState {
  const s = fluid.substance;
  const { pressure, phase } = from;
  // Enthalpy and entropy rise with temperature: the answer is on one side of the start.
  const rising = target >= from[coordinate];
  const coldest = rising ? from.temperature : fluid.coldest;
  const hottest = rising ? fluid.range.limit : from.temperature;
  let temperature = from.temperature;
  let density = from.density / s.molarMass;
  let wanted = guess ?? firstStep(from, target, coordinate);
  for (let pass = 0; pass < 50; pass++) {
    const next = clamp(wanted, coldest, hottest);
    if (pass > 3 && next !== wanted && next === temperature) refuse(fluid, target, coordinate, pressure);
    // Vapour thins about as 1 / T; a liquid barely changes. Newton on the density does the rest.
    const start = phase === "vapour" ? (density * temperature) / next : density;
    temperature = next;
    density = densityOf(fluid, phase, temperature, pressure, start);
    evaluateHelmholtz(s, temperature, density);
    const step = isobarStep(s, temperature, density, target, coordinate);
    // Later passes accept a wider tolerance: next to the critical point rounding alone changes the temperature.
    if (Math.abs(step) < (pass < 10 ? 1e-11 : 1e-8) * temperature) {
      return stateFrom(s, s.residual.out, s.ideal.out, { phase, temperature, density, pressure });
    }
    wanted = temperature + step;
  }
  return refuse(fluid, target, coordinate, pressure);
}

/** Newton's step in temperature at the point just evaluated. */
function isobarStep(
  s: Substance,
  temperature: number,
  density: number,
  target: number,
  coordinate: Coordinate,
): number {
  const R = s.gasConstant / s.molarMass;
  const r = s.residual.out;
  const i = s.ideal.out;
  const energy = i[1]! + r[3]!;
  const byTemperature = 1 + r[1]! - r[4]!;
  const cp = R * ((byTemperature * byTemperature) / (1 + 2 * r[1]! + r[2]!) - i[2]! - r[5]!);
  if (coordinate === "enthalpy") return (target - R * temperature * (energy + 1 + r[1]!)) / cp;
  return ((target - R * (energy - i[0]! - Math.log(density) - r[0]!)) * temperature) / cp;
}

/** Where Newton begins: as if the heat capacity stayed that of the state before. */
function firstStep(from: PhaseState, target: number, coordinate: Coordinate): number {
  const change = target - from[coordinate];
  if (coordinate === "enthalpy") return from.temperature + change / from.cp;
  return from.temperature * Math.exp(change / from.cp);
}

/** The state between the ends of the temperature range that has the enthalpy or entropy. */
function bracketed(fluid: Fluid, pressure: number, target: number, coordinate: Coordinate): RefrigerantState {
  const [from, to] = [fluid.coldest, fluid.range.limit];
  checkRange(fluid, pressure, to);
  const miss = (T: number) => stateAt(fluid, pressure, T)[coordinate] - target;
  const [fromValue, toValue] = [miss(from), miss(to)];
  if (!(fromValue <= 0 && toValue >= 0)) refuse(fluid, target, coordinate, pressure);
  return stateAt(fluid, pressure, regulaFalsi(miss, { from, to, fromValue, toValue }, 1e-10));
}

function refuse(fluid: Fluid, target: number, coordinate: Coordinate, pressure: number): never {
  throw outOfRange({
    quantity: `${fluid.name} ${coordinate} (IIR zero) at ${markPressure(pressure)}`,
    limit: `that of a state between ${markTemperature(fluid.coldest)} and ${markTemperature(fluid.range.limit)}`,
    got: quantityMark(coordinate, target),
  });
}
