import { block, choice, quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, listResult, quantityResult } from "../../kernel/define/result";
import type { Trace } from "../../kernel/define/steps";
import { notAvailable } from "../../kernel/values/fault";
import { REFRIGERANT } from "../../refrigerant/args";
import { LATER_REPORTS } from "../../refrigerant/data/warming";
import { laterWarmingOf, printedPotential, warmingOf } from "../../refrigerant/facts";
import { loadRefrigerant } from "../../refrigerant/refrigerant";
import { leakEstimate, warmingRises } from "../cautions";
import { endOfLifeWarming, energyWarming, leakWarming } from "../equations";

const REPORTS = ["AR4", ...LATER_REPORTS] as const;
const share = (about: string, most: number) => quantity("fraction", about, { from: 0, to: most });
const warming = (about: string) => quantityResult("carbon dioxide", about);

const INPUTS = {
  refrigerant: REFRIGERANT,
  charge: quantity("mass", "charge, pool exchanger and added lines included", { above: 0 }),
  energy: quantity("electric energy", "electricity of a year", { from: 0 }),
  years: quantity("years", "years of use", { from: 1, to: 50 }).default(15),
  leakRate: share("leaked in a year, 4% or 0.04", 1).default(0.04),
  recovery: share("recovered at the end of life", 1).default(0.7),
  carbonFactor: quantity("number", "carbon dioxide of electricity, kg/kWh, whatever the units", {
    from: 0,
    to: 3,
    usual: [0.01, 1.2],
  }).default(0.43),
  report: choice("WarmingReport", REPORTS, "table of warming potentials", { "EU 2024": "EU 2024/573" }).default("AR4"),
  oldCharge: quantity("mass", "charge before the change", { above: 0 }).optional(),
  oldEnergy: quantity("electric energy", "electricity of a year before", { from: 0 }).optional(),
  oldRefrigerant: REFRIGERANT.optional(),
  heaterCarbon: quantity("carbon dioxide", "of a year's pool heat no longer bought", { from: 0 }).default(0),
};

type Report = (typeof REPORTS)[number];

function potentialOf(refrigerant: string, report: Report, trace: Trace): number {
  const fluid = loadRefrigerant(refrigerant);
  const found = report === "AR4" ? warmingOf(fluid, trace).potential : laterWarmingOf(fluid, report);
  if (found === undefined) throw notAvailable(`inputs: report: ${report} has no potential of ${refrigerant} here`);
  const value = printedPotential(found);
  trace.lookup({
    table: "100-year warming potential, as lists print it",
    row: `${refrigerant}, ${report}`,
    result: { value, kind: "number" },
    source: report === "AR4" ? "ipccAr4" : "eu2024573",
  });
  return value;
}

const HALL = { refrigerant: "R-410A", charge: "9 lb", energy: 3000, carbonFactor: 0.4 };

export const costWarming = cellFunction({
  id: "COST.WARMING",
  topic: "cost",
  summary: "Total equivalent warming of a machine: leaks, end of life, energy; before and after a change.",
  keywords: ["TEWI", "GWP", "leak rate", "refrigerant loss", "greenhouse", "CO2 equivalent", "climate"],
  details: [
    "Leaks: potential × leak rate × charge × years; end of life: potential × charge × (1 - recovery); energy: electricity × factor × years.",
    "Leak rates of a year (common practice): split systems 2 to 5 %, packaged 1 to 3 %, remote racks 10 to 20 %, chillers 1 to 3 %. Recovery 70 to 95 %. The factor for electricity is the US average of 2018, 0.43 kg/kWh.",
    "Before the change: old charge, old electricity and old refrigerant, each as now where left out; blank without one of them. Change: this less before, less the heater's carbon dioxide over the years.",
    "Potentials print as whole numbers; limits (700, 150) apply to the unrounded sum.",
  ],
  args: { inputs: block(INPUTS, "labels, values and units: see NOTE.INPUTS") },
  returns: listResult("warming", {
    potential: quantityResult("number", "100-year warming potential by the report"),
    leaks: warming("of leaks over the years"),
    endOfLife: warming("of what isn't recovered"),
    energy: warming("of electricity over the years"),
    total: warming("carbon dioxide equivalent over the years"),
    totalBefore: warming("the same before the change"),
    heater: warming("of heat no longer bought, over the years"),
    change: warming("by the change, heat no longer bought counted"),
  }),
  facts: { rises: "yes/no" },
  cautions: [
    { rule: leakEstimate, raisedBy: { inputs: HALL } },
    { rule: warmingRises, raisedBy: { inputs: { ...HALL, "old charge": "7 lb" } } },
  ],
  sources: ["ipccAr4", "eu2024573"],
  checks: [
    {
      inputs: {
        inputs: { refrigerant: "R-410A", charge: 4, energy: 3000, "carbon factor": 0.4 },
        units: "SI",
      },
      expected: { leaks: 5011.2, endOfLife: 2505.6, energy: 18000, total: 25516.8 },
      tolerance: "0.01 %",
      source: "totalWarming",
      remark: "by hand: 2,088, 4 %, 15 years, 70 % recovered",
    },
    {
      inputs: {
        inputs: { refrigerant: "R-454B", charge: 3.5, energy: 3000, "carbon factor": 0.4, report: "EU 2024" },
        units: "SI",
      },
      expected: { leaks: 976.5, endOfLife: 488.25, total: 19464.75 },
      tolerance: "0.01 %",
      source: "totalWarming",
      remark: "by hand: 465",
    },
  ],
  compute({ inputs: x }, { trace, recordFacts }) {
    const totalOf = (refrigerant: string, charge: number, energy: number) => {
      const GWP = potentialOf(refrigerant, x.report, trace);
      const leaks = trace.step(leakWarming, { GWP, a: x.leakRate, m: charge, n: x.years });
      const endOfLife = trace.step(endOfLifeWarming, { GWP, m: charge, r: x.recovery });
      const ofEnergy = trace.step(energyWarming, { E: energy, b: x.carbonFactor, n: x.years });
      return { potential: GWP, leaks, endOfLife, energy: ofEnergy, total: leaks + endOfLife + ofEnergy };
    };
    const now = trace.within("After the change", () => totalOf(x.refrigerant, x.charge, x.energy));
    const changed = x.oldCharge !== undefined || x.oldEnergy !== undefined || x.oldRefrigerant !== undefined;
    const heater = x.heaterCarbon * x.years;
    if (!changed) return { ...now, totalBefore: NO_VALUE, heater, change: NO_VALUE };
    const before = trace.within("Before the change", () =>
      totalOf(x.oldRefrigerant ?? x.refrigerant, x.oldCharge ?? x.charge, x.oldEnergy ?? x.energy),
    );
    const change = now.total - before.total - heater;
    recordFacts({ rises: change > 0 });
    return { ...now, totalBefore: before.total, heater, change };
  },
});
