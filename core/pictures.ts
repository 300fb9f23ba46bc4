/** The pictures of calls as data: what the hosts draw. Loaded only where pictures are shown. */
import { admit, admitClimate, silent, withMapUnits, yearOf, zonesOf } from "./index";
import type { NamedCycle } from "./cycle/working";
import type { BalanceEntries } from "./exchanger/balance/inputs";
import type { DutyInputs } from "./exchanger/zones/working";
import type { Compiled } from "./kernel/call/evaluate";
import type { System } from "./kernel/values/quantity";
import type { CellMatrix } from "./kernel/values/cellInput";
import { balancePictures } from "./picture/balance";
import { cyclePicture } from "./picture/cycle";
import type { ShownPicture } from "./picture/picture";
import { networkScheme, type NetworkCall } from "./picture/networkScheme";
import { loopScheme } from "./picture/scheme";
import { yearPictures } from "./picture/year";
import { distributionPictures, rankPictures } from "./picture/distribution";
import { UNCERTAIN, uncertainCall } from "./picture/uncertainCall";
import { zonesPicture } from "./picture/zones";

export { longStudy, STUDY_RUNS } from "./picture/longStudy";
export type { Scheme, SchemePart, SchemeSymbol } from "./picture/schemeParts";
export type {
  Axis,
  PictureCurve,
  Level,
  Mark,
  Picture,
  PictureChoice,
  PicturePoint,
  ShownPicture,
  Stack,
  Stretch,
  Tick,
  Tone,
} from "./picture/picture";

type LoopCall = { readonly items: Parameters<typeof loopScheme>[0] } & Parameters<typeof loopScheme>[1];

/** A single row needs no schematic. */
const loopPictures = ({ items, ...at }: LoopCall, system: System): readonly ShownPicture[] =>
  items.length < 2 ? [] : [loopScheme(items, at, system)];

type Values = Readonly<Record<string, unknown>>;

const alongZones = ({ inputs }: Values, system: System): readonly ShownPicture[] => [
  zonesPicture(zonesOf(inputs as DutyInputs, silent), system),
];

/** By function: pictures from its admitted arguments, which are in base units. */
const PICTURES: Readonly<Record<string, (values: Values, system: System) => readonly ShownPicture[]>> = {
  "CYCLE.STATES": (values, system) => [cyclePicture(values as unknown as NamedCycle, system)],
  "EXCHANGER.ZONES": alongZones,
  "EXCHANGER.COIL": alongZones,
  "EXCHANGER.BALANCE": ({ inputs, hotGasDrop }, system) =>
    balancePictures(inputs as BalanceEntries, hotGasDrop as number, system),
  "PIPE.LOOP": (values, system) => loopPictures(values as unknown as LoopCall, system),
  "PIPE.NETWORK": (values, system) => [networkScheme(values as unknown as NetworkCall, system)],
  "POOL.YEAR": ({ inputs, climate }, system) =>
    yearPictures(
      yearOf(withMapUnits(inputs as Parameters<typeof yearOf>[0], system), admitClimate(climate as CellMatrix, system)),
      system,
    ),
};

/** The functions that have pictures. */
export const PICTURED: readonly string[] = [...Object.keys(PICTURES), ...UNCERTAIN];

/** Distribution and ranking of a call with ranges. */
function uncertaintyPictures(compiled: Compiled, args: readonly unknown[]): readonly ShownPicture[] {
  const call = uncertainCall(compiled, args);
  const runs = call.cellRuns();
  return [...distributionPictures(call, runs), ...rankPictures(call, runs)];
}

/** The pictures of a call; none where the function has none or refuses the arguments. */
export const picturesOf = (compiled: Compiled, args: readonly unknown[]): readonly ShownPicture[] => {
  const make = PICTURES[compiled.definition.id];
  try {
    if (UNCERTAIN.includes(compiled.definition.id)) return uncertaintyPictures(compiled, args);
    if (make === undefined) return [];
    const { values, system } = admit(compiled, args, true);
    return make(values, system);
  } catch {
    // The call itself says what is wrong with it.
    return [];
  }
};
