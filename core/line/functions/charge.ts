import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { LINE_TEMPERATURE, REFRIGERANT } from "../../refrigerant/args";
import { certifiedWork } from "../../refrigerant/cautions";
import { loadRefrigerant as named } from "../../refrigerant/refrigerant";
import { saturatedState } from "../../refrigerant/saturation/saturation";
import { EQUATION_SOURCES, equationSource } from "../../refrigerant/sources";
import { ADDED_LENGTH, TUBE_SIZE } from "../args";
import { chargeByMaker } from "../cautions";
import { lineChargeEquation } from "../equations";
import { boreOfTube } from "../tube";

export const lineCharge = cellFunction({
  id: "LINE.CHARGE",
  topic: "line",
  summary: "Mass of liquid refrigerant in an added liquid line.",
  keywords: ["line charge", "adder", "added refrigerant"],
  details: [
    "Bore volume times the density of saturated liquid at the liquid's temperature; subcooled liquid at that temperature is under 1 % denser.",
  ],
  args: {
    refrigerant: REFRIGERANT,
    size: TUBE_SIZE,
    length: ADDED_LENGTH,
    liquidTemperature: LINE_TEMPERATURE.describedAs("temperature of the liquid").default(us("temperature", 100)),
  },
  returns: quantityResult("mass", "liquid in the line"),
  cautions: [
    { rule: chargeByMaker, raisedBy: { refrigerant: "R-410A", size: "3/8 in", length: 30 } },
    { rule: certifiedWork, raisedBy: { refrigerant: "R-410A", size: "3/8 in", length: 30 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: { refrigerant: "R-410A", size: "3/8 in", length: 100 },
      expected: 3.3125,
      tolerance: 0.07,
      source: "lineChargePhysics",
      remark: "0.53 oz/ft",
    },
    {
      inputs: { refrigerant: "R-22", size: "3/8 in", length: 100 },
      expected: 3.75,
      tolerance: 0.07,
      source: "lineChargePhysics",
      remark: "0.60 oz/ft",
    },
    {
      inputs: { refrigerant: "R-454B", size: "3/8 in", length: 100 },
      expected: 3.0625,
      tolerance: 0.07,
      source: "lineChargePhysics",
      remark: "0.49 oz/ft",
    },
  ],
  compute({ refrigerant, size, length, liquidTemperature }, { trace, step }) {
    const fluid = named(refrigerant);
    const rho = saturatedState(fluid, liquidTemperature, "bubble").density;
    if (trace.on)
      trace.property({
        substance: fluid.name,
        property: "density of saturated liquid",
        inputs: { temperature: { value: liquidTemperature, kind: "temperature" } },
        result: { value: rho, kind: "density" },
        source: equationSource(fluid),
      });
    return step(lineChargeEquation, { rho, D: boreOfTube(size, trace), L: length });
  },
});
