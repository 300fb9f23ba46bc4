/** The inputs of the year's uncertainty: those of the year, factors on what it is made from, and the money of the work. */
import { block, quantity, type ValueOf } from "../../kernel/define/argument";
import { us } from "../../kernel/values/quantity";
import { YEAR_ENTRIES } from "./inputs";

const factor = (of: string) => quantity("number", `factor on ${of}`, { above: 0, to: 5 }).default(1);

const UNCERTAIN_ENTRIES = {
  ...YEAR_ENTRIES,
  evaporationFactor: factor("evaporation"),
  sunFactor: factor("the sun"),
  airShift: quantity("temperature difference", "added to the air of the climate", {
    from: us("temperature difference", -20),
    to: us("temperature difference", 20),
  }).default(0),
  installedCost: quantity("money", "cost of the recovery, installed; left out: no payback", { above: 0 }).optional(),
  yearlyUpkeep: quantity("money", "upkeep of the recovery, a year", { from: 0 }).default(0),
  discountRate: quantity("yearly rate", "discount rate; 0: simple payback", { from: 0, to: 0.5 }).default(0),
  paybackWithin: quantity("years", "time in which it should pay back", { above: 0, to: 60 }).default(10),
} as const;

export const UNCERTAIN_INPUTS = block(UNCERTAIN_ENTRIES, "block of POOL.YEAR, with factors and the cost of the work");

export type UncertainEntries = ValueOf<typeof UNCERTAIN_INPUTS>;
