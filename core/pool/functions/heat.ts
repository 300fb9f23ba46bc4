import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { WATER_VOLUME } from "../args";
import { heatToRaise } from "../equations";

export const poolHeat = cellFunction({
  id: "POOL.HEAT",
  topic: "pool",
  summary: "Heat that raises a pool's water by a temperature difference.",
  keywords: ["heat up", "BTU per degree", "temperature rise"],
  details: [
    "By the trade's 8.33 lb a gallon and 1 BTU/(lb·°F), 0.3 % above the water's own figure at 80 °F. Losses meanwhile come on top.",
  ],
  args: {
    volume: WATER_VOLUME,
    rise: quantity("temperature difference", "rise of the water", {
      above: 0,
      to: us("temperature difference", 100),
      usual: [0, us("temperature difference", 50)],
    }),
  },
  returns: quantityResult("heat", "heat needed"),
  cautions: [],
  checks: [
    { inputs: { volume: 1100, rise: 8 }, expected: 73_304, tolerance: 5, source: "poolTextbook" },
    { inputs: { volume: 100, rise: 10, units: "SI" }, expected: 1161, tolerance: "0.5 %", source: "iapws95" },
  ],
  compute: ({ volume, rise }, { step }) => step(heatToRaise, { V: volume, dT: rise }),
});
