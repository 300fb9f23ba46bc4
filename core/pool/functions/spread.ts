import { sheet, text } from "../../kernel/argument";
import { admitLabel, labelKey } from "../../kernel/blockLabel";
import { cellFunction } from "../../kernel/cellFunction";
import { mend } from "../../kernel/fault";
import { table, word } from "../../kernel/result";
import { methodSpread } from "../evaporation/cautions";
import { estimate } from "../losses/cautions";
import { admitClimate } from "../year/climate";
import { MIAMI_MACHINE, MIAMI_MONTHS, MIAMI_POOL } from "../data/miami";
import { spreadOver } from "../year/spread";
import { totalOfYear } from "../year/monthlyTable";
import { madeHours } from "../year/cautions";
import { YEAR_COLUMNS } from "../year/columns";
import { CLIMATE, YEAR_INPUTS } from "../year/inputs";

const MOST_VALUES = 20;

const at = {
  inputs: MIAMI_POOL,
  climate: MIAMI_MONTHS,
  label: "shelter",
  values: [[0.3], [0.1]],
  units: "SI",
} as const;

export const spread = cellFunction({
  id: "POOL.SPREAD",
  topic: "pool",
  heavy: "slow",
  summary: "The year of POOL.YEAR for several values of one input: how far wind, cover or set point move the answer.",
  finds: ["sensitivity", "what if", "range", "compare", "sweep", "estimate"],
  remarks: [
    "Each row is the year's total of POOL.YEAR with the label's value replaced; all else stays as in the block. At most 20 values, numbers or words as the label takes them.",
  ],
  args: {
    inputs: YEAR_INPUTS,
    climate: CLIMATE,
    label: text("label of the block whose value is varied, such as shelter", 60),
    values: sheet("values that the label takes, at most 20", 400),
  },
  gives: table("the year by value", { value: word("value of the label"), ...YEAR_COLUMNS }),
  facts: { lossEstimated: "yes/no", evaporationBy: "word", monthlyRows: "yes/no" },
  cautions: [
    { rule: estimate, fires: at },
    { rule: methodSpread, fires: at },
    { rule: madeHours, fires: at },
  ],
  example: { ...at, inputs: { ...MIAMI_POOL, ...MIAMI_MACHINE } },
  checks: [
    {
      at,
      gives: { row: "0.3", column: "backUpByMonth", is: 113_382 },
      within: "5 %",
      from: "tmy3",
      remark: "1,133.8 kWh/m² by another program from the 8,760 hours with the same relations",
    },
    {
      at,
      gives: { row: "0.1", column: "backUpByMonth", is: 54_268 },
      within: "10 %",
      from: "tmy3",
      remark: "542.7 kWh/m² by another program from the 8,760 hours; a small difference of large heats",
    },
  ],
  work({ inputs, climate, label, values }, { trace, note, system }) {
    const admitted = admitClimate(climate, system);
    const key = labelKey(YEAR_INPUTS, label, "label");
    const cells = values.flat().filter((cell) => cell !== null && cell !== "");
    if (cells.length === 0 || cells.length > MOST_VALUES)
      throw mend(`values: expected 1 to ${MOST_VALUES} values, got ${cells.length === 0 ? "none" : cells.length}`);
    const varied = cells.map((cell, place) => ({
      ...inputs,
      [key]: admitLabel(YEAR_INPUTS, key, cell, `values, number ${place + 1}, ${label}`, system, inputs),
    }));
    const years = spreadOver(varied, admitted, trace);
    note({ lossEstimated: true, evaporationBy: inputs.evaporationMethod, monthlyRows: admitted.monthly });
    return years.map((year, place) => ({ value: String(cells[place] ?? ""), ...totalOfYear(year) }));
  },
});
