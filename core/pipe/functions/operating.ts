import { choice, quantity, rows } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { valueError } from "../../kernel/values/fault";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { NO_VALUE, listResult, quantityResult } from "../../kernel/define/result";
import { quantityMark } from "../../kernel/values/quantityMark";
import { drainCover, endOfCurve, slowPump, unstableCurve } from "../network/cautions";
import { PUMP_SETS, operatingPoint, type PumpAndSystem } from "../network/operating";

const head = (value: number): number => us("head", value);

const CURVE = rows(
  {
    flow: quantity("water flow", "flow of the pump", { from: 0 }),
    head: quantity("head", "head of the pump at that flow", { from: 0 }),
  },
  "rows of the pump curve: flow, head, in rising flow",
  { least: 2, most: 200 },
);

const checkCurve = (curve: PumpAndSystem["pumpCurve"]): void => {
  const place = curve.findIndex(({ flow }, i) => i > 0 && flow <= (curve[i - 1]?.flow ?? 0));
  if (place > 0)
    throw valueError(
      `pumpCurve: flows must rise from row to row, got ${quantityMark("water flow", curve[place]?.flow ?? 0)} after ${quantityMark("water flow", curve[place - 1]?.flow ?? 0)}`,
    );
};

/** H = 22.5 − 0.195 Q − 0.025115 Q², m and m³/h. */
const CURVE_OF_CHECK = [0, 3, 6, 9, 12, 15, 18, 21, 24].map((q) => [q, 22.5 - 0.195 * q - 0.025115 * q * q]);
const RISING = [0, 10, 20, 30, 40, 50, 60].map((q) => [q, 40 + 0.8 * q - 0.02 * q * q]);
const FALLING = [0, 20, 40, 60, 80, 100].map((q) => [q, 60 - 0.004 * q * q]);

export const pipeOperating = cellFunction({
  id: "PIPE.OPERATING",
  topic: "pipe",
  summary: "Flow and head where a pump curve meets the system curve of a loop.",
  keywords: ["operating point", "duty point", "pump curve", "affinity laws", "variable speed", "series", "parallel"],
  details: [
    "A head given in psi or kPa counts as a column of water at 60 °F (62.37 lb/ft³): 1 psi is 2.309 ft.",
    "System: H = static + (known − static) × (Q/known flow)²; the known head is total, static included. In a closed-over pool loop the static head is near zero.",
    "The pump curve is a monotone cubic through its points, without overshoot; it isn't extrapolated beyond its first and last point.",
    "Speed by the affinity laws (flow by speed, head by its square). Two pumps are equal: in series their heads add up, in parallel their flows.",
  ],
  args: {
    pumpCurve: CURVE,
    staticHead: quantity("head", "head at no flow: height between open surfaces", {
      from: head(-300),
      to: head(500),
      usual: [head(-20), head(60)],
    }),
    knownFlow: WATER_FLOW.describedAs("a flow at which the system's head is known"),
    knownHead: quantity("head", "total head at that flow, static included", { to: head(1000) }),
    speed: quantity("number", "speed, as a fraction of the curve's", { above: 0, to: 2, usual: [0.3, 1.2] }).default(1),
    pumps: choice("PumpSet", PUMP_SETS, "one pump, or two equal ones").default("one"),
  },
  returns: listResult("the operating point", {
    flow: quantityResult("water flow", "flow"),
    head: quantityResult("head", "total head"),
    frictionHead: quantityResult("head", "head less static head"),
    systemCurve: quantityResult("system curve", "coefficient of the system curve"),
    flowOfEachPump: quantityResult("water flow", "flow of each pump"),
    headOfEachPump: quantityResult("head", "head of each pump"),
    otherFlow: quantityResult("water flow", "second, unstable flow at which they meet"),
  }),
  facts: { placeOnCurve: "fraction" },
  cautions: [
    { rule: drainCover, raisedBy: { pumpCurve: FALLING, staticHead: 0, knownFlow: 50, knownHead: 30 } },
    { rule: endOfCurve, raisedBy: { pumpCurve: FALLING, staticHead: 0, knownFlow: 50, knownHead: 6 } },
    { rule: unstableCurve, raisedBy: { pumpCurve: RISING, staticHead: 42, knownFlow: 50, knownHead: 47 } },
    { rule: slowPump, raisedBy: { pumpCurve: FALLING, staticHead: 0, knownFlow: 50, knownHead: 30, speed: 0.4 } },
  ],
  checks: [
    {
      inputs: { pumpCurve: CURVE_OF_CHECK, staticHead: 0, knownFlow: 10, knownHead: 5.125, units: "SI" },
      expected: { flow: 15.935666, head: 13.014705 },
      tolerance: "0.05 %",
      source: "pumpRows",
    },
    {
      inputs: { pumpCurve: CURVE_OF_CHECK, staticHead: 0, knownFlow: 10, knownHead: 5.125, speed: 0.8, units: "SI" },
      expected: { flow: 12.748533, head: 8.3294111 },
      tolerance: "0.05 %",
      source: "pumpRows",
    },
    {
      inputs: {
        pumpCurve: CURVE_OF_CHECK,
        staticHead: 0,
        knownFlow: 10,
        knownHead: 5.125,
        pumps: "two in parallel",
        units: "SI",
      },
      expected: { flow: 18.947215, head: 18.398594 },
      tolerance: "0.05 %",
      source: "pumpRows",
    },
    {
      inputs: { pumpCurve: CURVE_OF_CHECK, staticHead: 27.3, knownFlow: 10, knownHead: 30, units: "SI" },
      expected: "#N/A",
      source: "identity",
      remark: "Static head above the pump's head at no flow",
    },
  ],
  compute(args, { trace, recordFacts }) {
    checkCurve(args.pumpCurve);
    if (!(args.knownHead > args.staticHead))
      throw valueError(
        `knownHead: must be above the static head of ${quantityMark("head", args.staticHead)}, got ${quantityMark("head", args.knownHead)}`,
      );
    const point = operatingPoint(args, trace);
    recordFacts({ placeOnCurve: point.placeOnCurve });
    return { ...point, otherFlow: point.otherFlow ?? NO_VALUE };
  },
});
