/** Steps as rows of a table: number, what, with the numbers in, value, unit, source. */
import { sum } from "../../numeric/series";
import { renderMarks } from "../values/fault";
import type { GridCell } from "../define/result";
import { KINDS, fromBase, showNumber, showReadable, type KindName, type System } from "../values/quantity";
import { gaugeReading } from "../define/pressureBasis";
import { cite } from "../reference";
import { readableUnit, type ShownBasis } from "./readable";
import type { StepValue, Step, Total } from "../define/steps";

/** Heading of the column of numbers: equations show numbers without units, everything else has its unit. */
export const NUMBERS_HEAD = "with the numbers in (strict SI where no unit stands)";

export interface WorkingLine {
  readonly number: string;
  readonly text: string;
  readonly numbers: string;
  readonly value: GridCell;
  readonly unit: string;
  readonly source: string;
  /** The mathjs form, for a renderer of equations. */
  readonly form?: string;
}

/** A form with its symbols replaced by numbers, in strict SI. */
export const withNumbers = (form: string, x: Readonly<Record<string, number>>): string =>
  form
    .slice(form.indexOf("=") + 1)
    .trim()
    .replace(/\b[A-Za-z_]\w*\b/g, (name) => {
      const value = x[name];
      if (value === undefined) return name;
      return value < 0 ? `(${showNumber(value)})` : showNumber(value);
    });

const cell = (
  value: number,
  kind: KindName,
  system: System,
  basis: ShownBasis = "absolute",
): { readonly value: GridCell; readonly unit: string } => {
  const shown = fromBase(value, KINDS[kind][system]);
  return {
    value: Number.isFinite(shown) ? Number(shown.toPrecision(12)) : "not finite",
    unit: readableUnit(shown, kind, system, { basis }),
  };
};

const shownCell = (given: StepValue, system: System): { readonly value: GridCell; readonly unit: string } =>
  typeof given === "string" ? { value: given, unit: "" } : cell(given.value, given.kind, system);

const shownText = (given: StepValue, system: System): string =>
  typeof given === "string" ? given : showReadable(given.value, given.kind, system);

const TOTALS: Readonly<Record<Total, (values: readonly number[]) => number>> = {
  sum: sum,
  mean: (values) => sum(values) / values.length,
  "harmonic mean": (values) => values.length / sum(values.map((each) => 1 / each)),
};

/** Share of the largest value in a series: anything smaller is rounding error of a difference. */
const ROUNDING = 1e-12;

const seriesText = (all: readonly number[], kind: KindName, system: System): string => {
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const nothing = ROUNDING * Math.max(-least, most);
  const texts = [all[0] ?? 0, all.at(-1) ?? 0, least, most].map((each) =>
    showReadable(Math.abs(each) < nothing ? 0 : each, kind, system),
  );
  return `first ${texts[0] ?? ""}, last ${texts[1] ?? ""}, least ${texts[2] ?? ""}, most ${texts[3] ?? ""}`;
};

const titled = (name: string, of: string | undefined, form: string): string =>
  of === undefined ? `${name}: ${form}` : `${name}, ${of}: ${form}`;

const line = (step: Exclude<Step, { type: "group" }>, number: string, system: System): WorkingLine => {
  const base = { number, numbers: "", value: "" as GridCell, unit: "", source: "" };
  switch (step.type) {
    case "equation": {
      const { name, form, kind, constants, source } = step.equation;
      return {
        ...base,
        text: titled(name, step.of, form),
        form,
        numbers: withNumbers(form, { ...constants, ...step.x }),
        ...cell(step.value, kind, system, step.equation === gaugeReading ? "gauge" : "absolute"),
        source: cite(source),
      };
    }
    case "relation": {
      const { name, form, constants, source } = step.relation;
      const x = { ...constants, ...step.x };
      const left = withNumbers(`=${form.slice(0, form.indexOf("="))}`, x);
      const numbers = `${left} = ${withNumbers(form, x)}`;
      return {
        ...base,
        text: titled(name, step.of, form),
        form,
        numbers,
        value: step.left - step.right,
        source: cite(source),
      };
    }
    case "lookup":
      return {
        ...base,
        text: `${step.table}: ${step.row}`,
        numbers: step.interpolation ?? "",
        ...shownCell(step.result, system),
        source: cite(step.source),
      };
    case "property":
      return {
        ...base,
        text: `${step.property} of ${step.substance}${step.uncertainty ? ` (${step.uncertainty})` : ""}`,
        numbers: Object.entries(step.inputs)
          .map(([name, given]) => `${name} ${shownText(given, system)}`)
          .join(", "),
        ...shownCell(step.result, system),
        source: cite(step.source),
      };
    case "solution":
      return {
        ...base,
        text: `Solved for ${step.unknown}: ${step.solves}`,
        numbers: `between ${showReadable(step.bracket[0], step.kind, system)} and ${showReadable(step.bracket[1], step.kind, system)}, ${step.iterations} passes, residual ${showNumber(step.residual)}`,
        ...cell(step.answer, step.kind, system),
      };
    case "series": {
      const values = Array.from(step.values);
      const count = values.length;
      const numbers = count === 1 ? "one value" : `${count} ${step.of}: ${seriesText(values, step.kind, system)}`;
      const total = TOTALS[step.total](values);
      return { ...base, text: `${step.title}, ${step.total}`, numbers, ...cell(total, step.kind, system) };
    }
    case "remark":
      return { ...base, text: step.text };
  }
};

/** The tree of steps as numbered lines: 1, 1.1, … */
export const workingLines = (steps: readonly Step[], system: System, before = ""): readonly WorkingLine[] =>
  steps.flatMap((step, place) => {
    const number = `${before}${place + 1}`;
    if (step.type !== "group") {
      const shown = line(step, number, system);
      return [{ ...shown, text: renderMarks(shown.text, system), numbers: renderMarks(shown.numbers, system) }];
    }
    const head = { number, text: renderMarks(step.title, system), numbers: "", value: "", unit: "", source: "" };
    return [head, ...workingLines(step.steps, system, `${number}.`)];
  });
