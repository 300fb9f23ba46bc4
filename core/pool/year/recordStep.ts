/** What a step adds to the month's sums and to the hour's means. */
import { HOUR } from "./calendar";
import type { Simulation } from "./simulation";

const addTo = (hours: Float64Array, hour: number, value: number): void => {
  hours[hour] = (hours[hour] ?? 0) + value;
};

/** Losses at the mean temperature of the step, J/m². */
function recordLosses({ state, losses, tally }: Simulation): void {
  const { duration, meanRise } = state;
  tally.evaporation += duration * (losses.evaporation + losses.evaporationSlope * meanRise);
  tally.convection += duration * (losses.convection + losses.convectionSlope * meanRise);
  tally.radiation += duration * (losses.radiation + losses.radiationSlope * meanRise);
  tally.ground += duration * (losses.ground + losses.groundSlope * meanRise);
  tally.makeUp += duration * (losses.makeUp + losses.makeUpSlope * meanRise);
}

function recordTank({ state, tally, year }: Simulation, hour: number, pump: number): void {
  const { duration } = state;
  const part = duration / HOUR;
  tally.toTank += duration * state.heatToTank;
  tally.tankTime += duration * state.tankRunShare;
  tally.extraPump += duration * state.tankRunShare * pump;
  tally.drawnHeat += duration * state.heatDrawn;
  tally.tankLoss += duration * state.tankLoss;
  tally.tankWarmth += duration * state.tankMean;
  addTo(year.toTank, hour, part * state.heatToTank);
  addTo(year.tank, hour, part * state.tankMean);
}

function recordMachine({ run, state, tally, year }: Simulation, hour: number): void {
  const { duration, rejected, heatToPool } = state;
  const part = duration / HOUR;
  const running = duration * state.runShare;
  tally.taken += (duration * heatToPool) / run.area;
  tally.rejected += duration * rejected;
  if (state.servesPool) tally.poolTime += running;
  else tally.outdoorTime += running;
  tally.electricity += duration * state.electricity;
  tally.extraPump += duration * run.pump.power * state.extraPumpShare;
  tally.unmet += duration * state.unmetLoad;
  addTo(year.taken, hour, part * heatToPool);
  addTo(year.outdoors, hour, part * (rejected - heatToPool - state.heatToTank));
  addTo(year.electricity, hour, part * state.electricity);
}

/** Records a step at its mean temperature. */
export function recordStep(simulation: Simulation, hour: number): void {
  const { run, tank, state, tally, year } = simulation;
  const { duration, pumpHeat, backUp } = state;
  recordLosses(simulation);
  if (pumpHeat > 0) tally.pumpHeat += (duration * pumpHeat) / run.area;
  if (backUp > 0) {
    tally.backUp += duration * backUp;
    addTo(year.backUp, hour, (duration / HOUR) * backUp * run.area);
  }
  if (tank !== undefined) recordTank(simulation, hour, tank.pump);
  if (state.rejected !== 0) recordMachine(simulation, hour);
}
