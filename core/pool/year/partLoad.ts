/**
 * How the machine meets a load: one speed starts and stops; two stages cycle below the low stage and mix above it; a
 * variable-speed machine runs at the speed that meets the load and cycles only below its least.
 */
import { powerBetweenSpeeds, runShareFor } from "../../aircon/machine/partLoad";
import type { LowStage, Machine } from "./machine";
import { coolingAt, powerAt, type WaterCurve } from "./waterCurve";

/** What takes the heat: outdoor coil, pool or tank. */
export type HeatSide = "outdoors" | "pool" | "tank";

/** What the machine does in a step; written anew for each load. */
export interface PartLoad {
  /** Load met, W, and share of the step in which the machine runs. */
  met: number;
  runShare: number;
  /** Means over the step: electricity, and the heat of the refrigerant, without the outdoor fan's power, W. */
  electricity: number;
  rejected: number;
}

export const emptyPartLoad = (): PartLoad => ({ met: 0, runShare: 0, electricity: 0, rejected: 0 });

function curveOf(stage: LowStage, side: HeatSide): WaterCurve | undefined {
  if (side === "outdoors") return undefined;
  return side === "pool" ? stage.poolCurve : stage.tankCurve;
}

const fanOf = (stage: LowStage, side: HeatSide): number => (side === "outdoors" ? stage.outdoorFan : 0);

/** Writes what the machine does for a load (W), its water at T (K) where it is on pool or tank. */
export function meetLoad(
  machine: Machine,
  load: number,
  hour: number,
  side: HeatSide,
  T: number,
  into: PartLoad,
): void {
  const { low, cyclingLoss } = machine;
  const curve = curveOf(machine, side);
  const cooling = curve ? coolingAt(curve, T) : (machine.outdoorCooling[hour] ?? 0);
  const power = curve ? powerAt(curve, T) : (machine.outdoorPower[hour] ?? 0);
  if (low !== undefined && load < cooling && machine.locked?.[hour] !== 1) {
    const lowCurve = curveOf(low, side);
    const lowCooling = lowCurve ? coolingAt(lowCurve, T) : (low.outdoorCooling[hour] ?? 0);
    const lowPower = lowCurve ? powerAt(lowCurve, T) : (low.outdoorPower[hour] ?? 0);
    into.met = load;
    if (load <= lowCooling) {
      into.runShare = runShareFor(load, lowCooling, cyclingLoss);
      into.electricity = into.runShare * lowPower;
      into.rejected = load + into.runShare * (lowPower - fanOf(low, side));
      return;
    }
    const part = (load - lowCooling) / (cooling - lowCooling);
    into.runShare = 1;
    into.electricity = machine.variable
      ? powerBetweenSpeeds(load, lowCooling, lowPower, cooling, power, machine.middle)
      : (1 - part) * lowPower + part * power;
    into.rejected = load + into.electricity - (1 - part) * fanOf(low, side) - part * fanOf(machine, side);
    return;
  }
  into.runShare = runShareFor(load, cooling, cyclingLoss);
  into.met = load < cooling ? load : cooling;
  into.electricity = into.runShare * power;
  // The outdoor fan's power leaves with the air, not with the refrigerant.
  into.rejected = into.met + into.runShare * (power - fanOf(machine, side));
}
