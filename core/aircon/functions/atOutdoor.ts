import { quantity } from "../../kernel/argument";
import { cellFunction } from "../../kernel/cellFunction";
import { outside } from "../../kernel/fault";
import { show, us, type System } from "../../kernel/quantity";
import { list, of } from "../../kernel/result";
import { COOLING, MACHINE_POWER, OUTDOOR_FAN, checkFan } from "../args";
import { fanNotGiven, singleSpeedOnly, unlikelyEfficiency } from "../cautions";
import { RATED_WET_BULB, atOutdoor as running } from "../models/atOutdoor";

const OUTDOORS = [us("temperature", 65), us("temperature", 115)] as const;
const WET_BULBS = [us("temperature", 57), us("temperature", 75)] as const;

const within = (name: string, T: number, [from, to]: readonly [number, number], system: System): void => {
  const tell = (value: number): string => show(value, "temperature", system);
  if (T < from - 1e-9 || T > to + 1e-9)
    throw outside(`${name}: the curves hold from ${tell(from)} to ${tell(to)}, got ${tell(T)}`);
};

export const atOutdoor = cellFunction({
  id: "AIRCON.ATOUTDOOR",
  topic: "aircon",
  summary: "Cooling, power, heat rejected and COP of a single-speed air conditioner at an outdoor temperature.",
  finds: ["performance curve", "capacity", "derating", "hot weather", "part load"],
  remarks: [
    "Published curves of cooling and of power for each unit of cooling, both divided by their own value at 95 °F outdoors and 67 °F indoor wet bulb.",
    "Outdoors 65 to 115 °F, indoor wet bulb 57 to 75 °F, full load. Heat rejected is that of AIRCON.REJECTED: all power but the outdoor fan's.",
    "The curves are for an air-cooled condenser. A condenser in pool water follows the water, not the outdoor air.",
  ],
  args: {
    ratedCooling: COOLING.saying("net cooling at the rating condition, 95 °F outdoors"),
    ratedPower: MACHINE_POWER.saying("power of the whole machine at the rating condition"),
    outdoor: quantity("temperature", "outdoor air temperature", {
      from: us("temperature", -60),
      to: us("temperature", 150),
    }),
    indoorWetBulb: quantity("temperature", "wet bulb of the air that enters the indoor coil", {
      from: us("temperature", 20),
      to: us("temperature", 100),
    }).otherwise(RATED_WET_BULB),
    outdoorFan: OUTDOOR_FAN,
  },
  gives: list("the machine at this outdoor temperature", {
    cooling: of("heat rate", "net cooling"),
    power: of("electric power", "power of the whole machine"),
    rejected: of("heat rate", "heat rejected at the condenser"),
    COP: of("COP", "cooling on power"),
  }),
  cautions: [
    { rule: singleSpeedOnly, fires: { ratedCooling: 90000, ratedPower: 8, outdoor: 85 } },
    { rule: fanNotGiven, fires: { ratedCooling: 90000, ratedPower: 8, outdoor: 85 } },
    { rule: unlikelyEfficiency, fires: { ratedCooling: 90000, ratedPower: 80, outdoor: 85 } },
  ],
  checks: [
    {
      at: { ratedCooling: 100_000, ratedPower: 10, outdoor: 82 },
      gives: { cooling: 106_600 },
      within: 60,
      from: "cutler2013",
      remark: "1.0595 on 0.9939, the curve's own values at 82 and 95 °F",
    },
    {
      at: { ratedCooling: 100_000, ratedPower: 10, outdoor: 115 },
      gives: { cooling: 88_812 },
      within: 60,
      from: "cutler2013",
      remark: "0.8827 on 0.9939",
    },
    {
      at: { ratedCooling: 90_000, ratedPower: 8, outdoor: 95 },
      gives: { cooling: 90_000, power: 8 },
      within: "0.0001 %",
      from: "identity",
    },
    {
      at: { ratedCooling: 36_000, ratedPower: 3.25, outdoor: 95, outdoorFan: 0.25 },
      gives: { rejected: 46_239 },
      within: 3,
      from: "condenserSelection",
      remark: "as AIRCON.REJECTED: 3 kW without the outdoor fan",
    },
    { at: { ratedCooling: 90_000, ratedPower: 8, outdoor: 50 }, gives: "#N/A", from: "cutler2013" },
  ],
  work({ ratedCooling, ratedPower, outdoor, indoorWetBulb, outdoorFan }, { trace, system }) {
    within("outdoor", outdoor, OUTDOORS, system);
    within("indoorWetBulb", indoorWetBulb, WET_BULBS, system);
    checkFan(outdoorFan, ratedPower, "ratedPower", system);
    return running({ cooling: ratedCooling, power: ratedPower, outdoorFan }, outdoor, indoorWetBulb, trace);
  },
});
