import { rows } from "../../kernel/argument";
import { cellFunction } from "../../kernel/cellFunction";
import { NO_VALUE, of, table, word } from "../../kernel/result";
import { EFFICIENCY, HEAT, PRICE, SOURCE } from "../args";
import { ownTariff } from "../cautions";
import { sourceNamed } from "../data/heatSources";
import { carbonOfHeat, checkEfficiency, costOfHeat } from "../models/heat";
import { PRICE_FACTS, isUnusualPrice, priceFacts, unusualInput } from "../prices";

export const compare = cellFunction({
  id: "COST.COMPARE",
  topic: "cost",
  summary: "Cost and carbon dioxide of the same heat from several sources beside each other.",
  finds: ["fuel comparison", "cheapest heat", "energy cost", "alternatives"],
  remarks: [
    "Prices: rows of source, price in its selling unit (therm, gal, kWh, cord; SI: kWh, L, kWh, m³) and, where known, heat on energy bought.",
    "Contents, typical efficiencies and carbon dioxide as COST.OFHEAT and COST.CARBON take them.",
  ],
  args: {
    heat: HEAT,
    prices: rows(
      { source: SOURCE, price: PRICE, efficiency: EFFICIENCY },
      "rows: source, price of its selling unit, [heat on energy bought]",
      { least: 1, most: 20 },
    ),
  },
  gives: table("sources beside each other", {
    source: word("source of the heat"),
    efficiency: of("number", "heat on energy bought"),
    cost: of("money", "cost of the heat"),
    timesCheapest: of("number", "cost on that of the cheapest source"),
    carbonDioxide: of("carbon dioxide", "carbon dioxide that goes with it"),
  }),
  facts: PRICE_FACTS,
  cautions: [
    { rule: ownTariff, fires: { heat: 1e6, prices: [["natural gas", 1.2]] } },
    { rule: unusualInput, fires: { heat: 1e6, prices: [["natural gas", 14]] } },
  ],
  checks: [
    {
      at: {
        heat: 1e6,
        prices: [
          ["propane", 0.7, 1],
          ["fuel oil", 0.6, 1],
        ],
      },
      gives: { row: "propane", column: "cost", is: 7.648 },
      within: "0.5 %",
      from: "fuelPriceTable",
    },
    {
      at: {
        heat: 1e6,
        prices: [
          ["propane", 0.7, 1],
          ["fuel oil", 0.6, 1],
        ],
      },
      gives: { row: "propane", column: "timesCheapest", is: 1.7655 },
      within: "1 %",
      from: "fuelPriceTable",
      remark: "7.648 on 4.332",
    },
  ],
  work({ heat, prices }, { trace, note }) {
    const found = prices.map(({ source, price, efficiency }, place) => {
      checkEfficiency(source, efficiency, `prices, row ${place + 1}, efficiency`);
      return trace.within(source, () => ({
        source,
        efficiency,
        cost: costOfHeat(source, heat, price, efficiency, trace),
        carbonDioxide: carbonOfHeat(source, heat, efficiency, trace),
      }));
    });
    const odd = prices.find(({ source, price }) => isUnusualPrice(sourceNamed(source).price, price));
    note(odd ? priceFacts(sourceNamed(odd.source).price, odd.price) : priceFacts());
    const cheapest = Math.min(...found.map(({ cost }) => cost));
    return found.map((each) => ({ ...each, timesCheapest: cheapest > 0 ? each.cost / cheapest : NO_VALUE }));
  },
});
