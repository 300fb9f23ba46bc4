/** The balance on pool and outdoor coil, and what changes between them. */
import { isFault, notAvailable, valueError } from "../../kernel/values/fault";
import { quantityMark } from "../../kernel/values/quantityMark";
import { silent, type Trace } from "../../kernel/define/steps";
import type { CoilRating } from "../coil/coil";
import {
  balanceOf,
  outdoorBalanceOf,
  type Balance,
  type BalanceConditions,
  type GivenExchanger,
  type OperatingState,
  type OutdoorCoil,
} from "./balance";
import type { CoolingMachine } from "./compressor";
import { changeOfHeat } from "./equations";
import { coilBalanceOf, type CoilExchanger } from "./withCoil";
import { traceMachine, traceOutdoors, tracePool } from "./working";

export interface BalanceInput {
  readonly machine: CoolingMachine;
  readonly exchanger: GivenExchanger | CoilExchanger;
  readonly coil: OutdoorCoil;
  readonly conditions: BalanceConditions & { readonly outdoor: number };
  /** W, saved on the pool. */
  readonly outdoorFan: number;
  /** W, in the cooled air. */
  readonly indoorFan: number;
  /** Least condensing temperature, K, which the outdoor coil holds. */
  readonly leastCondensing: number;
  /** Pressure lost by the gas on its way to the exchanger, Pa; the outdoor coil is taken without it. */
  readonly hotGasDrop?: number;
}

/** W and shares. */
export interface BothSides {
  readonly pool: Balance;
  /** The pool's side without the drop, where one is given. */
  readonly withoutDrop: Balance | undefined;
  /** The coil on the pool, if given by its geometry. */
  readonly coil: CoilRating | undefined;
  readonly outdoors: OperatingState;
  /** Net of the indoor fan, and power with the fans that run. */
  readonly cooling: number;
  readonly power: number;
  readonly coolingOutdoors: number;
  readonly powerOutdoors: number;
  readonly change: { readonly cooling: number; readonly power: number; readonly COP: number };
}

const equilibriumOn = (
  machine: CoolingMachine,
  exchanger: GivenExchanger | CoilExchanger,
  conditions: BalanceConditions,
): Pick<BothSides, "pool" | "coil"> => {
  if (!("coil" in exchanger)) return { pool: balanceOf(machine, exchanger, conditions), coil: undefined };
  const pool = coilBalanceOf(machine, exchanger, conditions);
  return { pool, coil: pool.rating };
};

/** The equilibrium of the machine with the drop; the one without it must exist. */
function equilibriumWithDrop(
  input: BalanceInput,
  hotGasDrop: number,
  withoutDrop: Balance,
): ReturnType<typeof equilibriumOn> {
  const got = quantityMark("pressure drop", hotGasDrop);
  const { condensingPressure: most } = withoutDrop;
  if (!(hotGasDrop < most))
    throw valueError(
      `hotGasDrop: must be below the condensing pressure without it, ${quantityMark("pressure", most)} absolute, got ${got}`,
    );
  try {
    return equilibriumOn({ ...input.machine, hotGasDrop }, input.exchanger, input.conditions);
  } catch (error) {
    if (!isFault(error)) throw error;
    throw notAvailable(
      `hotGasDrop: with ${got} on top of about ${quantityMark("pressure", most)} absolute this machine doesn't settle below the critical pressure: give less`,
    );
  }
}

/** Both sides and the change from the outdoor coil to the pool. */
export const bothSides = (input: BalanceInput, trace: Trace = silent): BothSides => {
  const { conditions, machine, hotGasDrop = 0 } = input;
  const withoutDrop = equilibriumOn(machine, input.exchanger, conditions);
  const { pool, coil } = hotGasDrop > 0 ? equilibriumWithDrop(input, hotGasDrop, withoutDrop.pool) : withoutDrop;
  const outdoors = outdoorBalanceOf(machine, input.coil, conditions.outdoor, conditions.wetBulb, input.leastCondensing);
  if (trace.on) {
    traceMachine(machine, trace);
    tracePool(input, { ...machine, hotGasDrop }, pool, trace);
    traceOutdoors(input, machine, outdoors, trace);
  }
  const net = ({ cooling }: OperatingState): number => cooling - input.indoorFan;
  const power = pool.power + input.indoorFan;
  const powerOutdoors = outdoors.power + input.outdoorFan + input.indoorFan;
  const change = (title: string, a: number, b: number): number =>
    trace.within(title, () => trace.step(changeOfHeat, { a, b }));
  return {
    pool,
    coil,
    withoutDrop: hotGasDrop > 0 ? withoutDrop.pool : undefined,
    outdoors,
    cooling: net(pool),
    power,
    coolingOutdoors: net(outdoors),
    powerOutdoors,
    change: {
      cooling: change("Change of cooling", net(outdoors), net(pool)),
      power: change("Change of power", powerOutdoors, power),
      COP: change("Change of COP", net(outdoors) / powerOutdoors, net(pool) / power),
    },
  };
};
