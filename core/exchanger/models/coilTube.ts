/** The refrigerant inside a coil: properties, friction drop and mass held. */
import type { Trace } from "../../kernel/steps";
import type { PhaseState } from "../../refrigerant/helmholtz/substance";
import type { Fluid } from "../../refrigerant/models/refrigerant";
import { singlePhase } from "../../refrigerant/models/state";
import { conductivity, viscosity } from "../../refrigerant/models/transport/transport";
import { us } from "../../kernel/quantity";
import type { CoilZone } from "./coilZone";
import type { CondensingFlow } from "./condensingFilm";
import type { PhaseProperties, Tube } from "./fluid";
import { insideDrop } from "./insideFilm";
import { condensingDrop, holdUp } from "./twoPhase";
import type { Matched, ZoneName } from "./zones";

const GLIDE_THAT_MATTERS = us("temperature difference", 1);

/** One phase at its state. */
export const propertiesOf = (fluid: Fluid, { phase, temperature, density, cp }: PhaseState): PhaseProperties => ({
  rho: density,
  cp,
  mu: viscosity(fluid, { phase, temperature, density }).value,
  k: conductivity(fluid, { phase, temperature, density }).value,
});

/** The state halfway along a zone. */
const middle = (fluid: Fluid, { curve }: Matched, from: number, to: number, phase: "vapour" | "liquid"): PhaseState =>
  singlePhase(fluid, curve.pressure, curve.temperatures[(from + to) >> 1] ?? Number.NaN, phase);

/** What flows inside: gas and liquid at the middle of their zones, and what condenses between. */
export interface Inside {
  readonly gas: PhaseProperties;
  readonly liquid: PhaseProperties;
  readonly condensing: CondensingFlow;
}

export const insideOf = (fluid: Fluid, found: Matched, bore: number, flow: number): Inside => {
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

/** Friction drop and mass held, the coil's length parted as the areas needed are. */
export const alongTube = (
  zones: Readonly<Partial<Record<ZoneName, CoilZone>>>,
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
