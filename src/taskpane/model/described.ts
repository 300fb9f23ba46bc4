/** What a call was told and gave, for a record that is read without the add-in. */
import { cite, type Explanation, type Source, type Step, unitText } from "../../../core";
import type { Described } from "../../workbook/record";

/** The sources that the steps name, in their order. */
const sourcesIn = (steps: readonly Step[]): readonly Source[] =>
  steps.flatMap((step): readonly Source[] => {
    if (step.type === "group") return sourcesIn(step.steps);
    if (step.type === "equation") return [step.equation.source];
    if (step.type === "relation") return [step.relation.source];
    return step.type === "lookup" || step.type === "property" ? [step.source] : [];
  });

export const describedOf = ({ definition, system, args, steps, cautions }: Explanation): Described => {
  const { gives, sources = [], summary } = definition;
  const cited = [...sourcesIn(steps), ...sources].map(cite);
  return {
    method: summary,
    inputs: args,
    unit: gives.type === "quantity" ? unitText(gives, system) : "",
    sources: [...new Set(cited)],
    cautions,
  };
};
