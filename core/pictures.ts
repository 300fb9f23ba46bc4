/** The pictures of calls as data: what the hosts draw. Loaded only where pictures are shown. */
import { admit, admitClimate, silent, yearOf, zonesOf } from "./index";
import type { NamedCycle } from "./cycle/models/traced";
import type { BalanceEntries } from "./exchanger/balanceInputs";
import type { DutyInputs } from "./exchanger/models/zonesTraced";
import type { Compiled } from "./kernel/evaluate";
import type { System } from "./kernel/quantity";
import type { RawMatrix } from "./kernel/raw";
import { balancePictures } from "./picture/balance";
import { cyclePicture } from "./picture/cycle";
import type { Shown } from "./picture/picture";
import { yearPictures } from "./picture/year";
import { zonesPicture } from "./picture/zones";

export type {
  Axis,
  Curve,
  Level,
  Mark,
  Picture,
  PictureChoice,
  Point,
  Shown,
  Stack,
  Stretch,
  Tick,
  Tone,
} from "./picture/picture";

type Values = Readonly<Record<string, unknown>>;

const alongZones = ({ inputs }: Values, system: System): readonly Shown[] => [
  zonesPicture(zonesOf(inputs as DutyInputs, silent), system),
];

/** By function: pictures from its admitted arguments, which are in base units. */
const PICTURES: Readonly<Record<string, (values: Values, system: System) => readonly Shown[]>> = {
  "CYCLE.STATES": (values, system) => [cyclePicture(values as unknown as NamedCycle, system)],
  "EXCHANGER.ZONES": alongZones,
  "EXCHANGER.COIL": alongZones,
  "EXCHANGER.BALANCE": ({ inputs }, system) => balancePictures(inputs as BalanceEntries, system),
  "POOL.YEAR": ({ inputs, climate }, system) =>
    yearPictures(yearOf(inputs as Parameters<typeof yearOf>[0], admitClimate(climate as RawMatrix, system)), system),
};

/** The functions that have pictures. */
export const PICTURED: readonly string[] = Object.keys(PICTURES);

/** The pictures of a call; none where the function has none or refuses the arguments. */
export const picturesOf = (compiled: Compiled, args: readonly unknown[]): readonly Shown[] => {
  const make = PICTURES[compiled.definition.id];
  if (make === undefined) return [];
  try {
    const { values, system } = admit(compiled, args, true);
    return make(values, system);
  } catch {
    // The call itself says what is wrong with it.
    return [];
  }
};
