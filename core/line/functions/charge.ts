import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { of } from "../../kernel/define/result";
import { LINE_TEMPERATURE, REFRIGERANT } from "../../refrigerant/args";
import { certifiedWork } from "../../refrigerant/cautions";
import { refrigerant as named } from "../../refrigerant/refrigerant";
import { saturatedState } from "../../refrigerant/saturation/saturation";
import { EQUATION_SOURCES, equationSource } from "../../refrigerant/sources";
import { ADDED_LENGTH, TUBE_SIZE } from "../args";
import { chargeByMaker } from "../cautions";
import { lineCharge } from "../equations";
import { boreOfTube } from "../tube";

export const charge = cellFunction({
  id: "LINE.CHARGE",
  topic: "line",
  summary: "Mass of liquid refrigerant in an added liquid line.",
  finds: ["line charge", "adder", "added refrigerant"],
  remarks: [
    "Bore volume times the density of saturated liquid at the liquid's temperature; subcooled liquid at that temperature is under 1 % denser.",
  ],
  args: {
    refrigerant: REFRIGERANT,
    size: TUBE_SIZE,
    length: ADDED_LENGTH,
    liquidTemperature: LINE_TEMPERATURE.saying("temperature of the liquid").otherwise(us("temperature", 100)),
  },
  gives: of("mass", "liquid in the line"),
  cautions: [
    { rule: chargeByMaker, fires: { refrigerant: "R-410A", size: "3/8 in", length: 30 } },
    { rule: certifiedWork, fires: { refrigerant: "R-410A", size: "3/8 in", length: 30 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      at: { refrigerant: "R-410A", size: "3/8 in", length: 100 },
      gives: 3.3125,
      within: 0.07,
      from: "lineChargePhysics",
      remark: "0.53 oz/ft",
    },
    {
      at: { refrigerant: "R-22", size: "3/8 in", length: 100 },
      gives: 3.75,
      within: 0.07,
      from: "lineChargePhysics",
      remark: "0.60 oz/ft",
    },
    {
      at: { refrigerant: "R-454B", size: "3/8 in", length: 100 },
      gives: 3.0625,
      within: 0.07,
      from: "lineChargePhysics",
      remark: "0.49 oz/ft",
    },
  ],
  work({ refrigerant, size, length, liquidTemperature }, { trace, step }) {
    const fluid = named(refrigerant);
    const rho = saturatedState(fluid, liquidTemperature, "bubble").density;
    if (trace.on)
      trace.property({
        substance: fluid.name,
        property: "density of saturated liquid",
        at: { temperature: { value: liquidTemperature, kind: "temperature" } },
        gives: { value: rho, kind: "density" },
        source: equationSource(fluid),
      });
    return step(lineCharge, { rho, D: boreOfTube(size, trace), L: length });
  },
});
