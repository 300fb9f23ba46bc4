/** Caution rules of zones. */
import { caution } from "../../kernel/define/caution";
import { us } from "../../kernel/values/quantity";

const CLOSE = us("temperature difference", 3);
const PLASTIC = us("temperature", 140);
const WARM_WATER = us("temperature", 104);

export const closePinch = caution({
  code: "EXCHANGER-CLOSE-PINCH",
  severity: "Caution",
  source: "commonPractice",
  description: "A pinch under 3 °F: much area for little gain, and small temperature errors make the curves cross.",
  needs: { pinchDifference: "temperature difference", pinchPlace: "word" },
  when: ({ pinchDifference }) => pinchDifference < CLOSE,
  message: ({ pinchDifference, pinchPlace }, show) =>
    `Only ${show(pinchDifference, "temperature difference")} between the streams at the ${pinchPlace}: the area grows steeply, and a small error makes the curves cross. Use a higher condensing temperature or more water; 10 °F between leaving water and condensing is a usual selection.`,
});

export const hotGasNearPlastic = caution({
  code: "EXCHANGER-HOT-GAS",
  severity: "Warning",
  source: "commonPractice",
  description: "Hot gas over 140 °F: without water flow the tube gets that hot next to plastic.",
  needs: { hotGas: "temperature" },
  when: ({ hotGas }) => hotGas > PLASTIC,
  message: ({ hotGas }, show) =>
    `The gas enters at ${show(hotGas, "temperature")}. If the water stops, the tube and the water left in the shell get that hot: PVC is limited to ${show(PLASTIC, "temperature")}. A flow switch must stop the compressor or send it back to the outdoor coil, and the first pipe at the shell must not be plastic.`,
});

export const warmLeavingWater = caution({
  code: "EXCHANGER-WARM-WATER",
  severity: "Warning",
  source: "commonPractice",
  description: "Water over 104 °F leaving toward a pool: scald and hyperthermia at the return.",
  needs: { leavingWater: "temperature" },
  when: ({ leavingWater }) => leavingWater > WARM_WATER,
  message: ({ leavingWater }, show) =>
    `Water leaves at ${show(leavingWater, "temperature")}: above ${show(WARM_WATER, "temperature")} nobody should be near it at a return fitting. Mix it with the rest of the flow, increase the flow, or limit it by control.`,
});
