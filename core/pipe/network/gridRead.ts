/** A network read from its rows: nodes by name, links with what they lose. Faults name the row. */
import { normalizeKey } from "../../kernel/define/argument";
import { valueError, type FaultError } from "../../kernel/values/fault";
import { densityOfWater, viscosityOfWater } from "../../water/equations";
import { FITTING_WORDS } from "../args";
import type { Fitting } from "../data/fittings";
import { coefficientOf } from "../fitting/fittingLoss";
import { boreOf } from "../straight/bore";
import { PVC_ROUGHNESS } from "../straight/friction";
import { PVC_COEFFICIENT } from "../straight/headLoss";
import { equalPercentageOpening, linearOpening, quickOpening, valveLoss } from "./gridEquations";
import { pipeOf, reynoldsFactor, shutOffHead, velocityHeadFactor, type PadLink, type GridPump } from "./gridLink";
import { onePoint } from "./partCurve";
import type { LinkRow, NetworkInputs } from "./networkArgs";

export interface ReadLink extends PadLink {
  readonly name: string;
  readonly row: LinkRow;
  /** Bore, m; undefined where the row has no size. */
  readonly bore: number | undefined;
  /** Sum of the constant loss coefficients, and of the constants over Re. */
  readonly K: readonly [constant: number, overRe: number];
  /** Flow coefficient at its opening, m³/h at 1 bar. */
  readonly Kv: number | undefined;
}

export interface WaterInPipes {
  readonly rho: number;
  /** m²/s */
  readonly viscosity: number;
}

export function propertiesAt(T: number): WaterInPipes {
  const rho = densityOfWater.code({ T });
  return { rho, viscosity: viscosityOfWater.code({ T }) / rho };
}

export const isBreaker = ({ element }: LinkRow): boolean => /vacuum ?breaker/i.test(element);

export function rowFault(place: number, { element, from, to }: LinkRow, why: string): FaultError {
  return valueError(`rows, row ${place + 1} (${element}, ${from} to ${to}): ${why}`);
}

type Refuse = (why: string) => FaultError;

/** Loss coefficients of one fitting in a size: the constant part, and what is divided by Re. */
function fittingConstants(fitting: Fitting, row: LinkRow, refuse: Refuse): readonly [number, number] {
  const { size, schedule } = row;
  if (size === undefined) throw refuse("size: is blank: fittings need it");
  const item = {
    fitting,
    size,
    schedule,
    flow: 0,
    count: 1,
    water: 0,
    method: "three-constant",
    bore: "average",
  } as const;
  const D = boreOf(size, schedule, "average");
  const K = coefficientOf(item, { re: Number.POSITIVE_INFINITY, D, f: 0 });
  return [K, coefficientOf(item, { re: 1, D, f: 0 }) - K];
}

const COUNTED = /^(\d+)\s*[x×]?\s+(.+)$/;

/** "3 elbow 90; 1 union; 0.5" as its coefficients. */
function coefficientsOf(row: LinkRow, refuse: Refuse): readonly [number, number] {
  const own = FITTING_WORDS.get(normalizeKey(row.element));
  const words = row.K ?? (own !== undefined && row.size !== undefined && row.length === undefined ? own : "");
  let [constant, overRe] = [0, 0];
  for (const part of words.split(";").map((each) => each.trim())) {
    if (part === "") continue;
    const number = Number(part);
    if (!Number.isNaN(number)) {
      if (!(number >= 0 && number < 1e6)) throw refuse(`K: must be from 0 to 1,000,000, got ${part}`);
      constant += number;
      continue;
    }
    const whole = FITTING_WORDS.get(normalizeKey(part));
    const [, count = "1", name = part] = whole === undefined ? (COUNTED.exec(part) ?? []) : [];
    const fitting =
      whole ?? FITTING_WORDS.get(normalizeKey(name.replace(/s$/, ""))) ?? FITTING_WORDS.get(normalizeKey(name));
    if (fitting === undefined) throw refuse(`K: "${part}" is neither a number nor fittings such as "3 elbow 90"`);
    const [K, K1] = fittingConstants(fitting, row, refuse);
    constant += Number(count) * K;
    overRe += Number(count) * K1;
  }
  return [constant, overRe];
}

/** Flow coefficient at an opening above 0. */
export function openedCoefficient(row: LinkRow, x: number): number {
  const Kvs = row.flowCoefficient ?? 0;
  if (row.characteristic === "equal percentage") return equalPercentageOpening.code({ Kvs, R: row.rangeability, x });
  return (row.characteristic === "linear" ? linearOpening : quickOpening).code({ Kvs, x });
}

export const openingOf = ({ opening = 1, shut }: LinkRow): number => (shut ? 0 : opening);

/** What a part's known loss adds: straight, squared, and by its own exponent. */
function knownLossOf(row: LinkRow, refuse: Refuse): readonly [linear: number, square: number, power: number] {
  const { loss, knownFlow, exponent, linearShare: s } = row;
  if (loss === undefined) return [0, 0, 0];
  if (knownFlow === undefined) throw refuse("known flow: is blank: a known loss needs the flow at which it is known");
  const rest = ((1 - s) * loss) / knownFlow ** exponent;
  return [(s * loss) / knownFlow, exponent === 2 ? rest : 0, exponent === 2 ? 0 : rest];
}

/** A row without pump. */
export function readLink(
  given: LinkRow,
  place: number,
  from: number,
  to: number,
  inputs: NetworkInputs,
  at: WaterInPipes,
): ReadLink {
  const refuse: Refuse = (why) => rowFault(place, given, why);
  const row = onePoint(given, refuse);
  const { size, schedule, length, flowCoefficient, element } = row;
  if ((length ?? row.K) !== undefined && size === undefined) throw refuse("size: is blank: a length or K needs it");
  const bore = size === undefined ? undefined : boreOf(size, schedule, "average");
  const K = coefficientsOf(row, refuse);
  const x = openingOf(row);
  if (x > 0 && x < 1 && flowCoefficient === undefined)
    throw refuse("flow coefficient: is blank: a part-open valve needs its Cv or Kv");
  const Kv = flowCoefficient === undefined || x === 0 ? undefined : openedCoefficient(row, x);
  const [linear, square, power] = knownLossOf(row, refuse);
  if (
    length === undefined &&
    K[0] + K[1] === 0 &&
    flowCoefficient === undefined &&
    row.loss === undefined &&
    row.opening === undefined &&
    !row.shut
  )
    throw refuse(
      "gives no loss: it needs a length, K, flow coefficient, or loss at a known flow; a tight open valve has opening 1",
    );
  const heads = bore === undefined ? 0 : velocityHeadFactor(bore);
  return {
    name: element,
    row,
    bore,
    K,
    Kv,
    from,
    to,
    pipe:
      length === undefined || bore === undefined
        ? undefined
        : pipeOf(bore, length, PVC_ROUGHNESS, inputs.method === "Hazen-Williams" ? PVC_COEFFICIENT : undefined),
    linear: linear + (bore === undefined ? 0 : (K[1] * heads) / reynoldsFactor(bore, at.viscosity)),
    square: square + K[0] * heads + (Kv === undefined ? 0 : valveLoss.code({ Q: 1, Kv })),
    power: [power, row.exponent],
    pump: undefined,
    oneWay: /check/i.test(element),
    lift: 0,
    shut: x === 0,
    start: 0.3048 * (Math.PI / 4) * (bore ?? 0.05) ** 2,
  };
}

/** A row with a pump; off it is shut. */
export function readPump(row: LinkRow, from: number, to: number, pump: GridPump): ReadLink {
  const off = pump.speed === 0 || row.shut;
  return {
    name: row.element,
    row,
    bore: undefined,
    K: [0, 0],
    Kv: undefined,
    from,
    to,
    pipe: undefined,
    linear: 0,
    square: 0,
    power: [0, 2],
    pump,
    oneWay: true,
    lift: shutOffHead(pump),
    shut: off,
    start: 0.6 * pump.end * pump.speed,
  };
}
