/** Life-cycle cost of alternatives and what each saves beside a base, after NIST Handbook 135. */
import { silent, type Trace } from "../kernel/define/steps";
import { valueError } from "../kernel/values/fault";
import { sumOf } from "../numeric/series";
import { firstCrossing, internalRate, lastingFrom, modifiedRate, presentValueOf } from "./cashFlow";
import { adjustedRate, presentValueFactor, savingsRatio, singleFactor, yearlyRatio } from "./equations";

export const COST_KINDS = ["first cost", "energy", "upkeep", "once", "replacement", "residual"] as const;
export type CostKind = (typeof COST_KINDS)[number];

export interface CostRow {
  readonly alternative: string;
  readonly kind: CostKind;
  /** At today's prices. */
  readonly amount: number;
  readonly year?: number | undefined;
  readonly escalation: number;
}

interface Period {
  readonly years: number;
  readonly discount: number;
}

const yearly = (kind: CostKind): boolean => kind === "energy" || kind === "upkeep";

/** The year in which a row is paid, once; residual values come in at the end. */
function yearOf({ kind, year }: CostRow, at: string, { years }: Period): number {
  if (kind === "first cost") return 0;
  if (kind === "residual") return year ?? years;
  if (year === undefined) throw valueError(`${at}, year: is blank: "${kind}" needs the year in which it is paid`);
  return year;
}

/** Costs of an alternative: present values by kind and the flows of the years, the first now. */
interface Account {
  readonly values: Readonly<Record<CostKind, number>>;
  readonly flows: readonly number[];
}

function accountOf(rows: readonly (readonly [at: string, row: CostRow])[], period: Period, trace: Trace): Account {
  const { years: n, discount: d } = period;
  const values = { "first cost": 0, energy: 0, upkeep: 0, once: 0, replacement: 0, residual: 0 };
  const flows = Array.from({ length: n + 1 }, () => 0);
  for (const [at, row] of rows) {
    const { kind, escalation: e } = row;
    const amount = kind === "residual" ? -row.amount : row.amount;
    const q = trace.step(yearlyRatio, { e, d }, kind);
    const paid = yearly(kind) ? undefined : yearOf(row, at, period);
    if (paid !== undefined && paid > n)
      throw valueError(`${at}, year: must be at most the years counted, ${n}, got ${paid}`);
    values[kind] +=
      amount *
      (paid === undefined
        ? trace.step(presentValueFactor, { q, n }, kind)
        : trace.step(singleFactor, { q, n: paid }, kind));
    for (let year = paid ?? 1; year <= (paid ?? n); year++) flows[year] = (flows[year] ?? 0) + amount * (1 + e) ** year;
  }
  return { values, flows };
}

const OPERATING = ["energy", "upkeep", "once"] as const;
const INVESTED = ["first cost", "replacement", "residual"] as const;

const total = ({ values }: Account, kinds: readonly CostKind[] = COST_KINDS): number =>
  sumOf(kinds, (kind) => values[kind]);

/** What an alternative saves beside the base; undefined members where they mean nothing. */
function savingsBeside(base: Account, account: Account, { years: n, discount: d }: Period, trace: Trace) {
  const flows = base.flows.map((cost, year) => cost - (account.flows[year] ?? 0));
  const saved = total(base, OPERATING) - total(account, OPERATING);
  const invested = total(account, INVESTED) - total(base, INVESTED);
  const ratio = invested > 0 ? trace.step(savingsRatio, { S: saved, I: invested }) : undefined;
  const netSavings = presentValueOf(flows, d);
  const energy = base.values.energy - account.values.energy;
  return {
    netSavings,
    savingsRatio: ratio,
    adjustedRate: ratio !== undefined && ratio > 0 ? trace.step(adjustedRate, { d, SIR: ratio, n }) : undefined,
    simplePayback: firstCrossing(flows, 0),
    discountedPayback: firstCrossing(flows, d),
    positiveFrom: lastingFrom(flows, d),
    internalRate: internalRate(flows),
    modifiedRate: modifiedRate(flows, d),
    energyMultiple: energy === 0 ? undefined : 1 - netSavings / energy,
  };
}

/** Every alternative in the order of the rows; the first, or the one named, is the base of the others. */
export function lifeCycles(
  rows: readonly CostRow[],
  period: Period,
  baseName: string | undefined,
  trace: Trace = silent,
) {
  const names = [...new Set(rows.map(({ alternative }) => alternative.trim()))];
  const base =
    baseName === undefined ? names[0] : names.find((name) => name.toLowerCase() === baseName.trim().toLowerCase());
  if (base === undefined)
    throw valueError(`inputs, base: no alternative "${baseName ?? ""}" in the rows: ${names.join(", ")}`);
  const accounts = names.map((name) =>
    trace.within(name, () =>
      accountOf(
        rows.flatMap((row, i) => (row.alternative.trim() === name ? [[`rows, row ${i + 1}`, row] as const] : [])),
        period,
        trace,
      ),
    ),
  );
  const against = accounts[names.indexOf(base)];
  const U = presentValueFactor.code({ q: 1 / (1 + period.discount), n: period.years });
  return names.map((alternative, i) => {
    const account = accounts[i] as Account;
    const lifeCycleCost = total(account);
    const beside =
      against === undefined || account === against ? undefined : savingsBeside(against, account, period, trace);
    return { alternative, values: account.values, lifeCycleCost, annualValue: lifeCycleCost / U, beside };
  });
}
