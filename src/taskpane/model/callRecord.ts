/** Describes a call for a record that is read without the add-in. */
import { cite, type Explanation, type Source, type Step, unitText } from "../../../core";
import type { CallDescription } from "../../workbook/copy/recordTypes";

/** The sources that the steps name, in their order. */
const sourcesIn = (steps: readonly Step[]): readonly Source[] =>
  steps.flatMap((step): readonly Source[] => {
    if (step.type === "group") return sourcesIn(step.steps);
    if (step.type === "equation") return [step.equation.source];
    if (step.type === "relation") return [step.relation.source];
    return step.type === "lookup" || step.type === "property" ? [step.source] : [];
  });

export const callDescription = ({ definition, system, args, steps, cautions }: Explanation): CallDescription => {
  const { returns, sources = [], summary } = definition;
  const cited = [...sourcesIn(steps), ...sources].map(cite);
  return {
    method: summary,
    inputs: args,
    unit: returns.type === "quantity" ? unitText(returns, system) : "",
    sources: [...new Set(cited)],
    cautions,
  };
};
