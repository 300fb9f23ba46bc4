/** The balance's input from the entries of its block. */
import { silent, type Trace } from "../../kernel/define/steps";
import { checkExchanger, type BalanceEntries } from "./inputs";
import type { GivenExchanger } from "./balance";
import type { CoilExchanger } from "./withCoil";
import type { BalanceInput } from "./working";
import { conductivityOfWall } from "../surface/overall";

/** Entries that `checkExchanger` has found to be there. */
const there = (value: number | undefined): number => value ?? Number.NaN;

const exchangerOf = (inputs: BalanceEntries, trace: Trace): GivenExchanger | CoilExchanger => {
  checkExchanger(inputs);
  const { UA, waterFlow, direction, material, tubes, coreDiameter, insideFouling, outsideFouling } = inputs;
  if (UA !== undefined) return { ua: UA, waterFlow };
  return {
    coil: {
      outsideDiameter: there(inputs.outsideDiameter),
      wall: there(inputs.wall),
      conductivity: conductivityOfWall(material, trace),
      tubes,
      tubeLength: there(inputs.tubeLength),
      coilDiameter: there(inputs.coilDiameter),
      pitch: there(inputs.pitch),
      shellDiameter: there(inputs.shellDiameter),
      coreDiameter,
      insideFouling,
      outsideFouling,
    },
    waterFlow,
    direction,
  };
};

/** Base units in, the model's SI record out; refuses UA and geometry together, neither, or half a geometry. */
export const balanceInputOf = (inputs: BalanceEntries, trace: Trace = silent): BalanceInput => {
  const { refrigerant, superheat, subcooling, efficiency, volumetricEfficiency, enteringWater, outdoor } = inputs;
  return {
    machine: {
      refrigerant,
      superheat,
      subcooling,
      efficiency,
      volumetricEfficiency,
      cooling: inputs.ratedCooling,
      evaporating: inputs.ratedEvaporating,
      condensing: inputs.ratedCondensing,
      wetBulb: inputs.ratedIndoorWetBulb,
    },
    exchanger: exchangerOf(inputs, trace),
    coil: { ratedOutdoor: inputs.ratedOutdoor },
    conditions: { enteringWater, wetBulb: inputs.indoorWetBulb, outdoor },
    outdoorFan: inputs.outdoorFan,
  };
};
