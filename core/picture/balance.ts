/** The pictures of a machine that settles on pool water. */
import { balanceInputOf, bothSides, matchStreams, loadRefrigerant, silent } from "../index";
import type { System } from "../kernel/values/quantity";
import type { NamedCycle } from "../cycle/working";
import type { BalanceEntries } from "../exchanger/balance/inputs";
import type { Balance } from "../exchanger/balance/balance";
import type { StreamMatch } from "../exchanger/zones/zones";
import { twoCyclesPicture } from "./cycle";
import type { Picture } from "./picture";
import { zonesPicture } from "./zones";

/** The streams of a machine at its balance; undefined if they would cross. */
const streamsOf = (inputs: BalanceEntries, pool: Balance): StreamMatch | undefined => {
  const fluid = loadRefrigerant(inputs.refrigerant);
  const { subcooling, waterFlow, enteringWater, direction } = inputs;
  const { condensing, massFlow, inletEnthalpy: enthalpy } = pool;
  try {
    return matchStreams({
      fluid,
      massFlow,
      inlet: () => ({ enthalpy }),
      condensing,
      subcooling,
      waterFlow,
      enteringWater,
      direction,
    });
  } catch {
    return undefined;
  }
};

export const balancePictures = (inputs: BalanceEntries, hotGasDrop: number, system: System): readonly Picture[] => {
  const { refrigerant: name, superheat, subcooling } = inputs;
  const { pool, outdoors } = bothSides({ ...balanceInputOf(inputs, system, silent), hotGasDrop });
  const at = ({
    evaporating,
    condensing,
    efficiency,
  }: Readonly<Record<"evaporating" | "condensing" | "efficiency", number>>): NamedCycle => ({
    refrigerant: name,
    evaporating,
    condensing,
    superheat,
    subcooling,
    efficiency,
  });
  const streams = streamsOf(inputs, pool);
  return [
    twoCyclesPicture(at(pool), at(outdoors), system),
    ...(streams === undefined ? [] : [zonesPicture(streams, system)]),
  ];
};
