/** Pressure drop of hot gas in a valve. */
import { notAvailable } from "../../kernel/values/fault";
import { quantityMark } from "../../kernel/values/quantityMark";
import { silent, type Trace } from "../../kernel/define/steps";
import { bracketedRoot } from "../../numeric/root";
import { loadRefrigerant, type Fluid } from "../../refrigerant/refrigerant";
import { saturatedState, saturationTemperature } from "../../refrigerant/saturation/saturation";
import { pressureOnLine } from "../../refrigerant/saturation/working";
import { equationSource } from "../../refrigerant/sources";
import { idealHeatRatio } from "../../refrigerant/state/idealHeatRatio";
import { stateAt } from "../../refrigerant/state/state";
import { valveChoked, valveExpansion, valveFlow, valvePressureDrop } from "./equations";

export interface ValveInput {
  readonly refrigerant: string;
  /** Kv */
  readonly flowCoefficient: number;
  /** kg/s */
  readonly massFlow: number;
  /** K */
  readonly condensing: number;
  readonly superheat: number;
  readonly criticalRatio: number;
}

/** Less superheat counts as saturated. */
const SATURATED = 1e-6;

function inletDensity(fluid: Fluid, pressure: number, condensing: number, superheat: number, trace: Trace): number {
  const T = condensing + superheat;
  const { density } = superheat < SATURATED ? saturatedState(fluid, condensing, "dew") : stateAt(fluid, pressure, T);
  if (trace.on)
    trace.property({
      substance: fluid.name,
      property: "density at the inlet",
      inputs: {
        "absolute pressure": { value: pressure, kind: "pressure" },
        temperature: { value: T, kind: "temperature" },
      },
      result: { value: density, kind: "density" },
      source: equationSource(fluid),
    });
  return density;
}

/** The drop over the inlet pressure that lets a flow through; s = √x solves s − s³/(3 Fg xT) = W/(3.16 Kv √(P1 ρ)). */
function dropRatio(share: number, critical: number, trace: Trace): number {
  const most = Math.sqrt(critical);
  const found = bracketedRoot((s) => s - s ** 3 / (3 * critical) - share, 0, most, { tolerance: 1e-15 });
  if (trace.on)
    trace.solution({
      unknown: "√x, root of drop over inlet pressure",
      kind: "number",
      solves: "mass flow through the valve",
      bracket: found.bracket,
      iterations: found.iterations,
      residual: found.residual,
      answer: found.x,
    });
  return found.x ** 2;
}

/** Pa, K and kg/s. A choked valve is a fault. */
export function solveValve(input: ValveInput, trace: Trace = silent) {
  const { flowCoefficient: Kv, massFlow: W, condensing, superheat, criticalRatio: xT } = input;
  const fluid = loadRefrigerant(input.refrigerant);
  const P1 = pressureOnLine(fluid.name, condensing, "dew", trace);
  const rho = inletDensity(fluid, P1, condensing, superheat, trace);
  const g = idealHeatRatio(fluid, condensing + superheat);
  const chokedFlow = trace.step(valveChoked, { Kv, g, xT, P1, rho });
  if (W >= chokedFlow)
    throw notAvailable(
      `massFlow: must be below choked flow, ${quantityMark("mass flow", chokedFlow)}, got ${quantityMark("mass flow", W)}: take a larger valve`,
    );
  const share = (W * 3600) / (3.16 * Kv * Math.sqrt((P1 / 1000) * rho));
  const x = dropRatio(share, (g / 1.4) * xT, trace);
  trace.relation(valveFlow, { W, Kv, x, g, xT, P1, rho });
  const drop = trace.step(valvePressureDrop, { x, P1 });
  const saturationDrop = condensing - saturationTemperature(fluid, P1 - drop, "dew");
  return { drop, saturationDrop, expansionFactor: trace.step(valveExpansion, { x, g, xT }), chokedFlow };
}
