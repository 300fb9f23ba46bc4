/** The weather of many years that differ in wind, sun and air: made from the climate once, as far as the inputs allow. */
import type { Climate } from "./climate";
import { siteOf } from "./setUp";
import { refuseImpossibleSun } from "./sunCheck";
import type { UncertainEntries } from "./uncertainInputs";
import { dewPointOver, vapourPressureAt } from "./vapourTable";
import { weatherOf, windOf, type Weather } from "./weather";

/** The same site in the open: its wind is that at 10 m. */
const openSite = (inputs: UncertainEntries) => ({ ...siteOf(inputs), shelter: 1, windAtWater: undefined });

/** Warmer air of the same humidity. */
function warmed(weather: Weather, shift: number): Weather {
  const air = weather.air.map((T) => T + shift);
  const vapour = weather.vapour.map(
    (p, hour) => (p * vapourPressureAt(air[hour] ?? 0)) / vapourPressureAt(weather.air[hour] ?? 0),
  );
  return { ...weather, air, vapour, dewPoint: vapour.map(dewPointOver) };
}

/** The weather at the inputs' place, by inputs. */
export function uncertainWeather(climate: Climate): (inputs: UncertainEntries) => Weather {
  let made: { readonly site: string; readonly weather: Weather } | undefined;
  return (inputs) => {
    const open = openSite(inputs);
    const site = JSON.stringify(open);
    if (made?.site !== site) {
      refuseImpossibleSun(climate, inputs.latitude);
      made = { site, weather: weatherOf(climate, open) };
    }
    const { weather } = made;
    const { sunFactor, airShift } = inputs;
    const lit = sunFactor === 1 ? weather : { ...weather, sun: weather.sun.map((sun) => sun * sunFactor) };
    return { ...(airShift === 0 ? lit : warmed(lit, airShift)), wind: windOf(siteOf(inputs), weather.wind) };
  };
}
