/** The parts of a machine's description beyond its rating: the maker's rows, a compressor's map, stages. */
import type { ValuesOf } from "../../kernel/define/argument";
import { labelOf } from "../../kernel/define/argument";
import { valueError } from "../../kernel/values/fault";
import type { System } from "../../kernel/values/quantity";
import type { CompressorMap } from "../map/map";
import type { STAGE_ENTRIES } from "./inputs";

export type StageInputs = ValuesOf<typeof STAGE_ENTRIES>;

/** The maker's rows of one stage over rising outdoor temperatures: K and W. */
export interface ListedRows {
  readonly outdoor: readonly number[];
  readonly cooling: readonly number[];
  readonly power: readonly number[];
}

/** Net cooling and power of the whole machine, W. */
export interface Capacity {
  readonly cooling: number;
  readonly power: number;
}

type Key = keyof StageInputs;

/** Refuses one of two entries that need each other. */
function checkPair(inputs: StageInputs, a: Key, b: Key): void {
  const [given, missing] = inputs[a] === undefined ? [b, a] : [a, b];
  if (inputs[given] !== undefined && inputs[missing] === undefined)
    throw valueError(
      `inputs: the label "${labelOf(missing)}" is missing or blank: it is needed with ${labelOf(given)}`,
    );
}

/** The rows of full or low stage; undefined where none are given. */
export function listedRows(inputs: StageInputs, low: boolean): ListedRows | undefined {
  const [coolingKey, powerKey] = low
    ? (["lowTableCooling", "lowTablePower"] as const)
    : (["tableCooling", "tablePower"] as const);
  checkPair(inputs, coolingKey, powerKey);
  const { tableOutdoor: outdoor, [coolingKey]: cooling, [powerKey]: power } = inputs;
  if (cooling === undefined || power === undefined) {
    if (!low) checkPair(inputs, "tableOutdoor", coolingKey);
    return undefined;
  }
  checkPair(inputs, coolingKey, "tableOutdoor");
  if (outdoor === undefined) return undefined;
  for (const [key, list] of [
    [coolingKey, cooling],
    [powerKey, power],
  ] as const)
    if (list.length !== outdoor.length)
      throw valueError(
        `inputs: ${labelOf(key)} must have as many values as table outdoor, ${outdoor.length}, got ${list.length}`,
      );
  if (outdoor.some((T, place) => place > 0 && T <= (outdoor[place - 1] ?? 0)))
    throw valueError("inputs: table outdoor must rise from value to value");
  return { outdoor, cooling, power };
}

/** Straight between rows; beyond them their ends hold. */
export function rowAt({ outdoor, cooling, power }: ListedRows, T: number): Capacity {
  const last = outdoor.length - 2;
  let i = 0;
  while (i < last && T > (outdoor[i + 1] ?? 0)) i++;
  const [from = 0, to = 1] = [outdoor[i], outdoor[i + 1]];
  const t = Math.min(1, Math.max(0, (T - from) / (to - from)));
  const mix = (values: readonly number[]): number => (1 - t) * (values[i] ?? 0) + t * (values[i + 1] ?? 0);
  return { cooling: mix(cooling), power: mix(power) };
}

/** The compressor's map of full or low stage; undefined where none is given. */
export function compressorMapOf(inputs: StageInputs, low: boolean, system: System): CompressorMap | undefined {
  const [flowKey, powerKey] = low ? (["lowMapFlow", "lowMapPower"] as const) : (["mapFlow", "mapPower"] as const);
  checkPair(inputs, flowKey, powerKey);
  const { [flowKey]: flow, [powerKey]: power } = inputs;
  if (flow === undefined || power === undefined) return undefined;
  if (low && inputs.mapFlow === undefined)
    throw valueError('inputs: the label "map flow" is missing or blank: low map flow needs the full stage\'s map');
  return { flow, power, system: inputs.mapUnits ?? system, superheat: inputs.mapSuperheat };
}

/** Refuses entries of stages that don't go together. */
export function checkStages(inputs: StageInputs, fullCooling: number | undefined, fullPower: number | undefined): void {
  const { machineType, lowCooling, lowPower } = inputs;
  checkPair(inputs, "lowCooling", "lowPower");
  checkPair(inputs, "intermediateCooling", "intermediatePower");
  if (inputs.mapFlow !== undefined && inputs.tableCooling !== undefined)
    throw valueError("inputs: give one of map flow and table cooling, got both");
  const staged = lowCooling !== undefined || inputs.lowTableCooling !== undefined || inputs.lowMapFlow !== undefined;
  if (machineType === "single speed" && staged)
    throw valueError(
      'inputs: machine type: low stage entries need "two stage" or "variable speed", got "single speed"',
    );
  if (
    lowCooling !== undefined &&
    lowPower !== undefined &&
    inputs.lowRatedOutdoor < 308.2 &&
    inputs.lowRatedOutdoor > 308.1
  )
    checkBelow(lowCooling, lowPower, fullCooling, fullPower);
  if (inputs.intermediateCooling !== undefined && machineType !== "variable speed")
    throw valueError('inputs: machine type: an intermediate speed needs "variable speed"');
}

function checkBelow(lowCooling: number, lowPower: number, cooling = Infinity, power = Infinity): void {
  if (!(lowCooling < cooling && lowPower < power))
    throw valueError("inputs: low cooling and low power must be below rated cooling and rated power");
}
