/** One zone of a coil: overall coefficient with the wall at the temperature that the films set. */
import { silent, type Trace } from "../../kernel/define/steps";
import { conductivityOfWater, densityOfWater, heatCapacityOfWater, viscosityOfWater } from "../../water/equations";
import { areaForDuty, outsideFilmResistance, totalResistance } from "../surface/equations";
import { expansionOfWater, filmTemperature, surfaceDifference } from "./geometryEquations";
import type { PhaseProperties } from "../film/fluid";
import { outsideFilm, type OutsideFilm } from "../film/outsideFilm";
import { governing, overallOf, resistancesOf, type TubeWall } from "../surface/overall";
import type { Zone } from "../zones/zones";

/** Water at a temperature, K. */
export const waterAt = (T: number, trace: Trace = silent): PhaseProperties => ({
  rho: trace.step(densityOfWater, { T }),
  mu: trace.step(viscosityOfWater, { T }),
  k: trace.step(conductivityOfWater, { T }),
  cp: trace.step(heatCapacityOfWater, { T }),
});

const expansionAt = (T: number, rho: number, trace: Trace): number =>
  trace.step(expansionOfWater, {
    ra: densityOfWater.code({ T: T - 1 }),
    rb: densityOfWater.code({ T: T + 1 }),
    rho,
  });

export interface ZoneTube extends Omit<TubeWall, "insideFilm" | "outsideFilm"> {
  /** Water past the coil, m/s. */
  readonly velocity: number;
}

export interface CoilZone {
  /** W/(m²·K), each on its own area; U on the outside area. */
  readonly insideFilm: number;
  readonly outside: OutsideFilm;
  readonly U: number;
  /** Outside area that the zone needs, m². */
  readonly area: number;
  /** Surface over water at the zone's mean, K. */
  readonly surfaceOver: number;
  /** Share of the temperature difference in the water's film. */
  readonly filmShare: number;
  readonly governing: string;
}

/** The water's film where its surface is `over` K warmer than the water. */
const waterFilm = ({ outsideDiameter, velocity }: ZoneTube, water: number, over: number, trace: Trace): OutsideFilm => {
  const T = trace.step(filmTemperature, { Tw: water, d: over });
  const properties = waterAt(T, trace);
  return outsideFilm(
    {
      outsideDiameter,
      velocity,
      difference: over,
      water: properties,
      expansion: expansionAt(T, properties.rho, trace),
    },
    trace,
  );
};

const MOST_PASSES = 40;

/** Tolerance of the surface temperature, K. */
const SETTLED = 1e-9;

/** Greatest slope of the iteration: the film rises with the third root of the difference at most. */
const STEEPEST = 0.4;

/**
 * Surface over water, K. The film hardly depends on it (fourth root at most), so plain iteration nearly converges; the
 * secant through the last two passes does the rest.
 */
const surfaceOver = (tube: ZoneTube, insideFilm: number, zone: Zone, water: number) => {
  const rest = resistancesOf({ ...tube, insideFilm, outsideFilm: insideFilm });
  let over = zone.meanDifference / 2;
  let slope = 0;
  let before: { readonly over: number; readonly change: number } | undefined;
  for (let passes = 1; passes <= MOST_PASSES; passes++) {
    const Ro = outsideFilmResistance.code({ h: waterFilm(tube, water, over, silent).film });
    const next = surfaceDifference.code({ dTm: zone.meanDifference, Ro, Rt: totalResistance.code({ ...rest, Ro }) });
    const change = next - over;
    if (Math.abs(change) < SETTLED) return { over: next, passes, change };
    if (before !== undefined) slope = 1 + (change - before.change) / (over - before.over);
    before = { over, change };
    // Next to the water's greatest density the film may change direction: ignore a secant that steep.
    over += Math.abs(slope) < STEEPEST ? change / (1 - slope) : change;
  }
  return { over, passes: MOST_PASSES, change: Number.NaN };
};

/**
 * Rates one zone for an inside film, W/(m²·K): U with the water's film at the resulting surface temperature, and the area.
 */
export const rateZone = (tube: ZoneTube, insideFilm: number, zone: Zone, trace: Trace = silent): CoilZone => {
  const water = (zone.waterIn + zone.waterOut) / 2;
  const { over, passes, change } = surfaceOver(tube, insideFilm, zone, water);
  trace.solution({
    unknown: "surface over water",
    kind: "temperature difference",
    solves: surfaceDifference.name,
    bracket: [0, zone.meanDifference],
    iterations: passes,
    residual: change,
    answer: over,
  });
  const outside = trace.within("Water outside", () => waterFilm(tube, water, over, trace));
  const wall = { ...tube, insideFilm, outsideFilm: outside.film };
  const each = resistancesOf(wall);
  const U = overallOf(wall, trace);
  return {
    insideFilm,
    outside,
    U,
    area: trace.step(areaForDuty, { Q: zone.duty, U, F: 1, dTm: zone.meanDifference }),
    surfaceOver: over,
    filmShare: each.Ro / totalResistance.code(each),
    governing: governing(each),
  };
};
