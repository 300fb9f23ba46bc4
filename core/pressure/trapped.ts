/** Pressure of liquid that is shut in and warms. */
import { notAvailable, outOfRange, valueError } from "../kernel/values/fault";
import { quantityMark } from "../kernel/values/quantityMark";
import { silent, type Trace } from "../kernel/define/steps";
import { markPressure, markTemperature } from "../refrigerant/marks";
import { pressureAt } from "../refrigerant/helmholtz/substance";
import { loadRefrigerant } from "../refrigerant/refrigerant";
import { equationSource } from "../refrigerant/sources";
import { saturatedState } from "../refrigerant/saturation/saturation";

/** Absolute pressure, Pa, of a rigid section filled with saturated liquid and warmed; K. */
export function trappedPressure(name: string, filledAt: number, warmedTo: number, trace: Trace = silent): number {
  const fluid = loadRefrigerant(name);
  if (warmedTo < filledAt)
    throw valueError(
      `warmedTo: must be at least filledAt, ${quantityMark("temperature", filledAt)}, got ${quantityMark("temperature", warmedTo)}`,
    );
  if (warmedTo > fluid.range.limit)
    throw outOfRange({
      quantity: `${name} temperature`,
      limit: `at most ${markTemperature(fluid.range.limit)}`,
      got: markTemperature(warmedTo),
    });
  const { density, pressure } = saturatedState(fluid, filledAt, "bubble");
  if (warmedTo === filledAt) return pressure;
  const slot = { pressure: 0, byDensity: 0 };
  pressureAt(fluid.substance, warmedTo, density / fluid.substance.molarMass, slot);
  if (slot.pressure > fluid.range.pressure)
    throw notAvailable(
      `warmedTo: the pressure passes ${markPressure(fluid.range.pressure)}, where the equation of ${name} ends`,
    );
  const source = equationSource(fluid);
  if (trace.on) {
    const at = (temperature: number) => ({ temperature: { value: temperature, kind: "temperature" } }) as const;
    trace.property({
      substance: name,
      property: "absolute pressure at the density of the liquid that filled it",
      inputs: { ...at(warmedTo), density: { value: density, kind: "density" } },
      result: { value: slot.pressure, kind: "pressure" },
      source,
    });
  }
  return slot.pressure;
}
