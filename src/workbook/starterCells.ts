/** What both adapters need to insert a starter sheet. */
import type { SheetCell, StarterSheet } from "../sheets/sheet";
import { parseCells } from "./reader/reference";

/** Excel's limit for a sheet's name. */
const LONGEST_NAME = 31;

/** The name; if it is taken, the name with the first free number appended. */
export function freeName(name: string, taken: readonly string[]): string {
  const used = new Set(taken.map((one) => one.toLowerCase()));
  for (let number = 1; ; number++) {
    const tail = number === 1 ? "" : ` ${String(number)}`;
    const candidate = name.slice(0, LONGEST_NAME - tail.length) + tail;
    if (!used.has(candidate.toLowerCase())) return candidate;
  }
}

/** A cell and its place. */
export interface Placed {
  readonly row: number;
  readonly column: number;
  readonly cell: SheetCell;
}

/** Names that a starter sheet's inputs ask for. */
export const linkNames = (sheet: StarterSheet): readonly string[] => [
  ...new Set(Object.values(sheet.cells).flatMap(({ link }) => link ?? [])),
];

/** A blank cell behind the name stays blank: it must not read as 0. */
const linkFormula = (name: string): string => `=IF(LEN(${name})=0,"",${name})`;

const rowOf = (address: string): string => address.replace(/^[A-Z]+/, "");

/**
 * The sheet with its linked inputs taken from the workbook's names: such a cell is calculated, and its source says where
 * it comes from. An input whose name the workbook lacks stays as it is.
 */
export function linkedSheet(sheet: StarterSheet, exists: (name: string) => boolean): StarterSheet {
  const links = new Map(
    Object.entries(sheet.cells).flatMap(([address, { link }]) =>
      link !== undefined && exists(link) ? [[address, link] as const] : [],
    ),
  );
  if (links.size === 0) return sheet;
  const rows = new Map([...links].map(([address, name]) => [rowOf(address), name]));
  const cells = Object.entries(sheet.cells).map(([address, cell]): readonly [string, SheetCell] => {
    const name = links.get(address);
    if (name !== undefined) {
      const { format, indent } = cell;
      const look = { ...(format !== undefined && { format }), ...(indent && { indent }) };
      return [address, { content: linkFormula(name), style: "Calculation", ...look }];
    }
    const from = rows.get(rowOf(address));
    return [
      address,
      from !== undefined && cell.style === "Explanatory Text" ? { ...cell, content: `the workbook's ${from}` } : cell,
    ];
  });
  return { ...sheet, cells: Object.fromEntries(cells) };
}

/** A starter sheet's cells with their places; throws if an address isn't one cell. */
export function placedCells(sheet: StarterSheet): readonly Placed[] {
  return Object.entries(sheet.cells).map(([address, cell]) => {
    const area = parseCells(address);
    if (area?.rows !== 1 || area.columns !== 1) throw new Error(`${address} is not the address of one cell`);
    return { row: area.row, column: area.column, cell };
  });
}
