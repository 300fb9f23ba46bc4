/** A sheet of a weather file or a logger's file: where it is from, what was found in it, its rows, formulas that use them. */
import type { SheetCell, StarterSheet } from "../../sheets/sheet";
import { columnPlace } from "../../sheets/recoverySizing/year";
import { sheetText } from "../reader/reference";
import type { RecordedFile } from "./readFile";

/** Where the sheet goes. */
export interface RecordedPlace {
  /** The name that the sheet will have. */
  readonly title: string;
  /** The file's name. */
  readonly file: string;
  /** The workbook has POOL.YEAR's inputs under the name YearInputs. */
  readonly hasYearInputs: boolean;
}

/** Letters in which a sentence is broken into lines over the columns of the table. */
const LINE = 100;
/** The sizing sheet's name of the block that POOL.YEAR takes. */
export const YEAR_INPUTS_NAME = "YearInputs";
const COLUMNS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
/** Rows that CLIMATE.CHECK may take. */
const CHECKS = 16;
const WIDTHS = [28, 14, 18, 18, 18, 18, 21];

/** A sentence as lines. */
function linesOf(text: string): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && line.length + word.length >= LINE) {
      lines.push(line);
      line = "";
    }
    line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

/** Cells from the top down. */
function page() {
  const cells: Record<string, SheetCell> = {};
  let row = 0;
  return {
    cells,
    next: (...line: readonly (SheetCell | undefined)[]): number => {
      row += 1;
      line.forEach((cell, at) => {
        if (cell !== undefined) cells[`${COLUMNS[at] ?? "A"}${row}`] = cell;
      });
      return row;
    },
    skip: (rows: number): void => void (row += rows),
  };
}
type Page = ReturnType<typeof page>;

const text = (content: string, style?: SheetCell["style"]): SheetCell => ({
  content,
  text: true,
  ...(style !== undefined && { style }),
});

function fact(at: Page, label: string, value: string | number | undefined, unit = ""): number {
  const shown = value ?? "";
  const cell: SheetCell =
    typeof shown === "number"
      ? { content: shown, style: "Input" }
      : text(shown === "" ? "the file doesn't say" : shown);
  return at.next(text(label), cell, unit === "" ? undefined : text(unit));
}

function said(at: Page, title: string, sentences: readonly string[], none: string): void {
  at.next(text(title, "Heading 3"));
  for (const sentence of sentences.length > 0 ? sentences : [none])
    linesOf(sentence).forEach((line, place) => at.next(text(place === 0 ? line : `    ${line}`)));
  at.next();
}

/** The table's rows; their first column is a date where it is a time. */
function table(at: Page, rows: RecordedFile["rows"]): string {
  const [heads = [], ...body] = rows;
  const first = at.next(...heads.map((head) => text(String(head), "Heading 3")));
  const isTime = heads[0] === "time";
  let last = first;
  for (const row of body)
    last = at.next(
      ...row.map((content, place): SheetCell | undefined =>
        content === "" ? undefined : { content, ...(isTime && place === 0 ? { format: "yyyy-mm-dd hh:mm" } : {}) },
      ),
    );
  return `A${first}:${COLUMNS[heads.length - 1] ?? "A"}${last}`;
}

const dollars = (area: string): string => area.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");

/** Letters and figures of a station, as a name may hold them. */
const nameOf = (station: string): string =>
  station.replace(/[^A-Za-z0-9]+(.)?/g, (_, next: string = "") => next.toUpperCase()).slice(0, 40);

/** "Weather Denver Intl Ap": no sign that a sheet's name can't have. */
export function recordedTitle(file: RecordedFile, name: string): string {
  const what = file.kind === "weather" ? "Weather" : "Log";
  const place = (file.station.split(",")[0] ?? "").trim() || name.replace(/\.[a-z0-9.]+$/i, "");
  return `${what} ${place}`
    .replace(/[\\/?*[\]:']+/g, " ")
    .replace(/\s+/g, " ")
    .trim()
    .slice(0, 31)
    .trim();
}

/** The source without the period, which has a cell of its own. */
export const bareSource = ({ source, period }: RecordedFile): string =>
  period === "" ? source : source.replace(`; ${period}`, "");

function head(at: Page, file: RecordedFile, name: string): number | undefined {
  at.next(text(file.kind === "weather" ? `Weather: ${file.station || name}` : `Log: ${file.station || name}`, "Title"));
  at.next(text(`Read from ${name} on this computer; nothing was sent anywhere.`, "Explanatory Text"));
  at.next();
  fact(at, "Station", file.station);
  let latitude: number | undefined;
  if (file.kind === "weather") {
    latitude = at.next(
      text("Latitude"),
      { content: file.latitude ?? "", style: "Input" },
      text(file.latitude === undefined ? "degrees, south negative: type it here" : "degrees, south negative"),
    );
    fact(at, "Longitude", file.longitude, "degrees, west negative");
    fact(at, "Altitude", file.altitude, "m");
    fact(at, "Time zone", file.utc, "h from universal time");
  }
  linesOf(bareSource(file)).forEach((line, place) => at.next(place === 0 ? text("Source") : undefined, text(line)));
  linesOf(file.period || "the file doesn't say").forEach((line, place) =>
    at.next(place === 0 ? text("Period") : undefined, text(line)),
  );
  at.next();
  return latitude;
}

const TYPICAL =
  "A typical year is for sums and comparisons, not for the hottest or coldest hours; a station some distance away has another sun, wind and night.";
const WATER_PIPE =
  "A sensor in the pipe reads the pump room while the pump is off, and one in the sun reads the sun: use hours with the pump running.";

/** Totals of the year: label, column of POOL.YEAR, its unit, what it is divided by. */
const YEAR_LINES = [
  ["Heat taken by the pool", "heatTaken", "million BTU", "/1000000"],
  ["Warm days without", "warmDaysWithout", "day", ""],
  ["Warm days with", "warmDaysWith", "day", ""],
  ["Back-up without", "backUpWithout", "million BTU", "/1000000"],
  ["Back-up with", "backUpWith", "million BTU", "/1000000"],
  ["Money saved", "moneySaved", "money", ""],
] as const;
/** The year's row follows a heading and twelve months. */
const TOTAL_ROW = 14;

function yearCells(cells: Record<string, SheetCell>, above: number, area: string): void {
  YEAR_LINES.forEach(([label, column, unit, by], at) => {
    const row = above + 1 + at;
    const total = `INDEX(WARMBACK.POOL.YEAR(${YEAR_INPUTS_NAME},${area}),${TOTAL_ROW},${columnPlace("POOL.YEAR", column)})`;
    cells[`A${row}`] = text(label);
    cells[`B${row}`] = { content: `=${total}${by}`, style: "Calculation", format: "#,##0" };
    cells[`C${row}`] = text(unit);
  });
}

/** The area's place depends on the rows above it, which depend on nothing below: the sheet is laid out once. */
export function recordedSheet(file: RecordedFile, { title, file: name, hasYearInputs }: RecordedPlace): StarterSheet {
  const at = page();
  const isWeather = file.kind === "weather";
  const latitude = head(at, file, name);
  said(
    at,
    "Found in the file, left out and filled",
    file.faults,
    "Nothing: no gap, and the checks of the file are fine.",
  );
  if (isWeather) said(at, "To bear in mind", [TYPICAL], "");
  else if (file.hasWater) said(at, "To bear in mind", [WATER_PIPE], "");
  at.next(text("To use these rows", "Heading 3"));
  const use = at.next(text(""));
  const rest = at.next(text(""));
  at.next();
  const year =
    isWeather && hasYearInputs ? at.next(text("The sizing sheet's pool with this weather", "Heading 3")) : undefined;
  if (year !== undefined) at.skip(YEAR_LINES.length + 1);
  const check = isWeather ? at.next(text("Check of the rows", "Heading 3")) : undefined;
  if (isWeather) at.skip(CHECKS);
  const tableHead = at.next(text(isWeather ? "Rows" : "Readings", "Heading 2"));
  const area = table(at, file.rows);
  const full = `${sheetText(title)}!${dollars(area)}`;
  const { cells } = at;
  if (latitude !== undefined && check !== undefined) {
    const call = `WARMBACK.CLIMATE.CHECK(${dollars(area)},$B$${latitude},"SI")`;
    cells[`A${check + 1}`] = {
      content:
        file.kind === "weather" && file.latitude === undefined
          ? `=IF(LEN($B$${latitude})=0,"Type the latitude above.",${call})`
          : `=${call}`,
    };
    cells[`A${use}`] = text(`=WARMBACK.POOL.YEAR(${hasYearInputs ? YEAR_INPUTS_NAME : "inputs"},${full})`, "Output");
    cells[`A${rest}`] = text(
      hasYearInputs
        ? "YearInputs are those of the sizing sheet; its year with this weather follows. POOL.HOURS and POOL.SPREAD take the rows too."
        : "inputs: the block of POOL.YEAR, as on the sizing sheet. POOL.HOURS and POOL.SPREAD take the rows too.",
      "Explanatory Text",
    );
    if (year !== undefined) yearCells(cells, year, dollars(area));
  } else {
    cells[`A${use}`] = text(full, "Output");
    cells[`A${rest}`] = text(
      "The range of the log with its header, for functions that take a log.",
      "Explanatory Text",
    );
  }
  const label = nameOf((file.station || name).split(",")[0] ?? "");
  const end =
    isWeather && file.rows.length > 13 ? `G${tableHead - 1}` : area.split(":")[1]?.replace(/^[A-F](?=\d)/, "G");
  return {
    id: "recorded",
    name: title,
    summary: name,
    widths: WIDTHS,
    cells,
    names: { [`${isWeather ? "Weather" : "Log"}_${label}`]: dollars(area) },
    frozenRows: 1,
    print: {
      area: `A1:${end ?? "G1"}`,
      landscape: false,
      fitToWidth: true,
      titleRows: "1:1",
      footer: "&A",
      footerLeft: "&D  &F",
      footerRight: "Page &P of &N",
    },
  };
}

/** The formula or the range to use, as the sheet shows it. */
export const usedAs = (sheet: StarterSheet): string =>
  Object.values(sheet.cells)
    .filter(({ style }) => style === "Output")
    .map(({ content }) => String(content))[0] ?? "";
