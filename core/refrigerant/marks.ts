/** Quantities in the messages of refrigerant models: the cell writes them in its own units. */
import { told } from "../kernel/values/quantityMark";

/** A temperature, K. */
export const tellTemperature = (kelvin: number): string => told("temperature", kelvin);

/** An absolute pressure, Pa, said to be absolute: cells read gauge pressures. */
export const tellPressure = (pascal: number): string => `${told("pressure", pascal)} absolute`;
