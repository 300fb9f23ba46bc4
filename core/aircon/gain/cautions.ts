/** Caution rules of a cooler condenser. */
import { caution } from "../../kernel/define/caution";
import { us } from "../../kernel/values/quantity";

export const gainInTheField = caution({
  code: "AIRCON-GAIN-FIELD",
  severity: "Caution",
  standing: true,
  source: "commonPractice",
  description:
    "The compressor's own cycle; field figures run from 0.5 to 2 % per °F, the outdoor fan's saving is extra.",
  needs: { changeOfCOP: "fraction", cooler: "temperature difference" },
  when: () => true,
  message: ({ changeOfCOP, cooler }, show) => {
    const each =
      cooler === 0
        ? ""
        : `, ${((100 * changeOfCOP) / (cooler / us("temperature difference", 1))).toFixed(1)} % per °F (${((100 * changeOfCOP) / cooler).toFixed(1)} % per K)`;
    return `The compressor's COP changes by ${(100 * changeOfCOP).toFixed(1)} % for ${show(cooler, "temperature difference")}${each}. Field figures run from 0.5 to 2 % per °F: fans, controls and part load take their share. Pool mode also saves the outdoor fan's power, less the pool pump's extra power.`;
  },
});

export const noGain = caution({
  code: "AIRCON-NO-GAIN",
  severity: "Caution",
  source: "commonPractice",
  description: "Condensing on the pool warmer than outdoors: capacity is lost and power rises.",
  needs: { condensingOutdoors: "temperature", condensingPool: "temperature" },
  when: ({ condensingOutdoors, condensingPool }) => condensingPool > condensingOutdoors,
  message: ({ condensingOutdoors, condensingPool }, show) =>
    `On the pool the machine would condense at ${show(condensingPool, "temperature")}, outdoors at ${show(condensingOutdoors, "temperature")}: capacity falls and power rises. Electricity then pays for the heat.`,
});
