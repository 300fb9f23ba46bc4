/** A starter sheet filled in until its master check says OK, and the ways to break it. */
import { parseCells } from "../../src/workbook/reader/reference";
import type { SheetCell, StarterSheet } from "../../src/sheets/sheet";

type Content = string | number | boolean;

/** By label: what a careful user types, so that every check passes. The last line of a label counts. */
export const FILLED: Readonly<Record<string, Readonly<Record<string, Content>>>> = {
  "Recovery sizing": { "What the survey decided": "GO" },
  "Survey and decision": {
    "Maker consents to the change": "yes",
    "Drain cover marked, whole, not expired": "yes",
    "Equipotential bonding present and checked": "yes",
  },
  "Exchanger inquiry": {
    "Heat at the duty's temperatures": 118_000,
    "UA with the fouling above": 8_000,
    "Outside area of the tube": 66,
    "Water drop at that flow": 2,
    "Refrigerant drop": 3,
    "Design pressure, refrigerant side": 650,
    "Test pressure, refrigerant side": 975,
    "Design pressure, water side": 50,
    "Warmest water allowed": 140,
    "Refrigerant held while it runs": 4,
    "Refrigerant volume": 0.1,
  },
  "Refrigerant side": {
    "Technician certified for this refrigerant": "yes",
    "Refrigerant recovered before opening": "yes",
    "Nitrogen only, regulator and relief fitted": "yes",
    "Water flows through the exchanger, or it is drained": "yes",
    "No flame or spark near the refrigerant": "yes",
  },
  Commissioning: {
    "High-pressure cut-out": "proven",
    "Low-pressure cut-out or freeze sensor": "proven",
    "Flow lost: valve to outdoor, fan on": "proven",
    "Failed sensor: valve to outdoor": "proven",
    "Pool at its high limit: valve to outdoor": "proven",
    "Leaving water at its limit: valve to outdoor": "proven",
    "Power off: valve rests at outdoor": "proven",
    "Heating and defrost: pool mode locked out": "not fitted",
    "Minimum time between changes": "proven",
    "New label with the total charge on the machine": "yes",
    "Exchanger bonded, checked by the electrician": "yes",
    "Owner has manual, diagrams, settings, this sheet": "yes",
    "Winter drain-down shown to the owner": "yes",
    "UA after year 1": 6_700,
  },
};

const PEOPLE = { "Made by": "AB", "Checked by": "CD" } as const;

const labelled = (sheet: StarterSheet, label: string): string => {
  const rows = Object.entries(sheet.cells).filter(([place, { content }]) => place.startsWith("A") && content === label);
  const inputs = rows.map(([place]) => `B${place.slice(1)}`).filter((place) => sheet.cells[place]?.style === "Input");
  const last = inputs.at(-1);
  if (last === undefined) throw new Error(`${sheet.name} has no input "${label}"`);
  return last;
};

/** The sheet as a careful user leaves it. */
export const filledIn = (sheet: StarterSheet): StarterSheet => {
  const cells: Record<string, SheetCell> = { ...sheet.cells };
  for (const [label, content] of Object.entries({ ...PEOPLE, ...FILLED[sheet.name] })) {
    const place = labelled(sheet, label);
    cells[place] = { ...(cells[place] as SheetCell), content };
  }
  return { ...sheet, cells };
};

/** The legend shows what an input looks like. */
const LEGEND_ROW = 3;

const rowOf = (address: string): number => Number(address.replace(/\D/g, ""));

export interface Broken {
  readonly address: string;
  readonly way: "text" | "blank" | "out of range" | "wrong choice";
  readonly content: Content | null;
}

/** What nobody needs: who approved, when, and what a supplier writes in words. */
const isNeeded = (address: string, cell: SheetCell): boolean =>
  cell.style === "Input" && cell.content !== "" && rowOf(address) > LEGEND_ROW;

/** A blank is fine where the sheet came with one. */
const waysOf = (address: string, cell: SheetCell, shipped: SheetCell | undefined): readonly Broken[] => {
  const { content, validation } = cell;
  const blank: Broken = { address, way: "blank", content: null };
  const blanks = shipped?.content === "" && !/^B/.test(address) ? [] : [blank];
  if (validation !== undefined && "list" in validation)
    return [...blanks, { address, way: "wrong choice", content: "banana" }];
  if (typeof content !== "number") return blanks;
  return [...blanks, { address, way: "text", content: "abc" }, { address, way: "out of range", content: -1e9 }];
};

/** Where a blank takes something away instead of leaving it out: a supplier's answer, a reading of later years. */
const MAY_BE_BLANK = /^(UA after year|Outside area of the tube|Refrigerant held|Refrigerant volume|Project$)/;

/** Every way to break every needed input. */
export const brokenInputs = (sheet: StarterSheet, filled: StarterSheet): readonly Broken[] =>
  Object.entries(filled.cells).flatMap(([address, cell]) => {
    if (!isNeeded(address, cell)) return [];
    const label = String(sheet.cells[`A${rowOf(address)}`]?.content ?? "");
    const ways = waysOf(address, cell, sheet.cells[address]);
    return MAY_BE_BLANK.test(label) ? ways.filter(({ way }) => way !== "blank") : ways;
  });

/** Rows with a needed input. */
export const inputRows = (filled: StarterSheet): readonly number[] => [
  ...new Set(
    Object.entries(filled.cells).flatMap(([address, cell]) =>
      isNeeded(address, cell) && !MAY_BE_BLANK.test(String(filled.cells[`A${rowOf(address)}`]?.content ?? ""))
        ? [parseCells(address)?.row ?? 0]
        : [],
    ),
  ),
];

const REFERENCE = /\$?([A-Z])\$?(\d+)(?::\$?([A-Z])\$?(\d+))?(?![\w(])/g;

/** A formula after a row, counted from 1, is deleted: as a spreadsheet rewrites it. */
const withoutRow = (formula: string, row: number): string =>
  formula
    .split(/("(?:[^"]|"")*")/)
    .map((part) =>
      part.startsWith('"')
        ? part
        : part.replace(REFERENCE, (_, column: string, from: string, toColumn?: string, to?: string) => {
            const up = (at: number): number => (at > row ? at - 1 : at);
            const first = Number(from);
            if (toColumn === undefined || to === undefined) return first === row ? "#REF!" : `$${column}$${up(first)}`;
            const last = Number(to);
            if (first === row && last === row) return "#REF!";
            return `$${column}$${first > row ? first - 1 : first}:$${toColumn}$${last >= row ? last - 1 : last}`;
          }),
    )
    .join("");

/** The sheet without a row, counted from 0. */
export const rowDeleted = (sheet: StarterSheet, at: number): StarterSheet => {
  const row = at + 1;
  const moved = (address: string): string => {
    const [, column = "", line = ""] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
    return Number(line) > row ? `${column}${Number(line) - 1}` : address;
  };
  return {
    ...sheet,
    names: Object.fromEntries(
      Object.entries(sheet.names).flatMap(([name, address]) => {
        const refersTo = withoutRow(address, row).replaceAll("$", "");
        return refersTo === "#REF!" ? [] : [[name, refersTo] as const];
      }),
    ),
    cells: Object.fromEntries(
      Object.entries(sheet.cells).flatMap(([address, cell]) => {
        if (Number(address.replace(/\D/g, "")) === row) return [];
        const { content } = cell;
        const formula = typeof content === "string" && content.startsWith("=") && cell.text !== true;
        return [[moved(address), formula ? { ...cell, content: withoutRow(content, row) } : cell] as const];
      }),
    ),
  };
};
