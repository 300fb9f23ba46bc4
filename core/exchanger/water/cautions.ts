/** Caution rules of the water that leaves an exchanger. */
import { caution } from "../../kernel/define/caution";
import { us } from "../../kernel/values/quantity";

const PLASTIC = us("temperature", 140);
const BOILING = us("temperature", 212);

export const hotWaterInPlastic = caution({
  code: "EXCHANGER-HOT-WATER-PLASTIC",
  severity: "Danger",
  source: "machinerysHandbook",
  description: "Water over 140 °F leaving the exchanger: past the limit of PVC, and it scalds in seconds.",
  needs: { leavingWater: "temperature" },
  when: ({ leavingWater }) => leavingWater > PLASTIC,
  message: ({ leavingWater }, show) =>
    `Water would leave at ${show(leavingWater, "temperature")}${leavingWater > BOILING ? " and boil" : ""}: PVC is limited to ${show(PLASTIC, "temperature")} and softens there, and such water scalds in seconds. Check flow and duty with their units; a flow switch and a limit of the leaving water must send the heat outdoors before this.`,
});
