/** Caution rules of the pool loop. */
import { caution } from "../kernel/define/caution";
import { us } from "../kernel/values/quantity";

const SUCTION_LIMIT = us("velocity", 6);
const RETURN_LIMIT = us("velocity", 8);

export const fastPipeWater = caution({
  code: "PIPE-FAST-WATER",
  severity: "Warning",
  source: "poolVelocityLimits",
  description: "Water faster than the usual limits of pool pipework: 6 ft/s in suction, 8 ft/s in return lines.",
  needs: { waterVelocity: "velocity" },
  when: ({ waterVelocity }) => waterVelocity > SUCTION_LIMIT,
  message: ({ waterVelocity }, show) => {
    const over = waterVelocity > RETURN_LIMIT ? "return and suction lines" : "suction lines";
    const limit = show(waterVelocity > RETURN_LIMIT ? RETURN_LIMIT : SUCTION_LIMIT, "velocity");
    return `Water runs at ${show(waterVelocity, "velocity")}, above the ${limit} limit for ${over} of common pool standards; check which edition is law locally. More suction flow can also exceed a drain cover's rated flow (entrapment).`;
  },
});

export const transitionalFlow = caution({
  code: "PIPE-TRANSITION",
  severity: "Notice",
  source: "colebrook1939",
  description: "Flow between laminar and turbulent: the friction factor is uncertain there.",
  needs: { reynolds: "number" },
  when: ({ reynolds }) => reynolds >= 2040 && reynolds < 4000,
  message: ({ reynolds }) =>
    `Reynolds number ${Math.round(reynolds)} is between laminar and turbulent flow (2,040 to 4,000): the friction may be off by a third.`,
});

export const outsideHazenWilliams = caution({
  code: "PIPE-HAZEN-WILLIAMS-RANGE",
  severity: "Caution",
  source: "hazenWilliams",
  description: "The Hazen–Williams formula ignores temperature and laminar flow.",
  needs: { method: "word", water: "temperature", reynolds: "number" },
  when: ({ method, water, reynolds }) =>
    method === "Hazen-Williams" && (reynolds < 4000 || water < us("temperature", 40) || water > us("temperature", 90)),
  message: ({ water }, show) =>
    `Hazen–Williams was fitted to turbulent water near ${show(us("temperature", 60), "temperature")}; at ${show(water, "temperature")} prefer Darcy–Weisbach.`,
});

export const littleSuctionHead = caution({
  code: "PIPE-LITTLE-SUCTION-HEAD",
  severity: "Warning",
  source: "hydraulicsTexts",
  description: "Suction head near what pool pumps need: cavitation.",
  needs: { answer: "head" },
  when: ({ answer }) => answer < us("head", 15),
  message: ({ answer }, show) =>
    `${show(answer, "head")} of suction head available: the pump maker's requirement plus a margin of about ${show(us("head", 2), "head")} must stay below it, else the pump cavitates. Self-priming limits are tighter still.`,
});

export const hotPlastic = caution({
  code: "PIPE-HOT-PLASTIC",
  severity: "Danger",
  source: "machinerysHandbook",
  description: "PVC carrying water above 110 °F keeps half of its strength or less.",
  needs: { water: "temperature" },
  when: ({ water }) => water > us("temperature", 110),
  message: ({ water }, show) =>
    `At ${show(water, "temperature")} PVC keeps half of its strength or less, and no threaded joints are allowed: scald and burst. When the flow stops, a tube can reach the discharge gas's temperature: it needs a flow interlock and a stub without plastic.`,
});

export const plasticTest = caution({
  code: "PIPE-NO-AIR-TEST",
  severity: "Danger",
  standing: true,
  source: "commonPractice",
  description: "Never test plastic pipe with compressed air.",
  needs: { answer: "pressure drop" },
  when: () => true,
  message: () =>
    "Test with water only: compressed air or gas shatters plastic pipe. Fittings, unions and valves may be rated lower than the pipe.",
});

export const contestedExpansion = caution({
  code: "PIPE-EXPANSION-SPREAD",
  severity: "Notice",
  standing: true,
  source: "plasticsManual",
  description: "Expansion coefficients of PVC differ by source.",
  needs: { answer: "expansion" },
  when: () => true,
  message: ({ answer }, show) =>
    `Sources print 0.336 to 0.375 in per 10 °F and 100 ft; this uses 0.360. The change may be ${show(answer * (0.336 / 0.36), "expansion")} to ${show(answer * (0.375 / 0.36), "expansion")}.`,
});

export const solventCement = caution({
  code: "PIPE-SOLVENT-CEMENT",
  severity: "Warning",
  standing: true,
  source: "cementTable",
  description: "Solvent cement and primer: vapour and fire.",
  needs: {},
  when: () => true,
  message: () =>
    "Cement and primer give off flammable, harmful vapour: ventilate, wear gloves, no flame. The cement's label governs times and quantities.",
});

export const contestedFittings = caution({
  code: "PIPE-FITTING-SPREAD",
  severity: "Notice",
  standing: true,
  source: "pvcEquivalentLengths",
  description: "Published fitting losses differ two to three times.",
  needs: {},
  when: () => true,
  message: () =>
    "Published losses of fittings differ two to three times; the working shows the other methods. Keep a margin at the pump.",
});
