/** One call of ours in the selected cell: arguments, result, cautions, working. */
import { labelOf } from "../../../core/kernel/argument";
import type { CellFunction } from "../../../core/kernel/cellFunction";
import { defaultText, NAMESPACE } from "../../../core/kernel/describe";
import type { ExplainedArg, Explanation } from "../../../core/kernel/explain";
import { placedArgs } from "../../../core/kernel/units";
import type { ReadArgument, ReadCall } from "../../workbook/reader/read";
import { isMatrix, isOutcomeFault, type RawValue } from "../../workbook/values";
import type { Desk } from "../desk";
import { h, type Child } from "../elements";
import { counted } from "../model/summary";
import { faultText, resultOf, valueWithUnit } from "./result";
import { severityClass, severityMark } from "./severity";
import { workingOf } from "./steps";

const row = (label: string, about: string, value: Child, given: boolean): HTMLElement =>
  h(
    "div",
    { class: "argument" },
    h("dt", {}, label, given ? undefined : h("span", { class: "tag" }, "default")),
    h("dd", { class: "argument-value" }, value),
    h("dd", { class: "quiet" }, about),
  );

const explainedRow = ({ label, about, value, unit, given }: ExplainedArg): HTMLElement => {
  const left = value === "" && !given;
  return row(
    label,
    about,
    left ? h("span", { class: "quiet" }, "left out") : valueWithUnit(value, unit),
    given || left,
  );
};

const rawText = (value: RawValue): string => {
  if (isMatrix(value)) return `${counted(value.length, "row")} × ${counted(value[0]?.length ?? 0, "column")}`;
  return value === null ? "" : typeof value === "boolean" ? String(value).toUpperCase() : String(value);
};

const readValue = (argument: ReadArgument): Child => {
  if ("unread" in argument) return h("span", { class: "fault" }, argument.unread);
  if ("fault" in argument)
    return h("span", { class: "fault" }, h("strong", {}, argument.fault.error), " ", argument.fault.message ?? "");
  return valueWithUnit(rawText(argument.value), "");
};

const blank = (argument: ReadArgument | undefined): boolean =>
  argument === undefined || ("value" in argument && (argument.value === null || argument.value === ""));

/** Arguments as read from the formula, where the call itself can't be worked. */
const readRows = (definition: CellFunction, args: readonly ReadArgument[]): readonly HTMLElement[] =>
  placedArgs(definition).flatMap(([name, arg], place) => {
    const argument = args[place];
    if (argument !== undefined && !blank(argument)) return [row(labelOf(name), arg.about, readValue(argument), true)];
    const preset = defaultText(arg);
    const missing = arg.presence === "required" ? h("span", { class: "fault" }, "is blank") : "left out";
    return [row(labelOf(name), arg.about, preset === "" ? missing : preset, preset === "")];
  });

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

const explained = (desk: Desk, explanation: Explanation, key: string): readonly Child[] => {
  const { definition, args, out, steps, system } = explanation;
  return [
    resultOf(definition, out, system),
    cautionList(explanation),
    args.length === 0 ? undefined : [h("h4", {}, "Arguments"), h("dl", { class: "arguments" }, args.map(explainedRow))],
    h(
      "details",
      { class: "working", open: true, "data-key": `${key} working` },
      h("summary", { "data-key": `${key} working summary` }, "Working"),
      workingOf(desk, steps, system),
    ),
  ];
};

/** The argument values of a call all of whose arguments were read and hold no error. */
const valuesOf = ({ args }: ReadCall): readonly RawValue[] | undefined => {
  const values = args.flatMap((argument) => ("value" in argument ? [argument.value] : []));
  return values.length === args.length ? values : undefined;
};

const unexplained = (definition: CellFunction, { args, outcome }: ReadCall): readonly Child[] => [
  outcome !== undefined && isOutcomeFault(outcome) ? faultText(outcome.error, outcome.message) : undefined,
  h("h4", {}, "Arguments"),
  h("dl", { class: "arguments" }, readRows(definition, args)),
];

/** A call as a section of its own. */
export function callSection(desk: Desk, call: ReadCall, key: string): HTMLElement | undefined {
  const definition = desk.engine.catalogue.find(({ id }) => id === call.id);
  if (definition === undefined) return undefined;
  const values = valuesOf(call);
  const explanation = values && desk.engine.explain(call.id, values);
  const help = `help/${call.id}.html`;
  return h(
    "section",
    { class: "card call" },
    h("h3", { class: "function-name" }, `${NAMESPACE}.`, h("wbr"), call.id),
    h("p", {}, definition.summary, " ", helpLink(call.id, help, key)),
    explanation === undefined ? unexplained(definition, call) : explained(desk, explanation, key),
  );
}

/** A link to a function's help page, which opens beside the panel. */
export const helpLink = (id: string, address: string, key: string): HTMLElement =>
  h(
    "a",
    {
      href: address,
      target: "_blank",
      rel: "noopener",
      "data-key": `${key} help`,
      "aria-label": `Help page of ${id} (opens in a new window)`,
    },
    "Help page",
  );
