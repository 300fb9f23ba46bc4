import { cellFunction } from "../../kernel/define/cellFunction";
import { compile } from "../../kernel/call/evaluate";
import { explain } from "../../kernel/explain/explain";
import { hostError, isFault } from "../../kernel/values/fault";
import { cite } from "../../kernel/reference";
import { gridResult } from "../../kernel/define/result";
import { ARGUMENTS, FUNCTION, functionNamed } from "../args";

export const noteCautions = cellFunction({
  id: "NOTE.CAUTIONS",
  topic: "note",
  summary: "The caution rules of a function; with arguments, those that the arguments raise.",
  keywords: ["warnings", "safety", "limits"],
  args: { function: FUNCTION, arguments: ARGUMENTS },
  returns: gridResult("cautions"),
  cautions: [],
  checks: [
    {
      inputs: { function: "PIPE.VELOCITY", arguments: [[90, "2 in"]] },
      expected: { row: "Warning", column: "code", value: "PIPE-FAST-WATER" },
      source: "poolVelocityLimits",
    },
  ],
  compute({ function: name, arguments: raw }, { catalogue }) {
    const definition = functionNamed(catalogue, name);
    if (raw.length === 0) {
      const rules = definition.cautions.map(({ rule }) => [
        rule.severity,
        rule.code,
        rule.description,
        cite(rule.source),
      ]);
      const none = [["", "", "This function has no caution rules of its own.", ""]];
      return [["severity", "code", "rule", "source"], ...(rules.length > 0 ? rules : none)];
    }
    const explanation = explain(compile(definition), raw, catalogue, { steps: false });
    if (isFault(explanation.out)) throw hostError(explanation.out.code, explanation.out.message);
    const raised = explanation.cautions.map(({ severity, code, text }) => [severity, code, text]);
    return [
      ["severity", "code", "note"],
      ...(raised.length > 0 ? raised : [["", "", "No caution is raised by these arguments."]]),
    ];
  },
});
