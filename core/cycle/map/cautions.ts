/** Caution rules of a compressor's map. */
import { caution } from "../../kernel/define/caution";
import { us } from "../../kernel/values/quantity";

export const envelopeUnknown = caution({
  code: "CYCLE-MAP-ENVELOPE",
  severity: "Caution",
  source: "commonPractice",
  description: "A cubic says anything outside the maker's envelope: no least or greatest condensing was given.",
  needs: { bounded: "yes/no" },
  when: ({ bounded }) => !bounded,
  message: () =>
    "No envelope given: a cubic is worthless outside the points it was fitted to. Enter the least and greatest condensing temperature of the maker's envelope; a pool often asks for less than its least.",
});

export const unlikelyMap = caution({
  code: "CYCLE-MAP-EFFICIENCY",
  severity: "Caution",
  source: "commonPractice",
  description: "The map's isentropic efficiency is outside 0.4 to 0.8.",
  needs: { isentropicEfficiency: "fraction" },
  when: ({ isentropicEfficiency }) => isentropicEfficiency < 0.4 || isentropicEfficiency > 0.8,
  message: ({ isentropicEfficiency }) =>
    `The map means an isentropic efficiency of ${isentropicEfficiency.toFixed(2)}: check order of the terms (some programs sort them 1, 2, 4, 3, 6, 5, 7, 10, 8, 9), units, refrigerant, and the envelope.`,
});

export const ratedWithin = caution({
  code: "CYCLE-MAP-MODEL",
  severity: "Notice",
  standing: true,
  source: { key: "ahri540", where: "ratings are within some 5 % of a sample's" },
  description: "Compressor alone, new, at the standard's conditions; all superheat useful, shell without loss.",
  needs: {},
  when: () => true,
  message: () =>
    "Compressor alone, new and within its envelope, without fans and pressure drops; all superheat counts as useful and the shell loses no heat.",
});

export const returnGasWarm = caution({
  code: "CYCLE-MAP-SUPERHEAT",
  severity: "Notice",
  source: "dabiriRice1981",
  description: "The suction gas is over 20 °F from the map's superheat: a long correction.",
  needs: { correction: "temperature difference" },
  when: ({ correction }) => correction > us("temperature difference", 20) + 1e-9,
  message: ({ correction }, show) =>
    `${show(correction, "temperature difference")} from the map's own superheat: the correction takes three quarters of the change of density, a mean of hermetic compressors.`,
});
