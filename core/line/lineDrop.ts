/** Pressure lost in a refrigerant line, and the saturation temperature lost with it. */
import { outOfRange } from "../kernel/values/fault";
import type { Cycle } from "../cycle/cycle";
import { quantityMark } from "../kernel/values/quantityMark";
import { NO_VALUE } from "../kernel/define/result";
import { silent, type Trace } from "../kernel/define/steps";
import { frictionFactor } from "../pipe/straight/friction";
import type { PhaseState } from "../refrigerant/helmholtz/substance";
import { saturatedStateAtPressure, saturationTemperature } from "../refrigerant/saturation/saturation";
import { columnPressure, lineFriction, lineReynolds, lineVelocity } from "./equations";
import { lineState, lineViscosity, type Service } from "./lineState";

/** Roughness of drawn copper, m (drawn tubing in texts of hydraulics). */
export const COPPER_ROUGHNESS = 1.5e-6;

/** A line; all SI. `valveDrop` is the pressure drop of valves and driers, Pa. */
export interface LineInput {
  readonly service: Service;
  readonly bore: number;
  readonly length: number;
  readonly fittingsLength: number;
  readonly rise: number;
  readonly valveDrop: number;
}

export interface LineDrop {
  /** m/s */
  readonly velocity: number;
  /** Pa */
  readonly frictionDrop: number;
  readonly columnDrop: number;
  readonly pressureDrop: number;
  /** K of saturation temperature, positive where it costs */
  readonly saturationDrop: number;
  readonly outletQuality: number | typeof NO_VALUE;
}

const friction = (line: LineInput, cycle: Cycle, state: PhaseState, massFlow: number, trace: Trace) => {
  const { bore: D, length, fittingsLength } = line;
  const rho = state.density;
  const v = trace.step(lineVelocity, { m: massFlow, rho, D });
  const Re = trace.step(lineReynolds, { rho, v, D, mu: lineViscosity(cycle, state, trace) });
  const f = frictionFactor(Re, COPPER_ROUGHNESS, D, trace);
  return { velocity: v, frictionDrop: trace.step(lineFriction, { f, L: length + fittingsLength, D, rho, v }) };
};

/**
 * Saturation temperature lost over the line: suction and liquid lines start at the cycle's pressures, a discharge line ends at
 * the condenser's, so that the compressor works against more.
 */
const saturationLoss = (cycle: Cycle, service: Service, drop: number, trace: Trace): number => {
  const fluid = cycle.input.refrigerant;
  const start = service === "suction" ? cycle.evaporatingPressure : cycle.condensingPressure;
  const [high, low] = service === "discharge" ? [start + drop, start] : [start, start - drop];
  const curve = service === "liquid" ? "bubble" : "dew";
  if (!(low > 0))
    throw outOfRange({
      quantity: `pressure drop of the ${service} line`,
      limit: `below the absolute pressure, ${quantityMark("pressure", start)}`,
      got: quantityMark("pressure drop", drop),
    });
  const loss = saturationTemperature(fluid, high, curve) - saturationTemperature(fluid, low, curve);
  trace.remark(
    `${curve === "dew" ? "Dew" : "Bubble"} temperature falls by ${quantityMark("temperature difference", loss)} from ${quantityMark("pressure", high)} to ${quantityMark("pressure", low)} (absolute).`,
  );
  return loss;
};

/** Vapour's share by mass at the outlet of a liquid line, without heat gain or loss on the way. */
const qualityBehind = (cycle: Cycle, drop: number, trace: Trace): number => {
  const fluid = cycle.input.refrigerant;
  const pressure = cycle.condensingPressure - drop;
  const bubble = saturatedStateAtPressure(fluid, pressure, "bubble");
  const h = cycle.liquid.enthalpy;
  if (h <= bubble.enthalpy) return 0;
  const dew = saturatedStateAtPressure(fluid, pressure, "dew");
  const quality = (h - bubble.enthalpy) / (dew.enthalpy - bubble.enthalpy);
  trace.remark(
    `At ${quantityMark("pressure", pressure)} absolute the bubble point holds ${quantityMark("enthalpy", bubble.enthalpy)} and the liquid entered with ${quantityMark("enthalpy", h)}: a share of ${quality.toFixed(4)} flashes.`,
  );
  return quality;
};

/** A line fed by a cycle; mass flow kg/s. */
export const solveLineDrop = (line: LineInput, cycle: Cycle, massFlow: number, trace: Trace = silent): LineDrop => {
  const state = lineState(cycle, line.service, trace);
  const { velocity, frictionDrop } = friction(line, cycle, state, massFlow, trace);
  const columnDrop = trace.step(columnPressure, { rho: state.density, z: line.rise });
  const pressureDrop = frictionDrop + columnDrop + line.valveDrop;
  const saturationDrop = saturationLoss(cycle, line.service, pressureDrop, trace);
  const outletQuality = line.service === "liquid" ? qualityBehind(cycle, pressureDrop, trace) : NO_VALUE;
  return { velocity, frictionDrop, columnDrop, pressureDrop, saturationDrop, outletQuality };
};
