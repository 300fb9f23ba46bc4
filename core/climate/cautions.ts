/** Caution rules of weather. */
import { caution } from "../kernel/define/caution";

/** m */
const NEAR = 300_000;
const LEVEL = 300;

export const distantStation = caution({
  code: "CLIMATE-DISTANT",
  severity: "Caution",
  source: "tmy3",
  description: "Weather of a station over 300 km (190 mi) away is another place's.",
  needs: { name: "word", apart: "distance" },
  when: ({ apart }) => apart > NEAR,
  message: ({ name, apart }, show) =>
    `${name} is ${show(apart, "distance")} away: months of stations so far apart differ by ${show(4, "temperature difference")} and more, 18 % of sun and 1 m/s of wind; a coast or a range between adds to that. Use a weather file of the place.`,
});

export const nearStation = caution({
  code: "CLIMATE-STATION",
  severity: "Notice",
  source: "tmy3",
  description: "Tells the station that the months come from, and how far away it is.",
  needs: { name: "word", apart: "distance" },
  when: ({ apart }) => apart <= NEAR,
  message: ({ name, apart }, show) =>
    `Months of ${name}, ${show(apart, "distance")} away. Even stations 60 km apart differ by ${show(2, "temperature difference")} a month, 6 % of sun and 0.4 m/s of wind.`,
});

export const carriedToHeight = caution({
  code: "CLIMATE-ALTITUDE",
  severity: "Notice",
  source: "standardAtmosphere1976",
  description: "Tells by how much the air was corrected for the altitude; over 300 m (1,000 ft) that is coarse.",
  needs: { name: "word", rise: "altitude", airShift: "temperature difference" },
  when: ({ rise }) => rise !== 0,
  message: ({ name, rise, airShift }, show) =>
    `${show(Math.abs(rise), "altitude")} ${rise > 0 ? "above" : "below"} ${name}: its air is shifted by ${show(airShift, "temperature difference")} (standard atmosphere).${Math.abs(rise) > LEVEL ? " Over such a height nights, winters and valleys differ from that: use a weather file." : ""}`,
});

export const typicalMonths = caution({
  code: "CLIMATE-TYPICAL",
  severity: "Notice",
  standing: true,
  source: "tmy3",
  description: "Typical months of past decades: no forecast, and sun is known to 8 to 25 % only.",
  needs: {},
  when: () => true,
  message: () =>
    "Typical months out of 1973 to 2005, at an airport: no forecast, no year that was. Their sun is known to 8 to 25 %; single years differ by 6 to 12 % in heating degree days. Wind is that at 10 m in the open.",
});

export const impossibleWeather = caution({
  code: "CLIMATE-IMPOSSIBLE",
  severity: "Warning",
  source: "tmy3",
  description: "A check of the weather fails: no place has it.",
  needs: { impossible: "word" },
  when: ({ impossible }) => impossible !== "",
  message: ({ impossible }) => `No place has this weather: ${impossible}. Correct it before you compute with it.`,
});

export const unlikelyWeather = caution({
  code: "CLIMATE-UNLIKELY",
  severity: "Caution",
  source: "tmy3",
  description: "A check of the weather lies outside what 22 US stations show.",
  needs: { unlikely: "word" },
  when: ({ unlikely }) => unlikely !== "",
  message: ({ unlikely }) =>
    `Outside what 22 stations between 26° and 65° north show: ${unlikely}. Look at source and units.`,
});

export const plausibleOnly = caution({
  code: "CLIMATE-PLAUSIBLE-ONLY",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "Plausible weather may still be another place's.",
  needs: {},
  when: () => true,
  message: () =>
    "Finds slips of unit, hemisphere, order and time. Plausible weather may still be that of another place, year or height.",
});

export const aboveTheAir = caution({
  code: "CLIMATE-ABOVE-AIR",
  severity: "Notice",
  standing: true,
  source: "duffieBeckman2013",
  description: "Sun above the air: 28 to 73 % of it arrive below in a month.",
  needs: {},
  when: () => true,
  message: () =>
    "Above the air, not at the ground: 28 to 73 % of it arrive in a month at 22 US stations. A reading above it is wrong.",
});
