/** Caution rules of the pool loop. */
import { caution } from "../kernel/caution";
import { us } from "../kernel/quantity";

const SUCTION_LIMIT = us("velocity", 6);
const RETURN_LIMIT = us("velocity", 8);

export const fastWater = caution({
  code: "PIPE-FAST-WATER",
  severity: "Warning",
  source: "poolVelocityLimits",
  about: "Water faster than the usual limits of pool pipework: 6 ft/s in suction, 8 ft/s in return lines.",
  needs: { waterVelocity: "velocity" },
  when: ({ waterVelocity }) => waterVelocity > SUCTION_LIMIT,
  say: ({ waterVelocity }, show) => {
    const over = waterVelocity > RETURN_LIMIT ? "return and suction lines" : "suction lines";
    const limit = show(waterVelocity > RETURN_LIMIT ? RETURN_LIMIT : SUCTION_LIMIT, "velocity");
    return `Water runs at ${show(waterVelocity, "velocity")}, above the ${limit} limit for ${over} of common pool standards; which edition is law at the place must be checked. More flow on the suction side can also pass a drain cover's rated flow (entrapment).`;
  },
});

export const transitionalFlow = caution({
  code: "PIPE-TRANSITION",
  severity: "Notice",
  source: "colebrook1939",
  about: "Flow between laminar and turbulent: the friction factor is uncertain there.",
  needs: { reynolds: "number" },
  when: ({ reynolds }) => reynolds >= 2040 && reynolds < 4000,
  say: ({ reynolds }) =>
    `Reynolds number ${Math.round(reynolds)} lies between laminar and turbulent flow (2,040 to 4,000): the friction may be off by a third.`,
});

export const outsideHazenWilliams = caution({
  code: "PIPE-HAZEN-WILLIAMS-RANGE",
  severity: "Caution",
  source: "hazenWilliams",
  about: "The Hazen–Williams formula knows no temperature and no laminar flow.",
  needs: { method: "word", water: "temperature", reynolds: "number" },
  when: ({ method, water, reynolds }) =>
    method === "Hazen-Williams" && (reynolds < 4000 || water < us("temperature", 50) || water > us("temperature", 75)),
  say: ({ water }, show) =>
    `Hazen–Williams was fitted to turbulent water near 60 °F; at ${show(water, "temperature")} prefer Darcy–Weisbach.`,
});
