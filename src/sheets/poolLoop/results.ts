/** What the sheet "Pool loop" works out, before and after the new exchanger. */
import { computed, gap, heading, type Line } from "../layout";
import { ADDED_NAMES, ADDED_PARTS, EXISTING_NAMES, EXISTING_PARTS, PUMP_CURVE } from "./parts";
import type { SheetStyle } from "../sheet";

interface Both {
  readonly format?: string;
  readonly source?: string;
  readonly note?: string;
  readonly style?: SheetStyle;
}

/** A value before and after: `formula` names other lines with {@} for the column. */
const both = (key: string, label: string, formula: string, unit: string, options: Both = {}): Line => {
  const at = (column: string): string => formula.replace(/\{@\}/g, column);
  const { format, style = "Calculation" } = options;
  return {
    ...computed(key, label, at("@B"), unit, options),
    extra: { C: { content: at("@C"), style, ...(format === undefined ? {} : { format }) } },
  };
};

/** A sum of the loop's table: `below` rows under the last part, before; and with what the exchanger adds, after. */
const loopSum = (key: string, label: string, how: LoopSum): Line => {
  const { flow, below, column, joined, unit, options } = how;
  const part = (parts: string, count: string, at: string): string =>
    `INDEX(WARMBACK.PIPE.LOOP(${parts},${flow.replace("{@}", at)},[water],[schedule]),${count}+${below},${column})`;
  const added = part(ADDED_PARTS, "[parts@C]", "@C");
  const after = part(EXISTING_PARTS, "[parts]", "@C");
  const { format = "0.0", style = "Calculation" } = options;
  return {
    ...computed(key, label, `=${part(EXISTING_PARTS, "[parts]", "@B")}`, unit, { format, ...options }),
    extra: { C: { content: joined === "sum" ? `=${after}+${added}` : `=MAX(N(${after}),N(${added}))`, style, format } },
  };
};

interface LoopSum {
  readonly flow: string;
  readonly below: number;
  readonly column: number;
  readonly joined: "sum" | "max";
  readonly unit: string;
  readonly options: Both;
}

/** Rows of the loop's table under its last part: subtotals of suction and return, total; its columns of head and velocity. */
const [SUCTION, RETURN, TOTAL, HEAD, VELOCITY] = [2, 3, 4, 4, 5];

const MEETING = `WARMBACK.PIPE.OPERATING(${PUMP_CURVE},[static],[knownFlow],[static]+[systemHead{@}])`;

const count: Line = {
  ...computed("parts", "Parts: as it is, added", `=SUMPRODUCT(--(${EXISTING_NAMES}<>""))`, "", { source: "count" }),
  extra: { C: { content: `=SUMPRODUCT(--(${ADDED_NAMES}<>""))`, style: "Calculation" } },
};

export const LOOP_CALCULATION: readonly Line[] = [
  heading("part", "Calculation"),
  count,
  loopSum("systemHead", "Head lost at the known flow", {
    flow: "[knownFlow]",
    below: TOTAL,
    column: HEAD,
    joined: "sum",
    unit: "ft",
    options: {
      source: "PIPE.LOOP, total",
      note: "Published losses of fittings differ two to three times: keep a margin.",
    },
  }),
  both("flow", "Flow where pump and loop meet", `=INDEX(${MEETING},1,2)`, "gpm", {
    format: "0.0",
    source: "PIPE.OPERATING",
    style: "Output",
  }),
  both("head", "Total head there", `=INDEX(${MEETING},2,2)`, "ft", {
    format: "0.0",
    source: "PIPE.OPERATING",
    style: "Output",
  }),
  loopSum("suctionHead", "Of that in the suction line", {
    flow: "[flow{@}]",
    below: SUCTION,
    column: HEAD,
    joined: "sum",
    unit: "ft",
    options: { source: "PIPE.LOOP, subtotal suction" },
  }),
  loopSum("suctionSpeed", "Fastest water, suction", {
    flow: "[flow{@}]",
    below: SUCTION,
    column: VELOCITY,
    joined: "max",
    unit: "ft/s",
    options: { source: "PIPE.LOOP", note: "6 ft/s by common pool standards, 8 by some editions." },
  }),
  loopSum("returnSpeed", "Fastest water, return", {
    flow: "[flow{@}]",
    below: RETURN,
    column: VELOCITY,
    joined: "max",
    unit: "ft/s",
    options: {
      source: "PIPE.LOOP",
      note: "8 ft/s by common pool standards; which edition is law must be looked up.",
    },
  }),
  both("turnover", "Turnover", "=WARMBACK.POOL.TURNOVER([volume],[flow{@}])", "h", {
    format: "0.0",
    source: "POOL.TURNOVER",
    style: "Output",
  }),
  both("npsh", "Suction head available", "=WARMBACK.PIPE.NPSH([altitude],[water],[lift],[suctionHead{@}])", "ft", {
    format: "0.0",
    source: "PIPE.NPSH",
    note: "No margin inside: 2 ft more than the pump needs is common.",
  }),
  both("pumpPower", "Power of the pump", "=WARMBACK.PIPE.PUMPPOWER([flow{@}],[head{@}],[wire])", "kW", {
    format: "0.00",
    source: "PIPE.PUMPPOWER, wire to water",
  }),
  both("energy", "Its energy in a year", "=[pumpPower{@}]*[hours]", "kWh", { format: "#,##0", source: "product" }),
  gap,
];
