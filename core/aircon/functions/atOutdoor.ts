import { choice, either, quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { notAvailable, valueError } from "../../kernel/values/fault";
import { show, us, type System } from "../../kernel/values/quantity";
import { listResult, quantityResult } from "../../kernel/define/result";
import { boardDrivesMachine, boardFacts } from "../../cycle/machine/cautions";
import { COOLING, MACHINE_POWER, OUTDOOR_FAN, checkFan } from "../args";
import { missingFanPower, singleSpeedOnly, unlikelyEfficiency } from "../cautions";
import { MACHINE_STAGES } from "../machine/inputs";
import { stageNow } from "../machine/now";
import { RATED_WET_BULB, performanceAtOutdoor as running } from "../../cycle/machine/outdoorRating";

const OUTDOORS = [us("temperature", 65), us("temperature", 115)] as const;
const WET_BULBS = [us("temperature", 57), us("temperature", 75)] as const;

const within = (name: string, T: number, [from, to]: readonly [number, number], system: System): void => {
  const shown = (value: number): string => show(value, "temperature", system);
  if (T < from - 1e-9 || T > to + 1e-9)
    throw notAvailable(`${name}: the curves hold from ${shown(from)} to ${shown(to)}, got ${shown(T)}`);
};

/** Invented. */
const TWO_STAGES = { machineType: "two stage", lowCooling: 70_000, lowPower: 6 } as const;

export const airconAtOutdoor = cellFunction({
  id: "AIRCON.ATOUTDOOR",
  topic: "aircon",
  summary: "Cooling, power, heat rejected and COP of a single-speed air conditioner at an outdoor temperature.",
  keywords: ["performance curve", "capacity", "derating", "hot weather", "part load"],
  details: [
    "Published curves of cooling and of power per unit of cooling, each divided by its own value at 95 °F outdoors and 67 °F indoor wet bulb.",
    "Outdoors 65 to 115 °F, indoor wet bulb 57 to 75 °F, full load. Heat rejected is as in AIRCON.REJECTED: cooling plus all power except the outdoor fan's.",
    "With machine: two stages, variable speed, the maker's rows or a ten-coefficient map, as POOL.YEAR takes them; rated cooling and power are then those at full capacity and must agree with rows (5 %) or map (10 %). Wet bulbs below 60 °F count as 60 °F with variable speed. A map is read at the condensing temperature where the outdoor coil settles.",
    "The curves are for an air-cooled condenser. A condenser in pool water depends on the water, not on the outdoor air.",
  ],
  args: {
    ratedCooling: COOLING.describedAs("net cooling at the rating condition, 95 °F outdoors"),
    ratedPower: MACHINE_POWER.describedAs("power of the whole machine at the rating condition"),
    outdoor: quantity("temperature", "outdoor air temperature", {
      from: us("temperature", -60),
      to: us("temperature", 150),
    }),
    indoorWetBulb: quantity("temperature", "wet bulb of the air that enters the indoor coil", {
      from: us("temperature", 20),
      to: us("temperature", 100),
    }).default(RATED_WET_BULB),
    outdoorFan: OUTDOOR_FAN,
    machine: MACHINE_STAGES.describedAs(
      "block of stages, speeds, the maker's rows or a map, with POOL.YEAR's labels; left out: single speed",
    ).optional(),
    stage: either(
      choice("Stage", ["full", "low"], "full capacity, or low stage"),
      quantity("fraction", "share of the way from least to full speed", { from: 0, to: 1 }),
      "stage that runs, or a speed by its share of the way from least to full",
    ).default("full"),
  },
  unitsAfter: "outdoorFan",
  returns: listResult("the machine at this outdoor temperature", {
    cooling: quantityResult("heat rate", "net cooling"),
    power: quantityResult("electric power", "power of the whole machine"),
    rejected: quantityResult("heat rate", "heat rejected at the condenser"),
    COP: quantityResult("COP", "cooling over power"),
  }),
  facts: { singleSpeed: "yes/no", boardDriven: "word" },
  cautions: [
    {
      rule: boardDrivesMachine,
      raisedBy: { ratedCooling: 90000, ratedPower: 8, outdoor: 85, machine: { communicating: true } },
    },
    { rule: singleSpeedOnly, raisedBy: { ratedCooling: 90000, ratedPower: 8, outdoor: 85 } },
    { rule: missingFanPower, raisedBy: { ratedCooling: 90000, ratedPower: 8, outdoor: 85 } },
    { rule: unlikelyEfficiency, raisedBy: { ratedCooling: 90000, ratedPower: 80, outdoor: 85 } },
  ],
  checks: [
    {
      inputs: { ratedCooling: 100_000, ratedPower: 10, outdoor: 82 },
      expected: { cooling: 106_600 },
      tolerance: 60,
      source: "cutler2013",
      remark: "1.0595 over 0.9939, the curve's own values at 82 and 95 °F",
    },
    {
      inputs: { ratedCooling: 100_000, ratedPower: 10, outdoor: 115 },
      expected: { cooling: 88_812 },
      tolerance: 60,
      source: "cutler2013",
      remark: "0.8827 over 0.9939",
    },
    {
      inputs: { ratedCooling: 90_000, ratedPower: 8, outdoor: 95 },
      expected: { cooling: 90_000, power: 8 },
      tolerance: "0.0001 %",
      source: "identity",
    },
    {
      inputs: { ratedCooling: 36_000, ratedPower: 3.25, outdoor: 95, outdoorFan: 0.25 },
      expected: { rejected: 46_239 },
      tolerance: 3,
      source: "condenserSelection",
      remark: "as AIRCON.REJECTED: 3 kW without the outdoor fan",
    },
    { inputs: { ratedCooling: 90_000, ratedPower: 8, outdoor: 50 }, expected: "#N/A", source: "cutler2013" },
    {
      inputs: { ratedCooling: 100_000, ratedPower: 10, outdoor: 82, machine: TWO_STAGES, stage: "low" },
      expected: { cooling: 75_507, power: 5.0917 },
      tolerance: "0.05 %",
      source: "cutler2013",
      remark: "1.0777 and 0.7897 over 0.9991 and 1.0042, the low set's own values at 82 and 95 °F",
    },
    {
      inputs: { ratedCooling: 100_000, ratedPower: 10, outdoor: 82, machine: TWO_STAGES },
      expected: { cooling: 105_873 },
      tolerance: "0.05 %",
      source: "cutler2013",
      remark: "1.0510 over 0.9927, the high set's own values at 82 and 95 °F",
    },
  ],
  compute(args, { trace, system, recordFacts }) {
    const { ratedCooling, ratedPower, outdoor, indoorWetBulb, outdoorFan, machine, stage } = args;
    recordFacts({
      singleSpeed: machine === undefined || machine.machineType === "single speed",
      ...(machine && boardFacts(machine)),
    });
    if (machine !== undefined) {
      within("indoorWetBulb", indoorWetBulb, WET_BULBS, system);
      return stageNow({ ...args, machine }, system, trace);
    }
    if (stage !== "full") throw valueError('stage: needs the block "machine" with a low stage, and it is left out');
    within("outdoor", outdoor, OUTDOORS, system);
    within("indoorWetBulb", indoorWetBulb, WET_BULBS, system);
    checkFan(outdoorFan, ratedPower, "ratedPower", system);
    return running({ cooling: ratedCooling, power: ratedPower, outdoorFan }, outdoor, indoorWetBulb, trace);
  },
});
