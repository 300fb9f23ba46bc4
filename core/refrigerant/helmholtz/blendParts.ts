import type { BlendData, FluidData, PairData } from "../data/fluidData";

/** A pair by the places of its components, with its binary parameters. */
interface Pair {
  readonly i: number;
  readonly j: number;
  readonly data: PairData;
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
  const total = moles.reduce((a, b) => a + b, 0);
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
    if (data) return { i, j, data };
  }
  throw new Error(`no binary parameters for ${components[a]!.name} and ${components[b]!.name}`);
}

/** Reducing temperature (K) or molar volume (m3/mol) of a composition, with its slopes by each mole fraction. */
export interface ReducingValue {
  value: number;
  readonly slopes: Float64Array;
}

/** Evaluates the reducing functions of the multi-fluid model (GERG form). */
export function reduce(parts: BlendParts, x: ArrayLike<number>, volume: boolean, into: ReducingValue): void {
  const pure = (k: number) => {
    const { temperature, density } = parts.components[k]!.reducing;
    return volume ? 1 / density : temperature;
  };
  into.value = 0;
  for (let k = 0; k < parts.components.length; k++) {
    into.value += x[k]! * x[k]! * pure(k);
    into.slopes[k] = 2 * x[k]! * pure(k);
  }
  for (const { i, j, data } of parts.pairs) {
    const beta = volume ? data.betaV : data.betaT;
    const gamma = volume ? data.gammaV : data.gammaT;
    const joint = volume ? (Math.cbrt(pure(i)) + Math.cbrt(pure(j))) ** 3 / 8 : Math.sqrt(pure(i) * pure(j));
    const c = 2 * beta * gamma * joint;
    const [xi, xj] = [x[i]!, x[j]!];
    const b2 = beta * beta;
    const below = b2 * xi + xj;
    const f = (xi + xj) / below;
    into.value += c * xi * xj * f;
    into.slopes[i]! += c * xj * (f + (xi * (below - b2 * (xi + xj))) / (below * below));
    into.slopes[j]! += c * xi * (f + (xj * (below - (xi + xj))) / (below * below));
  }
}
