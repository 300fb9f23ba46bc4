import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { HEATER_EFFICIENCY, HEAT, SOURCE } from "../args";
import { gridAverage, ownGridFactor } from "../carbonCautions";
import { fieldEfficiency, typicalEfficiency, unusualHeatPump, woodCarbon } from "../cautions";
import { sourceNamed } from "../data/heatSources";
import { PRICE_FACTS, priceFacts, unusualInput } from "../prices";
import { heatCarbon, checkEfficiency } from "../heatCost";

export const costCarbon = cellFunction({
  id: "COST.CARBON",
  topic: "cost",
  summary: "Carbon dioxide of an amount of heat from a source.",
  unitsAfter: "efficiency",
  keywords: ["CO2", "emissions", "greenhouse", "footprint", "marginal", "grid factor"],
  details: [
    "Fuels by US EPA factors (kg per million BTU): natural gas 53.06, propane 62.87, fuel oil 73.96, wood 93.80. Electricity: US grid average of 2018, 947 lb/MWh (eGRID2018).",
    "Grid factor: kg of carbon dioxide for each kWh of electricity, whatever the units: 1,540 lb/MWh (marginal, US 2021) are 0.699, 823 (average, US 2022) 0.373. An inventory takes the average of place and year; a saving takes the marginal factor, since it is the marginal plants that run less. Electricity saved is the carbon of electric resistance at efficiency 1 for the heat of the kWh, with the factor; add it to that of the fuel saved.",
    "Carbon dioxide of burning and of power plants only: no other gases, no supply leaks, no refrigerant.",
  ],
  args: {
    heat: HEAT,
    source: SOURCE,
    efficiency: HEATER_EFFICIENCY,
    gridFactor: quantity("number", "carbon dioxide of electricity, kg/kWh, whatever the units", {
      above: 0,
      to: 3,
      usual: [0.01, 1.2],
    }).optional(),
  },
  returns: quantityResult("carbon dioxide", "carbon dioxide"),
  facts: { used: "number", ownFactor: "yes/no", typical: "yes/no", ...PRICE_FACTS },
  cautions: [
    { rule: gridAverage, raisedBy: { heat: 1e6, source: "heat pump" } },
    { rule: ownGridFactor, raisedBy: { heat: 1e6, source: "heat pump", gridFactor: 0.7 } },
    { rule: woodCarbon, raisedBy: { heat: 1e6, source: "wood" } },
    { rule: fieldEfficiency, raisedBy: { heat: 1e6, source: "propane" } },
    { rule: unusualHeatPump, raisedBy: { heat: 1e6, source: "heat pump", efficiency: 2 } },
    { rule: unusualInput, raisedBy: { heat: 78.5, source: "natural gas" } },
    { rule: typicalEfficiency, raisedBy: { heat: 1e6, source: "fuel oil" } },
  ],
  checks: [
    {
      inputs: { heat: "100000 BTU", source: "natural gas", efficiency: 1, units: "SI" },
      expected: 5.306,
      tolerance: 0.001,
      source: "epaFactors",
      remark: "kg per therm",
    },
    { inputs: { heat: "1000 kWh", source: "electric resistance" }, expected: 947, tolerance: 1, source: "egrid2018" },
    {
      inputs: { heat: "91500 BTU", source: "propane", efficiency: 1, units: "SI" },
      expected: 5.72,
      tolerance: "1 %",
      source: "epaFactors",
      remark: "kg per gallon, from memory",
    },
    {
      inputs: { heat: "1 kWh", source: "electric resistance", efficiency: 1, gridFactor: 0.421, units: "SI" },
      expected: 0.421,
      tolerance: 1e-9,
      source: "identity",
    },
  ],
  compute({ heat, source, efficiency, gridFactor }, { trace, recordFacts }) {
    checkEfficiency(source, efficiency);
    recordFacts({
      ownFactor: gridFactor !== undefined,
      used: efficiency,
      typical: efficiency === sourceNamed(source).typical,
      ...priceFacts(),
    });
    return heatCarbon(source, heat, efficiency, trace, gridFactor && gridFactor / 3.6e6);
  },
});
