/** Facts of entries of the year's block that were left out, or that look like another unit's. */
import { PRICE_FACTS, isUnusualPrice, priceFacts } from "../../cost/prices";
import { sourceNamed } from "../../cost/data/heatSources";
import type { KindName } from "../../kernel/values/quantity";
import type { Year } from "./results";
import type { BACK_UP_SOURCES, YearInputs } from "./inputs";

const kindOf = (source: (typeof BACK_UP_SOURCES)[number]): KindName =>
  source === "none" ? "number" : sourceNamed(source).price;

/** The first price that looks like another unit's. */
function oddPriceOf(inputs: YearInputs): ReturnType<typeof priceFacts> {
  const prices: readonly (readonly [KindName, number | undefined, string])[] = [
    ["price of electricity", inputs.electricityPrice, "electricity price"],
    [kindOf(inputs.backUpSource), inputs.backUpPrice, "back up price"],
    [kindOf(inputs.hotWaterSource), inputs.hotWaterPrice, "hot water price"],
  ];
  const odd = prices.find(([kind, price = 0]) => isUnusualPrice(kind, price));
  return odd === undefined ? priceFacts() : priceFacts(...odd);
}

/** A clock hour below 1 may be a time of day, which a cell holds as a part of the day: 8:00 is 0.333. */
function partOfDay({ pumpStart, drawStart, secondSink }: YearInputs): {
  readonly clockLabel?: string;
  readonly clock?: number;
} {
  const clocks: readonly (readonly [label: string, hour: number])[] = [
    ["pump start", pumpStart],
    ["draw start", secondSink === "none" ? 0 : drawStart],
  ];
  const odd = clocks.find(([, hour]) => hour > 0 && hour < 1);
  return odd === undefined ? {} : { clockLabel: odd[0], clock: odd[1] };
}

export const ODD_INPUT_FACTS = {
  ...PRICE_FACTS,
  heat: "heat",
  assumedLoad: "heat rate",
  clockLabel: "word",
  clock: "number",
} as const;

/** Prices, times of day, and the design load that was taken because none is given. */
export function oddInputFacts({ inputs, machine }: Year) {
  const leftOut = machine !== undefined && inputs.designLoad === undefined;
  const assumed = leftOut ? { assumedLoad: machine.designLoad } : {};
  return { ...oddPriceOf(inputs), heat: 0, ...assumed, ...partOfDay(inputs) };
}
