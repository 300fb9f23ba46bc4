/** Caution rules of refrigerant readings. */
import { caution } from "../kernel/caution";

export const noSuperheat = caution({
  code: "REFRIG-NO-SUPERHEAT",
  severity: "Danger",
  source: "commonPractice",
  about: "A superheat of zero or less: liquid may be reaching the compressor, or a reading is wrong.",
  needs: { answer: "temperature difference", dew: "temperature", lineTemperature: "temperature" },
  when: ({ answer }) => answer <= 0,
  say: ({ dew, lineTemperature }, show) =>
    `No superheat: the line is at ${show(lineTemperature, "temperature")} and the dew point at this pressure is ${show(dew, "temperature")}. Liquid may be reaching the compressor, or the gauge, the clamp, the refrigerant or the basis (gauge, absolute, altitude) is wrong. Stop and check before running on.`,
});

export const noSubcooling = caution({
  code: "REFRIG-NO-SUBCOOLING",
  severity: "Warning",
  source: "commonPractice",
  about: "A subcooling of zero or less: flash gas at the valve, or a wrong reading.",
  needs: { answer: "temperature difference", bubble: "temperature", lineTemperature: "temperature" },
  when: ({ answer }) => answer <= 0,
  say: ({ bubble, lineTemperature }, show) =>
    `No subcooling: the line is at ${show(lineTemperature, "temperature")} and the bubble point at this pressure is ${show(bubble, "temperature")}. Flash gas reaches the metering device, or the gauge, the clamp, the refrigerant or the basis is wrong.`,
});

export const certifiedWork = caution({
  code: "REFRIG-CERTIFIED-WORK",
  severity: "Notice",
  source: "usRefrigerantRule",
  about: "Connecting gauges, opening, charging or recovering is for certified technicians.",
  needs: {},
  when: () => true,
  say: () =>
    "Gauges, charging and recovery are work for a certified technician (US: section 608; elsewhere F-gas rules); local codes and the equipment's manual govern.",
});
