/**
 * What an open water surface loses to air and sky in one state of pool and weather. Plain functions over SI records: an
 * hourly year calls them as they are.
 */
import { silent, type Trace } from "../../kernel/steps";
import { bowenFilm, convection, evaporationHeat, skyEmissivity, skyRadiation, windFilm } from "./equations";
import { evaporationOf, type EvaporationMethod, type EvaporationState } from "../evaporation/evaporation";

export type ConvectionForm = "by evaporation" | "by wind";

/** How the surface is reckoned: constant through a year. */
export interface Surface {
  readonly method: EvaporationMethod;
  readonly activity: number;
  readonly convection: ConvectionForm;
  /** Share of the sky hidden by trees and buildings, which stand at the air's temperature. */
  readonly hiddenSky: number;
}

/** One state of pool and weather. */
export interface SurfaceState extends EvaporationState {
  /** Dew point of the air, K. */
  readonly dewPoint: number;
  /** Opaque cloud, tenths. */
  readonly cloud: number;
}

export interface SurfaceLoss {
  /** kg/s; negative where dew settles */
  readonly evaporated: number;
  /** W, losses positive */
  readonly evaporation: number;
  readonly convection: number;
  readonly radiation: number;
}

export const surfaceLoss = (surface: Surface, at: SurfaceState, trace: Trace = silent): SurfaceLoss => {
  const { area: A, water: Tw, air: Ta } = at;
  const film = trace.within("Evaporation", () => {
    const found = evaporationOf(surface.method, surface.activity, at, trace);
    return { ...found, heat: trace.step(evaporationHeat, { m: found.rate, Y: found.latentHeat }) };
  });
  const convected = trace.within("Convection", () => {
    const h =
      surface.convection === "by wind"
        ? trace.step(windFilm, { v: at.wind })
        : trace.step(bowenFilm, { k: film.coefficient * surface.activity, Y: film.latentHeat, p: at.pressure });
    return trace.step(convection, { h, A, Tw, Ta });
  });
  const radiation = trace.within("Sky radiation", () => {
    const es = trace.step(skyEmissivity, { Td: at.dewPoint, N: at.cloud });
    return trace.step(skyRadiation, { A, Tw, Ta, f: surface.hiddenSky, es });
  });
  return { evaporated: film.rate, evaporation: film.heat, convection: convected, radiation };
};
