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
