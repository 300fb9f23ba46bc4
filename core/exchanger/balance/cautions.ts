/** Caution rules of the balance between machine and pool. */
import { caution } from "../../kernel/define/caution";
import { us } from "../../kernel/values/quantity";
import type { CoilRating } from "../coil/coil";

const FREEZING = us("temperature", 32);

export const belowLeastCondensing = caution({
  code: "EXCHANGER-BALANCE-COLD",
  severity: "Warning",
  source: "commonPractice",
  description: "Settles below the machine's least condensing temperature.",
  needs: { condensing: "temperature", least: "temperature" },
  when: ({ condensing, least }) => condensing < least,
  message: ({ condensing, least }, show) =>
    `Settles at ${show(condensing, "temperature")} condensing, ${show(least - condensing, "temperature difference")} below the least of ${show(least, "temperature")}: the metering device lacks pressure difference and the evaporator starves. Hold the head (EXCHANGER.HOLDHEAD gives the bypass) or go back to the outdoor coil.`,
});

export const aboveGreatestCondensing = caution({
  code: "EXCHANGER-BALANCE-HOT",
  severity: "Warning",
  source: "commonPractice",
  description: "Settles above the machine's greatest condensing temperature.",
  needs: { highest: "temperature", greatest: "temperature" },
  when: ({ highest, greatest }) => highest > greatest,
  message: ({ highest, greatest }, show) =>
    `Settles at ${show(highest, "temperature")} condensing, above the limit of ${show(greatest, "temperature")}: the high-pressure switch may open. Use more conductance or water, or switch to the outdoor coil before that.`,
});

export const waterTooWarm = caution({
  code: "EXCHANGER-BALANCE-WATER",
  severity: "Warning",
  source: "commonPractice",
  description: "Water leaves above the limit given.",
  needs: { leavingWater: "temperature", warmest: "temperature" },
  when: ({ leavingWater, warmest }) => leavingWater > warmest,
  message: ({ leavingWater, warmest }, show) =>
    `Water leaves at ${show(leavingWater, "temperature")}, above the limit of ${show(warmest, "temperature")}. Increase the flow or leave pool mode before that.`,
});

export const frostingCoil = caution({
  code: "EXCHANGER-BALANCE-FROST",
  severity: "Caution",
  source: "commonPractice",
  description: "Evaporating below freezing: an air coil frosts.",
  needs: { evaporating: "temperature" },
  when: ({ evaporating }) => evaporating < FREEZING,
  message: ({ evaporating }, show) =>
    `Evaporates at ${show(evaporating, "temperature")}: the indoor coil frosts over time. A cooler condenser raises capacity and lowers this temperature; check airflow and load.`,
});

/** The usual allowance of a discharge line, K. */
const USUAL_LOSS = us("temperature difference", 2);

export const costlyHotGas = caution({
  code: "EXCHANGER-BALANCE-DROP",
  severity: "Caution",
  source: "lineVelocities",
  description: "Hot-gas line and valve cost more than 2 °F of saturation temperature.",
  needs: { saturatedDischarge: "temperature", condensing: "temperature", hotGasDrop: "pressure drop" },
  when: ({ saturatedDischarge, condensing }) => saturatedDischarge - condensing > USUAL_LOSS,
  message: ({ saturatedDischarge, condensing, hotGasDrop }, show) =>
    `Hot-gas line and valve lose ${show(hotGasDrop, "pressure drop")}, worth ${show(saturatedDischarge - condensing, "temperature difference")} of saturation temperature: more than the usual ${show(USUAL_LOSS, "temperature difference")}. Use the next larger line or valve if oil still returns.`,
});

export const noPoolGain = caution({
  code: "EXCHANGER-BALANCE-NO-GAIN",
  severity: "Notice",
  source: "commonPractice",
  description: "The pool condenses no cooler than the outdoor coil would.",
  needs: { condensing: "temperature", condensingOutdoors: "temperature" },
  when: ({ condensing, condensingOutdoors }) => condensing >= condensingOutdoors,
  message: ({ condensing, condensingOutdoors }, show) =>
    `${show(condensing, "temperature")} on the pool, ${show(condensingOutdoors, "temperature")} on the outdoor coil: the air conditioner gains nothing, the pool's heat costs power.`,
});

export const balanceFilms = caution({
  code: "EXCHANGER-BALANCE-FILMS",
  severity: "Notice",
  source: "commonPractice",
  description: "Uncertainty of the balance from the coil's film relations.",
  needs: { condensing: "temperature", coiled: "yes/no" },
  when: ({ coiled }) => coiled,
  message: ({ condensing }, show) =>
    `${show(condensing, "temperature")} condensing leaves the coil no spare area, and its film relations may be off by 20 to 30 %: a coil shorter by that much shows the effect. Have the supplier confirm the duty.`,
});

export const balanceModel = caution({
  code: "EXCHANGER-BALANCE-MODEL",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "Assumptions of the balance; changes to a listed machine need its maker's consent.",
  needs: {},
  when: () => true,
  message: () =>
    "Single speed, one isentropic efficiency, no pressure drop but a hot-gas drop that is given; measured machines gain less (field figures run from 0.5 to 2 % per °F). The maker's compressor data override this. A second condenser on a listed machine needs its maker's consent or a field evaluation, and licensed work.",
});

/** Facts for the coil's cautions from its rating at the balance. */
export const coilFacts = (coil: CoilRating) => ({
  outsideData: coil.outsideData,
  waterVelocity: coil.waterVelocity,
  refrigerantDrop: coil.refrigerantDrop,
  saturationDrop: coil.saturationDrop,
  hottestFilm: coil.hottestFilm,
});
