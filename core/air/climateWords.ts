/** Columns of a climate table by the names used in weather files. */
import { normalizeKey } from "../kernel/define/argument";

/** Meanings of a column head; "high" and "low" are a day's highest and lowest temperature. */
export type ClimateWord =
  | "air"
  | "high"
  | "low"
  | "swing"
  | "humidity"
  | "dew point"
  | "vapour pressure"
  | "wind"
  | "sun"
  | "cloud"
  | "pressure"
  | "mains";

const HEADS: Readonly<Record<ClimateWord, string>> = {
  air: "air temperature|mean air|mean|dry bulb|dry-bulb temperature|Tdb|DBT|T|temp|temperature|temp_air|T2m",
  high: "high|daily high|mean daily maximum|Tmax|max",
  low: "low|daily low|mean daily minimum|Tmin|min",
  swing: "swing|daily swing|temperature swing|diurnal range",
  humidity: "humidity|mean humidity|relative humidity|rh|RHum",
  "dew point": "dew point|dew-point temperature|Tdp|dewpoint|DPT",
  "vapour pressure": "mean vapour pressure|vapor pressure",
  wind: "wind at 10 m|wind|wind speed|wind 10 m|WS|WS10m|Wspd",
  sun: "sun|sun per day|daily sun|sun a day|global horizontal|global horizontal irradiance|global horizontal radiation|GHI|G(h)",
  cloud: "cloud|cloud tenths|opaque cloud|opaque sky cover",
  pressure: "pressure|station pressure|atmospheric pressure|SP",
  mains: "mains|mains water|mains temperature",
};

const WORDS: ReadonlyMap<string, ClimateWord> = new Map(
  (Object.entries(HEADS) as [ClimateWord, string][]).flatMap(([word, heads]) =>
    [word, ...heads.split("|")].map((head) => [normalizeKey(head), word] as const),
  ),
);

/** The column that a head names, without its unit; undefined for any other head. */
export function climateWord(head: string): ClimateWord | undefined {
  return WORDS.get(normalizeKey(head));
}

/** Mean and swing of a day from its highest and lowest temperature, K. */
export function meanAndSwing(high: number, low: number): { readonly air: number; readonly swing: number } {
  return { air: (high + low) / 2, swing: high - low };
}
