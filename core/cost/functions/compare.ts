import { rows } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { HEATER_EFFICIENCY, HEAT, PRICE, SOURCE } from "../args";
import { userPrices } from "../cautions";
import { sourceNamed } from "../data/heatSources";
import { heatCarbon, checkEfficiency, heatCost } from "../heatCost";
import { PRICE_FACTS, isUnusualPrice, priceFacts, unusualInput } from "../prices";

export const costCompare = cellFunction({
  id: "COST.COMPARE",
  topic: "cost",
  summary: "Cost and carbon dioxide of the same heat from several sources, compared.",
  keywords: ["fuel comparison", "cheapest heat", "energy cost", "alternatives"],
  details: [
    "Prices: rows of source, price in its selling unit (therm, gal, kWh, cord; SI: kWh, L, kWh, m³) and, if known, heat per energy bought.",
    "Contents, typical efficiencies and carbon dioxide as in COST.OFHEAT and COST.CARBON.",
  ],
  args: {
    heat: HEAT,
    prices: rows(
      { source: SOURCE, price: PRICE, efficiency: HEATER_EFFICIENCY },
      "rows: source, price of its selling unit, [heat per energy bought]",
      { least: 1, most: 20 },
    ),
  },
  returns: tableResult("sources compared", {
    source: wordResult("source of the heat"),
    efficiency: quantityResult("number", "heat per energy bought"),
    cost: quantityResult("money", "cost of the heat"),
    timesCheapest: quantityResult("number", "cost over that of the cheapest source"),
    carbonDioxide: quantityResult("carbon dioxide", "carbon dioxide of the heat"),
  }),
  facts: PRICE_FACTS,
  cautions: [
    { rule: userPrices, raisedBy: { heat: 1e6, prices: [["natural gas", 1.2]] } },
    { rule: unusualInput, raisedBy: { heat: 1e6, prices: [["natural gas", 14]] } },
  ],
  checks: [
    {
      inputs: {
        heat: 1e6,
        prices: [
          ["propane", 0.7, 1],
          ["fuel oil", 0.6, 1],
        ],
      },
      expected: { row: "propane", column: "cost", value: 7.648 },
      tolerance: "0.5 %",
      source: "fuelPriceTable",
    },
    {
      inputs: {
        heat: 1e6,
        prices: [
          ["propane", 0.7, 1],
          ["fuel oil", 0.6, 1],
        ],
      },
      expected: { row: "propane", column: "timesCheapest", value: 1.7655 },
      tolerance: "1 %",
      source: "fuelPriceTable",
      remark: "7.648 over 4.332",
    },
  ],
  compute({ heat, prices }, { trace, recordFacts }) {
    const found = prices.map(({ source, price, efficiency }, place) => {
      checkEfficiency(source, efficiency, `prices, row ${place + 1}, efficiency`);
      return trace.within(source, () => ({
        source,
        efficiency,
        cost: heatCost(source, heat, price, efficiency, trace),
        carbonDioxide: heatCarbon(source, heat, efficiency, trace),
      }));
    });
    const odd = prices.find(({ source, price }) => isUnusualPrice(sourceNamed(source).price, price));
    recordFacts(odd ? priceFacts(sourceNamed(odd.source).price, odd.price) : priceFacts());
    const cheapest = Math.min(...found.map(({ cost }) => cost));
    return found.map((each) => ({ ...each, timesCheapest: cheapest > 0 ? each.cost / cheapest : NO_VALUE }));
  },
});
