import { quantity, rows } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { NO_VALUE, listResult, quantityResult, wordResult } from "../../kernel/define/result";
import { CONDUCTANCE } from "../args";
import { foulingDrift, wilsonConstant, wilsonDrift, wilsonDriftNone, wilsonNarrow, wilsonSplit } from "../wilson";

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

/** At one flow, a year apart. */
const YEAR_LATER = {
  readings: [
    [40, 2400, 0],
    [40, 2150, 365],
  ],
  area: 14,
} as const;

const among = (given: unknown): number =>
  Math.max(...(given as readonly { readonly flow: number }[]).map(({ flow }) => flow));

export const exchangerWilson = cellFunction({
  id: "EXCHANGER.WILSON",
  topic: "exchanger",
  unitsAfter: "flow",
  summary: "UA split into the water's film and all the rest, from readings at several flows (Wilson's plot).",
  keywords: ["fouling", "commissioning", "film coefficient", "regression", "flow test", "resistance"],
  details: [
    "Least squares of 1/UA over flow^-exponent: the slope is the water's film, what is left is refrigerant, wall and fouling. 0.8 holds for turbulent flow in plain tubes; coiled and finned ones lie between 0.6 and 0.9.",
    "The errors are standard errors as shares of their values; blank from two readings. The rest is blank where the line leaves nothing for it.",
    "Fouling: with dates, every date has its own rest and all share the films; the rise of the rest since the first date, times the area. One flow is enough for that. Found from twice its error on: of each UA, or of the scatter if larger. The split is that of the last date.",
    "Other flow: of a second liquid; its film is split off too. A condensing refrigerant has none.",
  ],
  args: {
    readings: rows(
      {
        flow: WATER_FLOW,
        conductance: CONDUCTANCE,
        date: quantity("number", "date, or days since the first", { from: 0 }).optional(),
        otherFlow: WATER_FLOW.describedAs("flow of the other stream, if it is a liquid that varies").optional(),
      },
      "rows: water flow, UA, [date], [other flow]",
      { least: 2, most: 500 },
    ),
    exponent: quantity("number", "exponent of the water's flow", { from: 0.3, to: 1 }).default(0.8),
    flow: WATER_FLOW.describedAs("water flow to tell the split at").default({
      words: "the highest of the readings",
      from: ({ readings }) => among(readings),
    }),
    area: quantity("area", "area that the fouling refers to", { above: 0 }).optional(),
    error: quantity("fraction", "standard error of a UA, 3% or 0.03", { above: 0, to: 0.5 }).default(0.03),
  },
  returns: listResult("split of UA", {
    conductance: quantityResult("heat conductance", "UA by the line"),
    waterFilm: quantityResult("heat conductance", "conductance of the water's film", { or: "" }),
    rest: quantityResult("heat conductance", "conductance of refrigerant, wall and fouling", { or: "" }),
    filmShare: quantityResult("fraction", "share of the resistance that the water's film makes", { or: "" }),
    filmError: quantityResult("fraction", "standard error of the film", { or: "" }),
    restError: quantityResult("fraction", "standard error of the rest's resistance", { or: "" }),
    determination: quantityResult("fraction", "share of the scatter that the line explains"),
    otherFilm: quantityResult("heat conductance", "conductance of the other stream's film at its mean flow", {
      or: "",
    }),
    otherError: quantityResult("fraction", "standard error of the other film", { or: "" }),
    lost: quantityResult("fraction", "UA lost since the first date at this flow", { or: "" }),
    fouling: quantityResult("fouling resistance", "fouling since the first date", { or: "" }),
    foulingError: quantityResult("fouling resistance", "its standard error", { or: "" }),
    drift: wordResult("found, none found, or blank with one date"),
  }),
  facts: { span: "number", settings: "count", driftFound: "yes/no" },
  cautions: [
    { rule: wilsonNarrow, raisedBy: LABORATORY },
    { rule: wilsonConstant, raisedBy: LABORATORY },
    {
      rule: wilsonDriftNone,
      raisedBy: {
        ...YEAR_LATER,
        readings: [
          [40, 2400, 0],
          [40, 2350, 365],
        ],
      },
    },
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
  compute({ readings, exponent, flow, area, error }, { trace, recordFacts }) {
    const flows = readings.map((each) => each.flow);
    recordFacts({ span: Math.max(...flows) / Math.min(...flows), settings: new Set(flows).size });
    const split = wilsonSplit(readings, exponent, flow, trace);
    const { ua, film, rest, constant, clean, slope, other, otherFlow, otherResistance, determination } = split;
    const found = wilsonDrift(readings, split, error);
    recordFacts({ driftFound: found?.found ?? true });
    const shown = (value: number | undefined): number | typeof NO_VALUE =>
      value !== undefined && Number.isFinite(value) ? value : NO_VALUE;
    const before = 1 / ua - constant.value + clean.value;
    return {
      conductance: ua,
      waterFilm: film ?? NO_VALUE,
      rest: rest ?? NO_VALUE,
      filmShare: film === undefined ? NO_VALUE : ua / film,
      filmError: shown(slope && slope.error / slope.value),
      restError: rest === undefined ? NO_VALUE : shown(constant.error / constant.value),
      determination,
      otherFilm: other && otherFlow ? 1 / otherResistance : NO_VALUE,
      otherError: shown(other && other.error / other.value),
      lost: found && before > 0 ? 1 - before * ua : NO_VALUE,
      fouling: found && area ? trace.step(foulingDrift, { A: area, dR: found.value }) : NO_VALUE,
      foulingError: found && area ? found.error * area : NO_VALUE,
      drift: found === undefined ? "" : found.found ? "found" : "none found",
    };
  },
});
