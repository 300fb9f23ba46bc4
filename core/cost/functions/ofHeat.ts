import { cellFunction } from "../../kernel/cellFunction";
import { of } from "../../kernel/result";
import { EFFICIENCY, HEAT, PRICE, SOURCE } from "../args";
import { fieldEfficiency, ownTariff, typicalUsed, unusualHeatPump } from "../cautions";
import { sourceNamed } from "../data/heatSources";
import { checkEfficiency, costOfHeat } from "../models/heat";
import { PRICE_FACTS, priceFacts, unusualInput } from "../prices";

export const ofHeat = cellFunction({
  id: "COST.OFHEAT",
  topic: "cost",
  summary: "Cost of an amount of heat from gas, propane, oil, electricity, a heat pump, wood or solar pumping.",
  finds: ["energy cost", "fuel cost", "price", "operating cost", "money"],
  remarks: [
    "Higher heating values, US averages of 2019: propane 91,452 and fuel oil 138,500 BTU/gal, wood 20,000,000 BTU/cord (stacked).",
    "Typical heat on energy bought: gas, propane, oil 0.8; electric resistance 1; heat pump 5 (its COP, 1 to 15); wood 0.6; solar 20 (heat on pump energy).",
  ],
  args: { heat: HEAT, source: SOURCE, price: PRICE, efficiency: EFFICIENCY },
  gives: of("money", "cost of the heat"),
  facts: { used: "number", typical: "yes/no", ...PRICE_FACTS },
  cautions: [
    { rule: fieldEfficiency, fires: { heat: 1e6, source: "natural gas", price: 1.2 } },
    { rule: unusualHeatPump, fires: { heat: 1e6, source: "heat pump", price: 0.15, efficiency: 9 } },
    { rule: typicalUsed, fires: { heat: 1e6, source: "wood", price: 300 } },
    { rule: unusualInput, fires: { heat: 1e6, source: "electric resistance", price: 15 } },
    { rule: ownTariff, fires: { heat: 1e6, source: "propane", price: 2.5 } },
  ],
  checks: [
    {
      at: { heat: 1e6, source: "propane", price: 0.7, efficiency: 1 },
      gives: 7.648,
      within: "0.5 %",
      from: "fuelPriceTable",
      remark: "worked there with 91,523 BTU/gal",
    },
    {
      at: { heat: 1e6, source: "fuel oil", price: 0.6, efficiency: 1 },
      gives: 4.332,
      within: "0.5 %",
      from: "fuelPriceTable",
    },
    {
      at: { heat: 100_000, source: "natural gas", price: 1.3, efficiency: 1 },
      gives: 1.3,
      within: 1e-9,
      from: "eiaUnits",
    },
    { at: { heat: 3412, source: "electric resistance", price: 1 }, gives: 1, within: "0.03 %", from: "eiaUnits" },
    { at: { heat: 20e6, source: "wood", price: 250, efficiency: 1 }, gives: 250, within: 1e-6, from: "eiaUnits" },
    {
      at: { heat: 100, source: "heat pump", price: 0.2, efficiency: 5, units: "SI" },
      gives: 4,
      within: 1e-9,
      from: "identity",
    },
  ],
  work({ heat, source, price, efficiency }, { trace, note }) {
    checkEfficiency(source, efficiency);
    const { typical, price: priceKind } = sourceNamed(source);
    note({ used: efficiency, typical: efficiency === typical, ...priceFacts(priceKind, price) });
    return costOfHeat(source, heat, price, efficiency, trace);
  },
});
