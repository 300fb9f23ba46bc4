/** EPW: eight header lines, then rows of 35 fields; hour 1 ends at 01:00 standard time. */
import {
  HOURS,
  believed,
  emptyHours,
  given,
  hourOfYear,
  cellNumber,
  yearsText,
  type Quantity,
  type WeatherFile,
} from "./hours";
import { splitLine } from "./table";

interface Field {
  readonly at: number;
  /** From here on a value marks missing data. */
  readonly missing: number;
  readonly factor: number;
}

/** Fields counted from 0, after the EnergyPlus data dictionary. */
const FIELDS: Readonly<Record<Quantity, Field>> = {
  air: { at: 6, missing: 99.9, factor: 1 },
  dewPoint: { at: 7, missing: 99.9, factor: 1 },
  humidity: { at: 8, missing: 999, factor: 0.01 },
  pressure: { at: 9, missing: 999_999, factor: 0.001 },
  sun: { at: 13, missing: 9999, factor: 1 },
  wind: { at: 21, missing: 999, factor: 1 },
  cloud: { at: 23, missing: 99, factor: 1 },
};
const NEEDED_FIELDS = 22;
const ABOVE_AIR = 10;
const TOTAL_COVER = 22;

export const isEpw = (lines: readonly string[]): boolean => /^LOCATION,/i.test(lines[0] ?? "");

interface Placed {
  readonly cells: readonly string[];
  readonly hour: number;
}

/** Rows by their hour of the year, and what didn't fit. */
function placeRows(lines: readonly string[]) {
  const placed: Placed[] = [];
  const years = new Set<number>();
  let [leap, short, lost] = [0, 0, 0];
  for (const line of lines) {
    const cells = line.split(",");
    const [year = 0, month = 0, day = 0, end = 0] = cells.slice(0, 4).map(Number);
    if (cells.length < NEEDED_FIELDS) short++;
    else if (month === 2 && day === 29) leap++;
    else {
      const hour = hourOfYear(month, day, end - 1);
      if (hour === undefined || end > 24) lost++;
      else {
        years.add(year);
        placed.push({ cells, hour });
      }
    }
  }
  return { placed, years, leap, short, lost };
}

function remarksOf({ placed, leap, short, lost }: ReturnType<typeof placeRows>): readonly string[] {
  const hours = new Set(placed.map(({ hour }) => hour)).size;
  return [
    ...(leap > 0 ? [`29 February left out (${leap} hours)`] : []),
    ...(short > 0 ? [`${short} rows end before the wind and were passed over`] : []),
    ...(lost > 0 ? [`${lost} rows have no month, day and hour and were passed over`] : []),
    ...(placed.length > hours ? [`${placed.length - hours} hours appear twice: the last of each was taken`] : []),
  ];
}

export function readEpw(lines: readonly string[]): WeatherFile {
  const location = splitLine(lines[0] ?? "", ",");
  const header = lines.findIndex((line) => /^DATA PERIODS/i.test(line));
  if (header < 0) throw new Error("EPW: no line DATA PERIODS above the rows");
  if ((given((lines[header] ?? "").split(",")[2]) ?? 1) !== 1)
    throw new Error("EPW: several records an hour; only hourly files are read");
  const rows = placeRows(lines.slice(header + 1).filter((line) => line.trim() !== ""));
  const { placed } = rows;
  const read = ({ at, missing, factor }: Field, quantity: Quantity): Float64Array => {
    const values = emptyHours();
    for (const { cells, hour } of placed) {
      const value = cellNumber(cells[at]);
      values[hour] = value >= missing ? Number.NaN : believed(quantity, factor * value);
    }
    return values;
  };
  const hours = Object.fromEntries(
    (Object.entries(FIELDS) as [Quantity, Field][]).map(([quantity, field]) => [quantity, read(field, quantity)]),
  );
  const remarks = [...remarksOf(rows)];
  if (hours["cloud"]?.every(Number.isNaN)) {
    const total = read({ at: TOTAL_COVER, missing: 99, factor: 1 }, "cloud");
    if (total.some((each) => !Number.isNaN(each))) {
      hours["cloud"] = total;
      remarks.push("opaque cloud is missing: the total cover was taken, which makes the sky warmer");
    }
  }
  const night = new Uint8Array(HOURS);
  for (const { cells, hour } of placed) night[hour] = cellNumber(cells[ABOVE_AIR]) === 0 ? 1 : 0;
  const comment = splitLine(lines.find((line) => /^COMMENTS 1/i.test(line)) ?? "", ",")
    .slice(1)
    .join(", ");
  return {
    station: [location[1], location[2], location[3]].filter((each) => each && each !== "-").join(", "),
    latitude: given(location[6]),
    longitude: given(location[7]),
    utc: given(location[8]),
    altitude: given(location[9]),
    source: [`EPW`, location[4], location[5] && `WMO ${location[5]}`, comment.slice(0, 160), yearsText(rows.years)]
      .filter((each) => each)
      .join("; "),
    period: yearsText(rows.years),
    hours,
    remarks,
    night,
  };
}
