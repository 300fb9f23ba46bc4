/** What is published about a refrigerant besides its state properties. */
import { NO_VALUE } from "../kernel/define/result";
import { STANDARD_PRESSURE } from "../kernel/define/pressureBasis";
import { silent, type Trace } from "../kernel/define/steps";
import { quantityMark } from "../kernel/values/quantityMark";
import { FLAMMABILITY, type Flammability } from "./data/flammability";
import { RETROFIT_BY_CLASS, RETROFIT_NOTES, US_NEW_SYSTEM_LIMIT } from "./data/retrofit";
import { LATER_REPORTS, LATER_WARMING, type LaterReport, WARMING, type Warming } from "./data/warming";
import { glideOf, warmingByMass } from "./equations";
import { isPure, loadRefrigerant, type Fluid } from "./refrigerant";
import { temperatureOnLine } from "./saturation/working";

const percent = (share: number): string => `${Number((100 * share).toFixed(1))} %`;

/** "R-32 50 %, R-125 50 %". */
export const compositionOf = (fluid: Fluid): string =>
  isPure(fluid)
    ? `${fluid.name} 100 %`
    : fluid.components.map(({ fluid: part, massFraction }) => `${part.name} ${percent(massFraction)}`).join(", ");

const rowNamed = <T extends { readonly name: string }>(rows: readonly T[], name: string): T => {
  const row = rows.find((each) => each.name === name);
  if (!row) throw new Error(`no row for ${name}`);
  return row;
};

export const flammabilityOf = (name: string): Flammability => rowNamed(FLAMMABILITY, name);

/** Doubts about a flammability limit: "from memory", and another published value, kg/m³, formatted by `write`; undefined without doubts. */
export const limitDoubts = (name: string, write: (limit: number) => string): string | undefined => {
  const { fromMemory, other } = flammabilityOf(name);
  const doubts = [...(fromMemory ? ["from memory"] : []), ...(other ? [`${write(other.limit)} ${other.where}`] : [])];
  return doubts.length === 0 ? undefined : doubts.join("; ");
};

/** A refrigerant's row in the working's look-up of its flammability limit. */
export const limitRow = (name: string): string => {
  const doubts = limitDoubts(name, (limit) => quantityMark("concentration", limit));
  return doubts === undefined ? name : `${name} (${doubts})`;
};

/** 100-year warming potential by mass of the components, and the reports it comes from. */
export const warmingOf = (
  fluid: Fluid,
  trace: Trace = silent,
): { readonly potential: number; readonly reports: string } => {
  const parts = fluid.components.map(({ fluid: { name }, massFraction }) => {
    const row: Warming = rowNamed(WARMING, name);
    if (trace.on)
      trace.lookup({
        table: "100-year warming potential",
        row: `${name} (${row.report})`,
        result: { value: row.potential, kind: "number" },
        source: "ipccAr4",
      });
    return { ...row, massFraction };
  });
  const [first] = parts;
  const reports =
    parts.length === 1 && first
      ? first.report
      : parts.map(({ name, potential, report }) => `${name} ${potential} (${report})`).join(", ");
  const share = (place: number): number => parts[place]?.massFraction ?? 0;
  const own = (place: number): number => parts[place]?.potential ?? 0;
  const potential = trace.step(warmingByMass, {
    w1: share(0),
    g1: own(0),
    w2: share(1),
    g2: own(1),
    w3: share(2),
    g3: own(2),
    w4: share(3),
    g4: own(3),
  });
  return { potential, reports };
};

/** The same by a later report; undefined where it lacks a component. */
export function laterWarmingOf(fluid: Fluid, report: LaterReport): number | undefined {
  const place = LATER_REPORTS.indexOf(report);
  let potential = 0;
  for (const { fluid: part, massFraction } of fluid.components) {
    const own = LATER_WARMING[part.name]?.[place];
    if (own === undefined) return undefined;
    potential += massFraction * own;
  }
  return potential;
}

/** A potential as lists print it: a whole number, small ones as they are. Limits apply to the unrounded sum. */
export const printedPotential = (potential: number): number => (potential < 1 ? potential : Math.round(potential));

/** What to know before putting it into an existing machine. */
export const retrofitNote = (name: string, potential: number): string =>
  [
    RETROFIT_BY_CLASS[flammabilityOf(name).safetyClass],
    RETROFIT_NOTES[name] ?? "",
    potential > US_NEW_SYSTEM_LIMIT
      ? `US: above the limit of ${US_NEW_SYSTEM_LIMIT} for new residential and light commercial systems (the rule may change: check).`
      : "",
  ]
    .filter((each) => each !== "")
    .join(" ");

/** Bubble temperature (K) and glide (K) at 1 atm; empty where no liquid exists there. */
export const boilingAtSeaLevel = (name: string, trace: Trace = silent) => {
  const { bubble } = loadRefrigerant(name);
  if (Math.log(STANDARD_PRESSURE) < bubble.lowest) return { normalBoilingPoint: NO_VALUE, glide: NO_VALUE };
  const Tb = temperatureOnLine(name, STANDARD_PRESSURE, "bubble", trace);
  const Td = temperatureOnLine(name, STANDARD_PRESSURE, "dew", trace);
  return { normalBoilingPoint: Tb, glide: trace.step(glideOf, { Td, Tb }) };
};
