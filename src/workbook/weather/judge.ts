/** Faults that show in the hours themselves: the sun's clock, the pressure's altitude, moisture, sensors that stick. */
import { vapourPressureAt } from "../../../core";
import { HOURS, type WeatherFile } from "./hours";

/** Hours that the sun's centre may be off: a good file keeps within 0.15. */
const CLOCK_SLACK = 0.35;
/** m that pressure and altitude may disagree: 21 of 22 stations keep within 100. */
const ALTITUDE_SLACK = 110;
/** Sun of a day below which its centre says nothing, Wh/m². */
const DULL = 300;

/** Equation of time, minutes (Spencer 1971), day from 0. */
function equationOfTime(day: number): number {
  const B = (2 * Math.PI * day) / 365;
  const [c1, s1, c2, s2] = [Math.cos(B), Math.sin(B), Math.cos(2 * B), Math.sin(2 * B)];
  return 229.18 * (0.0000075 + 0.001868 * c1 - 0.032077 * s1 - 0.014615 * c2 - 0.040849 * s2);
}

/** By how many hours the sun of each day with enough of it is late by the file's clock; early is negative. */
function lateness(
  sun: Float64Array,
  longitude: number,
  utc: number,
): readonly (readonly [day: number, late: number])[] {
  const days: (readonly [number, number])[] = [];
  for (let day = 0; day < 365; day++) {
    let [total, moment] = [0, 0];
    for (let hour = 0; hour < 24; hour++) {
      const each = sun[24 * day + hour] ?? 0;
      total += each;
      moment += each * (hour + 0.5);
    }
    const noon = 12 + (15 * utc - longitude) / 15 - equationOfTime(day) / 60;
    if (total > DULL) days.push([day, moment / total - noon]);
  }
  return days;
}

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

/** Mean lateness of the sun over the year, h; undefined without position and clock. */
export function sunLate({ longitude, utc }: WeatherFile, sun: Float64Array): number | undefined {
  if (longitude === undefined || utc === undefined) return undefined;
  const days = lateness(sun, longitude, utc);
  return days.length < 100 ? undefined : mean(days.map(([, late]) => late));
}

function clockFaults(file: WeatherFile, sun: Float64Array): readonly string[] {
  const { longitude, utc, night } = file;
  if (longitude === undefined || utc === undefined)
    return ["position or time zone is missing: the sun's clock was not checked"];
  const faults: string[] = [];
  const late = sunLate(file, sun);
  if (late !== undefined && Math.abs(late) > CLOCK_SLACK) {
    const whole = Math.round(late);
    const cause =
      Math.abs(late - whole) < 0.2 && whole !== 0
        ? "stamps at the start of the hour, a daylight-saving clock or universal time"
        : "stamps at mid-hour, or another clock";
    const dark = night ? sun.reduce((count, each, hour) => count + (each > 0 && night[hour] === 1 ? 1 : 0), 0) : 0;
    const inNight = dark > 0 ? `; ${dark} hours have sun at night by the file's own column of sun above the air` : "";
    faults.push(
      `the sun is ${Math.abs(late).toFixed(2)} h ${late < 0 ? "early" : "late"} on the yearly mean (${cause})${inNight}`,
    );
  }
  const days = lateness(sun, longitude, utc);
  const summer = days.filter(([day]) => day > 100 && day < 290).map(([, each]) => each);
  const winter = days.filter(([day]) => day < 60 || day > 320).map(([, each]) => each);
  const step = summer.length > 30 && winter.length > 30 ? mean(summer) - mean(winter) : 0;
  if (Math.abs(step) > 0.6)
    faults.push(
      `the sun is ${Math.abs(step).toFixed(2)} h ${step > 0 ? "later" : "earlier"} from April to October than in winter: a daylight-saving clock`,
    );
  if (Math.abs(utc - longitude / 15) > 2.6)
    faults.push(`${utc} h from universal time contradict longitude ${longitude}°: a wrong sign?`);
  return faults;
}

function altitudeFaults({ altitude }: WeatherFile, pressure: Float64Array | undefined): readonly string[] {
  if (pressure === undefined) return [];
  const p = mean(Array.from(pressure));
  const byPressure = (1 - (p / 101.325) ** (1 / 5.25588)) / 2.25577e-5;
  const shown = `mean pressure ${p.toFixed(2)} kPa fits ${byPressure.toFixed(0)} m`;
  if (altitude === undefined) return [`no altitude in the file: ${shown}`];
  if (Math.abs(byPressure - altitude) <= ALTITUDE_SLACK) return [];
  const cause = Math.abs(byPressure) < 100 && altitude > 300 ? ": pressure at sea level?" : "";
  return [`the altitude says ${altitude} m, but the ${shown}${cause}`];
}

type Column = Float64Array | undefined;

function moistureFaults(air: Float64Array, dewPoint: Column, humidity: Column): readonly string[] {
  if (dewPoint === undefined) return [];
  const above = dewPoint.reduce((count, each, hour) => count + (each > (air[hour] ?? 0) + 0.1 ? 1 : 0), 0);
  const faults = above > 8 ? [`the dew point is above the air in ${above} hours`] : [];
  if (humidity === undefined) return faults;
  const off = humidity.map(
    (each, hour) =>
      each - vapourPressureAt((dewPoint[hour] ?? 0) + 273.15) / vapourPressureAt((air[hour] ?? 0) + 273.15),
  );
  const rms = 100 * Math.sqrt(mean(Array.from(off, (each) => each * each)));
  return rms > 5
    ? [...faults, `humidity and dew point disagree by ${rms.toFixed(1)} points (root mean square)`]
    : faults;
}

/** The longest time that the air's reading stays the same, h. */
function stuckFaults(air: Float64Array): readonly string[] {
  let [run, longest, end] = [1, 1, 0];
  for (let hour = 1; hour < HOURS; hour++) {
    run = air[hour] === air[hour - 1] ? run + 1 : 1;
    if (run > longest) [longest, end] = [run, hour];
  }
  return longest > 24
    ? [`the air doesn't change for ${longest} hours up to hour ${end + 1} of the year: a sensor that sticks?`]
    : [];
}

export function faultsOf(file: WeatherFile): readonly string[] {
  const { air, sun, pressure, dewPoint, humidity } = file.hours;
  return [
    ...(sun ? clockFaults(file, sun) : []),
    ...altitudeFaults(file, pressure),
    ...(air ? [...moistureFaults(air, dewPoint, humidity), ...stuckFaults(air)] : []),
  ];
}
