/** The same machine on its outdoor coil. */
import { notAvailable } from "../../kernel/values/fault";
import { quantityMark } from "../../kernel/values/quantityMark";
import { solveEquilibrium, type OperatingState, type Sink } from "./balance";
import type { CoolingMachine } from "./compressor";
import { coilConductance } from "./equations";
import { machineState, meanCondensing } from "./machine";

/** The machine's outdoor coil: outdoor air at the rating's condensing temperature, K. */
export interface OutdoorCoil {
  readonly ratedOutdoor: number;
}

/** Heat into the outdoor air per kelvin: the rating's heat over the rating's difference. */
export const airSink = (machine: CoolingMachine, { ratedOutdoor }: OutdoorCoil, outdoor: number): Sink => {
  const { fluid, cooling, condensing } = machine.rating;
  const Tm = meanCondensing(fluid, condensing, machine.rated.condensingPressure);
  if (!(Tm > ratedOutdoor))
    throw notAvailable(
      `condensing at the rating: the mean of dew and bubble point (${quantityMark("temperature", Tm)}) must be above the outdoor air there (${quantityMark("temperature", ratedOutdoor)})`,
    );
  const Q = (cooling * machine.rated.rejected) / machine.rated.cooling;
  return { conductance: coilConductance.code({ Q, Tm, To: ratedOutdoor }), temperature: outdoor };
};

/** The machine at the condensing temperature `least`, K, if the sink alone would settle below it; otherwise undefined. */
function heldAt(machine: CoolingMachine, sink: Sink, least: number, wetBulb: number): OperatingState | undefined {
  const { evaporating } = machine.rating;
  if (least <= evaporating + 1) return undefined;
  const running = machineState(machine, least, wetBulb, evaporating);
  const over = running.meanCondensing - sink.temperature;
  if (sink.conductance * over <= running.rejected) return undefined;
  return { ...running, sink: { ...sink, conductance: running.rejected / over } };
}

/** The same machine on its outdoor coil, never condensing below `least`; outdoor air and indoor wet bulb in K. */
export function outdoorBalanceOf(
  machine: CoolingMachine,
  coil: OutdoorCoil,
  outdoor: number,
  wetBulb: number,
  least = 0,
): OperatingState {
  const sink = airSink(machine, coil, outdoor);
  return heldAt(machine, sink, least, wetBulb) ?? solveEquilibrium(machine, sink, wetBulb);
}
