/** Small pieces of the technician's sheets. */
import { computed, input, type Line } from "./layout";
import type { Validation } from "./sheet";

export const oneOf = (prompt: string, ...list: readonly string[]): Validation => ({ list, prompt });
export const betweenLimits = (from: number, to: number, prompt: string): Validation => ({ from, to, prompt });
export const above = (prompt: string, least = 0): Validation => ({ above: least, prompt });

export const filled = (prompt: string): Validation => ({ filled: true, prompt });

/** The unit of money, and of a price: the sign that the sheet's line "currency" holds. */
export const MONEY = "=[currency]";
export const moneyPer = (unit: string): string => `=[currency]&"/${unit}"`;

/** An amount of whole money in a text. */
export const moneyText = (amount: string): string => `[currency]&TEXT(${amount},"#,##0")`;

/** The sign that amounts show; the sheet "Project" has it for all. */
export const currencyInput = (link?: string): Line =>
  input("currency", "Currency sign", "$", "", {
    validation: filled("such as $, €, £ or CHF"),
    source: "owner",
    ...(link !== undefined && { link }),
  });

/** The note beside every value of the example. */
export const INVENTED = "Invented example: replace by your own.";

/** The basis of a gauge reading, from the line of `altitudeInput`. */
export const GAUGE_BASIS = '[altitude]&" ft"';

export const altitudeInput: Line = input("altitude", "Altitude", 500, "ft", {
  format: "#,##0",
  validation: betweenLimits(-1500, 16000, "-1,500 to 16,000 ft"),
  source: "map",
  note: "Gauges count from the air at the place.",
  link: "ProjectAltitude",
});

/** A warning across the sheet: short enough for one line beside empty cells. */
export const warning = (says: string): Line => ({ label: says, labelStyle: "Warning Text" });

/** A result in the bold frame. */
export const answer = (key: string, label: string, formula: string, unit: string, format: string, note = ""): Line =>
  computed(key, label, formula, unit, { format, style: "Output", ...(note === "" ? {} : { note }) });

/** How a change is shown with its sign, and the least of it that doesn't round to 0: below that it has no sign. */
export const SIGNED_TENTHS = { format: "[>=0.05]+0.0;[<=-0.05]-0.0;0.0", least: 0.05 } as const;
export const SIGNED_PERCENT = { format: "[>=0.005]+0%;[<=-0.005]-0%;0%", least: 0.005 } as const;

/** A change with its sign; one too small to show is 0, also for programs that show a sign before 0. */
export function change(
  key: string,
  label: string,
  of: string,
  unit: string,
  { format, least }: typeof SIGNED_TENTHS | typeof SIGNED_PERCENT,
  source: string,
): Line {
  return computed(key, label, `=IF(ABS(${of})<${least},0,${of})`, unit, { format, source });
}

/** The refrigerants that a condenser of an air conditioner may hold. */
export const REFRIGERANT_NAMES = [
  "R-22",
  "R-32",
  "R-134a",
  "R-290",
  "R-404A",
  "R-407C",
  "R-410A",
  "R-452B",
  "R-454B",
  "R-507A",
  "R-513A",
] as const;

export const TUBE_SIZES = [
  "1/4 in",
  "5/16 in",
  "3/8 in",
  "1/2 in",
  "5/8 in",
  "3/4 in",
  "7/8 in",
  "1-1/8 in",
  "1-3/8 in",
] as const;

export const YES_NO = ["yes", "no"] as const;
