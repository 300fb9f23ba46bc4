import { quantity, rows } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { NO_VALUE, listResult, quantityResult } from "../../kernel/define/result";
import { CONDUCTANCE } from "../args";
import { wilsonConstant, wilsonNarrow, wilsonSplit } from "../wilson";

/** Measured at 650 L/h of the other stream: flow, m³/h, and 1,000 over the resistance, K/kW. */
const MEASURED = (
  [
    [798, 1.652986],
    [798, 1.644344],
    [798, 1.644344],
    [512, 2.089553],
    [512, 2.089553],
    [512, 2.089553],
    [201, 3.460242],
    [201, 3.460489],
    [201, 3.460489],
  ] as const
).map(([flow, resistance]) => [flow / 1000, 1000 / resistance]);

const LABORATORY = { readings: MEASURED, exponent: 0.8, flow: 0.5, units: "SI" } as const;

const among = (given: unknown): number =>
  Math.max(...(given as readonly { readonly flow: number }[]).map(({ flow }) => flow));

export const exchangerWilson = cellFunction({
  id: "EXCHANGER.WILSON",
  topic: "exchanger",
  summary: "UA split into the water's film and all the rest, from readings at several flows (Wilson's plot).",
  keywords: ["fouling", "commissioning", "film coefficient", "regression", "flow test", "resistance"],
  details: [
    "Least squares of 1/UA over flow^-exponent: the slope is the water's film, what is left is refrigerant, wall and fouling. 0.8 holds for turbulent flow in plain tubes; coiled and finned ones lie between 0.6 and 0.9.",
    "The errors are standard errors as shares of their values; blank from two readings. The rest is blank where the line leaves nothing for it.",
    "Fouling: the rest now and when clean, at the same condensing temperature: 1/rest now less 1/rest clean, times the area.",
  ],
  args: {
    readings: rows({ flow: WATER_FLOW, conductance: CONDUCTANCE }, "rows: water flow, UA", { least: 2, most: 500 }),
    exponent: quantity("number", "exponent of the water's flow", { from: 0.3, to: 1 }).default(0.8),
    flow: WATER_FLOW.describedAs("water flow to tell the split at").default({
      words: "the highest of the readings",
      from: ({ readings }) => among(readings),
    }),
  },
  returns: listResult("split of UA", {
    conductance: quantityResult("heat conductance", "UA by the line"),
    waterFilm: quantityResult("heat conductance", "conductance of the water's film"),
    rest: quantityResult("heat conductance", "conductance of refrigerant, wall and fouling", { or: "" }),
    filmShare: quantityResult("fraction", "share of the resistance that the water's film makes"),
    filmError: quantityResult("fraction", "standard error of the film", { or: "" }),
    restError: quantityResult("fraction", "standard error of the rest's resistance", { or: "" }),
    determination: quantityResult("fraction", "share of the scatter that the line explains"),
  }),
  facts: { span: "number", settings: "count" },
  cautions: [
    { rule: wilsonNarrow, raisedBy: LABORATORY },
    { rule: wilsonConstant, raisedBy: LABORATORY },
  ],
  checks: [
    {
      inputs: LABORATORY,
      expected: { conductance: 481.05, filmShare: 0.6227 },
      tolerance: "0.01 %",
      source: "kantorExchanger",
      remark: "measured readings; their line by another program",
    },
  ],
  compute({ readings, exponent, flow }, { trace, recordFacts }) {
    const flows = readings.map((each) => each.flow);
    recordFacts({ span: Math.max(...flows) / Math.min(...flows), settings: new Set(flows).size });
    const { ua, film, rest, share, R, constantError, slopeError, determination } = wilsonSplit(
      readings,
      exponent,
      flow,
      trace,
    );
    const shown = (value: number): number | typeof NO_VALUE => (Number.isFinite(value) ? value : NO_VALUE);
    return {
      conductance: ua,
      waterFilm: film,
      rest: rest ?? NO_VALUE,
      filmShare: share,
      filmError: shown(slopeError),
      restError: rest === undefined ? NO_VALUE : shown(constantError / R),
      determination,
    };
  },
});
