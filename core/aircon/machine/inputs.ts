/** The block of a machine for the functions of the air conditioner. */
import { block, quantity } from "../../kernel/define/argument";
import { HEAT_RATE } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { CONDENSING_TEMPERATURE, EVAPORATING_TEMPERATURE } from "../../cycle/args";
import { STAGE_ENTRIES, STAGE_LOSS } from "../../cycle/machine/inputs";
import { REFRIGERANT } from "../../refrigerant/args";
import { MACHINE_POWER } from "../args";

const degF = (value: number): number => us("temperature", value);
const fan = (about: string) => quantity("electric power", about, { from: 0, to: us("electric power", 1e5) }).default(0);

const BASE = {
  indoorFan: fan("power of the indoor fan; matters for a map and low stages"),
  refrigerant: REFRIGERANT.default("R-410A"),
  ratedEvaporating: EVAPORATING_TEMPERATURE.describedAs("evaporating dew temperature at the rating").default(degF(45)),
  ratedCondensing: CONDENSING_TEMPERATURE.describedAs("condensing dew temperature at the rating").default(degF(115)),
  leastCondensing: CONDENSING_TEMPERATURE.describedAs("least condensing temperature, of a mapped machine").default(
    degF(80),
  ),
  ...STAGE_ENTRIES,
} as const;

/** Beside a rating given by arguments. */
export const MACHINE_STAGES = block(BASE, "block of stages, the maker's rows or a map, with POOL.YEAR's labels");

/** With its rating. */
export const MACHINE_BLOCK = block(
  {
    ratedCooling: HEAT_RATE.describedAs("net cooling at the rating").optional(),
    ratedPower: MACHINE_POWER.describedAs("power of the whole machine at the rating").optional(),
    outdoorFan: fan("power of the outdoor fan"),
    indoorWetBulb: quantity("temperature", "wet bulb of the air that enters the indoor coil", {
      from: degF(57),
      to: degF(72),
    }).default(degF(67)),
    cyclingLoss: STAGE_LOSS.default(0.25),
    ...BASE,
  },
  "block of a machine, with POOL.YEAR's labels",
);
