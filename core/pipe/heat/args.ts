/** Arguments of heat lost from pipes. */
import { quantity } from "../../kernel/define/argument";
import { us } from "../../kernel/values/quantity";

export const EXPOSURE = {
  wind: quantity("wind speed", "wind across the pipe", { from: 0, to: us("wind speed", 150) }).default(0),
};

export const INSULATION = quantity("diameter", "thickness of insulation", { from: 0, to: 0.2 }).default(0);

/** Conductivity of pipe foam, W/(m K). */
export const FOAM = quantity("conductivity", "conductivity of the insulation: foam 0.036 to 0.05 W/(m·K)", {
  above: 0,
}).default(0.038);
