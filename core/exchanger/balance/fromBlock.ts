/** Input of the balance from the entries of its block. */
import { ISENTROPIC_EFFICIENCY } from "../../cycle/args";
import { valueError } from "../../kernel/values/fault";
import { silent, type Trace } from "../../kernel/define/steps";
import { quantityMark } from "../../kernel/values/quantityMark";
import { loadRefrigerant } from "../../refrigerant/refrigerant";
import { checkExchanger, type BalanceEntries } from "./inputs";
import type { GivenExchanger } from "./balance";
import type { CoilExchanger } from "./withCoil";
import type { BalanceInput } from "./working";
import { efficiencyOfPower } from "./machine";
import { conductivityOfWall } from "../surface/overall";

/** An entry that `checkExchanger` has found present. */
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

/** Compressor's efficiency: as given, or by the power of the whole machine. */
function efficiencyOf(inputs: BalanceEntries, machine: BalanceInput["machine"], trace: Trace): number {
  const { ratedPower: power, efficiency } = inputs;
  if (power === undefined) return efficiency;
  // An entry equal to its default counts as blank.
  if (efficiency !== ISENTROPIC_EFFICIENCY.fallback)
    throw valueError("inputs: give one of rated power and efficiency, got both");
  const fans = inputs.outdoorFan + inputs.indoorFan;
  if (!(fans < power))
    throw valueError(
      `inputs: both fans must take less than rated power, ${quantityMark("electric power", power)}, got ${quantityMark("electric power", fans)}`,
    );
  return efficiencyOfPower({ ...machine, fluid: loadRefrigerant(machine.refrigerant) }, power - fans, trace);
}

/** The model's SI record from entries in base units; refuses UA and geometry together, neither, or half a geometry. */
export const balanceInputOf = (inputs: BalanceEntries, trace: Trace = silent): BalanceInput => {
  const { superheat, subcooling, efficiency, volumetricEfficiency, enteringWater, outdoor } = inputs;
  const machine = {
    refrigerant: inputs.refrigerant,
    superheat,
    subcooling,
    efficiency,
    volumetricEfficiency,
    cooling: inputs.ratedCooling + inputs.indoorFan,
    evaporating: inputs.ratedEvaporating,
    condensing: inputs.ratedCondensing,
    wetBulb: inputs.ratedIndoorWetBulb,
  };
  return {
    machine: { ...machine, efficiency: efficiencyOf(inputs, machine, trace) },
    exchanger: exchangerOf(inputs, trace),
    coil: { ratedOutdoor: inputs.ratedOutdoor },
    conditions: { enteringWater, wetBulb: inputs.indoorWetBulb, outdoor },
    outdoorFan: inputs.outdoorFan,
    indoorFan: inputs.indoorFan,
    leastCondensing: inputs.leastCondensing,
  };
};
