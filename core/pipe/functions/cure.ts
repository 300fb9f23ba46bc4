import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { notAvailable } from "../../kernel/values/fault";
import { HUMIDITY } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { listResult, quantityResult } from "../../kernel/define/result";
import { quantityMark } from "../../kernel/values/quantityMark";
import { NOMINAL_SIZE } from "../args";
import { solventCement } from "../cautions";
import { cementBand } from "../plastic/plastic";

const degF = (value: number): number => us("temperature", value);
const HOUR = 3600;
const HUMID = 0.6;
const LONGER = 1.5;

/** The column of the table's three air bands: 60–100, 40–60, 0–40 °F. */
const bandOf = (air: number): 0 | 1 | 2 => (air >= degF(60) ? 0 : air >= degF(40) ? 1 : 2);

export const pipeCure = cellFunction({
  id: "PIPE.CURE",
  topic: "pipe",
  summary: "Set and cure times of solvent-cemented PVC joints.",
  keywords: ["solvent cement", "glue", "drying time", "pressure test"],
  details: [
    "After ASTM D2855 practice; the cement's label governs. Relative humidity above 60 % adds half to the times.",
  ],
  args: {
    size: NOMINAL_SIZE,
    air: quantity("temperature", "air temperature at the joint", { from: degF(0), to: degF(100) }),
    pressure: quantity("pressure", "test pressure (gauge)", { from: 0, to: us("pressure", 370) }),
    humidity: HUMIDITY,
  },
  returns: listResult("times", {
    set: quantityResult("time", "before the joint may be handled"),
    cure: quantityResult("time", "before the pressure test"),
  }),
  cautions: [{ rule: solventCement, raisedBy: { size: "2 in", air: 70, pressure: 100, humidity: 0.5 } }],
  checks: [
    {
      inputs: { size: "2 in", air: 70, pressure: 100, humidity: 0.5 },
      expected: { set: 0.5, cure: 2 },
      tolerance: 0.001,
      source: "cementTable",
    },
    {
      inputs: { size: "4 in", air: 50, pressure: 200, humidity: 0.5 },
      expected: { set: 4, cure: 48 },
      tolerance: 0.001,
      source: "cementTable",
    },
    {
      inputs: { size: "1 in", air: 30, pressure: 100, humidity: 0.7 },
      expected: { set: 4.5, cure: 12 },
      tolerance: 0.001,
      source: "cementTable",
    },
    { inputs: { size: "2 in", air: 70, pressure: 330, humidity: 0.5 }, expected: "#N/A", source: "cementTable" },
  ],
  compute({ size, air, pressure, humidity }, { trace }) {
    const band = cementBand(size);
    const column = bandOf(air);
    if (pressure > us("pressure", band.highest))
      throw notAvailable(
        `pressure: the table ends at ${quantityMark("pressure", us("pressure", band.highest))} for ${size}, got ${quantityMark("pressure", pressure)}`,
      );
    const longer = humidity > HUMID ? LONGER : 1;
    const cureHours = (pressure > us("pressure", 180) ? band.cureHigh : band.cure) ?? band.cure;
    const times = { set: band.set[column] * longer * HOUR, cure: cureHours[column] * longer * HOUR };
    trace.lookup({
      table: "Set and cure of solvent cement",
      row: `${size}, air ${["60 to 100 °F", "40 to 60 °F", "0 to 40 °F"][column]}, ${pressure > us("pressure", 180) ? "above" : "to"} 180 psi${longer > 1 ? ", half as long again for humidity" : ""}`,
      result: { value: times.cure, kind: "time" },
      source: "cementTable",
    });
    return times;
  },
});
