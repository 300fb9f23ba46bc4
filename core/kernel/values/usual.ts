/**
 * What is usual of a quantity in this trade (common practice), for arguments without a range of their own: far beyond any
 * design and any currency, so that only a slip of unit or size lies outside.
 */
import { KINDS, type KindName } from "./quantity";

/** Usual size of kinds that are narrower than their base unit, in that unit. */
const OF_KIND: Readonly<Partial<Record<KindName, number>>> = {
  diameter: 20,
  depth: 1000,
  count: 1e5,
  COP: 100,
  fraction: 1000,
  years: 200,
  money: 1e11,
};

/** Usual size by base unit. */
const OF_BASE: Readonly<Record<string, number>> = {
  K: 1000,
  Pa: 1e8,
  W: 1e8,
  J: 1e14,
  kg: 1e7,
  "kg/s": 1e4,
  "kg/m": 1000,
  "kg/m^3": 1e5,
  m: 1e5,
  "m^2": 1e6,
  "m^3": 1e6,
  "m^3/s": 100,
  "m/s": 200,
  "W/K": 1e7,
  "W/(m K)": 1e4,
  "W/(m^2 K)": 1e6,
  "m^2 K/W": 10,
  "W/m^2": 1e5,
  "J/m^2": 1e9,
  "J/kg": 1e8,
  "s^2/m^5": 1e10,
  s: 1e10,
  ohm: 1e8,
  "1/J": 0.01,
  "1/m^3": 1e9,
};

const ELSE = 1e6;

/** The size in base units up to which a quantity of a kind is usual. */
export function usualSize(kind: KindName): number {
  return OF_KIND[kind] ?? OF_BASE[KINDS[kind].base] ?? ELSE;
}
