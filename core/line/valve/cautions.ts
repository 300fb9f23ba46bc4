/** Caution rules of the diverting valve. */
import { caution } from "../../kernel/define/caution";
import { us } from "../../kernel/values/quantity";

export const valveMustShift = caution({
  code: "LINE-VALVE-SHIFT",
  severity: "Warning",
  source: "commonPractice",
  description: "A pilot-operated valve shifts by a pressure difference only.",
  needs: {},
  when: () => true,
  message: () =>
    "A pilot valve shifts the main piston only while discharge is above suction, often by 5 to 25 psi: command it with the compressor running or just started; on an equalised or very cold system it stays where it was, whatever the control says. Least and greatest difference, flow direction and capacity on the valve's own sheet govern.",
});

export const idleCoil = caution({
  code: "LINE-VALVE-IDLE",
  severity: "Warning",
  source: "reclaimValve",
  description: "With a bleed the idle coil goes to suction pressure, without one it keeps its liquid.",
  needs: {},
  when: () => true,
  message: () =>
    "A valve with a bleed empties the idle coil to suction pressure: below 32 °F there water left in a pool coil freezes and bursts it; drain it or keep it flowing. A valve without one, or with a check valve behind, keeps liquid shut in: never let it fill, it bursts the coil when it warms (PRESSURE.TRAPPED). Three-way valves leak into the idle coil; a check valve at its outlet stops migration.",
});

const USUAL_VALVE_LOSS = us("temperature difference", 1);

export const valveCosts = caution({
  code: "LINE-VALVE-LOSS",
  severity: "Caution",
  source: "commonPractice",
  description: "A valve that costs more than 1 °F of condensing temperature.",
  needs: { drop: "pressure drop", saturationDrop: "temperature difference" },
  when: ({ saturationDrop }) => saturationDrop > USUAL_VALVE_LOSS,
  message: ({ drop, saturationDrop }, show) =>
    `The valve costs ${show(drop, "pressure drop")}, worth ${show(saturationDrop, "temperature difference")} of condensing temperature in every mode: each degree takes about 1 to 2 % of capacity and power. Makers rate such valves at 1 to 5 psi; take the next larger port.`,
});
