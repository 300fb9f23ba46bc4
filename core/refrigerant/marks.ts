/** Quantities in the messages of refrigerant models: the cell writes them in its own units. */
import { quantityMark } from "../kernel/values/quantityMark";

/** A temperature, K. */
export const markTemperature = (kelvin: number): string => quantityMark("temperature", kelvin);

/** An absolute pressure, Pa, marked "absolute" because cells take gauge pressures. */
export const markPressure = (pascal: number): string => `${quantityMark("pressure", pascal)} absolute`;
