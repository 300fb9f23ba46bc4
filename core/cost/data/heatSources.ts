/**
 * Sources of pool heat: the selling unit of each, its energy content, the share that becomes heat, and its carbon
 * dioxide. Energy contents are higher heating values, averages of the United States, 2019.
 */
import type { KindName } from "../../kernel/values/quantity";
import { us } from "../../kernel/values/quantity";
import type { Source } from "../../kernel/reference";

export interface HeatSource {
  readonly name: string;
  /** The kind of its price: money per J or per m³. */
  readonly price: KindName;
  /** Energy of the priced unit: 1 where the price is for energy, else J/m³. */
  readonly content: number;
  /** The content in customary units. */
  readonly contentText: string;
  readonly contentSource: Source;
  /** Heat into the water per unit of energy bought: an efficiency, or a coefficient of performance above 1. */
  readonly typical: number;
  readonly typicalSource: Source;
  /** Lowest and highest value allowed. */
  readonly efficiencies: readonly [number, number];
  /** Carbon dioxide per J bought, kg/J. */
  readonly carbon: number;
  readonly carbonText: string;
  readonly carbonSource: Source;
}

const BTU = us("heat", 1);
const GALLON = us("pool volume", 1);
const POUND = us("mass", 1);
/** Stacked volume of a cord: 4 × 4 × 8 ft. */
const CORD = 128 * us("vessel volume", 1);
const KWH = 3.6e6;

/** kg per million BTU as kg/J. */
const perMillion = (kilograms: number): number => kilograms / (1e6 * BTU);
/** lb per MWh as kg/J. */
const GRID = (947 * POUND) / (1000 * KWH);

const ELECTRIC = {
  price: "price of electricity",
  content: 1,
  contentText: "3,412 BTU/kWh",
  contentSource: "eiaUnits",
  carbon: GRID,
  carbonText: "947 lb/MWh (US grid average of 2018)",
  carbonSource: "egrid2018",
} as const;

export const HEAT_SOURCES = [
  {
    name: "natural gas",
    price: "price of gas",
    content: 1,
    contentText: "100,000 BTU/therm",
    contentSource: "eiaUnits",
    typical: 0.8,
    typicalSource: "doePoolCosts",
    efficiencies: [0.2, 1],
    carbon: perMillion(53.06),
    carbonText: "53.06 kg for a million BTU",
    carbonSource: "epaFactors",
  },
  {
    name: "propane",
    price: "price of liquid fuel",
    content: (91_452 * BTU) / GALLON,
    contentText: "91,452 BTU/gal",
    contentSource: "eiaUnits",
    typical: 0.8,
    typicalSource: "doePoolCosts",
    efficiencies: [0.2, 1],
    carbon: perMillion(62.87),
    carbonText: "62.87 kg for a million BTU",
    carbonSource: "epaFactors",
  },
  {
    name: "fuel oil",
    price: "price of liquid fuel",
    content: (138_500 * BTU) / GALLON,
    contentText: "138,500 BTU/gal",
    contentSource: "eiaUnits",
    typical: 0.8,
    typicalSource: "commonPractice",
    efficiencies: [0.2, 1],
    carbon: perMillion(73.96),
    carbonText: "73.96 kg for a million BTU",
    carbonSource: "epaFactors",
  },
  {
    ...ELECTRIC,
    name: "electric resistance",
    typical: 1,
    typicalSource: "commonPractice",
    efficiencies: [0.5, 1],
  },
  {
    ...ELECTRIC,
    name: "heat pump",
    typical: 5,
    typicalSource: "doePoolCosts",
    efficiencies: [1, 15],
  },
  {
    name: "wood",
    price: "price of wood",
    content: (20e6 * BTU) / CORD,
    contentText: "20,000,000 BTU/cord",
    contentSource: "eiaUnits",
    typical: 0.6,
    typicalSource: "commonPractice",
    efficiencies: [0.1, 1],
    carbon: perMillion(93.8),
    carbonText: "93.80 kg for a million BTU (of the wood's own carbon)",
    carbonSource: "epaFactors",
  },
  {
    ...ELECTRIC,
    name: "solar",
    typical: 20,
    typicalSource: "commonPractice",
    efficiencies: [1, 500],
  },
] as const satisfies readonly HeatSource[];

export type SourceName = (typeof HEAT_SOURCES)[number]["name"];

export const SOURCE_NAMES = HEAT_SOURCES.map(({ name }) => name) as readonly SourceName[];

export const sourceNamed = (name: SourceName): HeatSource =>
  HEAT_SOURCES.find((each) => each.name === name) ?? HEAT_SOURCES[0];
