/** The superheat of a compressor's map. */
import { choice, either } from "../../kernel/define/argument";
import { us } from "../../kernel/values/quantity";
import { SUPERHEAT } from "../args";
import { RETURN_GAS } from "./map";

export const MAP_SUPERHEAT = either(
  choice("MapSuperheat", [RETURN_GAS], "return gas of one temperature"),
  SUPERHEAT,
  "superheat at which the map was measured",
).default(us("temperature difference", 20));
