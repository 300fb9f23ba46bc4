/** What recovery saves in a month of the year, in money and carbon dioxide. */
import { heatCarbon, checkEfficiency, heatCost } from "../../cost/heatCost";
import { sourceNamed } from "../../cost/data/heatSources";
import { NO_VALUE } from "../../kernel/define/result";
import type { BACK_UP_SOURCES } from "./inputs";
import type { PoolYear, Year } from "./results";

const at = (values: ArrayLike<number>, month: number): number => values[month] ?? 0;

/** Plain money; kg. */
export interface Saving {
  readonly money: number | typeof NO_VALUE;
  readonly carbon: number;
}

/** A heater whose heat recovery makes good: by its source, price and efficiency. */
interface Heater {
  readonly source: (typeof BACK_UP_SOURCES)[number];
  readonly price: number | undefined;
  readonly efficiency: number | undefined;
  readonly named: string;
}

/** What heat (J) not made by a heater is worth; nothing where there is no heater. */
const worthOf = ({ source, price, efficiency: given, named }: Heater, heat: number): Saving => {
  if (source === "none") return { money: 0, carbon: 0 };
  const efficiency = given ?? sourceNamed(source).typical;
  checkEfficiency(source, efficiency, `inputs: ${named}`);
  return {
    money: price === undefined ? NO_VALUE : heatCost(source, heat, price, efficiency),
    carbon: heatCarbon(source, heat, efficiency),
  };
};

const sumOfMoney = (parts: readonly Saving["money"][]): Saving["money"] =>
  parts.reduce((sum, part) => (sum === NO_VALUE || part === NO_VALUE ? NO_VALUE : sum + part), 0);

/** What recovery saves in a month by the pair that counts: held by the back-up heater where there is one. */
export function savingOf(
  { inputs, machine, free, held }: Pick<Year, "inputs" | "machine" | "free" | "held">,
  month: number,
): Saving {
  const { backUpSource, electricityPrice } = inputs;
  const pair = backUpSource === "none" ? free : held;
  const electric = (year: PoolYear): number => at(year.sums.electricity, month) + at(year.sums.extraPump, month);
  const power = electric(pair.without) - electric(pair.with);
  const backUp = worthOf(
    {
      source: backUpSource,
      price: inputs.backUpPrice,
      efficiency: inputs.backUpEfficiency,
      named: "back up efficiency",
    },
    (at(held.without.sums.backUp, month) - at(held.with.sums.backUp, month)) * inputs.poolArea,
  );
  const hotWater = worthOf(
    {
      source: machine?.tankCurve ? inputs.hotWaterSource : "none",
      price: inputs.hotWaterPrice,
      efficiency: inputs.hotWaterEfficiency,
      named: "hot water efficiency",
    },
    // What a warm room gives the tank is paid for elsewhere.
    at(pair.with.sums.drawnHeat, month) + Math.min(0, at(pair.with.sums.tankLoss, month)),
  );
  const bought = electricityPrice === undefined ? NO_VALUE : power * electricityPrice;
  return {
    money: sumOfMoney([bought, backUp.money, hotWater.money]),
    carbon: power * heatCarbon("electric resistance", 1, 1) + backUp.carbon + hotWater.carbon,
  };
}
