/** Losses of a square metre of water in one hour at one temperature, with their slopes over the temperature. */
import { HOUR, MONTH_OF_HOUR } from "./calendar";
import type { Held } from "./results";
import { emptySums } from "./sums";
import { MAKE_UP_HEAT, type YearSurface } from "./surface";
import { vapourPressureAt, vapourSlopeAt } from "./vapourTable";

/** Losses in W/m²; slopes in W/(m²·K): how much more is lost for each degree that the water is warmer. */
export interface Losses {
  evaporation: number;
  convection: number;
  radiation: number;
  ground: number;
  makeUp: number;
  all: number;
  evaporationSlope: number;
  convectionSlope: number;
  radiationSlope: number;
  groundSlope: number;
  makeUpSlope: number;
  allSlopes: number;
}

export const emptyLosses = (): Losses => ({
  evaporation: 0,
  convection: 0,
  radiation: 0,
  ground: 0,
  makeUp: 0,
  all: 0,
  evaporationSlope: 0,
  convectionSlope: 0,
  radiationSlope: 0,
  groundSlope: 0,
  makeUpSlope: 0,
  allSlopes: 0,
});

/** Writes the losses of an hour with water at T (K), and their slopes. */
export function lossesAt(surface: YearSurface, hour: number, T: number, into: Losses): void {
  const { ground, rain } = surface;
  const film = surface.evaporationFilm[hour] ?? 0;
  const airFilm = surface.airFilm[hour] ?? 0;
  const emission = surface.emission[hour] ?? 0;
  const aboveAir = T - (surface.air[hour] ?? 0);
  const aboveMains = T - (surface.mains[hour] ?? 0);

  const evaporation = film * (vapourPressureAt(T) - (surface.vapour[hour] ?? 0));
  const evaporationSlope = film * vapourSlopeAt(T);
  const convection = airFilm * aboveAir;
  const radiation = emission * T * T * T * T - (surface.sky[hour] ?? 0);
  const radiationSlope = 4 * emission * T * T * T;
  const toGround = ground * (T - surface.groundTemperature);

  // Mains water makes up what evaporates and is drawn beyond the rain.
  const latentHeat = surface.latentHeatAt0K + surface.latentHeatSlope * T;
  const drawn = evaporation / latentHeat + surface.drawn;
  const mains = drawn > 0 ? drawn : 0;
  const mainsSlope = drawn > 0 ? (evaporationSlope / latentHeat) * aboveMains : 0;
  const makeUp = MAKE_UP_HEAT * (mains * aboveMains + rain * aboveAir);
  const makeUpSlope = MAKE_UP_HEAT * (mains + mainsSlope + rain);

  into.evaporation = evaporation;
  into.convection = convection;
  into.radiation = radiation;
  into.ground = toGround;
  into.makeUp = makeUp;
  into.all = evaporation + convection + radiation + toGround + makeUp;
  into.evaporationSlope = evaporationSlope;
  into.convectionSlope = airFilm;
  into.radiationSlope = radiationSlope;
  into.groundSlope = ground;
  into.makeUpSlope = makeUpSlope;
  into.allSlopes = evaporationSlope + airFilm + radiationSlope + ground + makeUpSlope;
}

const addTo = (months: Float64Array, month: number, heat: number): void => {
  months[month] = (months[month] ?? 0) + heat;
};

/** What a pool kept at exactly one temperature would need: cooling too, where the sun is more than the loss. */
export function heldExactly(surface: YearSurface, T: number): Held {
  const balance = new Float64Array(12);
  const hourly = new Float64Array(12);
  const losses = emptySums();
  const at = emptyLosses();
  for (let hour = 0; hour < surface.weather.hours; hour++) {
    const month = MONTH_OF_HOUR[hour] ?? 0;
    const sun = surface.sun[hour] ?? 0;
    lossesAt(surface, hour, T, at);
    const net = at.all - sun;
    addTo(balance, month, HOUR * net);
    if (net > 0) addTo(hourly, month, HOUR * net);
    addTo(losses.evaporation, month, HOUR * at.evaporation);
    addTo(losses.convection, month, HOUR * at.convection);
    addTo(losses.radiation, month, HOUR * at.radiation);
    addTo(losses.ground, month, HOUR * at.ground);
    addTo(losses.makeUp, month, HOUR * at.makeUp);
    addTo(losses.sun, month, HOUR * sun);
  }
  return { balance, hourly, losses };
}
