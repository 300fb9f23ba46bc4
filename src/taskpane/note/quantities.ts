/** Equations with quantities put in: numbers in the user's own units, each with its unit. */
import { fromBase, KINDS, showNumber, type KindName, type System } from "../../../core";
import { symbolOf, type WorkingNode } from "../model/workingTree";
import type { SymbolTable } from "./symbols";

type Unit = (typeof KINDS)[KindName]["US"];

/** Equations take temperatures from absolute zero. */
const ABSOLUTE: Readonly<Record<System, Unit>> = {
  US: { text: "°R", factor: 5 / 9, shift: 0 },
  SI: { text: "K", factor: 1, shift: 0 },
};

/** 9.80665 m/s² by definition; the foot is 0.3048 m. */
const GRAVITY: Readonly<Record<System, string>> = { US: "(32.174 ft/s²)", SI: "(9.80665 m/s²)" };

function quantityText(value: number, kind: KindName, system: System): string {
  const own = KINDS[kind][system];
  const unit = own.shift === 0 ? own : ABSOLUTE[system];
  const text = showNumber(fromBase(value, unit));
  if (unit.text === "") return value < 0 ? `(${text})` : text;
  return `(${text} ${unit.text})`;
}

/**
 * The right side, or both sides of a relation; "" where the equation holds in SI base units alone, as some of its numbers
 * have units themselves.
 */
export function quantitiesIn({ line, numbers = {} }: WorkingNode, system: System, table: SymbolTable): string {
  const { form = "" } = line;
  const known = table[form];
  if (known?.["="] === undefined) return "";
  const side = (text: string): string =>
    text.trim().replace(/\b[A-Za-z_]\w*\b/g, (name) => {
      const value = numbers[name];
      const kind = known[name]?.[0];
      if (value !== undefined && kind !== undefined) return quantityText(value, kind, system);
      return name === "g" ? GRAVITY[system] : name;
    });
  const cut = form.indexOf("=");
  const right = side(form.slice(cut + 1));
  return symbolOf(line) === undefined ? `${side(form.slice(0, cut))} = ${right}` : `= ${right}`;
}
