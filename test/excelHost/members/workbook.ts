/** Excel.Workbook, its names, and what belongs to the application. */
import { NOTHING, object, objectOrNull, type Given, type SomeTypes } from "../host/objects";
import type { Host } from "../host/objects";
import { checkName, refuse } from "../model/limits";
import { addressOf, boxOf, findSheet, type NameModel } from "../model/workbook";
import { rangeOn } from "./rangeTarget";
import type { NamesTarget, NameTarget, RangeTarget } from "./targets";

/** Several ranges may be selected; the active cell is in the first of them. */
function selectedRanges({ book, inFront }: Host): Given {
  if (!inFront || book.chartSelected) return refuse("InvalidSelection");
  const { sheet, row, column } = book.active;
  const areas = book.selected ?? [{ row, column, rows: 1, columns: 1 }];
  return object("RangeAreas", { areas: areas.map((area) => rangeOn(sheet, area)) });
}

const find = ({ names }: NamesTarget, key: unknown): NameTarget | undefined => {
  const name = names.get(String(key).toLowerCase());
  return name && { names, name };
};

/** What a name is made to mean: a range, or a text such as "=Sheet1!$A$1". */
function meaning(reference: unknown, host: Host): Omit<NameModel, "name"> {
  if (typeof reference === "object" && reference !== null) {
    const { sheet, row, column, rows, columns } = (reference as { target: RangeTarget }).target;
    return { sheet, area: { row, column, rows, columns } };
  }
  const [, title = "", address = ""] = /^=?'?(.+?)'?!(.+)$/.exec(String(reference)) ?? [];
  const [sheet, area] = [findSheet(host.book, title), boxOf(address)];
  return sheet === undefined || area === undefined ? refuse("InvalidArgument") : { sheet, area };
}

function addName(on: NamesTarget, [name, reference]: readonly unknown[], host: Host): Given {
  const text = checkName(name);
  if (find(on, text) !== undefined) refuse("ItemAlreadyExists");
  const model: NameModel = { name: text, ...meaning(reference, host) };
  on.names.set(text.toLowerCase(), model);
  return object("NamedItem", { names: on.names, name: model });
}

/** Names outlive the sheets that they mean: then they mean nothing. */
const rangeOfName = ({ name: { sheet, area } }: NameTarget, { book }: Host): RangeTarget | undefined =>
  book.sheets.includes(sheet) ? rangeOn(sheet, area) : undefined;

function activeCell({ book, inFront }: Host): Given {
  if (!inFront) return refuse("InvalidSelection");
  const { sheet, row, column } = book.active;
  return object("Range", rangeOn(sheet, { row, column, rows: 1, columns: 1 }));
}

/** With a chart selected there is no selected range, by design (OfficeDev/office-js #2268); there still is an active cell. */
const selectedRange = (host: Host): Given => (host.book.chartSelected ? refuse("InvalidSelection") : activeCell(host));

export const BOOK_TYPES = {
  Workbook: {
    properties: { Name: { get: () => "Fernhill Hall.xlsx" } },
    parts: {
      Worksheets: () => object("WorksheetCollection", null),
      Names: (_, { book }) => object("NamedItemCollection", { names: book.names }),
      Tables: (_, { book }) => object("TableCollection", book.sheets),
      Application: () => object("Application", null),
      Protection: () => object("WorkbookProtection", null),
    },
    methods: {
      GetActiveCell: (_, __, host) => activeCell(host),
      GetSelectedRange: (_, __, host) => selectedRange(host),
      GetSelectedRanges: (_, __, host) => selectedRanges(host),
      _RemoveReference: (_, [id], host) => {
        host.references.delete(String(id));
        return NOTHING;
      },
    },
  },
  WorkbookProtection: { properties: { Protected: { get: (_, { book }) => book.structureProtected } } },
  Application: {
    properties: { CalculationMode: { get: () => "Automatic" }, CalculationState: { get: () => "Done" } },
    methods: {
      SuspendScreenUpdatingUntilNextSync: () => NOTHING,
      SuspendApiCalculationUntilNextSync: () => NOTHING,
      Calculate: () => NOTHING,
      CreateWorkbook: (_, [base64], host) => {
        host.created.push(String(base64));
        return object("WorkbookCreated", null);
      },
    },
  },
  WorkbookCreated: { methods: { Open: () => NOTHING } },
  // Excel on the web makes a workbook in one step, asked apart from the workbook that is open.
  WacWorkbook: {
    methods: {
      CreateAndOpenWorkbook: (_, [base64], host) => {
        host.created.push(String(base64));
        return NOTHING;
      },
    },
  },
  NamedItemCollection: {
    items: ({ names }) => [...names.values()].map((name) => object("NamedItem", { names, name })),
    item: (on, key) => objectOrNull("NamedItem", find(on, key)) ?? undefined,
    methods: { GetItemOrNullObject: (on, [key]) => objectOrNull("NamedItem", find(on, key)) },
    changes: { Add: addName },
  },
  NamedItem: {
    id: ({ name: { name } }) => name,
    properties: {
      Name: { get: ({ name: { name } }) => name },
      Type: { get: () => "Range" },
      Visible: { get: () => true },
      Formula: { get: ({ name: { sheet, area } }) => `='${sheet.name}'!${addressOf(area)}` },
    },
    methods: {
      GetRange: (on, _, host) => objectOrNull("Range", rangeOfName(on, host)) ?? refuse("InvalidReference"),
      GetRangeOrNullObject: (on, _, host) => objectOrNull("Range", rangeOfName(on, host)),
    },
    changes: {
      Delete({ names, name }) {
        names.delete(name.name.toLowerCase());
        return NOTHING;
      },
    },
  },
} satisfies SomeTypes;
