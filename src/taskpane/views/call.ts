/** One call of ours in the selected cell: result, cautions, arguments, working. */
import type { CellFunction } from "../../../core/kernel/cellFunction";
import { NAMESPACE } from "../../../core/kernel/describe";
import type { Explanation } from "../../../core/kernel/explain";
import { isFault } from "../../../core/kernel/fault";
import type { ReadCall } from "../../workbook/reader/read";
import { isOutcomeFault, type RawValue } from "../../workbook/values";
import type { Desk } from "../desk";
import { h, type Child } from "../elements";
import { explainedArguments, readArguments } from "./arguments";
import { picturesBox } from "./pictures";
import { faultText, resultOf } from "./result";
import { severityClass, severityMark } from "./severity";
import { workingOf } from "./steps";

const cautionList = ({ cautions }: Explanation): Child =>
  cautions.length === 0
    ? undefined
    : [
        h("h4", {}, "Cautions"),
        h(
          "ul",
          { class: "plain" },
          cautions.map(({ severity, code, text }) =>
            h(
              "li",
              { class: `caution ${severityClass(severity)}` },
              h("p", {}, severityMark(severity), h("span", { class: "code" }, code)),
              h("p", {}, text),
            ),
          ),
        ),
      ];

const working = (desk: Desk, { steps, system }: Explanation, key: string): HTMLElement =>
  h(
    "details",
    { class: "working", open: true, "data-key": `${key} working` },
    h("summary", { "data-key": `${key} working summary` }, "Working"),
    workingOf(desk, steps, system),
  );

const explained = (
  desk: Desk,
  explanation: Explanation,
  { args }: ReadCall,
  values: readonly RawValue[],
  key: string,
): readonly Child[] => {
  const { definition, out, steps, system } = explanation;
  const refused = isFault(out) && steps.length === 0;
  return [
    resultOf(definition, out, system),
    cautionList(explanation),
    isFault(out) ? undefined : picturesBox(definition.id, values, key),
    refused ? readArguments(definition, args) : explainedArguments(explanation.args),
    refused ? undefined : working(desk, explanation, key),
  ];
};

const unexplained = (definition: CellFunction, { args, outcome }: ReadCall): readonly Child[] => [
  outcome !== undefined && isOutcomeFault(outcome) ? faultText(outcome.error, outcome.message) : undefined,
  readArguments(definition, args),
];

/** The argument values of a call all of whose arguments were read and hold no error. */
const valuesOf = ({ args }: ReadCall): readonly RawValue[] | undefined => {
  const values = args.flatMap((argument) => ("value" in argument ? [argument.value] : []));
  return values.length === args.length ? values : undefined;
};

/** A call as a section of its own. */
export function callSection(desk: Desk, call: ReadCall, key: string): HTMLElement | undefined {
  const definition = desk.engine.catalogue.find(({ id }) => id === call.id);
  if (definition === undefined) return undefined;
  const values = valuesOf(call);
  const explanation = values && desk.engine.explain(call.id, values);
  return h(
    "section",
    { class: "card call" },
    h("h3", { class: "function-name" }, h("span", {}, `${NAMESPACE}.`, h("wbr"), call.id)),
    h("p", {}, definition.summary, " ", helpLink(call.id, key)),
    explanation === undefined || values === undefined
      ? unexplained(definition, call)
      : explained(desk, explanation, call, values, key),
  );
}

/** A link to a function's help page, which opens beside the panel. */
export const helpLink = (id: string, key: string): HTMLElement =>
  h(
    "a",
    {
      href: `help/${id}.html`,
      target: "_blank",
      rel: "noopener",
      "data-key": `${key} help`,
      "aria-label": `Help page of ${id} (opens in a new window)`,
    },
    "Help page",
  );
