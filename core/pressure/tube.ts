/** Pressure that a tube holds, and the wall that a pressure needs. */
import { notAvailable, valueError } from "../kernel/values/fault";
import { quantityMark } from "../kernel/values/quantityMark";
import { fromBase, KINDS, us } from "../kernel/values/quantity";
import { silent, type Trace } from "../kernel/define/steps";
import { LESS_WALL, MORE_DIAMETER, STRESSES } from "./data/stress";
import { tubeRating, tubeWall } from "./equations";

export interface TubeChoice {
  readonly material: string;
  /** K */
  readonly temperature: number;
  readonly temper: "annealed" | "drawn";
  readonly joint: number;
  readonly sizes: "mill" | "as given";
}

/** The usual tube: seamless, annealed by brazing, with the mill's tolerances. */
export const BRAZED = { temper: "annealed", joint: 1, sizes: "mill" } as const;

const inches = (metres: number): number => fromBase(metres, KINDS.diameter.US);

/** Whether a stress is an estimate from memory. */
export function isEstimate(material: string): boolean {
  return STRESSES.some((row) => row.material === material && row.fromMemory);
}

/** Allowable stress, Pa. */
function stressOf({ material, temperature, temper }: TubeChoice, trace: Trace): number {
  const row = STRESSES.find((each) => each.material === material && each.temper === temper);
  if (!row) throw valueError(`temper: drawn holds for copper only, got material ${material}`);
  const at = fromBase(temperature, KINDS.temperature.US);
  const { points } = row;
  const after = points.findIndex(([f]) => f >= at - 1e-9);
  if (after < 0)
    throw notAvailable(
      `temperature: the stress of ${material} is held to ${quantityMark("temperature", us("temperature", points.at(-1)?.[0] ?? 0))}, got ${quantityMark("temperature", temperature)}`,
    );
  const [hotter, stress] = points[after] ?? [0, 0];
  const [cooler, more] = points[after - 1] ?? [hotter, stress];
  const psi = hotter === cooler ? stress : more + ((stress - more) * (at - cooler)) / (hotter - cooler);
  const S = us("pressure drop", psi);
  trace.lookup({
    table: "Allowable stress",
    row: `${material}, ${temper}, ${quantityMark("temperature", temperature)}${row.fromMemory ? " (from memory)" : ""}`,
    interpolation: "linear; constant below 100 °F",
    result: { value: S, kind: "pressure drop" },
    source: row.fromMemory ? "exoticStress" : "pipingCode",
  });
  return S;
}

const upTo = (table: readonly (readonly [number, number])[], value: number): number | undefined =>
  table.find(([limit]) => value <= limit + 1e-6)?.[1];

/** Greatest outside diameter that the mill may deliver, m. */
function greatestDiameter(D: number, { material, sizes }: TubeChoice): number {
  if (sizes === "as given") return D;
  const more = material === "copper" ? (upTo(MORE_DIAMETER, inches(D)) ?? 0.001 * inches(D)) : 0.004;
  return D + us("diameter", more);
}

/** Least wall that the mill may deliver, m. */
function leastWall(t: number, { material, sizes }: TubeChoice): number {
  if (sizes === "as given") return t;
  if (material !== "copper") return 0.9 * t;
  const less = upTo(LESS_WALL, inches(t));
  return less === undefined ? 0.9 * t : t - us("diameter", less);
}

const refuseThick = (D: number, t: number): never => {
  throw valueError(
    `wall: must be below half the outside diameter, ${quantityMark("diameter", D / 2)}, got ${quantityMark("diameter", t)}`,
  );
};

/** Rated pressure over the air, Pa. */
export function ratedPressure(outside: number, wall: number, tube: TubeChoice, trace: Trace = silent): number {
  if (wall >= outside / 2) refuseThick(outside, wall);
  const S = stressOf(tube, trace);
  const [D, t] = [greatestDiameter(outside, tube), leastWall(wall, tube)];
  return trace.step(tubeRating, { S, E: tube.joint, t, D });
}

/** Least wall for a pressure over the air (Pa), m. */
export function wallFor(outside: number, P: number, tube: TubeChoice, trace: Trace = silent): number {
  const S = stressOf(tube, trace);
  return trace.step(tubeWall, { P, D: greatestDiameter(outside, tube), S, E: tube.joint });
}
