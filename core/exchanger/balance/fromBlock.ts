/** Input of the balance from the entries of its block. */
import type { Trace } from "../../kernel/define/steps";
import type { System } from "../../kernel/values/quantity";
import { checkExchanger, type BalanceEntries } from "./inputs";
import type { GivenExchanger } from "./balance";
import type { CoilExchanger } from "./withCoil";
import type { BalanceInput } from "./bothSides";
import { stageOf } from "./stage";
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

/** The model's SI record from entries in base units; refuses UA and geometry together, neither, or half a geometry. */
export function balanceInputOf(inputs: BalanceEntries, system: System, trace: Trace): BalanceInput {
  const { machine, outdoorFan, indoorFan } = stageOf(inputs, system, trace);
  return {
    machine,
    exchanger: exchangerOf(inputs, trace),
    coil: { ratedOutdoor: inputs.ratedOutdoor },
    conditions: { enteringWater: inputs.enteringWater, wetBulb: inputs.indoorWetBulb, outdoor: inputs.outdoor },
    outdoorFan,
    indoorFan,
    leastCondensing: inputs.leastCondensing,
  };
}
