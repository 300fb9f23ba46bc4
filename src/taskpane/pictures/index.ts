/** The pictures of calls. This folder is a script of its own, loaded when a picture is first shown. */
import { admit } from "../../../core/kernel/evaluate";
import type { System } from "../../../core/kernel/quantity";
import type { NamedCycle } from "../../../core/cycle/models/traced";
import { zonesOf, type DutyInputs } from "../../../core/exchanger/models/zonesTraced";
import type { RawMatrix } from "../../../core/kernel/raw";
import { silent } from "../../../core/kernel/steps";
import { admitClimate } from "../../../core/pool/climate";
import { yearOf } from "../../../core/pool/models/year";
import type { YearInputs } from "../../../core/pool/models/yearSetUp";
import { COMPILED } from "../../functions/compiled";
import type { RawValue } from "../../workbook/values";
import { balancePictures, type BalanceEntries } from "./balance";
import { cyclePicture } from "./cycle";
import type { Picture } from "./picture";
import { yearPictures } from "./year";
import { zonesPicture } from "./zones";

export { drawn } from "./draw";
export type { Picture } from "./picture";

type Values = Readonly<Record<string, unknown>>;

const alongZones = ({ inputs }: Values, system: System): readonly Picture[] => [
  zonesPicture(zonesOf(inputs as DutyInputs, silent), system),
];

/** By function: pictures from its admitted arguments, which are in base units. */
const PICTURES: Readonly<Record<string, (values: Values, system: System) => readonly Picture[]>> = {
  "CYCLE.STATES": (values, system) => [cyclePicture(values as unknown as NamedCycle, system)],
  "EXCHANGER.ZONES": alongZones,
  "EXCHANGER.COIL": alongZones,
  "EXCHANGER.BALANCE": ({ inputs }, system) => balancePictures(inputs as BalanceEntries, system),
  "POOL.YEAR": ({ inputs, climate }, system) =>
    yearPictures(yearOf(inputs as YearInputs, admitClimate(climate as RawMatrix, system)), system),
};

/** The functions that this script draws. */
export const DRAWN: readonly string[] = Object.keys(PICTURES);

/** The pictures of a call; none where the function has none or refuses the arguments. */
export function picturesOf(id: string, args: readonly RawValue[]): readonly Picture[] {
  const compiled = COMPILED.get(id);
  const make = PICTURES[id];
  if (compiled === undefined || make === undefined) return [];
  try {
    const { values, system } = admit(compiled, args, true);
    return make(values, system);
  } catch {
    // The call's own section says what is wrong with it.
    return [];
  }
}
