/** The pictures of a machine that settles on pool water. */
import type { System } from "../kernel/quantity";
import { cycle } from "../cycle/models/cycle";
import type { NamedCycle } from "../cycle/models/traced";
import { bothSides } from "../exchanger/models/balanceTraced";
import type { Balance } from "../exchanger/models/balance";
import { matched, type Matched } from "../exchanger/models/zones";
import { refrigerant } from "../refrigerant/models/refrigerant";
import { twoCyclesPicture } from "./cycle";
import type { Picture } from "./picture";
import { zonesPicture } from "./zones";

/** The entries of EXCHANGER.BALANCE's block, in base units. */
export interface BalanceEntries {
  readonly refrigerant: string;
  readonly ratedCooling: number;
  readonly ratedEvaporating: number;
  readonly ratedCondensing: number;
  readonly ratedOutdoor: number;
  readonly ratedIndoorWetBulb: number;
  readonly superheat: number;
  readonly subcooling: number;
  readonly efficiency: number;
  readonly volumetricEfficiency: number;
  readonly outdoorFan: number;
  readonly UA: number;
  readonly waterFlow: number;
  readonly enteringWater: number;
  readonly outdoor: number;
  readonly indoorWetBulb: number;
}

const settledOf = (inputs: BalanceEntries) => {
  const { superheat, subcooling, efficiency, volumetricEfficiency } = inputs;
  return bothSides({
    machine: {
      refrigerant: inputs.refrigerant,
      superheat,
      subcooling,
      efficiency,
      volumetricEfficiency,
      cooling: inputs.ratedCooling,
      evaporating: inputs.ratedEvaporating,
      condensing: inputs.ratedCondensing,
      wetBulb: inputs.ratedIndoorWetBulb,
    },
    exchanger: { ua: inputs.UA, waterFlow: inputs.waterFlow },
    coil: { ratedOutdoor: inputs.ratedOutdoor },
    conditions: {
      enteringWater: inputs.enteringWater,
      wetBulb: inputs.indoorWetBulb,
      outdoor: inputs.outdoor,
    },
    outdoorFan: inputs.outdoorFan,
  });
};

/** Where the streams of a settled machine would run in counterflow; undefined where they would cross. */
const streamsOf = (inputs: BalanceEntries, pool: Balance): Matched | undefined => {
  const fluid = refrigerant(inputs.refrigerant);
  const { superheat, subcooling, efficiency, waterFlow, enteringWater } = inputs;
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
      direction: "counterflow",
    });
  } catch {
    return undefined;
  }
};

export const balancePictures = (inputs: BalanceEntries, system: System): readonly Picture[] => {
  const { refrigerant: name, superheat, subcooling, efficiency } = inputs;
  const { pool, outdoors } = settledOf(inputs);
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
