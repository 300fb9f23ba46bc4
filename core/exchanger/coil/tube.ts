/** The refrigerant inside a coil: properties, friction drop and mass held. */
import type { KindName } from "../../kernel/values/quantity";
import type { Source } from "../../kernel/reference";
import type { StepValue, Trace } from "../../kernel/define/steps";
import type { PhaseState } from "../../refrigerant/helmholtz/substance";
import type { Fluid } from "../../refrigerant/refrigerant";
import { singlePhase } from "../../refrigerant/state/state";
import { transport } from "../../refrigerant/transport/transport";
import { us } from "../../kernel/values/quantity";
import { equationSource } from "../../refrigerant/sources";
import type { CoilZone } from "./zone";
import type { CondensingFlow } from "../film/condensingFilm";
import type { PhaseProperties, Tube } from "../film/fluid";
import { insideDrop } from "../film/insideFilm";
import { condensingDrop, holdUp } from "../film/twoPhase";
import type { StreamMatch, ZoneName } from "../zones/zones";

const GLIDE_THAT_MATTERS = us("temperature difference", 1);

const shown = (value: number, kind: KindName): StepValue => ({ value, kind });

/** One phase at its state; the working lists the four properties under `name`. */
export const propertiesOf = (fluid: Fluid, state: PhaseState, name: string, trace: Trace): PhaseProperties => {
  const { phase, temperature, density, cp } = state;
  const { viscosity: mu, conductivity: k } = transport(fluid, { phase, temperature, density });
  if (trace.on) {
    const inputs = { pressure: shown(state.pressure, "pressure"), temperature: shown(temperature, "temperature") };
    const record = (property: string, result: StepValue, source: Source): void =>
      trace.property({ substance: fluid.name, property: `${property}, ${name}`, inputs, result, source });
    record("density", shown(density, "density"), equationSource(fluid));
    record("heat capacity", shown(cp, "heat capacity"), equationSource(fluid));
    record("viscosity", shown(mu.value, "viscosity"), mu.source);
    record("conductivity", shown(k.value, "conductivity"), k.source);
  }
  return { rho: density, cp, mu: mu.value, k: k.value };
};

/** The state halfway along a zone. */
const middle = (
  fluid: Fluid,
  { curve }: StreamMatch,
  from: number,
  to: number,
  phase: "vapour" | "liquid",
): PhaseState => singlePhase(fluid, curve.pressure, curve.temperatures[(from + to) >> 1] ?? Number.NaN, phase);

/** The flow inside: gas and liquid at the middle of their zones, and the condensing flow between. */
export interface TubeContents {
  readonly gas: PhaseProperties;
  readonly liquid: PhaseProperties;
  readonly condensing: CondensingFlow;
}

export const tubeContents = (
  fluid: Fluid,
  found: StreamMatch,
  bore: number,
  flow: number,
  trace: Trace,
): TubeContents => {
  const { curve, water } = found;
  const { dew, bubble } = curve;
  const glide = dew.temperature - bubble.temperature;
  return {
    gas: propertiesOf(fluid, middle(fluid, found, 0, curve.dewAt, "vapour"), "gas", trace),
    liquid: propertiesOf(
      fluid,
      middle(fluid, found, curve.bubbleAt, water.length - 1, "liquid"),
      "leaving liquid",
      trace,
    ),
    condensing: {
      bore,
      flow,
      fluid: {
        liquid: propertiesOf(fluid, bubble, "saturated liquid", trace),
        vapour: propertiesOf(fluid, dew, "saturated vapour", trace),
        reducedPressure: curve.pressure / fluid.critical.pressure,
      },
      ...(glide > GLIDE_THAT_MATTERS && { glide: { temperature: glide, heat: dew.enthalpy - bubble.enthalpy } }),
    },
  };
};

/** Friction drop and mass held, with the coil's length divided like the areas needed. */
export const alongTube = (
  zones: Readonly<Partial<Record<ZoneName, CoilZone>>>,
  areaNeeded: number,
  inside: TubeContents,
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
