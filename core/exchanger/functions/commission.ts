import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { KINDS, fromBase, type KindName, type System } from "../../kernel/values/quantity";
import { EQUATION_SOURCES, TRANSPORT_SOURCES } from "../../refrigerant/sources";
import { balanceModel } from "../balance/cautions";
import { checkExchanger } from "../balance/inputs";
import { commissionDiffers, commissionTest } from "../commission/cautions";
import { commissionLines } from "../commission/expected";
import { COMMISSION_INPUTS, COMMISSION_READINGS, sideOf } from "../commission/inputs";
import { meaningsOf, sidesOf } from "../commission/pattern";

const inputs = { refrigerant: "R-410A", ratedCooling: 90000, UA: 5000, ratedPower: 8 } as const;
const readings = {
  waterFlow: 40,
  enteringWater: 82,
  leavingWater: 87.6,
  poolCondensing: 107,
  poolEvaporating: 45,
  poolSubcooling: 10,
  outdoor: 95,
  outdoorCondensing: 115,
  outdoorPower: 8,
} as const;
const good = { inputs, readings } as const;

/** A value in the call's unit: each row has its own. */
const inUnit = (value: number | undefined, kind: KindName, system: System): number | typeof NO_VALUE =>
  value === undefined ? NO_VALUE : fromBase(value, KINDS[kind][system]);

export const exchangerCommission = cellFunction({
  id: "EXCHANGER.COMMISSION",
  topic: "exchanger",
  summary: "Acceptance test: what the model expects at the measured water, flow and outdoor air beside each reading.",
  keywords: [
    "commissioning",
    "acceptance",
    "start-up",
    "diagnosis",
    "fouling",
    "charge",
    "non-condensables",
    "technician",
  ],
  details: [
    "Pool mode by EXCHANGER.BALANCE; power outdoors by AIRCON.ATOUTDOOR where rated power is given and its curves hold. Superheat, subcooling and flow beside what is wanted; the saturation temperature at rest beside the condenser's.",
    "Allowed: root of the sum of squares of the reading's error, the model's, and what the errors of water, flow, outdoor air and wet bulb do to the expected value. The usual errors are common practice: give your instruments' own.",
    "Hot gas drop as in EXCHANGER.BALANCE, on the pool only: read pool condensing at the exchanger, behind line and valve.",
    "Power: compressor and the fans that the inputs count. UA: heat into the water over the mean difference to the condensing temperature read.",
    "The last row says what the pattern of differences means: flow, fouling, charge, non-condensables, instruments.",
  ],
  args: { inputs: COMMISSION_INPUTS, readings: COMMISSION_READINGS },
  returns: tableResult("readings beside what is expected", {
    reading: wordResult("mode and reading"),
    measured: quantityResult("number", "as read, or worked from the readings"),
    expected: quantityResult("number", "by the model or as planned"),
    difference: quantityResult("number", "measured less expected"),
    allowed: quantityResult("number", "± let pass"),
    unit: wordResult("of the row"),
    verdict: wordResult("agrees, high, low or not measured"),
    method: wordResult("what expects it; in the last row the meaning"),
  }),
  facts: { differing: "word", meaning: "word" },
  memoised: true,
  cautions: [
    { rule: commissionDiffers, raisedBy: { ...good, readings: { ...readings, poolCondensing: 125 } } },
    { rule: commissionTest, raisedBy: good },
    { rule: balanceModel, raisedBy: good },
  ],
  sources: [...EQUATION_SOURCES, ...TRANSPORT_SOURCES, "cutler2013"],
  checks: [
    {
      inputs: good,
      expected: { row: "outdoor: condensing", column: "expected", value: 115 },
      tolerance: "0.001 %",
      source: "identity",
      remark: "the outdoor coil at its rating reproduces the rating",
    },
    {
      inputs: {
        ...good,
        readings: { ...readings, outdoor: 82 },
        inputs: { ...inputs, ratedCooling: 100_000, ratedPower: 10 },
      },
      expected: { row: "outdoor: power", column: "expected", value: 8.5041 },
      tolerance: 0.001,
      source: "cutler2013",
      remark: "10 kW × 1.06598 × 0.79777: the published coefficients at 82 °F over 95 °F, by another program",
    },
  ],
  compute({ inputs: plan, readings: read }, { trace, recordFacts, system }) {
    checkExchanger({ ...plan, ...read });
    const lines = commissionLines({ inputs: plan, system }, read, trace);
    const side = sidesOf(lines);
    const meaning = meaningsOf(side).join("; ");
    const differing = lines.filter(({ key }) => side(key) === "high" || side(key) === "low");
    const compared = lines.some(({ key }) => side(key) !== undefined);
    recordFacts({ differing: differing.map(({ key, reading }) => `${reading} ${side(key)}`).join(", "), meaning });
    const blank = {
      measured: NO_VALUE,
      expected: NO_VALUE,
      difference: NO_VALUE,
      allowed: NO_VALUE,
      unit: "",
    } as const;
    return [
      ...lines.map((line) => {
        const { kind, measured, expected } = line;
        const spread: KindName = kind === "temperature" ? "temperature difference" : kind;
        const apart = measured === undefined || expected === undefined ? undefined : measured - expected;
        return {
          reading: line.reading,
          measured: inUnit(measured, kind, system),
          expected: inUnit(expected, kind, system),
          difference: inUnit(apart, spread, system),
          allowed: expected === undefined ? NO_VALUE : inUnit(line.allowed, spread, system),
          unit: KINDS[kind][system].text,
          verdict: sideOf(line) ?? (expected === undefined ? "" : "not measured"),
          method: expected === undefined ? "" : line.method,
        };
      }),
      {
        reading: "pattern",
        ...blank,
        verdict: !compared ? "not measured" : differing.length === 0 ? "agrees" : "differs",
        method:
          differing.length > 0
            ? meaning || "no usual pattern: check the readings first"
            : compared
              ? "within the errors"
              : "",
      },
    ];
  },
});
