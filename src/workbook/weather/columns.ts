/** Columns of a table of weather by their names, and the units of their numbers. */
import type { Quantity } from "./hours";

const NAMES: Readonly<Record<Quantity | "total" | Time, string>> = {
  air: "drybulb drybulbtemperature drybulbtemp db tdb ta t2m temp temperature airtemp airtemperature tempair tout oat outdoortemp outdoortemperature outsidetemp tempout hourlydrybulbtemperature t air",
  dewPoint: "dewpoint dewpointtemperature dewpointtemp tdp dp td t2mdew hourlydewpointtemperature dewpt",
  humidity:
    "rh relhum relativehumidity humidity rhum rh2m hum outdoorhumidity outhum outsidehumidity hourlyrelativehumidity",
  sun: "ghi globalhorizontal globalhorizontalirradiance globalhorizontalradiation glohorzrad gh solarrad solarradiation allskysfcswdwn sun globalradiation globalhorizontalw/m2",
  wind: "wspd windspeed windspd ws10m ws ff wind windat10m wind10m hourlywindspeed",
  cloud: "opqcld opaqueskycover opqskycvr opaquecloud cloudopaque",
  total: "totcld totskycvr totalskycover cloud cloudcover skycover n",
  pressure: "pressure stationpressure sp ps atmospressure atmosphericpressure hourlystationpressure barometer",
  date: "date datemm/dd/yyyy localdate day/month/year",
  time: "time timehh:mm hh:mm localtime hourminute",
  stamp:
    "datetime timestamp dateandtime date&time date/time datehour localtimestamp timeutc timestamputc datetimeutc utc",
  year: "year yyyy yr",
  month: "month mo mm",
  day: "day dy dd",
  hour: "hour hr hh",
  minute: "minute min",
};

export type Time = "date" | "time" | "stamp" | "year" | "month" | "day" | "hour" | "minute";
export type Word = Quantity | "total" | "water" | Time;

const WORDS: ReadonlyMap<string, Word> = new Map(
  (Object.entries(NAMES) as [Word, string][]).flatMap(([word, names]) =>
    names.split(" ").map((name): [string, Word] => [name, word]),
  ),
);

const plain = (text: string): string => text.toLowerCase().replace(/[^a-z0-9/:&]/g, "");

/** Units behind an underscore or a blank, as data files write them: air_degC, wind m/s, sun_W_m2, humidity_frac. */
const SUFFIX =
  /[_ ](deg(?:rees?)?[_ ]?[cf]|°?\s?[cfk]|%|[kh]?pa|mbar|m[_/ ]?s|mps|km[_/ ]?h|kph|mph|inhg|hpa|kt|kn(?:ots)?|k?wh?[_/ ]?m[2²]?|mj[_/ ]?m2|frac(?:tion)?|pct|percent|tenths|oktas?)$/i;

const WRITTEN: readonly (readonly [RegExp, string])[] = [
  [/^m[_ ]?s$|^mps$/i, "m/s"],
  [/^km[_ ]?h$/i, "km/h"],
  [/^(k?wh?|mj)[_ ]?m2$/i, "$1/m2"],
  [/^frac(tion)?$/i, "fraction"],
  [/^pct$|^percent$/i, "%"],
  [/^deg[_ ]/i, "deg"],
];

const suffixUnit = (head: string): string => {
  const unit = SUFFIX.exec(head.trim())?.[1] ?? "";
  const written = WRITTEN.find(([spelling]) => spelling.test(unit));
  return written ? unit.replace(...written) : unit;
};

/** The names of a head from the whole to the barest: its unit in brackets, behind a comma or at its end doesn't count. */
function namesOf(head: string): readonly string[] {
  const bare = head.replace(/[([{].*$/, "").trim();
  const first = bare.split(",")[0] ?? "";
  return [head, bare, first, first.trim().replace(SUFFIX, "")].map(plain);
}

const WATER = /^(t?(pool|water)|(pool|water|spa).*t(emp(erature)?)?|t(emp(erature)?)?.*(pool|water))$/;

/** What a head names. */
export function wordOf(head: string): Word | undefined {
  const names = namesOf(head);
  if (names.some((name) => WATER.test(name))) return "water";
  return names.map((name) => WORDS.get(name)).find((word) => word !== undefined);
}

/** Values × factor + shift are in the units of `Hours`. */
interface Scale {
  readonly factor: number;
  readonly shift: number;
  readonly unit: string;
  /** The unit follows from the size of the values. */
  readonly guessed: boolean;
}

const scale = (factor: number, unit: string, shift = 0): Scale => ({ factor, shift, unit, guessed: false });
const FAHRENHEIT = scale(5 / 9, "°F", -160 / 9);

type Spellings = readonly (readonly [RegExp, Scale])[];

const TEMPERATURES: Spellings = [
  [/^(°|deg(rees?)?)?\s*f(ahrenheit)?$/i, FAHRENHEIT],
  [/^(°|deg(rees?)?)?\s*c(elsius)?$/i, scale(1, "°C")],
  [/^k(elvin)?$/i, scale(1, "K", -273.15)],
];

const UNITS: Readonly<Partial<Record<Quantity, Spellings>>> = {
  air: TEMPERATURES,
  dewPoint: TEMPERATURES,
  humidity: [
    [/^(%|percent)/i, scale(0.01, "%")],
    [/^(frac(tion)?|0-1)$/i, scale(1, "a fraction")],
  ],
  sun: [
    [/^wh?\/?m/i, scale(1, "W/m²")],
    [/^kwh?[/-]/i, scale(1000, "kW/m²")],
    [/^mj/i, scale(1e6 / 3600, "MJ/m² an hour")],
    [/^btu/i, scale(3.15459, "BTU/(h·ft²)")],
  ],
  wind: [
    [/^mph$|^mi/i, scale(0.44704, "mph")],
    [/^km\/?h|^kph/i, scale(1 / 3.6, "km/h")],
    [/^kn|^kt/i, scale(1852 / 3600, "knots")],
    [/^m\/?s/i, scale(1, "m/s")],
  ],
  cloud: [
    [/^tenths/i, scale(1, "tenths")],
    [/^okta/i, scale(1.25, "oktas")],
    [/^%/, scale(0.1, "%")],
  ],
  pressure: [
    [/^m(illi)?bar|^hpa/i, scale(0.1, "mbar")],
    [/^kpa/i, scale(1, "kPa")],
    [/^pa/i, scale(0.001, "Pa")],
    [/^in/i, scale(3.386389, "inHg")],
  ],
};

/** The unit in a head: in brackets, behind a comma, or at its end; one that is known before one that isn't. */
export function unitOf(head: string): string {
  const found = [/[([{]\s*([^)\]}]*)/.exec(head)?.[1], /,\s*([^,(]+)/.exec(head)?.[1], suffixUnit(head)].flatMap(
    (unit) => (unit === undefined || unit.trim() === "" ? [] : [unit.trim()]),
  );
  const isKnown = (unit: string): boolean =>
    Object.values(UNITS).some((spellings) => spellings.some(([spelling]) => spelling.test(unit)));
  return found.find(isKnown) ?? found[0] ?? "";
}

/** Units by the middle of the values, where the file names none. */
function bySize(quantity: Quantity, values: readonly number[]): Scale | undefined {
  const sorted = [...values].sort((a, b) => a - b);
  const [middle, most] = [sorted[sorted.length >> 1] ?? 0, sorted.at(-1) ?? 0];
  switch (quantity) {
    case "air":
    case "dewPoint":
      return middle > 200 ? scale(1, "K", -273.15) : most > 60 ? FAHRENHEIT : scale(1, "°C");
    case "humidity":
      return most > 1.5 ? scale(0.01, "%") : scale(1, "a fraction");
    case "pressure":
      if (middle > 20_000) return scale(0.001, "Pa");
      return middle > 400 ? scale(0.1, "mbar") : middle > 40 ? scale(1, "kPa") : scale(3.386389, "inHg");
    case "cloud":
      return most > 10 ? scale(0.1, "%") : most <= 1 ? scale(10, "a fraction") : scale(1, "tenths");
    default:
      return undefined;
  }
}

const PLAIN: Readonly<Partial<Record<Quantity, Scale>>> = { sun: scale(1, "W/m²"), wind: scale(1, "m/s") };

/** The scale of a column: by its unit, else by the size of its values. */
export function scaleOf(quantity: Quantity, unit: string, values: readonly number[]): Scale {
  const spelt = UNITS[quantity]?.find(([spelling]) => spelling.test(unit.trim()))?.[1];
  if (spelt) return spelt;
  return { ...(bySize(quantity, values) ?? PLAIN[quantity] ?? scale(1, "")), guessed: true };
}
