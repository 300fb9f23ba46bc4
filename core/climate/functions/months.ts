import { text } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { ALTITUDE } from "../../kernel/define/glossary";
import { NO_VALUE, quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { valueError } from "../../kernel/values/fault";
import { LATITUDE, LONGITUDE } from "../args";
import { carriedToHeight, distantStation, nearStation, typicalMonths } from "../cautions";
import { NEAREST, monthsAt, stationFor } from "../stations";

/** An invented place in the Rockies. */
const HILL = { place: "nearest", latitude: 39.7, longitude: -105.3, units: "SI" } as const;

export const climateMonths = cellFunction({
  id: "CLIMATE.MONTHS",
  topic: "climate",
  memoised: true,
  summary: "Typical months of a place, as POOL.YEAR takes them: of a named station, or of the nearest.",
  keywords: ["weather", "TMY3", "monthly means", "air temperature", "sun", "wind", "humidity", "city", "location"],
  details: [
    "Place: a station of CLIMATE.PLACES or enough of its name (Miami; Denver, CO). With latitude and longitude any other name, or none, takes the nearest station: cautioned over 300 km (190 mi), #N/A over 1,000 km (620 mi).",
    "With an altitude the air falls by 6.5 K/km from the station's, the vapour pressure with the pressure of the standard atmosphere, at most to saturation; swing, wind and sun stay. Without one nothing is corrected.",
    "Swing: mean daily highest less lowest. Wind at 10 m. Sun on a level surface. Vapour pressure: mean over the hours; humidity times saturation at the month's mean air misses it by 8 to 10 %. POOL.YEAR passes over month, station and distance.",
  ],
  args: {
    place: text("station, or a name of your own with latitude and longitude").default(NEAREST),
    latitude: LATITUDE.optional(),
    longitude: LONGITUDE.optional(),
    altitude: ALTITUDE.describedAs("altitude of the place; left out: the station's").optional(),
  },
  returns: tableResult("typical months", {
    month: wordResult("month"),
    air: quantityResult("temperature", "mean air temperature"),
    swing: quantityResult("temperature difference", "mean daily highest less lowest"),
    humidity: quantityResult("relative humidity", "mean relative humidity"),
    windAt10m: quantityResult("wind speed", "mean wind at 10 m"),
    sun: quantityResult("daily sun", "mean sun of a day on a level surface"),
    vapourPressure: quantityResult("pressure", "mean vapour pressure"),
    station: wordResult("station that it comes from"),
    distance: quantityResult("distance", "distance of the station; blank without latitude and longitude", { or: "" }),
  }),
  facts: { name: "word", apart: "distance", rise: "altitude", airShift: "temperature difference" },
  example: { place: "Miami" },
  cautions: [
    { rule: distantStation, raisedBy: { latitude: 44, longitude: -108, units: "SI" } },
    { rule: nearStation, raisedBy: HILL },
    { rule: carriedToHeight, raisedBy: { ...HILL, altitude: 2200 } },
    { rule: typicalMonths, raisedBy: HILL },
  ],
  checks: [
    ...(
      [
        ["air", 19.42, 0.005],
        ["swing", 8.18, 0.005],
        ["humidity", 0.7087, 0.0001],
        ["windAt10m", 3.307, 0.001],
        ["sun", 3.4841, 0.001],
      ] as const
    ).map(([column, value, tolerance]) => ({
      inputs: { place: "Miami", units: "SI" } as const,
      expected: { row: "Jan", column, value },
      tolerance,
      source: "tmy3" as const,
    })),
    {
      inputs: { place: "nearest", latitude: 40.13, longitude: -105.24, units: "SI" },
      expected: { row: "Jul", column: "station", value: "Broomfield Jeffco Boulder S, CO" },
      source: "tmy3",
    },
  ],
  compute({ place, latitude, longitude, altitude }, { trace, recordFacts }) {
    if ((latitude === undefined) !== (longitude === undefined))
      throw valueError(`${latitude === undefined ? "latitude" : "longitude"}: is blank: a position needs both`);
    const at = latitude === undefined || longitude === undefined ? undefined : { latitude, longitude };
    const { station, name, distance } = stationFor(place, at, trace);
    trace.remark(`Typical months of ${name} (TMY3).`);
    const months = monthsAt(station, altitude, trace);
    const rise = altitude === undefined ? 0 : altitude - station.altitude;
    recordFacts({ name, rise, airShift: -0.0065 * rise, ...(distance === undefined ? {} : { apart: distance }) });
    return months.map((month) => ({ ...month, station: name, distance: distance ?? NO_VALUE }));
  },
});
