/** The stations: finding one, and its months at a place near it. */
import { lookalike } from "../kernel/call/nearest";
import { standardAtmosphere } from "../kernel/define/pressureBasis";
import { silent, type Trace } from "../kernel/define/steps";
import { notAvailable, valueError } from "../kernel/values/fault";
import { si } from "../kernel/values/quantity";
import { quantityMark } from "../kernel/values/quantityMark";
import { MONTHS } from "../numeric/calendar";
import { vapourPressureAt } from "../pool/year/vapourTable";
import { COLUMNS, DIGITS } from "./data/packing";
import { MONTHLY_MEANS, STATIONS } from "./data/stations";
import { airAtHeight, greatCircle, vapourAtHeight } from "./equations";

export interface Station {
  /** Its place in the list. */
  readonly index: number;
  readonly station: string;
  readonly state: string;
  readonly wmo: string;
  /** Degrees, north positive. */
  readonly latitude: number;
  /** Degrees, east positive. */
  readonly longitude: number;
  /** m */
  readonly altitude: number;
}

export const PLACES: readonly Station[] = STATIONS.split(";").map((line, index) => {
  const [station = "", state = "", wmo = "", ...numbers] = line.split("|");
  const [latitude = 0, longitude = 0, altitude = 0] = numbers.map(Number);
  return { index, station, state, wmo, latitude, longitude, altitude };
});

/** Means of a month, in base units. */
interface Month {
  readonly month: string;
  readonly air: number;
  readonly swing: number;
  readonly humidity: number;
  readonly windAt10m: number;
  readonly sun: number;
  readonly vapourPressure: number;
}

const digitAt = (place: number): number => DIGITS.indexOf(MONTHLY_MEANS.charAt(place));

function unpacked({ index }: Station, month: number): Month {
  const first = 2 * COLUMNS.length * (12 * index + month);
  const [air = 0, swing = 0, humidity = 0, windAt10m = 0, sun = 0, vapour = 0] = COLUMNS.map(
    ({ least, step, power }, column) => {
      const place = first + 2 * column;
      return least + (step * (DIGITS.length * digitAt(place) + digitAt(place + 1))) ** power;
    },
  );
  return {
    month: MONTHS[month] ?? "",
    air: si("temperature", air),
    swing,
    humidity,
    windAt10m,
    sun: si("daily sun", sun),
    vapourPressure: si("pressure", vapour),
  };
}

const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replace(/['’]/g, "")
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");

const nameOf = ({ station, state }: Station): string => `${station}, ${state}`;

/** Stations whose name has every word of the text, or begins of them. */
function stationsNamed(place: string): readonly Station[] {
  const wanted = wordsOf(place);
  const has = (station: Station): boolean => {
    const words = wordsOf(`${nameOf(station)} ${station.wmo}`);
    return wanted.length > 0 && wanted.every((each) => words.some((word) => word.startsWith(each)));
  };
  return PLACES.filter(has);
}

const RADIANS = Math.PI / 180;

/** Degrees, north and east positive. */
export interface Coordinates {
  readonly latitude: number;
  readonly longitude: number;
}

/** m */
export function distanceBetween(from: Coordinates, to: Coordinates, trace: Trace = silent): number {
  return trace.step(greatCircle, {
    a: from.latitude * RADIANS,
    b: to.latitude * RADIANS,
    l: from.longitude * RADIANS,
    m: to.longitude * RADIANS,
  });
}

function nearestTo(at: Coordinates): Station {
  return PLACES.reduce((best, each) => (distanceBetween(at, each) < distanceBetween(at, best) ? each : best));
}

export const NEAREST = "nearest";

/** Stations further apart share no weather: their months differ as much as any two's. */
const FURTHEST = 1e6;

/** The station of a name or, beside coordinates, the nearest; `distance` in m, undefined without coordinates. */
export function stationFor(place: string, at: Coordinates | undefined, trace: Trace) {
  const named = stationsNamed(place);
  if (named.length === 0 && at === undefined) throw unknown(place);
  if (named.length > 1 && at === undefined)
    throw valueError(`place: "${place}" fits ${named.map(nameOf).join("; ")}: give more of the name`);
  const [only] = named;
  const station =
    only !== undefined && (named.length === 1 || at === undefined) ? only : nearestTo(at ?? only ?? ORIGIN);
  const distance = at && distanceBetween(at, station, trace);
  if (distance !== undefined && distance > FURTHEST)
    throw notAvailable(
      `place: ${nameOf(station)}, ${named.length === 1 ? "as named" : "the nearest station"}, is ${quantityMark("distance", distance)} away, more than ${quantityMark("distance", FURTHEST)}: its weather says nothing of the place; use a weather file`,
    );
  return { station, name: nameOf(station), distance };
}

const ORIGIN: Coordinates = { latitude: 0, longitude: 0 };

function unknown(place: string): Error {
  if (place === NEAREST) return valueError("place: give a station's name, or latitude and longitude for the nearest");
  const alike = lookalike(
    place,
    PLACES.map(({ station }) => station),
  );
  return valueError(
    `place: no station "${place.slice(0, 40)}"; ${alike === undefined ? "CLIMATE.PLACES lists them" : `perhaps ${alike}`}, or give latitude and longitude`,
  );
}

/** The station's twelve months, carried to an altitude where one is given. */
export function monthsAt(station: Station, z: number | undefined, trace: Trace = silent): readonly Month[] {
  const months = MONTHS.map((_, month) => unpacked(station, month));
  if (z === undefined || z === station.altitude) return months;
  const [p, p0] = [standardAtmosphere.code({ z }), standardAtmosphere.code({ z: station.altitude })];
  return months.map((month, place) => {
    const record = place === 0 ? trace : silent;
    const air = record.step(airAtHeight, { T0: month.air, z, z0: station.altitude });
    const most = vapourPressureAt(air);
    const vapourPressure = Math.min(most, record.step(vapourAtHeight, { e0: month.vapourPressure, p, p0 }));
    const share = (vapourPressure * vapourPressureAt(month.air)) / (month.vapourPressure * most);
    return { ...month, air, vapourPressure, humidity: Math.min(1, month.humidity * share) };
  });
}
