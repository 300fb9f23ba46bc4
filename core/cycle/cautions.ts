/** Caution rules of the refrigeration cycle. */
import { caution } from "../kernel/define/caution";
import { us } from "../kernel/values/quantity";

const HOT_DISCHARGE = us("temperature", 225);
const COLD_CONDENSING = us("temperature", 80);

export const hotDischarge = caution({
  code: "CYCLE-HOT-DISCHARGE",
  severity: "Warning",
  source: "commonPractice",
  description: "Discharge gas above 225 °F: oil and valves suffer; the compressor maker's limit governs.",
  needs: { dischargeTemperature: "temperature" },
  when: ({ dischargeTemperature }) => dischargeTemperature > HOT_DISCHARGE,
  message: ({ dischargeTemperature }, show) =>
    `Discharge gas of ${show(dischargeTemperature, "temperature")} with an adiabatic shell (a real one loses heat and runs cooler): above about ${show(HOT_DISCHARGE, "temperature")} oil and valves suffer; the compressor maker's limit governs. This gas must never reach plastic pipe.`,
});

export const coldCondensing = caution({
  code: "CYCLE-COLD-CONDENSING",
  severity: "Caution",
  source: "commonPractice",
  description: "Condensing below about 80 °F: the metering device may lack pressure difference.",
  needs: { condensing: "temperature", evaporating: "temperature" },
  when: ({ condensing, evaporating }) => condensing < COLD_CONDENSING && evaporating > us("temperature", 20),
  message: ({ condensing }, show) =>
    `Condensing at ${show(condensing, "temperature")}: below about ${show(COLD_CONDENSING, "temperature")} the metering device may lack pressure difference; hold the head up (water bypass, regulating valve) or go back to the outdoor coil.`,
});

export const adiabaticShell = caution({
  code: "CYCLE-MODEL",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "What the cycle leaves out: fans, pressure drops, shell losses.",
  needs: {},
  when: () => true,
  message: () =>
    "Compressor only, without fans and pressure drops; the maker's compressor data or a measurement override this cycle.",
});

export const carbonDioxidePressure = caution({
  code: "CYCLE-CO2-PRESSURE",
  severity: "Danger",
  standing: true,
  source: "commonPractice",
  description: "R-744 above its critical point runs at 1,100 to 1,900 psi gauge.",
  needs: {},
  when: () => true,
  message: () =>
    "R-744 runs here at 75 to 130 bar: only valves, pipes, exchangers and relief devices rated and listed for it, by technicians trained for it. At rest in warm rooms liquid shut in bursts pipes; a leak displaces air.",
});

export const beyondRelation = caution({
  code: "CYCLE-CO2-RELATION-SPAN",
  severity: "Caution",
  source: "liao2000",
  description: "Outside the span of the published relation for the optimum pressure.",
  needs: { beyond: "yes/no", highPressure: "pressure", bestOfCycle: "pressure" },
  when: ({ beyond }) => beyond,
  message: ({ highPressure, bestOfCycle }, show) =>
    `Outside the relation's span (evaporating 14 to 68 °F, outlet 86 °F and up, to 120 bar): it gives ${show(highPressure, "pressure")}, this cycle ${show(bestOfCycle, "pressure")}. Ask the maker's controller.`,
});
