/** Caution rules of the diverting valve. */
import { caution } from "../../kernel/define/caution";
import { us } from "../../kernel/values/quantity";

export const valveMustShift = caution({
  code: "LINE-VALVE-SHIFT",
  severity: "Warning",
  standing: true,
  source: "commonPractice",
  description: "A pilot valve shifts by a pressure difference only.",
  needs: {},
  when: () => true,
  message: () =>
    "A pilot valve shifts only while discharge is above suction, often by 5 to 25 psi: command it with the compressor running. On an equalised system it stays, whatever the control says. Its own sheet governs.",
});

export const idleCoil = caution({
  code: "LINE-VALVE-IDLE",
  severity: "Warning",
  standing: true,
  source: "reclaimValve",
  description: "A bleed takes the idle coil to suction pressure; without one it keeps its liquid.",
  needs: {},
  when: () => true,
  message: () =>
    "A bleed takes the idle coil to suction pressure: below 32 °F still water in it freezes. Without one it keeps liquid, which bursts it if it fills and warms (PRESSURE.TRAPPED). Valves leak: a check valve at the coil's outlet stops migration.",
});

const USUAL_VALVE_LOSS = us("temperature difference", 1);

export const valveCosts = caution({
  code: "LINE-VALVE-LOSS",
  severity: "Caution",
  source: "commonPractice",
  description: "A valve that costs more than 1 °F of condensing temperature.",
  needs: { saturationDrop: "temperature difference" },
  when: ({ saturationDrop }) => saturationDrop > USUAL_VALVE_LOSS,
  message: ({ saturationDrop }, show) =>
    `The valve costs ${show(saturationDrop, "temperature difference")} of condensing temperature, each degree about 1 to 2 % of capacity and power: take the next larger port.`,
});
