/** Caution rules of moist air. */
import { caution } from "../kernel/define/caution";

const FREEZING = 273.15;

export const humidityOverIce = caution({
  code: "AIR-HUMIDITY-OVER-ICE",
  severity: "Notice",
  source: "ashraePsychrometrics",
  description: "Below freezing, relative humidity is over ice here; weather services report it over supercooled water.",
  needs: { air: "temperature" },
  when: ({ air }) => air < FREEZING,
  message: ({ air }, show) =>
    `At ${show(air, "temperature")} the relative humidity is over ice. Weather services report it over supercooled water: their figure is lower, by about 10 % of itself at 14 °F (−10 °C).`,
});

export const frostPoint = caution({
  code: "AIR-FROST-POINT",
  severity: "Notice",
  source: "ashraePsychrometrics",
  description: "A dew point below freezing is a frost point: the vapour deposits as ice.",
  needs: { answer: "temperature" },
  when: ({ answer }) => answer < FREEZING,
  message: ({ answer }, show) =>
    `${show(answer, "temperature")} is a frost point: saturation over ice. The dew point over supercooled water is a little lower, about 2 °F (1 K) at 14 °F (−10 °C).`,
});

export const icedWick = caution({
  code: "AIR-ICED-WICK",
  severity: "Notice",
  source: "ashraePsychrometrics",
  description: "A wet bulb near or below freezing depends on whether the wick is iced.",
  needs: { answer: "temperature" },
  when: ({ answer }) => answer < FREEZING + 0.6,
  message: ({ answer }, show) =>
    answer < FREEZING
      ? `${show(answer, "temperature")} is the wet bulb of an iced wick; near freezing a liquid wick differs by up to 1.5 °F (0.8 K).`
      : `At ${show(answer, "temperature")} the balance holds for a wet wick, and again, up to 1.5 °F (0.8 K) lower, for an iced one.`,
});
