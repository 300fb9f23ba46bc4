/** Labels that describe a machine beyond its single rating: stages, speeds, the maker's rows, a compressor's map. */
import { choice, quantity, several, yesNo } from "../../kernel/define/argument";
import { us } from "../../kernel/values/quantity";
import { HEAT_RATE as COOLING } from "../../kernel/define/glossary";
import { CONDENSING_TEMPERATURE, EVAPORATING_TEMPERATURE } from "../args";
import { MAP_SUPERHEAT } from "../map/args";

export const MACHINE_TYPE = choice(
  "MachineType",
  ["single speed", "two stage", "variable speed"],
  "how the machine meets part load",
  { inverter: "variable speed", "two speed": "two stage", "single stage": "single speed" },
).default("single speed");

export const STAGE_LOSS = quantity("fraction", "loss of starting and stopping (degradation coefficient)", {
  from: 0,
  to: 0.5,
});

const MACHINE_POWER = quantity("electric power", "power of the whole machine", { above: 0 });

const COUNTS = Array.from({ length: 15 }, (_, place) => place + 2);

const temperature = (about: string) =>
  quantity("temperature", about, { from: us("temperature", 40), to: us("temperature", 130) });

const listed = (about: string) =>
  several("heat rate", `${about}, in the order of table outdoor`, COUNTS, { above: 0, to: us("heat rate", 1e9) });

const listedPower = (about: string) =>
  several("electric power", `${about}, in that order`, COUNTS, { above: 0, to: us("electric power", 1e6) });

const coefficients = (about: string) => several("number", `${about}, ten coefficients parted by ;`, [10]).optional();

const fan = (about: string) => quantity("electric power", about, { from: 0 }).optional();

export const STAGE_ENTRIES = {
  machineType: MACHINE_TYPE,
  lowCooling: COOLING.describedAs("net cooling at low stage or least speed").optional(),
  lowPower: MACHINE_POWER.describedAs("power of the whole machine there").optional(),
  lowRatedOutdoor: temperature("outdoor air of low cooling and low power").default(us("temperature", 95)),
  lowOutdoorFan: fan("power of the outdoor fan there; left out: as at full capacity"),
  lowIndoorFan: fan("power of the indoor fan there; left out: as at full capacity"),
  lowEvaporating: EVAPORATING_TEMPERATURE.describedAs(
    "evaporating dew temperature there at the rating; left out: by the heat",
  ).optional(),
  lowCondensing: CONDENSING_TEMPERATURE.describedAs(
    "condensing dew temperature there at the rating; left out: by the heat",
  ).optional(),
  lockout: temperature("outdoor temperature from which the low stage is locked out").optional(),
  intermediateCooling: COOLING.describedAs("net cooling at the intermediate speed, 87 °F outdoors").optional(),
  intermediatePower: MACHINE_POWER.describedAs("power of the whole machine there").optional(),
  tableOutdoor: several("temperature", "outdoor temperatures of the maker's table, rising, parted by ;", COUNTS, {
    from: us("temperature", -60),
    to: us("temperature", 150),
  }).optional(),
  tableCooling: listed("net cooling of the maker's table").optional(),
  tablePower: listedPower("power of the whole machine of the maker's table").optional(),
  lowTableCooling: listed("net cooling at low stage or least speed").optional(),
  lowTablePower: listedPower("power of the whole machine there").optional(),
  mapFlow: coefficients("mass flow of the compressor"),
  mapPower: coefficients("power of the compressor"),
  lowMapFlow: coefficients("mass flow of the compressor at low stage or least speed"),
  lowMapPower: coefficients("power of the compressor there"),
  mapSuperheat: MAP_SUPERHEAT,
  mapUnits: choice("MapUnits", ["US", "SI"], "map in °F, lb/h, W or °C, kg/h, W; left out: as the call").optional(),
  communicating: yesNo("whether a communicating board runs fans, expansion valve and oil return").default(false),
} as const;
