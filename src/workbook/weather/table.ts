/** A table with named columns: TMY3, NSRDB, the EU's typical years, bureaus' and loggers' CSV. */
import { scaleOf, unitOf, wordOf, type Word } from "./columns";
import { QUANTITIES, believed, given, yearsText, type Quantity, type WeatherFile } from "./hours";
import { byHour, placeStamps } from "./resample";
import { stampsOf } from "./stamps";

/** Cells of a line; quoted ones may hold the separator. */
export function splitLine(line: string, separator: string): readonly string[] {
  const cells: string[] = [];
  let cell = "";
  let quoted = false;
  for (const character of line) {
    if (character === '"') quoted = !quoted;
    else if (character === separator && !quoted) {
      cells.push(cell.trim());
      cell = "";
    } else cell += character;
  }
  return [...cells, cell.trim()];
}

export const SEPARATORS = [",", ";", "\t"] as const;
export const MOST_PRELUDE = 60;

export interface Header {
  readonly line: number;
  readonly separator: string;
  readonly heads: readonly string[];
  readonly words: ReadonlyMap<Word, number>;
}

export function headerAt(text: string, line: number, separator: string): Header {
  const heads = splitLine(text, separator);
  const words = new Map<Word, number>();
  heads.forEach((head, at) => {
    const word = wordOf(head);
    if (word !== undefined && !words.has(word)) words.set(word, at);
  });
  return { line, separator, heads, words };
}

export const isQuantity = (word: Word): boolean => (QUANTITIES as readonly string[]).includes(word);

/** The line that names the air, another quantity and a time. */
function findHeader(lines: readonly string[]): Header | undefined {
  for (const [at, text] of lines.slice(0, MOST_PRELUDE).entries())
    for (const separator of SEPARATORS) {
      const header = headerAt(text, at, separator);
      const found = [...header.words.keys()];
      if (header.words.has("air") && found.filter(isQuantity).length > 1 && !found.every(isQuantity)) return header;
    }
  return undefined;
}

/** Position and name in the lines above the header. */
export function placeIn(lines: readonly string[], header: Header) {
  const above = lines.slice(0, header.line);
  const first = splitLine(above[0] ?? "", ",");
  if (/^date \(mm\/dd\/yyyy\)/i.test(header.heads[0] ?? "") && first.length >= 7)
    return {
      station: `${first[1] ?? ""}, ${first[2] ?? ""}`,
      utc: given(first[3]),
      latitude: given(first[4]),
      longitude: given(first[5]),
      altitude: given(first[6]),
      source: `TMY3 CSV; station ${first[0] ?? ""}`,
    };
  const second = splitLine(above[1] ?? "", ",");
  const beside = (name: RegExp): string | undefined => {
    const at = first.findIndex((head) => name.test(head));
    // A head with values below it, or "Station: Fernhill" on a line of its own.
    const isHead = at >= 0 && first.length > 1 && !/[:=]/.test(first[at] ?? "");
    const below = isHead ? second[at] : undefined;
    const line = above.find((each) => name.test(each.trim()) && /[:=,;\t]/.test(each));
    return below ?? line?.replace(/^[^:=,;\t]*[:=,;\t]\s*/, "").replace(/^"|[",;]+$/g, "");
  };
  const number = (name: RegExp): number | undefined => given(/-?\d+(\.\d+)?/.exec(beside(name) ?? "")?.[0]);
  return {
    station: beside(/^"?(station name|station|city|location name|site|name)\b/i) ?? "",
    utc: number(/^"?(local time zone|time zone|timezone|utc offset)/i),
    latitude: number(/^"?lat(itude)?\b/i),
    longitude: number(/^"?lon(g|gitude)?\b/i),
    altitude: number(/^"?(elevation|altitude)\b/i),
    source: [beside(/^"?source\b/i), "table of weather"].filter((each) => each).join("; "),
  };
}

export const isNumber = (cell: string): boolean => cell !== "" && Number.isFinite(Number(cell));

/** Rows of the table, a line of units passed over, decimal commas made points. */
export function rowsBelow(lines: readonly string[], { line, separator, words }: Header) {
  const rows = lines
    .slice(line + 1)
    .filter((text) => text.trim() !== "")
    .map((text) =>
      splitLine(text, separator).map((cell) => (separator === "," ? cell : cell.replace(/^(-?\d+),(\d+)$/, "$1.$2"))),
    );
  const air = words.get("air") ?? [...words].find(([word]) => word === "water" || isQuantity(word))?.[1] ?? 0;
  const units = rows[0] && !isNumber(rows[0][air] ?? "") && /[a-z°%]/i.test(rows[0][air] ?? "") ? rows[0] : undefined;
  return { rows: units ? rows.slice(1) : rows, units };
}

/** Marks of missing data that no weather has. */
const MISSING: ReadonlySet<number> = new Set([-9900, -9999, -999, -99, 999, 9999, 99_999]);

/** 999 mbar is a pressure. */
export const cellReading = (cell: string | undefined, quantity: Quantity): number => {
  const value = cell === undefined || cell === "" ? Number.NaN : Number(cell);
  return MISSING.has(value) && !(quantity === "pressure" && value === 999) ? Number.NaN : value;
};

/** Values of a quantity, row by row, in the units of `Hours`. */
export function tableColumn(
  quantity: Quantity,
  at: number,
  header: Header,
  below: ReturnType<typeof rowsBelow>,
  remarks: string[],
) {
  const raw = below.rows.map((row) => cellReading(row[at], quantity));
  const unit = unitOf(header.heads[at] ?? "") || (below.units?.[at] ?? "");
  const { factor, shift, unit: name, guessed } = scaleOf(quantity, unit, raw.filter(Number.isFinite));
  if (guessed && name !== "") remarks.push(`${header.heads[at] ?? ""}: no unit, taken as ${name}`);
  return raw.map((value) => believed(quantity, factor * value + shift));
}

export function readTable(lines: readonly string[]): WeatherFile {
  const header = findHeader(lines);
  if (header === undefined)
    throw new Error("no EPW, no TMY3, and no line that names a time, the air's temperature and another quantity");
  const place = placeIn(lines, header);
  const below = rowsBelow(lines, header);
  const stamps = stampsOf(below.rows, Object.fromEntries(header.words));
  if (stamps === undefined) throw new Error("the table has no column of dates");
  const remarks = [...stamps.remarks];
  const universal = [...header.words].some(
    ([word, at]) => word in { stamp: 1, time: 1, date: 1 } && /utc|gmt/i.test(header.heads[at] ?? ""),
  );
  const placed = placeStamps(
    stamps.stamps,
    { universal: universal || (place.utc === 0 && place.longitude !== undefined), longitude: place.longitude },
    remarks,
  );
  const { words } = header;
  const hours = Object.fromEntries(
    QUANTITIES.flatMap((quantity) => {
      const at = words.get(quantity) ?? (quantity === "cloud" ? words.get("total") : undefined);
      if (at === undefined) return [];
      if (quantity === "cloud" && !words.has("cloud"))
        remarks.push("no opaque cloud: the total cover was taken, which makes the sky warmer");
      return [[quantity, byHour(tableColumn(quantity, at, header, below, remarks), placed)]];
    }),
  );
  const years = new Set(stamps.stamps.flatMap((stamp) => (stamp ? [stamp.year] : [])));
  return {
    ...place,
    utc: placed.utc ?? place.utc,
    source: [place.source, yearsText(years)].filter((each) => each !== "").join("; "),
    period: yearsText(years),
    hours,
    remarks,
    stampsUnsure: placed.unsure,
  };
}
