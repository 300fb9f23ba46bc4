/** Conditional formats by a formula: Excel.ConditionalFormatCollection and what is within. */
import { object, plain, type Property, type SomeTypes } from "../host/objects";
import { isEditable } from "../model/cells";
import { refuse } from "../model/limits";
import type { ConditionalTarget, RangeTarget } from "./targets";

const lower = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

const kept = (prefix: string, ...names: readonly string[]): Readonly<Record<string, Property<ConditionalTarget>>> =>
  plain<ConditionalTarget>(
    names,
    ({ format }, name) => format.get(prefix + lower(name)) ?? null,
    ({ format }, name, value) => void format.set(prefix + lower(name), value),
  );

/** @throws HostError AccessDenied on a protected sheet, InvalidArgument for a kind that isn't a formula's */
function add(on: RangeTarget, type: unknown): ConditionalTarget {
  const { sheet, row, column, rows, columns } = on;
  if (sheet.protection !== undefined && !isEditable(sheet, on)) refuse("AccessDenied");
  if (type !== "Custom") refuse("InvalidArgument");
  const format = new Map<string, unknown>();
  sheet.conditional.push({ area: { row, column, rows, columns }, format });
  return { on, format };
}

export const CONDITIONAL_TYPES = {
  ConditionalFormatCollection: { changes: { Add: (on, [type]) => object("ConditionalFormat", add(on, type)) } },
  ConditionalFormat: { parts: { Custom: (on) => object("CustomConditionalFormat", on) } },
  CustomConditionalFormat: {
    parts: {
      Rule: (on) => object("ConditionalFormatRule", on),
      Format: (on) => object("ConditionalRangeFormat", on),
    },
  },
  ConditionalFormatRule: { properties: kept("", "Formula") },
  ConditionalRangeFormat: {
    parts: {
      Font: (on) => object("ConditionalRangeFont", on),
      Fill: (on) => object("ConditionalRangeFill", on),
    },
  },
  ConditionalRangeFont: { properties: kept("font.", "Color", "Bold") },
  ConditionalRangeFill: { properties: kept("fill.", "Color") },
} satisfies SomeTypes;
