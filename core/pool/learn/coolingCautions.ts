/** Caution rules of a cooling test. */
import { caution } from "../../kernel/define/caution";

export const coolingNoFinding = caution({
  code: "POOL-COOLING-NO-FINDING",
  severity: "Caution",
  source: "identity",
  description: "The water fell by less than four times a reading's error, or the fit ran into its bound.",
  needs: { weakFall: "temperature difference", sensorError: "temperature difference", noFinding: "yes/no" },
  when: ({ noFinding }) => noFinding,
  message: ({ weakFall, sensorError }, show) =>
    `No finding: the water changed by ${show(weakFall, "temperature difference")} with readings known to ±${show(sensorError, "temperature difference")}. Take a longer night or a finer sensor.`,
});

export const coolingTestConditions = caution({
  code: "POOL-COOLING-TEST",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "Heater off, no sun, pump as usual, well mixed; the coefficient holds for that night's wind and sky.",
  needs: {},
  when: () => true,
  message: () =>
    "Heater off, no sun, no bathers, pump as usual so that the sensor reads mixed water. The coefficient holds the wind, humidity and sky of these hours: write them beside it. A clear sky alone can add half to it.",
});

export const coolingDisagrees = caution({
  code: "POOL-COOLING-DIFFERS",
  severity: "Caution",
  source: "identity",
  description: "What POOL.LOSSES says lies outside the interval of the test.",
  needs: { disagreement: "word" },
  when: ({ disagreement }) => disagreement !== "",
  message: ({ disagreement }) =>
    `POOL.LOSSES lies outside the test's interval: ${disagreement}. Check shelter, cover, depth, leaks and the air sensor before you change the relation.`,
});
