/** A sheet of a weather file or a logger's file: where it is from, what was found in it, its rows, formulas that use them. */
import type { SheetCell, StarterSheet } from "../../sheets/sheet";
import { columnPlace } from "../../sheets/recoverySizing/year";
import { sheetText } from "../reader/reference";
import type { RecordedFile } from "./readFile";
import { factRow, linesOf, newPage, noteLines, recordedTable, textCell, type Page } from "./recordedPage";

/** Where the sheet goes. */
export interface RecordedPlace {
  /** The name that the sheet will have. */
  readonly title: string;
  /** The file's name. */
  readonly file: string;
  /** The workbook has POOL.YEAR's inputs under the name YearInputs. */
  readonly hasYearInputs: boolean;
}

/** The sizing sheet's name of the block that POOL.YEAR takes. */
export const YEAR_INPUTS_NAME = "YearInputs";
/** Rows that CLIMATE.CHECK may take. */
const CHECKS = 16;
const WIDTHS = [28, 14, 18, 18, 18, 18, 21];

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
  at.next(
    textCell(file.kind === "weather" ? `Weather: ${file.station || name}` : `Log: ${file.station || name}`, "Title"),
  );
  at.next(textCell(`Read from ${name} on this computer; nothing was sent anywhere.`, "Explanatory Text"));
  at.next();
  factRow(at, "Station", file.station);
  let latitude: number | undefined;
  if (file.kind === "weather") {
    latitude = at.next(
      textCell("Latitude"),
      { content: file.latitude ?? "", style: "Input" },
      textCell(file.latitude === undefined ? "degrees, south negative: type it here" : "degrees, south negative"),
    );
    factRow(at, "Longitude", file.longitude, "degrees, west negative");
    factRow(at, "Altitude", file.altitude, "m");
    factRow(at, "Time zone", file.utc, "h from universal time");
  }
  linesOf(bareSource(file)).forEach((line, place) =>
    at.next(place === 0 ? textCell("Source") : undefined, textCell(line)),
  );
  linesOf(file.period || "the file doesn't say").forEach((line, place) =>
    at.next(place === 0 ? textCell("Period") : undefined, textCell(line)),
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
    cells[`A${row}`] = textCell(label);
    cells[`B${row}`] = { content: `=${total}${by}`, style: "Calculation", format: "#,##0" };
    cells[`C${row}`] = textCell(unit);
  });
}

/** The area's place depends on the rows above it, which depend on nothing below: the sheet is laid out once. */
export function recordedSheet(file: RecordedFile, { title, file: name, hasYearInputs }: RecordedPlace): StarterSheet {
  const at = newPage();
  const isWeather = file.kind === "weather";
  const latitude = head(at, file, name);
  noteLines(
    at,
    "Found in the file, left out and filled",
    file.faults,
    "Nothing: no gap, and the checks of the file are fine.",
  );
  if (isWeather) noteLines(at, "To bear in mind", [TYPICAL], "");
  else if (file.hasWater) noteLines(at, "To bear in mind", [WATER_PIPE], "");
  at.next(textCell("To use these rows", "Heading 3"));
  const use = at.next(textCell(""));
  const rest = at.next(textCell(""));
  at.next();
  const year =
    isWeather && hasYearInputs
      ? at.next(textCell("The sizing sheet's pool with this weather", "Heading 3"))
      : undefined;
  if (year !== undefined) at.skip(YEAR_LINES.length + 1);
  const check = isWeather ? at.next(textCell("Check of the rows", "Heading 3")) : undefined;
  if (isWeather) at.skip(CHECKS);
  const tableHead = at.next(textCell(isWeather ? "Rows" : "Readings", "Heading 2"));
  const area = recordedTable(at, file.rows);
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
    cells[`A${use}`] = textCell(
      `=WARMBACK.POOL.YEAR(${hasYearInputs ? YEAR_INPUTS_NAME : "inputs"},${full})`,
      "Output",
    );
    cells[`A${rest}`] = textCell(
      hasYearInputs
        ? "YearInputs are those of the sizing sheet; its year with this weather follows. POOL.HOURS and POOL.SPREAD take the rows too."
        : "inputs: the block of POOL.YEAR, as on the sizing sheet. POOL.HOURS and POOL.SPREAD take the rows too.",
      "Explanatory Text",
    );
    if (year !== undefined) yearCells(cells, year, dollars(area));
  } else {
    cells[`A${use}`] = textCell(full, "Output");
    cells[`A${rest}`] = textCell(
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
