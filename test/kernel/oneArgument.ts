/** One argument by itself: what a calculation gets for it. */
import type { Arg, Presence } from "../../core/kernel/define/argument";
import { cellFunction } from "../../core/kernel/define/cellFunction";
import { gridResult, type GridCell } from "../../core/kernel/define/result";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";

type Value = GridCell | readonly GridCell[] | undefined;

const showing = (value: Arg<unknown, Presence>, show: (value: unknown) => GridCell | readonly GridCell[]) =>
  cellFunction({
    id: "SAMPLE.ONE",
    topic: "sample",
    summary: "Shows the value given.",
    args: { value },
    returns: gridResult("the value given"),
    cautions: [],
    checks: [],
    compute: (args) => [[show(args.value)].flat()],
  });

/** What `compute` gets for a block or rows, or the refusal. */
export function admittedRange(arg: Arg<unknown, Presence>, raw: unknown): Readonly<Record<string, unknown>> {
  let given: unknown;
  const out = evaluate(compile(showing(arg, (value) => ((given = value), "admitted"))), [raw], []);
  return (isFault(out) ? out.message : given) as Readonly<Record<string, unknown>>;
}

/** The value in base units, several as a list, "left out" for none; or the refusal, without code and name. */
export function admitted(arg: Arg<Value, Presence>, raw: unknown, system?: "SI"): unknown {
  const definition = showing(arg, (value) => (value as Value) ?? "left out");
  const out = evaluate(compile(definition), system === undefined ? [raw] : [raw, system], []);
  if (isFault(out)) return out.message.replace(/^value: /, "");
  const [cells = []] = out as readonly (readonly GridCell[])[];
  return cells.length === 1 ? cells[0] : cells;
}
