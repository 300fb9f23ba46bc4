import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { of } from "../../kernel/define/result";
import { WATER_VOLUME } from "../args";
import { heatToRaise } from "../equations";

export const heat = cellFunction({
  id: "POOL.HEAT",
  topic: "pool",
  summary: "Heat that raises a pool's water by a temperature difference.",
  finds: ["heat up", "BTU per degree", "temperature rise"],
  remarks: [
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
  gives: of("heat", "heat needed"),
  cautions: [],
  checks: [
    { at: { volume: 1100, rise: 8 }, gives: 73_304, within: 5, from: "poolTextbook" },
    { at: { volume: 100, rise: 10, units: "SI" }, gives: 1161, within: "0.5 %", from: "iapws95" },
  ],
  work: ({ volume, rise }, { step }) => step(heatToRaise, { V: volume, dT: rise }),
});
