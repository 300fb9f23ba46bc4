import { sum } from "../../numeric/series";
import type { BlendData, FluidData, PairData } from "../data/fluidData";

/** A pair's part in a reducing function: its factor, and beta squared. */
interface PairShape {
  readonly factor: number;
  readonly beta2: number;
}

/** A pair by the places of its components, with its binary parameters. */
interface Pair {
  readonly i: number;
  readonly j: number;
  readonly data: PairData;
  readonly inTemperature: PairShape;
  readonly inVolume: PairShape;
}

/** A blend's components and pairs, before a composition is chosen. */
export interface BlendParts {
  readonly components: readonly FluidData[];
  readonly pairs: readonly Pair[];
  /** Standard composition by mole. */
  readonly moleFractions: readonly number[];
}

/** Finds a blend's components and pairs, and turns its mass fractions into mole fractions. */
export function blendParts(blend: BlendData, fluids: readonly FluidData[], pairs: readonly PairData[]): BlendParts {
  const components = blend.parts.map(([name]) => {
    const found = fluids.find((fluid) => fluid.name === name);
    if (!found) throw new Error(`${blend.name}: no component ${name}`);
    return found;
  });
  const moles = blend.parts.map(([, mass], i) => mass / components[i]!.molarMass);
  const total = sum(moles);
  const places: Pair[] = [];
  for (let a = 0; a < components.length; a++) {
    for (let b = a + 1; b < components.length; b++) places.push(findPair(components, a, b, pairs));
  }
  return { components, pairs: places, moleFractions: moles.map((n) => n / total) };
}

function findPair(components: readonly FluidData[], a: number, b: number, pairs: readonly PairData[]): Pair {
  for (const [i, j] of [
    [a, b],
    [b, a],
  ] as const) {
    const data = pairs.find((pair) => pair.first === components[i]!.name && pair.second === components[j]!.name);
    if (data) return shaped(components, i, j, data);
  }
  throw new Error(`no binary parameters for ${components[a]!.name} and ${components[b]!.name}`);
}

/** The pair with what the reducing functions need of it at any composition. */
function shaped(components: readonly FluidData[], i: number, j: number, data: PairData): Pair {
  const [a, b] = [components[i]!.reducing, components[j]!.reducing];
  const volume = (Math.cbrt(1 / a.density) + Math.cbrt(1 / b.density)) ** 3 / 8;
  return {
    i,
    j,
    data,
    inTemperature: {
      factor: 2 * data.betaT * data.gammaT * Math.sqrt(a.temperature * b.temperature),
      beta2: data.betaT * data.betaT,
    },
    inVolume: { factor: 2 * data.betaV * data.gammaV * volume, beta2: data.betaV * data.betaV },
  };
}

/** Reducing temperature (K) or molar volume (m3/mol) of a composition, with its slopes by each mole fraction. */
export interface ReducingValue {
  value: number;
  readonly slopes: Float64Array;
}

/** Evaluates the reducing functions of the multi-fluid model (GERG form). */
export function evaluateReducing(parts: BlendParts, x: ArrayLike<number>, volume: boolean, into: ReducingValue): void {
  const { components, pairs } = parts;
  let value = 0;
  for (let k = 0; k < components.length; k++) {
    const { temperature, density } = components[k]!.reducing;
    const pure = volume ? 1 / density : temperature;
    value += x[k]! * x[k]! * pure;
    into.slopes[k] = 2 * x[k]! * pure;
  }
  for (const pair of pairs) {
    const { i, j } = pair;
    const { factor: c, beta2: b2 } = volume ? pair.inVolume : pair.inTemperature;
    const [xi, xj] = [x[i]!, x[j]!];
    const below = b2 * xi + xj;
    const f = (xi + xj) / below;
    value += c * xi * xj * f;
    into.slopes[i]! += c * xj * (f + (xi * (below - b2 * (xi + xj))) / (below * below));
    into.slopes[j]! += c * xi * (f + (xj * (below - (xi + xj))) / (below * below));
  }
  into.value = value;
}
