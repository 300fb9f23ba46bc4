/** The pictures of a machine that settles on pool water. */
import { balanceInputOf, bothSides, cycle, matched, refrigerant } from "../index";
import type { System } from "../kernel/quantity";
import type { NamedCycle } from "../cycle/models/traced";
import type { BalanceEntries } from "../exchanger/balanceInputs";
import type { Balance } from "../exchanger/models/balance";
import type { Matched } from "../exchanger/models/zones";
import { twoCyclesPicture } from "./cycle";
import type { Picture } from "./picture";
import { zonesPicture } from "./zones";

/** Where the streams of a settled machine run; undefined where they would cross. */
const streamsOf = (inputs: BalanceEntries, pool: Balance): Matched | undefined => {
  const fluid = refrigerant(inputs.refrigerant);
  const { superheat, subcooling, efficiency, waterFlow, enteringWater, direction } = inputs;
  const { evaporating, condensing, massFlow } = pool;
  try {
    const { discharge } = cycle({ refrigerant: fluid, evaporating, condensing, superheat, subcooling, efficiency });
    return matched({
      fluid,
      massFlow,
      inlet: () => ({ enthalpy: discharge.enthalpy }),
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

export const balancePictures = (inputs: BalanceEntries, system: System): readonly Picture[] => {
  const { refrigerant: name, superheat, subcooling, efficiency } = inputs;
  const { pool, outdoors } = bothSides(balanceInputOf(inputs));
  const at = ({ evaporating, condensing }: { evaporating: number; condensing: number }): NamedCycle => ({
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
