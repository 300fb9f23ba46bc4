/** A helical tube coil in a cylindrical shell rated by its geometry: refrigerant condensing inside, water outside. */
import { mend } from "../../kernel/fault";
import { us } from "../../kernel/quantity";
import { silent, type Trace } from "../../kernel/steps";
import { told } from "../../numeric/told";
import { frictionFactor } from "../../pipe/models/friction";
import type { PhaseState } from "../../refrigerant/helmholtz/substance";
import type { Fluid } from "../../refrigerant/models/refrigerant";
import { saturationTemperature } from "../../refrigerant/models/saturation";
import { singlePhase } from "../../refrigerant/models/state";
import { surfaceTension } from "../../refrigerant/models/transport/surfaceTension";
import { conductivity, viscosity } from "../../refrigerant/models/transport/transport";
import {
  boreVelocity,
  coilArea,
  coilHeight,
  freeArea,
  hydraulicDiameter,
  marginOfArea,
  shellDrop,
  shellVelocity,
  turnsOf,
} from "../geometryEquations";
import { insideDiameter } from "../equations";
import { crossReynolds } from "../outsideEquations";
import { rateZone, waterAt, type CoilZone, type ZoneTube } from "./coilZone";
import { condensingFilm, outsideShah2009, shah1979, type CondensingFlow } from "./condensingFilm";
import { prandtlOf, type PhaseProperties, type Tube } from "./fluid";
import { insideDrop, insideFilm } from "./insideFilm";
import { condensingDrop, holdUp } from "./twoPhase";
import { ZONE_NAMES, type Matched, type ZoneName } from "./zones";

/** Lengths and diameters in m; fouling in m²·K/W, each on its own area; W/(m·K). */
export interface CoilGeometry {
  readonly outsideDiameter: number;
  readonly wall: number;
  readonly conductivity: number;
  readonly tubes: number;
  /** Of one tube. */
  readonly tubeLength: number;
  readonly coilDiameter: number;
  readonly pitch: number;
  readonly shellDiameter: number;
  /** A closed body in the middle of the shell; 0 where the coil's core is open. */
  readonly coreDiameter: number;
  readonly insideFouling: number;
  readonly outsideFouling: number;
}

export interface CoilRating {
  readonly zones: Readonly<Partial<Record<ZoneName, CoilZone>>>;
  readonly areaNeeded: number;
  readonly areaGiven: number;
  readonly margin: number;
  /** Needed by the duty and given by the coil at the same mean coefficient, W/K. */
  readonly UA: number;
  readonly gasVelocity: number;
  readonly waterVelocity: number;
  /** Pa */
  readonly refrigerantDrop: number;
  /** What that drop costs in dew temperature, K. */
  readonly saturationDrop: number;
  readonly waterDrop: number;
  /** kg */
  readonly holdUp: number;
  readonly height: number;
  /** Warmest surface that water touches, K. */
  readonly hottestFilm: number;
  /** Where condensing leaves the data of its relation, in words; empty inside. */
  readonly outsideData: string;
}

const GLIDE_THAT_MATTERS = us("temperature difference", 1);

/** Shah 1979 is compared with up to this reduced pressure. */
const SHAH_1979_TO = 0.44;

const D = (value: number): string => told("diameter", value);

/** Refuses a coil that doesn't fit its shell. */
export const checkGeometry = (coil: CoilGeometry): void => {
  const { outsideDiameter: Do, wall, coilDiameter, shellDiameter, coreDiameter, pitch } = coil;
  if (2 * wall >= Do) throw mend(`wall: must be below half of outside diameter (${D(Do / 2)}), got ${D(wall)}`);
  if (pitch < Do) throw mend(`pitch: must be at least outside diameter (${D(Do)}), or turns overlap, got ${D(pitch)}`);
  if (shellDiameter <= coilDiameter + Do)
    throw mend(
      `shell diameter: must be above coil diameter and tube together (${D(coilDiameter + Do)}), got ${D(shellDiameter)}`,
    );
  if (coreDiameter >= coilDiameter - Do)
    throw mend(
      `core diameter: must be below coil diameter less tube (${D(coilDiameter - Do)}), got ${D(coreDiameter)}`,
    );
};

const propertiesOf = (fluid: Fluid, { phase, temperature, density, cp }: PhaseState): PhaseProperties => ({
  rho: density,
  cp,
  mu: viscosity(fluid, { phase, temperature, density }).value,
  k: conductivity(fluid, { phase, temperature, density }).value,
});

/** The state halfway along a zone. */
const middle = (fluid: Fluid, { curve }: Matched, from: number, to: number, phase: "vapour" | "liquid"): PhaseState =>
  singlePhase(fluid, curve.pressure, curve.temperatures[(from + to) >> 1] ?? Number.NaN, phase);

interface Inside {
  readonly gas: PhaseProperties;
  readonly liquid: PhaseProperties;
  readonly condensing: CondensingFlow;
}

const insideOf = (fluid: Fluid, found: Matched, bore: number, flow: number): Inside => {
  const { curve, water } = found;
  const { dew, bubble } = curve;
  const glide = dew.temperature - bubble.temperature;
  return {
    gas: propertiesOf(fluid, middle(fluid, found, 0, curve.dewAt, "vapour")),
    liquid: propertiesOf(fluid, middle(fluid, found, curve.bubbleAt, water.length - 1, "liquid")),
    condensing: {
      bore,
      flow,
      fluid: {
        liquid: propertiesOf(fluid, bubble),
        vapour: propertiesOf(fluid, dew),
        reducedPressure: curve.pressure / fluid.critical.pressure,
      },
      ...(glide > GLIDE_THAT_MATTERS && { glide: { temperature: glide, heat: dew.enthalpy - bubble.enthalpy } }),
    },
  };
};

/** Prandtl number of the leaving liquid at the wall, taken at the mean of liquid and water. */
const wallPrandtl = (fluid: Fluid, found: Matched): number => {
  const zone = found.zones.subcooling;
  if (!zone) return Number.NaN;
  const T = (zone.refrigerantIn + zone.refrigerantOut + zone.waterIn + zone.waterOut) / 4;
  return prandtlOf(propertiesOf(fluid, singlePhase(fluid, found.curve.pressure, T, "liquid")));
};

const filmOf = (
  name: ZoneName,
  { gas, liquid, condensing }: Inside,
  tube: Tube,
  fluid: Fluid,
  found: Matched,
  trace: Trace,
): number => {
  if (name === "desuperheating") return insideFilm(tube, gas, condensing.flow, undefined, trace);
  if (name === "subcooling") return insideFilm(tube, liquid, condensing.flow, wallPrandtl(fluid, found), trace);
  trace.remark("Condensing: relation of a straight horizontal tube; in a coil the film is rather thinner.");
  if (trace.on && condensing.fluid.reducedPressure <= SHAH_1979_TO)
    trace.within("Shah 1979 beside it, half condensed", () => shah1979(condensing, 0.5, trace));
  return condensingFilm(condensing, 0, 1, trace).film;
};

/** Friction drop and mass held, the coil's length parted as the areas needed are. */
const alongTube = (
  zones: CoilRating["zones"],
  areaNeeded: number,
  inside: Inside,
  tube: Tube,
  held: Held,
  trace: Trace,
) => {
  const { condensing } = inside;
  const part = (name: ZoneName): Tube => ({
    ...tube,
    length: (tube.length * (zones[name]?.area ?? 0)) / areaNeeded,
  });
  const volume = (name: ZoneName): number => (Math.PI / 4) * tube.bore ** 2 * part(name).length;
  const single = (name: ZoneName, fluid: PhaseProperties): number =>
    zones[name] ? trace.within(`Drop, ${name}`, () => insideDrop(part(name), fluid, condensing.flow, trace)) : 0;
  const drop =
    single("desuperheating", inside.gas) +
    trace.within("Drop, condensing", () =>
      condensingDrop(part("condensing"), condensing.fluid, condensing.flow, { from: 1, to: 0 }, trace),
    ) +
    single("subcooling", inside.liquid);
  const mass =
    volume("desuperheating") * inside.gas.rho +
    holdUp(
      part("condensing"),
      condensing.fluid,
      { flow: condensing.flow, surfaceTension: held.tension },
      { from: 1, to: 0 },
    ) +
    volume("subcooling") * inside.liquid.rho;
  return { drop, holdUp: held.tubes * mass };
};

interface Held {
  readonly tubes: number;
  /** N/m */
  readonly tension: number;
}

/** Velocity and friction of the water. */
const shellSide = (coil: CoilGeometry, waterFlow: number, T: number, trace: Trace) => {
  const { outsideDiameter: Do, tubes: N, tubeLength: L, coilDiameter: Dc, shellDiameter: Ds, coreDiameter: Dk } = coil;
  const A = trace.step(freeArea, { Ds, Dk, Dc, Do });
  const v = trace.step(shellVelocity, { V: waterFlow, A });
  const n = trace.step(turnsOf, { L, Dc, N, p: coil.pitch });
  const H = trace.step(coilHeight, { n, N, p: coil.pitch });
  const Dh = trace.step(hydraulicDiameter, { Ds, Dk, H, Do, L, N });
  const { rho, mu } = waterAt(T);
  const f = frictionFactor(trace.step(crossReynolds, { rho, v, D: Dh, mu }), 0, Dh, trace);
  return { velocity: v, height: H, drop: trace.step(shellDrop, { f, H, Dh, rho, v }) };
};

/** The warmest surface beside water: where the gas enters, and where it begins to condense, K. */
const hottest = (found: Matched, zones: CoilRating["zones"]): number => {
  const { curve, water } = found;
  const surface = (at: number, name: ZoneName): number => {
    const beside = water[at] ?? Number.NaN;
    return beside + ((curve.temperatures[at] ?? Number.NaN) - beside) * (zones[name]?.filmShare ?? 0);
  };
  return Math.max(surface(0, curve.dewAt > 0 ? "desuperheating" : "condensing"), surface(curve.dewAt, "condensing"));
};

/** Dew temperature lost to a pressure drop, K; all of it where the drop exceeds what the lines cover. */
const saturationLoss = (fluid: Fluid, pressure: number, drop: number): number => {
  const left = Math.max(pressure - drop, Math.exp(fluid.dew.lowest));
  return saturationTemperature(fluid, pressure, "dew") - saturationTemperature(fluid, left, "dew");
};

/**
 * Rates a coil on a duty whose streams are already matched.
 *
 * @param waterFlow m³/s
 * @throws where the coil doesn't fit its shell
 */
export const rateCoil = (
  fluid: Fluid,
  found: Matched,
  coil: CoilGeometry,
  waterFlow: number,
  trace: Trace = silent,
): CoilRating => {
  checkGeometry(coil);
  const { tubes, outsideDiameter, wall, tubeLength } = coil;
  const bore = trace.step(insideDiameter, { Do: outsideDiameter, w: wall });
  const flow = found.massFlow / tubes;
  const inside = insideOf(fluid, found, bore, flow);
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
  const areaNeeded = ZONE_NAMES.reduce((sum, name) => sum + (zones[name]?.area ?? 0), 0);
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
    waterDrop: shell.drop,
    holdUp: along.holdUp,
    height: shell.height,
    hottestFilm: hottest(found, zones),
    outsideData: outsideShah2009(inside.condensing).join("; "),
  };
};
