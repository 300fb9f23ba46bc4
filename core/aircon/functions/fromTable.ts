import { choice, normalizeKey, quantity, sheet, text } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { listResult, quantityResult } from "../../kernel/define/result";
import { us } from "../../kernel/values/quantity";
import { OUTDOOR_FAN, checkFan } from "../args";
import { grossRows, missingFanPower, unlikelyEfficiency } from "../cautions";
import { coefficientOfPerformance, rejectedHeat } from "../../cycle/machine/equations";
import { interpolateTable } from "../table/interpolate";
import { readMakersTable } from "../table/read";

/** Printed heating rows of a split heat pump, page 28 of its manual: the mechanics of any table. */
const PRINTED = [
  ["Outdoor (°F)", "MBh", "kW"],
  [65, 36.53, 2.4],
  [60, 34.53, 2.36],
];

/** An invented two-stage machine. */
const STAGED = [
  ["Outdoor °F", "EWB °F", "Stage", "Total MBh", "System kW"],
  [75, 67, "low", 36.4, 1.93],
  [95, 67, "low", 33.5, 2.41],
  [75, 67, "high", 51.2, 3.05],
  [95, 67, "high", 47.5, 3.83],
];

export const airconFromTable = cellFunction({
  id: "AIRCON.FROMTABLE",
  topic: "aircon",
  memoised: true,
  summary: "Cooling, power and heat rejected of a machine, interpolated in the maker's own rows.",
  keywords: ["expanded performance data", "capacity table", "extended ratings", "manufacturer's data", "two stage"],
  details: [
    "A header row names the columns in any order and wording that data sheets use: outdoor, ODB, OAT or ambient; wet bulb, EWB or IDWB; stage or speed; airflow or cfm; capacity, total or MBh; kW, power or input. Units in brackets, behind the name or in a second row; without them those of the call. Other columns are passed over; blank keys repeat the value above, as in merged cells.",
    "Straight between rows in outdoor temperature, then wet bulb, then airflow; between numbered speeds too. Outside the rows #N/A: nothing is extrapolated.",
    'Rejected is capacity plus power less outdoor fan: with "net" capacity the power holds the indoor fan; with "gross" capacity it must not.',
  ],
  args: {
    table: sheet("the maker's rows below a header", 20_000),
    outdoor: quantity("temperature", "outdoor air temperature", {
      from: us("temperature", -60),
      to: us("temperature", 150),
    }),
    indoorWetBulb: quantity("temperature", "wet bulb entering the indoor coil; left out: the table's only one", {
      from: us("temperature", 20),
      to: us("temperature", 100),
    }).optional(),
    stage: text("stage or speed as its column has it; left out: the table's only one", 40).optional(),
    outdoorFan: OUTDOOR_FAN,
    airflow: quantity("air flow", "indoor airflow; left out: the table's only one", { above: 0 }).optional(),
    capacityIs: choice("CapacityIs", ["net", "gross"], "with the indoor fan's heat taken off, or not").default("net"),
  },
  returns: listResult("the machine by its own rows", {
    cooling: quantityResult("heat rate", "capacity, as the table states it"),
    power: quantityResult("electric power", "power, as the table states it"),
    rejected: quantityResult("heat rate", "heat rejected at the condenser"),
    COP: quantityResult("COP", "cooling over power"),
    EER: quantityResult("cooling rating", "the same in BTU/(W·h); SI: W/W"),
  }),
  cautions: [
    { rule: missingFanPower, raisedBy: { table: PRINTED, outdoor: 62 } },
    { rule: grossRows, raisedBy: { table: PRINTED, outdoor: 62, capacityIs: "gross" } },
    {
      rule: unlikelyEfficiency,
      raisedBy: {
        table: PRINTED.map((line) => line.map((cell, at) => (at === 2 && cell !== "kW" ? 9 : cell))),
        outdoor: 62,
      },
    },
  ],
  example: { table: STAGED, outdoor: 85, stage: "low", outdoorFan: 0.15 },
  checks: [
    {
      inputs: { table: PRINTED, outdoor: 62 },
      expected: { cooling: 35_330, power: 2.376 },
      tolerance: 0.001,
      source: "makersTable",
      remark: "between 36.53 MBh, 2.40 kW at 65 °F and 34.53 MBh, 2.36 kW at 60 °F",
    },
    {
      inputs: { table: PRINTED, outdoor: 65 },
      expected: { EER: 15.2 },
      tolerance: 0.05,
      source: "makersTable",
      remark: "as printed beside the row",
    },
    { inputs: { table: PRINTED, outdoor: 59 }, expected: "#N/A", source: "identity", remark: "outside the rows" },
  ],
  compute({ table, outdoor, indoorWetBulb, stage, outdoorFan, airflow, capacityIs }, { trace, step, system }) {
    const rows = readMakersTable(table, system);
    const { capacity, power } = interpolateTable(rows, {
      outdoor,
      wetBulb: indoorWetBulb,
      stage: stage === undefined ? undefined : normalizeKey(stage),
      airflow,
    });
    trace.lookup({
      table: `the maker's rows, ${capacityIs} capacity`,
      row: `${rows.length} rows`,
      interpolation: "straight in outdoor temperature, wet bulb and airflow",
      result: { value: capacity, kind: "heat rate" },
      source: "identity",
    });
    checkFan(outdoorFan, power, "the table's power", system);
    const COP = step(coefficientOfPerformance, { Q: capacity, P: power });
    return {
      cooling: capacity,
      power,
      rejected: step(rejectedHeat, { Q: capacity, P: power, Pf: outdoorFan }),
      COP,
      EER: COP,
    };
  },
});
