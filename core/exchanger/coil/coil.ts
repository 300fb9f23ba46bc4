/** A helical tube coil in a cylindrical shell rated by its geometry: refrigerant condensing inside, water outside. */
import { sumOf } from "../../numeric/series";
import { silent, type Trace } from "../../kernel/define/steps";
import type { Fluid } from "../../refrigerant/refrigerant";
import { saturationTemperature } from "../../refrigerant/saturation/saturation";
import { singlePhase } from "../../refrigerant/state/state";
import { surfaceTension } from "../../refrigerant/transport/surfaceTension";
import { insideDiameter } from "../surface/equations";
import { boreVelocity, coilArea, marginOfArea } from "./geometryEquations";
import { checkGeometry, shellSide, type CoilGeometry } from "./shell";
import { alongTube, tubeContents, propertiesOf, type TubeContents } from "./tube";
import { rateZone, type CoilZone, type ZoneTube } from "./zone";
import { condensingFilm, outsideShah2009, shah1979 } from "../film/condensingFilm";
import { prandtlOf, type Tube } from "../film/fluid";
import { insideFilm } from "../film/insideFilm";
import { ZONE_NAMES, type StreamMatch, type ZoneName } from "../zones/zones";

export interface CoilRating {
  readonly zones: Readonly<Partial<Record<ZoneName, CoilZone>>>;
  readonly areaNeeded: number;
  readonly areaGiven: number;
  readonly margin: number;
  /** Conductance that the duty needs and that the coil has at the same mean coefficient, W/K. */
  readonly UA: number;
  readonly gasVelocity: number;
  readonly waterVelocity: number;
  /** Pa */
  readonly refrigerantDrop: number;
  /** Dew temperature lost to that drop, K. */
  readonly saturationDrop: number;
  /** Friction along the coil alone, Pa. */
  readonly bundleDrop: number;
  /** With turns and ports, Pa; undefined where the ports aren't known. */
  readonly waterDrop: number | undefined;
  /** kg */
  readonly holdUp: number;
  readonly height: number;
  /** Warmest surface that water touches, K. */
  readonly hottestFilm: number;
  /** How condensing leaves the data of its relation, in words; empty inside. */
  readonly outsideData: string;
}

/** Highest reduced pressure for the comparison with Shah 1979. */
const SHAH_1979_TO = 0.44;

/** Prandtl number of the leaving liquid at the wall, taken at the mean of liquid and water. */
const wallPrandtl = (fluid: Fluid, found: StreamMatch, trace: Trace): number => {
  const zone = found.zones.subcooling;
  if (!zone) return Number.NaN;
  const T = (zone.refrigerantIn + zone.refrigerantOut + zone.waterIn + zone.waterOut) / 4;
  const liquid = singlePhase(fluid, found.curve.pressure, T, "liquid");
  return prandtlOf(propertiesOf(fluid, liquid, "liquid at the wall", trace), trace);
};

const filmOf = (
  name: ZoneName,
  { gas, liquid, condensing }: TubeContents,
  tube: Tube,
  fluid: Fluid,
  found: StreamMatch,
  trace: Trace,
): number => {
  if (name === "desuperheating") return insideFilm(tube, gas, condensing.flow, undefined, trace);
  if (name === "subcooling") return insideFilm(tube, liquid, condensing.flow, wallPrandtl(fluid, found, trace), trace);
  trace.remark("Condensing: relation of a straight horizontal tube; in a coil the film is usually thinner.");
  if (trace.on && condensing.fluid.reducedPressure <= SHAH_1979_TO)
    trace.within("Shah 1979 for comparison, half condensed", () => shah1979(condensing, 0.5, trace));
  return condensingFilm(condensing, 0, 1, trace).film;
};

/** The warmest surface in contact with water: where the gas enters, and where it begins to condense, K. */
const hottest = (found: StreamMatch, zones: CoilRating["zones"]): number => {
  const { curve, water } = found;
  const surface = (at: number, name: ZoneName): number => {
    const waterTemperature = water[at] ?? Number.NaN;
    return (
      waterTemperature + ((curve.temperatures[at] ?? Number.NaN) - waterTemperature) * (zones[name]?.filmShare ?? 0)
    );
  };
  return Math.max(surface(0, curve.dewAt > 0 ? "desuperheating" : "condensing"), surface(curve.dewAt, "condensing"));
};

/** Dew temperature lost to a pressure drop, K; down to the end of the saturation line if the drop goes beyond it. */
const saturationLoss = (fluid: Fluid, pressure: number, drop: number): number => {
  const left = Math.max(pressure - drop, Math.exp(fluid.dew.lowest));
  return saturationTemperature(fluid, pressure, "dew") - saturationTemperature(fluid, left, "dew");
};

/**
 * Rates a coil for a duty with matched streams.
 *
 * @param waterFlow m³/s
 * @throws if the coil doesn't fit its shell
 */
export const rateCoil = (
  fluid: Fluid,
  found: StreamMatch,
  coil: CoilGeometry,
  waterFlow: number,
  trace: Trace = silent,
): CoilRating => {
  checkGeometry(coil);
  const { tubes, outsideDiameter, wall, tubeLength } = coil;
  const bore = trace.step(insideDiameter, { Do: outsideDiameter, w: wall });
  const flow = found.massFlow / tubes;
  const inside = trace.within("Refrigerant inside", () => tubeContents(fluid, found, bore, flow, trace));
  const tube: Tube = { bore, length: tubeLength, coilDiameter: coil.coilDiameter };
  const { total, curve } = found;
  const shell = trace.within("Shell", () => shellSide(coil, waterFlow, (total.waterIn + total.waterOut) / 2, trace));
  const zoneTube: ZoneTube = { ...coil, velocity: shell.velocity };
  const zones: Partial<Record<ZoneName, CoilZone>> = {};
  for (const name of ZONE_NAMES) {
    const zone = found.zones[name];
    if (zone)
      zones[name] = trace.within(`Coil, ${name}`, () =>
        rateZone(zoneTube, filmOf(name, inside, tube, fluid, found, trace), zone, trace),
      );
  }
  const areaNeeded = sumOf(ZONE_NAMES, (name) => zones[name]?.area ?? 0);
  const A = trace.step(coilArea, { Do: outsideDiameter, L: tubeLength, N: tubes });
  const tension = surfaceTension(fluid, curve.bubble.temperature);
  const along = trace.within("Along the tube", () =>
    alongTube(zones, areaNeeded, inside, tube, { tubes, tension }, trace),
  );
  return {
    zones,
    areaNeeded,
    areaGiven: A,
    margin: trace.step(marginOfArea, { A, An: areaNeeded }),
    UA: total.ua,
    gasVelocity: trace.step(boreVelocity, { m: flow, rho: curve.inlet.density, D: bore }),
    waterVelocity: shell.velocity,
    refrigerantDrop: along.drop,
    saturationDrop: saturationLoss(fluid, curve.pressure, along.drop),
    bundleDrop: shell.drop,
    waterDrop: shell.wholeDrop,
    holdUp: along.holdUp,
    height: shell.height,
    hottestFilm: hottest(found, zones),
    outsideData: outsideShah2009(inside.condensing).join("; "),
  };
};
