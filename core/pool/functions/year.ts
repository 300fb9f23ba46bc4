import { cellFunction } from "../../kernel/define/cellFunction";
import { tableResult } from "../../kernel/define/result";
import { spaLimitPassed, warmPool } from "../cautions";
import { evaporationMethodSpread } from "../evaporation/cautions";
import { boardDrivesMachine } from "../../cycle/machine/cautions";
import { coverInUse, poolEstimate, noCover } from "../losses/cautions";
import { COLD_MONTHS, MIAMI_MACHINE, MIAMI_MONTHS, MIAMI_POOL } from "../data/miami";
import { sharedYear } from "../year/sharedYear";
import { YEAR_FACTS, yearFacts } from "../year/facts";
import { yearRows } from "../year/monthlyTable";
import {
  atLimit,
  beyondCurve,
  dearPump,
  frozen,
  keepHeater,
  littleInSpring,
  madeHours,
  morePower,
  noRecovery,
  notMet,
  singleSpeedYear,
  tankUnpriced,
  tankWall,
} from "../year/cautions";
import {
  assumedDesignLoad,
  hotYearCondensing,
  hotPoolReturn,
  limitPassed,
  oddWeather,
  timeOfDay,
  unlikelySun,
} from "../year/inputCautions";
import { unusualInput } from "../../cost/prices";
import { legionella, coolStorage, scald } from "../../sink/cautions";
import { YEAR_TABLE_COLUMNS } from "../year/columns";
import { CLIMATE, YEAR_INPUTS } from "../year/inputs";

const TANK = {
  ...MIAMI_MACHINE,
  secondSink: "preheat tank",
  hotWaterDraw: 1500,
  tankVolume: 1500,
  tankUA: 3000,
} as const;

/** A pool let too warm for its exchanger. */
const HOT = { ...MIAMI_MACHINE, exchangerUA: 2000, highLimit: 36 } as const;

/** Wind in miles an hour in a column of m/s. */
const GALES = MIAMI_MONTHS.map((row) =>
  row.map((cell, place) => (place === 3 && typeof cell === "number" ? 2.237 * cell : cell)),
);

const at = (inputs: Readonly<Record<string, string | number | boolean>>) =>
  ({ inputs: { ...MIAMI_POOL, ...inputs }, climate: MIAMI_MONTHS, units: "SI" }) as const;

export const poolYear = cellFunction({
  id: "POOL.YEAR",
  topic: "pool",
  memoised: true,
  slow: true,
  summary:
    "A year of pool, air conditioner and valve, hour by hour: temperatures, heat taken, back-up heat, electricity, saving.",
  keywords: [
    "hourly simulation",
    "season",
    "payback",
    "annual",
    "heat recovery",
    "savings",
    "weather file",
    "TMY",
    "EPW",
  ],
  details: [
    "Four pools run side by side: left to itself, and held at the set point through the season by back-up heat, each without and with recovery. Losses by kind, modes and heat taken are of the pool left to itself; columns named held are of the other pair.",
    "Climate of 12 rows: air, swing (mean daily highest less lowest), humidity, wind at 10 m, sun (a day), mains, vapour pressure (its mean wins over humidity). Of 8,760 rows: air, humidity or dew point, wind at 10 m, sun (W/m² of the hour), cloud (opaque, tenths), pressure, mains; the first hour is that after midnight of 1 January, without leap day. A header row names the columns in any order; a unit in brackets behind a name wins over units. Columns month, day, hour, station and distance are passed over.",
    "From 12 rows the hours are made: Erbs's shape of the day's temperature and spread of the days about the month, sun by Collares-Pereira and Rabl with the days' clearness by Bendt, Hollands and Huget, cloud by Kasten and Czeplak from the month's clearness, wind that swings by 28 % with its peak at 14 h, the dew point held through each day. The year's need for heat agrees with that from hourly weather within 5 % (Miami, Chicago, Phoenix, Houston).",
    "Losses are those of POOL.LOSSES, hour by hour; a cover lies about midnight. Negative evaporation (dew) warms the water. Outdoor relations of evaporation only.",
    "Load: give design load first, as calculated for the building; heat taken and saving follow it. Straight from none at balance outdoor to design load at design outdoor and on, plus the sun let in; what is beyond the machine is told. Part load costs the cycling loss. Outdoors the machine follows AIRCON.ATOUTDOOR from 65 to 115 °F (the ends hold beyond); on the pool it settles as in EXCHANGER.BALANCE at the pool's temperature, its outdoor fan off.",
    "Machine type: two stages cycle below the low stage and mix above it (full alone from lockout); a variable speed runs at the speed that meets the load, its COP straight over the load through the intermediate speed, and cycles only below its least. Low cooling and power follow published curves of such machines; its evaporating and condensing differences shrink with its heat. In place of the rating: the maker's rows (lists parted by ;, at one wet bulb; on the pool a row is read at the outdoor temperature that means its condensing), or a compressor's ten coefficients of flow and power (map flow, map power), worked at the condensing temperature where it settles.",
    "The pool takes heat below its limit less the dead band until it reaches the limit, while the pump runs or may be called. Pump electricity counts beyond its hours only; its heat warms both pools.",
    "Pump speeds: energy and time a day of each, as PIPE.SPEEDS gives them, replace pump hours; where the machine calls the pump, it draws pump power (the greatest speed's if left out), and only what is above the schedule's counts as extra. Without pump on call the pool takes heat at full power only. Line and pipe loss come off the heat taken, while the machine runs on the pool; the machine itself follows its whole heat.",
    "A second sink: a mixed preheat tank takes the machine's whole heat, by its own exchanger, while the pool doesn't want it (pool first) or before the pool (tank first), up to its limit; the valve to it counts as a share of the hour. Its water is drawn evenly through the draw hours and warmed on by the main heater; its loss is by R-12.5 around an upright tank twice as high as wide where it isn't given. Recovered is what the draw takes out of the tank above the mains: what a warm room gives the tank is in it but not in money and carbon, and a tank colder than the mains counts against it. A desuperheater beside the outdoor coil is not counted here.",
    "Money and carbon: with a back-up source the back-up heat saved and the change of electricity of the pair that it holds; without, the electricity of the pool left to itself. Heat taken is never priced: what the pool doesn't need is worth nothing.",
    "back up by month is the month's loss less sun and pump at the set point; hour by hour it can be up to twice as much. Below freezing a temperature reads frozen; ice and snow are not counted.",
    "The calibration report (docs/calibration.md) compares a season's costs with a table of the US DOE, which bare pools exceed by up to 1.7 times, and a house's pool with a field test.",
  ],
  args: { inputs: YEAR_INPUTS, climate: CLIMATE },
  returns: tableResult("the year by months", YEAR_TABLE_COLUMNS, { total: true }),
  facts: YEAR_FACTS,
  sources: [
    "duffieBeckman2013",
    "erbs1984",
    "erbs1983",
    "kastenCzeplak1980",
    "burchChristensen2007",
    "cutler2013",
    "clarkAllen1978",
    "bowen1926",
    "doePoolCosts",
    "et22swe0052",
    "woolley2011",
    "storageTanks",
  ],
  cautions: [
    { rule: atLimit, raisedBy: at({ ...MIAMI_MACHINE, highLimit: 29 }) },
    { rule: littleInSpring, raisedBy: at(MIAMI_MACHINE) },
    { rule: keepHeater, raisedBy: at({}) },
    { rule: frozen, raisedBy: { ...at({}), climate: COLD_MONTHS } },
    { rule: noRecovery, raisedBy: at({}) },
    { rule: madeHours, raisedBy: at({}) },
    { rule: beyondCurve, raisedBy: at({ ...MIAMI_MACHINE, solarAperture: 20 }) },
    { rule: notMet, raisedBy: at({ ...MIAMI_MACHINE, designLoad: 60 }) },
    { rule: dearPump, raisedBy: at({ ...MIAMI_MACHINE, pumpPower: 2, pumpHours: 0 }) },
    { rule: morePower, raisedBy: at(MIAMI_MACHINE) },
    { rule: poolEstimate, raisedBy: at({}) },
    { rule: evaporationMethodSpread, raisedBy: at({}) },
    { rule: noCover, raisedBy: at({}) },
    { rule: coverInUse, raisedBy: at({ cover: "bubble" }) },
    { rule: warmPool, raisedBy: at({ ...MIAMI_MACHINE, highLimit: 35 }) },
    {
      rule: spaLimitPassed,
      raisedBy: at({
        ...MIAMI_MACHINE,
        poolArea: 15,
        ratedCooling: 100,
        ratedPower: 30,
        exchangerUA: 12000,
        highLimit: 43,
      }),
    },
    { rule: hotYearCondensing, raisedBy: at(HOT) },
    { rule: hotPoolReturn, raisedBy: at(HOT) },
    { rule: limitPassed, raisedBy: at({ ...MIAMI_MACHINE, highLimit: 29 }) },
    { rule: unlikelySun, raisedBy: at({ latitude: -25.82 }) },
    { rule: oddWeather, raisedBy: { ...at({}), climate: GALES } },
    { rule: assumedDesignLoad, raisedBy: at(MIAMI_MACHINE) },
    { rule: timeOfDay, raisedBy: at({ ...MIAMI_MACHINE, pumpStart: 0.3333 }) },
    { rule: unusualInput, raisedBy: at({ ...MIAMI_MACHINE, electricityPrice: 15 }) },
    { rule: tankWall, raisedBy: at(TANK) },
    { rule: legionella, raisedBy: at(TANK) },
    { rule: scald, raisedBy: at(TANK) },
    { rule: coolStorage, raisedBy: at({ ...TANK, hotWater: 55 }) },
    { rule: tankUnpriced, raisedBy: at(TANK) },
    { rule: singleSpeedYear, raisedBy: at(MIAMI_MACHINE) },
    { rule: boardDrivesMachine, raisedBy: at({ ...MIAMI_MACHINE, communicating: true }) },
  ],
  example: at({
    designLoad: 22,
    ...MIAMI_MACHINE,
    backUpSource: "electric resistance",
    backUpPrice: 0.15,
    electricityPrice: 0.15,
  }),
  checks: [
    {
      inputs: at({}),
      expected: { row: "Year", column: "backUpByMonth", value: 113_382 },
      tolerance: "5 %",
      source: "tmy3",
      remark: "1,133.8 kWh/m² by another program from the 8,760 hours with the same relations",
    },
    {
      inputs: at({ evaporationMethod: "Carrier" }),
      expected: { row: "Year", column: "backUpByMonth", value: 155_834 },
      tolerance: "5 %",
      source: "tmy3",
      remark: "1,558.3 kWh/m² by another program from the 8,760 hours with the same relations",
    },
    { inputs: at({}), expected: { row: "Year", column: "heatTaken", value: 0 }, tolerance: 0, source: "identity" },
    {
      inputs: {
        ...at({ ...TANK, hotWaterDraw: 242.2666, mainsTemperature: 14.4444, hotWater: 57.2222, tankLimit: 43 }),
        climate: MIAMI_MONTHS.map((line) => line.slice(0, 5)),
      },
      expected: { row: "Year", column: "hotWaterLoad", value: 4375.3 },
      tolerance: "0.2 %",
      source: "lblHotWater",
      remark: "64 gal a day warmed by 77 °F, 365 days",
    },
  ],
  compute({ inputs, climate }, { trace, recordFacts, system }) {
    const { year: found, climate: admitted } = sharedYear(inputs, climate, system, trace);
    recordFacts(() => yearFacts(found, admitted, system));
    return yearRows(found);
  },
});
