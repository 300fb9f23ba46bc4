import { cellFunction } from "../../kernel/define/cellFunction";
import { compile } from "../../kernel/call/evaluate";
import { explain } from "../../kernel/explain/explain";
import { rawByPlace } from "../../kernel/explain/describe";
import { REFERENCES, type Source, type SourceKey } from "../../kernel/reference";
import { gridResult } from "../../kernel/define/result";
import type { Step } from "../../kernel/define/steps";
import { FUNCTION, functionNamed } from "../args";
import { sourcesOf } from "../sources";

const keyOf = (source: Source): SourceKey => (typeof source === "string" ? source : source.key);

const stepSources = (steps: readonly Step[]): readonly SourceKey[] =>
  steps.flatMap((step) => {
    if (step.type === "group") return stepSources(step.steps);
    if (step.type === "equation") return [keyOf(step.equation.source)];
    if (step.type === "relation") return [keyOf(step.relation.source)];
    return step.type === "lookup" || step.type === "property" ? [keyOf(step.source)] : [];
  });

export const noteSources = cellFunction({
  id: "NOTE.SOURCES",
  topic: "note",
  summary: "The published sources behind a function.",
  keywords: ["references", "bibliography", "standards"],
  args: { function: FUNCTION },
  returns: gridResult("sources"),
  bibliography: REFERENCES,
  cautions: [],
  checks: [
    {
      inputs: { function: "PIPE.BORE" },
      expected: { row: "ASTM D1785", column: "serves", value: "equation or table, check" },
      source: "identity",
    },
  ],
  compute({ function: name }, { catalogue }) {
    const definition = functionNamed(catalogue, name);
    const { bibliography } = functionNamed(catalogue, "NOTE.SOURCES");
    if (bibliography === undefined) throw new Error("the citations are missing");
    const examples = definition.checks.map(({ inputs }) => rawByPlace(definition, inputs));
    const inSteps = examples.flatMap((raw) => stepSources(explain(compile(definition), raw, catalogue).steps));
    const declared = new Map(sourcesOf(definition));
    const keys = [...new Set([...inSteps, ...declared.keys()])];
    const rows = keys.map((key) => {
      const serves = [inSteps.includes(key) ? "equation or table" : "", declared.get(key) ?? ""].filter(
        (each) => each !== "",
      );
      const { short, full, seen } = bibliography[key];
      return [short, full, seen, serves.join(", ")];
    });
    return [["source", "citation", "seen", "serves"], ...rows];
  },
});
