/**
 * What is usual of a quantity in this trade (common practice), for arguments without a range of their own: far beyond any
 * design and any currency, so that only a slip of unit or size lies outside.
 */
import { KINDS, type KindName } from "./quantity";

/** Usual size of kinds that are narrower than their base unit, in that unit. */
const OF_KIND: Readonly<Partial<Record<KindName, number>>> = { diameter: 20, count: 1e5, money: 1e11 };

/** Usual size by base unit, where it isn't that of all others. */
const OF_BASE: Readonly<Record<string, number>> = {
  K: 1000,
  Pa: 1e8,
  W: 1e8,
  J: 1e14,
  m: 1e5,
  "m^3/s": 100,
  "m/s": 200,
  "J/m^2": 1e9,
  "J/kg": 1e8,
  "s^2/m^5": 1e10,
  s: 1e10,
  ohm: 1e8,
  "1/J": 0.01,
  "1/m^3": 1e9,
};

const OF_ALL_OTHERS = 1e6;

/** The size in base units up to which a quantity of a kind is usual. */
export function usualSize(kind: KindName): number {
  return OF_KIND[kind] ?? OF_BASE[KINDS[kind].base] ?? OF_ALL_OTHERS;
}
