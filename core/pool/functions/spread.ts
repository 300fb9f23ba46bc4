import { sheet, text } from "../../kernel/define/argument";
import { admitLabel, labelKey } from "../../kernel/call/admitLabel";
import { cellFunction } from "../../kernel/define/cellFunction";
import { valueError } from "../../kernel/values/fault";
import { tableResult, wordResult } from "../../kernel/define/result";
import { evaporationMethodSpread } from "../evaporation/cautions";
import { poolEstimate } from "../losses/cautions";
import { admitClimate } from "../year/climate";
import { MIAMI_MACHINE, MIAMI_MONTHS, MIAMI_POOL } from "../data/miami";
import { spreadOver } from "../year/spread";
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

export const poolSpread = cellFunction({
  id: "POOL.SPREAD",
  topic: "pool",
  memoised: true,
  slow: true,
  summary: "The year of POOL.YEAR for several values of one input: how far wind, cover or set point move the answer.",
  keywords: ["sensitivity", "what if", "range", "compare", "sweep", "estimate"],
  details: [
    "Each row is the year's total of POOL.YEAR with the label's value replaced; all else stays as in the block. At most 20 values, numbers or words as the label takes them.",
  ],
  args: {
    inputs: YEAR_INPUTS,
    climate: CLIMATE,
    label: text("label of the block whose value is varied, such as shelter", 60),
    values: sheet("values that the label takes, at most 20", 400),
  },
  returns: tableResult("the year by value", { value: wordResult("value of the label"), ...YEAR_COLUMNS }),
  facts: { lossEstimated: "yes/no", evaporationBy: "word", monthlyRows: "yes/no" },
  cautions: [
    { rule: poolEstimate, raisedBy: at },
    { rule: evaporationMethodSpread, raisedBy: at },
    { rule: madeHours, raisedBy: at },
  ],
  example: { ...at, inputs: { ...MIAMI_POOL, ...MIAMI_MACHINE } },
  checks: [
    {
      inputs: at,
      expected: { row: "0.3", column: "backUpByMonth", value: 113_382 },
      tolerance: "5 %",
      source: "tmy3",
      remark: "1,133.8 kWh/m² by another program from the 8,760 hours with the same relations",
    },
    {
      inputs: at,
      expected: { row: "0.1", column: "backUpByMonth", value: 54_268 },
      tolerance: "10 %",
      source: "tmy3",
      remark: "542.7 kWh/m² by another program from the 8,760 hours; a small difference of large heats",
    },
  ],
  compute({ inputs, climate, label, values }, { trace, recordFacts, system }) {
    const { monthly } = admitClimate(climate, system);
    const key = labelKey(YEAR_INPUTS, label, "label");
    const cells = values.flat().filter((cell) => cell !== null && cell !== "");
    if (cells.length === 0 || cells.length > MOST_VALUES)
      throw valueError(
        `values: expected 1 to ${MOST_VALUES} values, got ${cells.length === 0 ? "none" : cells.length}`,
      );
    const varied = cells.map((cell, place) => ({
      ...inputs,
      [key]: admitLabel(YEAR_INPUTS, key, cell, `values, number ${place + 1}, ${label}`, system, inputs),
    }));
    const totals = spreadOver(varied, climate, system, trace);
    recordFacts({ lossEstimated: true, evaporationBy: inputs.evaporationMethod, monthlyRows: monthly });
    return totals.map((total, place) => ({ value: String(cells[place] ?? ""), ...total }));
  },
});
