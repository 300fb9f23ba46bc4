import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { HEATER_EFFICIENCY, HEAT, PRICE, SOURCE } from "../args";
import { fieldEfficiency, userPrices, typicalEfficiency, unusualHeatPump } from "../cautions";
import { sourceNamed } from "../data/heatSources";
import { checkEfficiency, heatCost } from "../heatCost";
import { PRICE_FACTS, priceFacts, unusualInput } from "../prices";

export const costOfHeat = cellFunction({
  id: "COST.OFHEAT",
  topic: "cost",
  summary: "Cost of an amount of heat from gas, propane, oil, electricity, a heat pump, wood or solar pumping.",
  keywords: ["energy cost", "fuel cost", "price", "operating cost", "money"],
  details: [
    "Higher heating values, US averages of 2019: propane 91,452 and fuel oil 138,500 BTU/gal, wood 20,000,000 BTU/cord (stacked).",
    "Typical heat per energy bought: gas, propane, oil 0.8; electric resistance 1; heat pump 5 (its COP, 1 to 15); wood 0.6; solar 20 (heat per pump energy).",
  ],
  args: { heat: HEAT, source: SOURCE, price: PRICE, efficiency: HEATER_EFFICIENCY },
  returns: quantityResult("money", "cost of the heat"),
  facts: { used: "number", typical: "yes/no", ...PRICE_FACTS },
  cautions: [
    { rule: fieldEfficiency, raisedBy: { heat: 1e6, source: "natural gas", price: 1.2 } },
    { rule: unusualHeatPump, raisedBy: { heat: 1e6, source: "heat pump", price: 0.15, efficiency: 9 } },
    { rule: typicalEfficiency, raisedBy: { heat: 1e6, source: "wood", price: 300 } },
    { rule: unusualInput, raisedBy: { heat: 1e6, source: "electric resistance", price: 15 } },
    { rule: userPrices, raisedBy: { heat: 1e6, source: "propane", price: 2.5 } },
  ],
  checks: [
    {
      inputs: { heat: 1e6, source: "propane", price: 0.7, efficiency: 1 },
      expected: 7.648,
      tolerance: "0.5 %",
      source: "fuelPriceTable",
      remark: "the source uses 91,523 BTU/gal",
    },
    {
      inputs: { heat: 1e6, source: "fuel oil", price: 0.6, efficiency: 1 },
      expected: 4.332,
      tolerance: "0.5 %",
      source: "fuelPriceTable",
    },
    {
      inputs: { heat: 100_000, source: "natural gas", price: 1.3, efficiency: 1 },
      expected: 1.3,
      tolerance: 1e-9,
      source: "eiaUnits",
    },
    {
      inputs: { heat: 3412, source: "electric resistance", price: 1 },
      expected: 1,
      tolerance: "0.03 %",
      source: "eiaUnits",
    },
    {
      inputs: { heat: 20e6, source: "wood", price: 250, efficiency: 1 },
      expected: 250,
      tolerance: 1e-6,
      source: "eiaUnits",
    },
    {
      inputs: { heat: 100, source: "heat pump", price: 0.2, efficiency: 5, units: "SI" },
      expected: 4,
      tolerance: 1e-9,
      source: "identity",
    },
  ],
  compute({ heat, source, price, efficiency }, { trace, recordFacts }) {
    checkEfficiency(source, efficiency);
    const { typical, price: priceKind } = sourceNamed(source);
    recordFacts({ used: efficiency, typical: efficiency === typical, ...priceFacts(priceKind, price) });
    return heatCost(source, heat, price, efficiency, trace);
  },
});
