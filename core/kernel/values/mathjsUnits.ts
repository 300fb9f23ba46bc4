/**
 * mathjs units on plain numbers only. The standard set-up adds big, complex and fractional numbers and matrices: two thirds
 * of its size, and no quantity here needs them.
 */
import { createUnitClass } from "mathjs";

/** A value with its unit. */
interface NumberUnit {
  toNumber(unit: string): number;
}

/** The part of mathjs's unit class that is used here. */
interface NumberUnitClass {
  new (value: number, unit: string): NumberUnit;
  createUnit(definitions: Readonly<Record<string, string>>, options: object): unknown;
}

declare module "mathjs" {
  /** Exported by mathjs 15, missing from its types. */
  export const createUnitClass: (parts: Readonly<Record<string, unknown>>) => NumberUnitClass;
}

const notHere = (): never => {
  throw new Error("plain numbers only");
};

/** mathjs states a few scales as fractions; each becomes a number when it is used. */
const ratio = function (this: object, above: number, below: number): object {
  return Object.assign(this, { isFraction: true, valueOf: () => above / below });
};

export interface NumberUnits {
  /** @throws Error for a unit text that can't be read */
  unit(value: number, text: string): NumberUnit;
}

/** @param more further units, by their definition in known ones */
export const numberUnits = (more: readonly (readonly [name: string, definition: string])[]): NumberUnits => {
  const UnitOf = createUnitClass({
    config: { number: "number" },
    addScalar: (a: number, b: number) => a + b,
    subtractScalar: (a: number, b: number) => a - b,
    multiplyScalar: (a: number, b: number) => a * b,
    divideScalar: (a: number, b: number) => a / b,
    pow: (a: number, b: number) => a ** b,
    abs: Math.abs,
    fix: Math.trunc,
    round: Math.round,
    equal: (a: number, b: number) => a === b,
    isNumeric: (value: unknown) => typeof value === "number",
    format: String,
    number: Number,
    Complex: { I: undefined },
    BigNumber: notHere,
    Fraction: ratio,
  });
  for (const [name, definition] of more) UnitOf.createUnit({ [name]: definition }, {});
  return { unit: (value, text) => new UnitOf(value, text) };
};
