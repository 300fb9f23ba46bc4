/** How cells look, and what may be typed into them: Excel.RangeFormat, RangeBorder, DataValidation and the like. */
import { object, plain, type ObjectType, type Property, type SomeTypes } from "../host/objects";
import { isEditable } from "../model/cells";
import { checkValidation, refuse } from "../model/limits";
import { formatOf } from "../model/workbook";
import type { FormatTarget, RangeTarget } from "./targets";

const lower = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

function put({ on, prefix }: FormatTarget, name: string, value: unknown): void {
  const { sheet, row, column, rows, columns } = on;
  if (sheet.protection !== undefined && !isEditable(sheet, on)) refuse("AccessDenied");
  sheet.formats.push({ area: { row, column, rows, columns }, name: prefix + lower(name), value });
}

const kept = (names: readonly string[]): Readonly<Record<string, Property<FormatTarget>>> =>
  plain<FormatTarget>(names, ({ on, prefix }, name) => formatOf(on.sheet, on, prefix + lower(name)) ?? null, put);

const part = (...properties: readonly string[]): ObjectType<FormatTarget> => ({ properties: kept(properties) });

const EDGES = [
  ...["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight"],
  ...["InsideVertical", "InsideHorizontal", "DiagonalDown", "DiagonalUp"],
];

const FORMATS = ["WrapText", "ColumnWidth", "RowHeight", "IndentLevel", "VerticalAlignment", "HorizontalAlignment"];

export const FORMAT_TYPES = {
  RangeFormat: {
    properties: plain<RangeTarget>(
      FORMATS,
      (on, name) => formatOf(on.sheet, on, lower(name)) ?? null,
      (on, name, value) => put({ on, prefix: "" }, name, value),
    ),
    parts: {
      Borders: (on) => object("RangeBorderCollection", on),
      Fill: (on) => object("RangeFill", { on, prefix: "fill." }),
      Font: (on) => object("RangeFont", { on, prefix: "font." }),
      Protection: (on) => object("FormatProtection", { on, prefix: "" }),
    },
  },
  RangeBorderCollection: {
    item: (on, edge) =>
      EDGES.includes(String(edge))
        ? object("RangeBorder", { on, prefix: `${String(edge)}.` })
        : refuse("InvalidArgument"),
  },
  RangeBorder: part("Color", "Style", "Weight"),
  RangeFill: part("Color"),
  RangeFont: part("Bold", "Italic", "Color", "Size", "Name"),
  FormatProtection: part("Locked", "FormulaHidden"),
  DataValidation: {
    properties: plain<RangeTarget>(
      ["Rule", "Prompt", "ErrorAlert", "IgnoreBlanks"],
      (on, name) => formatOf(on.sheet, on, lower(name)) ?? null,
      (on, name, value) => {
        checkValidation(lower(name), value);
        put({ on, prefix: "" }, name, value);
      },
    ),
  },
} satisfies SomeTypes;
