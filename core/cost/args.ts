/** Arguments of the cost functions. */
import { choice, quantity, type KindByChoice } from "../kernel/define/argument";
import type { KindName } from "../kernel/values/quantity";
import { SOURCE_NAMES, sourceNamed, type SourceName } from "./data/heatSources";

export const HEAT = quantity("heat", "heat into the water", { from: 0 });

export const SOURCE = choice("HeatSource", SOURCE_NAMES, "where the heat comes from", {
  gas: "natural gas",
  LPG: "propane",
  oil: "fuel oil",
  "heating oil": "fuel oil",
  electric: "electric resistance",
  electricity: "electric resistance",
  resistance: "electric resistance",
  firewood: "wood",
});

const priceKind: KindByChoice = {
  choice: "source",
  kinds: Object.fromEntries(SOURCE_NAMES.map((name): [string, KindName] => [name, sourceNamed(name).price])),
};

export const PRICE = quantity(priceKind, "price by source: per therm (SI: kWh), gal (L), kWh, or cord (stacked m³)", {
  from: 0,
});

const efficiencyKind: KindByChoice = {
  choice: "source",
  kinds: Object.fromEntries(
    SOURCE_NAMES.map((name): [string, KindName] => [name, sourceNamed(name).efficiencies[1] > 1 ? "COP" : "fraction"]),
  ),
};

export const HEATER_EFFICIENCY = quantity(
  efficiencyKind,
  "heat per energy bought: fraction, COP, or heat per pump energy",
  {
    above: 0,
  },
).default({
  words: "typical of the source",
  from: ({ source }) => sourceNamed(source as SourceName).typical,
});
