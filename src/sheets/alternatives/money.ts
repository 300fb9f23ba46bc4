/** Life-cycle cost of every way, break-even prices and how far the savings may be off. */
import { computed, gap, heading, input, type ExtraCell, type Line } from "../layout";
import { betweenLimits } from "../technicianParts";
import { columnPlace } from "../recoverySizing/year";
import { headsOf, WAYS } from "./ways";

type Way = (typeof WAYS)[number];

const cell = (content: string | number, format: string): ExtraCell => ({ content, style: "Calculation", format });

/** Labels are those of the block of COST.LIFECYCLE. */
export const PERIOD_LINES: readonly Line[] = [
  heading("group", "Years counted (input block of COST.LIFECYCLE)"),
  input("years", "Years", 15, "", { validation: betweenLimits(1, 40, "1 to 40 years"), source: "owner" }),
  input("discount", "Discount", 0.03, "", {
    format: "0.0%",
    validation: betweenLimits(0, 0.3, "0 to 30 %"),
    source: "real rate of US federal analyses",
    note: "Without inflation, as the rises of the prices.",
  }),
  gap,
];

const row = (key: string, name: string, kind: string, amount: string, year = '=""', rise = "=0"): Line => ({
  key,
  label: name,
  value: kind,
  extra: { C: cell(amount, "#,##0"), D: cell(year, "0"), E: cell(rise, "0.0%") },
});

/** The costs of a way: a part that lives shorter than the years is bought once more; what is left comes back. */
const rowsOf = ([key, name]: Way): readonly Line[] => {
  const [cost, use, life] = [`cost${key}`, `use${key}`, `[cost${key}@D]`];
  const again = `AND(${life}<[years])`;
  return [
    row(`row${key}First`, name, "first cost", `=[${cost}]`),
    row(`row${key}Gas`, name, "energy", `=[${use}]*[gasPrice]`, '=""', "=[gasRise]"),
    row(`row${key}Power`, name, "energy", `=[${use}@C]*[powerPrice]`, '=""', "=[powerRise]"),
    row(`row${key}Upkeep`, name, "upkeep", `=[${cost}@C]`),
    row(`row${key}Again`, name, "replacement", `=IF(${again},[${cost}],0)`, `=MIN(${life},[years])`),
    row(
      `row${key}Left`,
      name,
      "residual",
      `=[${cost}]*MAX(0,IF(${again},2*${life}-[years],${life}-[years]))/${life}`,
      "=[years]",
    ),
  ];
};

const LIFECYCLE = "WARMBACK.COST.LIFECYCLE([[years:discount]],[rowHead@A]:[rowrecoveredLeft@E])";
const of = (at: number, column: string): string =>
  `INDEX(${LIFECYCLE},${at + 2},${columnPlace("COST.LIFECYCLE", column)})`;
const factor = (rise: string): string => `WARMBACK.COST.FACTOR("UPV",[years],[discount],[${rise}])`;

/** Investment of a way, replacement and residual inside. */
const invested = (at: number): string =>
  `(${["firstCost", "replacement", "residual"].map((column) => of(at, column)).join("+")})`;

/** The price at which a way costs as much as the base: a number, or why there is none. */
const breakEven = (less: string, price: string, none: string): string =>
  `=IF(ABS(${less})<1,"${none}",IF(${price}<=0,"any price",${price}))`;

const valueLine = ([key, name]: Way, at: number): Line => {
  const own = `value${key}`;
  const base = at === 0;
  const less = (column: string): string => `([usegas${column}]-[use${key}${column}])`;
  const savings = `[${own}@C]`;
  const parts = [
    `[offNeed]*(${of(0, "energy")}-${of(at, "energy")})`,
    `[offGas]*${less("")}*[gasPrice]*[factorGas]`,
    `[offPower]*${less("@C")}*[powerPrice]*[factorPower]`,
    `[offFirst]*(${invested(0)}-${invested(at)})`,
  ];
  return {
    key: own,
    label: name,
    value: `=${of(at, "lifeCycleCost")}`,
    style: "Calculation",
    format: "#,##0",
    extra: base
      ? { C: cell("base", "@") }
      : {
          C: cell(`=${of(at, "netSavings")}`, "#,##0"),
          D: cell(`=SQRT(SUMSQ(${parts.join(",")}))`, "#,##0"),
          E: cell(breakEven(less(""), `[gasPrice]-${savings}/(${less("")}*[factorGas])`, "no gas saved"), "0.00"),
          F: cell(breakEven(less("@C"), `[powerPrice]-${savings}/(${less("@C")}*[factorPower])`, "none used"), "0.000"),
          G: cell(`=${of(at, "positiveFrom")}`, "0"),
        },
  };
};

export const MONEY_LINES: readonly Line[] = [
  heading("group", "5 Costs of each way at today's prices (rows of COST.LIFECYCLE)"),
  { ...headsOf("alternative", "kind", { C: "amount", D: "year", E: "escalation" }), key: "rowHead" },
  ...WAYS.flatMap(rowsOf),
  heading("group", "6 Present value"),
  computed("factorGas", "Present value of a yearly 1 of gas", `=${factor("gasRise")}`, "", {
    format: "0.00",
    source: "COST.FACTOR, UPV*",
  }),
  computed("factorPower", "Present value of a yearly 1 of electricity", `=${factor("powerRise")}`, "", {
    format: "0.00",
    source: "COST.FACTOR, UPV*",
  }),
  headsOf("Way", "All costs, PV", {
    C: "Saves",
    D: "Saving ±",
    E: '="Breaks even at gas, "&[currency]&"/therm"',
    F: '="or at "&[currency]&"/kWh"',
    G: "Pays from",
  }),
  ...WAYS.map(valueLine),
  gap,
];
