import { vapourPressureOfAir } from "../../air/models/moistAir";
import { cellFunction } from "../../kernel/cellFunction";
import { AIR_TEMPERATURE, ALTITUDE, HUMIDITY } from "../../kernel/glossary";
import { standardAtmosphere } from "../../kernel/pressureBasis";
import { of } from "../../kernel/result";
import { ACTIVITY, METHOD, SURFACE, WATER, WIND_AT_WATER } from "../args";
import { spaLimit, warmPool } from "../cautions";
import { activityInUse, dew, handbookFactor, indoorRelation, lakeWind, methodSpread } from "../evaporation/cautions";
import { checkActivity, evaporationOf } from "../evaporation/evaporation";
import { evaporationFacts, EVAPORATION_FACTS } from "../evaporation/facts";

const SUMMER = { area: 800, water: 82, air: 80, humidity: 0.6, wind: 3 } as const;

export const evaporation = cellFunction({
  id: "POOL.EVAPORATION",
  topic: "pool",
  summary: "Water that evaporates from a pool, by a named published relation.",
  finds: ["water loss", "latent load", "natatorium", "dehumidifier", "evaporation rate"],
  remarks: [
    "Smith-Lof-Jones (measured on quiet outdoor pools), Carrier and McMillan take wind; Shah, ASHRAE indoor and VDI 2089 are of indoor pools. The working shows how the others read at the same inputs: they stand 1.5 to 2.6 times apart.",
    "Wind is that AT the water: POOL.WINDATWATER turns a weather station's. McMillan takes it as the wind at 3 m.",
    "activity: with Carrier and ASHRAE indoor the handbook factor (0.5 residential, 1 busy public); with the others the ratio to the undisturbed surface (1 at rest; VDI 2089 in public use 4). Altitude enters only Shah's densities.",
    "Negative where the air's dew point is above the water. The constants of Carrier's SI form, McMillan and Shah are from memory; the ISO/TR 12596 relation is left out, since its constants could not be confirmed.",
  ],
  args: {
    area: SURFACE,
    water: WATER,
    air: AIR_TEMPERATURE,
    humidity: HUMIDITY,
    wind: WIND_AT_WATER,
    method: METHOD,
    activity: ACTIVITY,
    altitude: ALTITUDE.saying("altitude; read by Shah only").otherwise(0),
  },
  gives: of("mass flow", "evaporation"),
  facts: EVAPORATION_FACTS,
  sources: ["shah2012", "vdi2089", "mcMillan1971"],
  cautions: [
    { rule: methodSpread, fires: SUMMER },
    { rule: dew, fires: { ...SUMMER, water: 60, air: 90, humidity: 0.8 } },
    { rule: handbookFactor, fires: { ...SUMMER, method: "Carrier" } },
    { rule: activityInUse, fires: { ...SUMMER, activity: 1.7 } },
    { rule: indoorRelation, fires: { ...SUMMER, method: "ASHRAE indoor" } },
    { rule: lakeWind, fires: { ...SUMMER, method: "McMillan" } },
    { rule: spaLimit, fires: { ...SUMMER, water: 106 } },
    { rule: warmPool, fires: { ...SUMMER, water: 95 } },
  ],
  checks: [
    {
      at: { area: 4000, water: 82, air: 84, humidity: 0.5, wind: 0, method: "ASHRAE indoor" },
      gives: 205.8,
      within: 1,
      from: "energyPlusPool",
    },
    {
      at: { area: 1, water: 24, air: 10, humidity: 0.5, wind: 2, method: "VDI 2089", activity: 0.5, units: "SI" },
      gives: "#VALUE!",
      from: "identity",
    },
    {
      at: { area: 1, water: 28, air: 28, humidity: 0.5, wind: 0, method: "Shah", units: "SI" },
      gives: 0.136,
      within: "0.5 %",
      from: "shah2012",
      remark: "Tabulated value of an open program.",
    },
    {
      at: { area: 1, water: 28, air: 28, humidity: 0.5, wind: 1, method: "Shah", units: "SI" },
      gives: "#N/A",
      from: "shah2012",
    },
  ],
  work({ method, activity, altitude, ...at }, { trace, note }) {
    checkActivity(method, activity);
    const vapourPressure = vapourPressureOfAir(at.air, at.humidity, trace);
    const pressure = method === "Shah" || trace.on ? trace.step(standardAtmosphere, { z: altitude }) : 0;
    const { rate } = evaporationOf(method, activity, { ...at, vapourPressure, pressure }, trace);
    note(evaporationFacts(method, activity, at.water, at.wind, rate));
    return rate;
  },
});
