/** What a sheet has beside its cells: frozen rows, page set-up, pictures. */
import { NOTHING, object, objectOrNull, plain, type Property, type SomeTypes } from "../host/objects";
import { refuse } from "../model/limits";
import type { SheetModel } from "../model/workbook";
import type { ShapeTarget } from "./targets";

const lower = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

/** @throws HostError AccessDenied on a protected sheet */
function put(sheet: SheetModel, name: string, value: unknown): void {
  if (sheet.protection !== undefined) refuse("AccessDenied");
  sheet.settings.set(name, value);
}

const settings = (...names: readonly string[]): Readonly<Record<string, Property<SheetModel>>> =>
  plain<SheetModel>(
    names,
    (sheet, name) => sheet.settings.get(lower(name)) ?? null,
    (sheet, name, value) => put(sheet, lower(name), value),
  );

const setting = (name: string) => ({
  [`Set${name}`]: (sheet: SheetModel, [value]: readonly unknown[]) => {
    put(sheet, lower(name), value);
    return NOTHING;
  },
});

/** Base 64 of the bytes that every PNG begins with. */
const PNG = "iVBORw0KGgo";

const SHAPE_NAMES = ["Name", "AltTextDescription", "AltTextTitle", "LockAspectRatio", "Left", "Top"];

/** Shapes keep their proportions unless told otherwise: then width and height change together. */
function resize({ sheet, shape }: ShapeTarget, name: "width" | "height", value: unknown): void {
  if (sheet.protection !== undefined) refuse("AccessDenied");
  const other = name === "width" ? "height" : "width";
  if (shape.get("lockAspectRatio") === true)
    shape.set(other, (Number(shape.get(other)) * Number(value)) / Number(shape.get(name)));
  shape.set(name, value);
}

function addImage(sheet: SheetModel, data: unknown): ShapeTarget {
  if (sheet.protection !== undefined) refuse("AccessDenied");
  if (!String(data).startsWith(PNG)) refuse("InvalidArgument");
  const number = sheet.shapes.length + 1;
  const shape = new Map<string, unknown>([
    ["id", `{shape ${String(number)}}`],
    ["data", data],
    ["name", `Picture ${String(number)}`],
    ["width", 100],
    ["height", 50],
    ["lockAspectRatio", true],
  ]);
  sheet.shapes.push(shape);
  return { sheet, shape };
}

const find = (sheet: SheetModel, key: unknown): ShapeTarget | undefined => {
  const shape = sheet.shapes.find((one) => one.get("id") === key || one.get("name") === key);
  return shape && { sheet, shape };
};

const MARGIN_NAMES = ["LeftMargin", "RightMargin", "TopMargin", "BottomMargin"] as const;

/** Adds a break above a range's first row. */
function addBreak(sheet: SheetModel, place: unknown): number {
  const { row } = (place as { target: { row: number } }).target;
  const breaks = (sheet.settings.get("rowBreaks") as readonly number[] | undefined) ?? [];
  put(sheet, "rowBreaks", [...breaks, row + 1]);
  return row;
}

export const SHEET_PART_TYPES = {
  WorksheetFreezePanes: {
    changes: {
      FreezeRows(sheet, [count]) {
        put(sheet, "frozenRows", count);
        return NOTHING;
      },
      FreezeAt(sheet, [range]) {
        const { rows, columns } = (range as { target: { rows: number; columns: number } }).target;
        put(sheet, "frozenRows", rows);
        put(sheet, "frozenColumns", columns);
        return NOTHING;
      },
    },
  },
  PageLayout: {
    properties: settings("Orientation", "Zoom", "PaperSize", "CenterHorizontally", ...MARGIN_NAMES),
    parts: { HeadersFooters: (sheet) => object("HeaderFooterGroup", sheet) },
    changes: { ...setting("PrintArea"), ...setting("PrintTitleRows"), ...setting("PrintTitleColumns") },
  },
  PageBreakCollection: {
    changes: { Add: (sheet, [place]) => object("PageBreak", addBreak(sheet, place)) },
  },
  PageBreak: {},
  HeaderFooterGroup: { parts: { DefaultForAllPages: (sheet) => object("HeaderFooter", sheet) } },
  HeaderFooter: {
    properties: settings("CenterFooter", "LeftFooter", "RightFooter", "CenterHeader", "LeftHeader", "RightHeader"),
  },
  ShapeCollection: {
    items: (sheet) => sheet.shapes.map((shape) => object("Shape", { sheet, shape })),
    item: (sheet, key) => objectOrNull("Shape", find(sheet, key)) ?? undefined,
    methods: { GetItemOrNullObject: (sheet, [key]) => objectOrNull("Shape", find(sheet, key)) },
    changes: { AddImage: (sheet, [data]) => object("Shape", addImage(sheet, data)) },
  },
  Shape: {
    id: ({ shape }) => String(shape.get("id")),
    properties: {
      ...plain<ShapeTarget>(
        SHAPE_NAMES,
        ({ shape }, name) => shape.get(lower(name)) ?? null,
        ({ sheet, shape }, name, value) => {
          if (sheet.protection !== undefined) refuse("AccessDenied");
          shape.set(lower(name), value);
        },
      ),
      Id: { get: ({ shape }) => shape.get("id") },
      Width: { get: ({ shape }) => shape.get("width"), set: (on, value) => resize(on, "width", value) },
      Height: { get: ({ shape }) => shape.get("height"), set: (on, value) => resize(on, "height", value) },
    },
    changes: {
      Delete({ sheet, shape }) {
        sheet.shapes.splice(sheet.shapes.indexOf(shape), 1);
        return NOTHING;
      },
    },
  },
} satisfies SomeTypes;
