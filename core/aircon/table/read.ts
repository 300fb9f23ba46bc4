/** Reads a maker's table of cooling and power from a range. */
import { normalizeKey } from "../../kernel/define/argument";
import { valueError } from "../../kernel/values/fault";
import { describeInput, quoteText, type CellMatrix, type CellScalar } from "../../kernel/values/cellInput";
import { KINDS, show, toBase, type System } from "../../kernel/values/quantity";
import { readQuantityText } from "../../kernel/values/quantityText";
import { COLUMN_KINDS, tableHeadOf, tableUnit, type MakerColumn, type Head } from "./heads";

/** Temperatures in K, air flow in m³/s, capacity and power in W; undefined where the table has no such column. */
export interface TableRow {
  readonly outdoor: number;
  readonly wetBulb: number | undefined;
  readonly stage: string | undefined;
  readonly airflow: number | undefined;
  readonly capacity: number;
  readonly power: number;
}

interface Place extends Head {
  readonly at: number;
}

const WORDS: Readonly<Record<MakerColumn, string>> = {
  outdoor: "outdoor temperature",
  wetBulb: "indoor wet bulb",
  stage: "stage",
  airflow: "airflow",
  capacity: "capacity",
  power: "power",
};

const isEmpty = (cell: CellScalar | undefined): boolean =>
  cell === undefined || cell === null || (typeof cell === "string" && cell.trim() === "");

function placesOf(line: readonly CellScalar[], units: readonly CellScalar[] | undefined): readonly Place[] {
  const places = line.flatMap((cell, at): Place[] => {
    const head = typeof cell === "string" ? tableHeadOf(cell) : undefined;
    const below = units?.[at];
    const unit = head?.unit === "" && typeof below === "string" ? below.trim() : (head?.unit ?? "");
    return head ? [{ column: head.column, unit, at }] : [];
  });
  for (const { column, at } of places) {
    const twin = places.find((other) => other.column === column && other.at > at);
    if (twin)
      throw valueError(
        `table, header: ${quoteText(String(line[at]))} and ${quoteText(String(line[twin.at]))} both read as ${WORDS[column]}: leave one out`,
      );
  }
  const missing = (["outdoor", "capacity", "power"] as const).find(
    (column) => !places.some((p) => p.column === column),
  );
  if (missing)
    throw valueError(
      `table, header: no column reads as ${WORDS[missing]}; the first row names the columns, such as outdoor (°F), wet bulb (°F), stage, airflow (cfm), capacity (MBh), power (kW)`,
    );
  return places;
}

function valueAt(cell: CellScalar, { column, unit }: Place, row: number, system: System): number {
  const kind = COLUMN_KINDS[column as Exclude<MakerColumn, "stage">];
  const where = `table, row ${row}, ${WORDS[column]}`;
  const refuse = (why: string): Error => valueError(`${where}: ${why}`);
  const own = tableUnit(unit);
  const bare = typeof cell === "number" || (typeof cell === "string" && /^[-+.,\d\s]+$/.test(cell));
  if (typeof cell === "number" && own === "") return toBase(cell, KINDS[kind][system]);
  const read = readQuantityText(bare ? `${String(cell)} ${own}`.trim() : String(cell), kind, system);
  if (typeof read === "string") throw refuse(`expected a ${kind}, got ${describeInput(cell)}: ${read}`);
  return read.value;
}

/** COP of air conditioners at any condition lies within these. */
const [LEAST_COP, MOST_COP] = [0.5, 25];

function checkRow({ outdoor, capacity, power }: TableRow, row: number, system: System): void {
  const ratio = capacity / power;
  if (!(capacity > 0 && power > 0 && ratio >= LEAST_COP && ratio <= MOST_COP))
    throw valueError(
      `table, row ${row}: capacity ${show(capacity, "heat rate", system)} and power ${show(power, "electric power", system)} don't fit: name the units in the header, such as MBh, kW or W`,
    );
  if (!(outdoor > 200 && outdoor < 340))
    throw valueError(
      `table, row ${row}: outdoor temperature ${show(outdoor, "temperature", system)} can't be: name its unit in the header`,
    );
}

/** The rows below the header; a key left blank below another repeats it, as merged cells do. */
export function readMakersTable(range: CellMatrix, system: System): readonly TableRow[] {
  const [header = [], second = []] = range;
  // A second line of texts alone holds the units.
  const hasUnits =
    second.some((cell) => !isEmpty(cell)) && second.every((cell) => isEmpty(cell) || !/\d/.test(String(cell)));
  const places = placesOf(header, hasUnits ? second : undefined);
  const above: Partial<Record<MakerColumn, CellScalar>> = {};
  const rows = range.slice(hasUnits ? 2 : 1).flatMap((line, place): TableRow[] => {
    const row = place + (hasUnits ? 3 : 2);
    if (line.every(isEmpty) || places.every(({ at }) => isEmpty(line[at]) || line[at] === 0)) return [];
    const cells = Object.fromEntries(
      places.map(({ column, at }) => {
        const repeats = column !== "capacity" && column !== "power";
        const cell = isEmpty(line[at]) && repeats ? (above[column] ?? null) : (line[at] ?? null);
        if (isEmpty(cell)) throw valueError(`table, row ${row}, ${WORDS[column]}: is blank`);
        above[column] = cell;
        return [column, cell];
      }),
    );
    const read = (column: Exclude<MakerColumn, "stage">): number | undefined => {
      const at = places.find((each) => each.column === column);
      return at && valueAt(cells[column] ?? null, at, row, system);
    };
    const found = {
      outdoor: read("outdoor") ?? Number.NaN,
      wetBulb: read("wetBulb"),
      stage: cells["stage"] === undefined ? undefined : normalizeKey(String(cells["stage"])),
      airflow: read("airflow"),
      capacity: read("capacity") ?? Number.NaN,
      power: read("power") ?? Number.NaN,
    };
    checkRow(found, row, system);
    return [found];
  });
  if (rows.length === 0) throw valueError("table: no rows below the header");
  return rows;
}
