import { cellFunction } from "../../kernel/cellFunction";
import { of } from "../../kernel/result";
import { EFFICIENCY, HEAT, SOURCE } from "../args";
import { fieldEfficiency, gridAverage, typicalUsed, unusualHeatPump, woodCarbon } from "../cautions";
import { sourceNamed } from "../data/heatSources";
import { PRICE_FACTS, priceFacts, unusualInput } from "../prices";
import { carbonOfHeat, checkEfficiency } from "../models/heat";

export const carbon = cellFunction({
  id: "COST.CARBON",
  topic: "cost",
  summary: "Carbon dioxide that goes with an amount of heat from a source.",
  finds: ["CO2", "emissions", "greenhouse", "footprint"],
  remarks: [
    "Fuels by US EPA factors (kg for a million BTU): natural gas 53.06, propane 62.87, fuel oil 73.96, wood 93.80. Electricity: US grid average of 2018, 947 lb/MWh (eGRID2018).",
    "Carbon dioxide of burning and of power plants only: no other gases, no leaks on the way, no refrigerant.",
  ],
  args: { heat: HEAT, source: SOURCE, efficiency: EFFICIENCY },
  gives: of("carbon dioxide", "carbon dioxide"),
  facts: { used: "number", typical: "yes/no", ...PRICE_FACTS },
  cautions: [
    { rule: gridAverage, fires: { heat: 1e6, source: "heat pump" } },
    { rule: woodCarbon, fires: { heat: 1e6, source: "wood" } },
    { rule: fieldEfficiency, fires: { heat: 1e6, source: "propane" } },
    { rule: unusualHeatPump, fires: { heat: 1e6, source: "heat pump", efficiency: 2 } },
    { rule: unusualInput, fires: { heat: 78.5, source: "natural gas" } },
    { rule: typicalUsed, fires: { heat: 1e6, source: "fuel oil" } },
  ],
  checks: [
    {
      at: { heat: "100000 BTU", source: "natural gas", efficiency: 1, units: "SI" },
      gives: 5.306,
      within: 0.001,
      from: "epaFactors",
      remark: "kg for a therm",
    },
    { at: { heat: "1000 kWh", source: "electric resistance" }, gives: 947, within: 1, from: "egrid2018" },
    {
      at: { heat: "91500 BTU", source: "propane", efficiency: 1, units: "SI" },
      gives: 5.72,
      within: "1 %",
      from: "epaFactors",
      remark: "kg for a gallon, from memory",
    },
  ],
  work({ heat, source, efficiency }, { trace, note }) {
    checkEfficiency(source, efficiency);
    note({ used: efficiency, typical: efficiency === sourceNamed(source).typical, ...priceFacts() });
    return carbonOfHeat(source, heat, efficiency, trace);
  },
});
