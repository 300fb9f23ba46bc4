/** A function as a card of the finder: its summary and, opened, a form that inserts it and what its arguments take. */
import {
  type ArgData,
  type Args,
  argText,
  type CellFunction,
  signatureOf,
  labelOf,
  limitsText,
  placedArgs,
} from "../../../core";
import { resumeWhenReady } from "../../workbook/pending";
import { sentenceOf, type PanelServices } from "../services";
import { h, markScrollable, replace, type Child } from "../elements";
import { fieldsOf } from "../model/form";
import { exampleOf, type CallExample } from "../model/insertion";
import { helpLink } from "./callSection";
import { functionForm } from "./functionForm";

const limits = (arg: ArgData): string => {
  const us = limitsText(arg.shape, "US");
  const si = limitsText(arg.shape, "SI");
  return us === si ? us : `${us} (SI: ${si})`;
};

const presence = ({ presence: is }: ArgData): Child =>
  is === "required" ? undefined : h("span", { class: "tag" }, "optional");

const inner = (entries: Args): HTMLElement =>
  h(
    "dl",
    { class: "entries" },
    Object.entries(entries).map(([key, arg]) =>
      h("div", {}, h("dt", {}, labelOf(key), presence(arg)), h("dd", { class: "quiet" }, argText(arg))),
    ),
  );

const argumentRow = ([name, arg]: readonly [string, ArgData]): HTMLElement => {
  const { shape } = arg;
  const allowed = limits(arg);
  return h(
    "div",
    { class: "argument" },
    h("dt", {}, name, presence(arg)),
    h("dd", {}, argText(arg)),
    allowed === "" || allowed === "any number" ? undefined : h("dd", { class: "quiet" }, allowed),
    shape.type === "block" ? h("dd", {}, inner(shape.entries)) : undefined,
    shape.type === "rows" ? h("dd", {}, inner(shape.columns)) : undefined,
  );
};

const exampleParts = (
  services: PanelServices,
  definition: CellFunction,
  example: CallExample | undefined,
): readonly Child[] => {
  if (example === undefined) return [h("p", { class: "quiet" }, "The help page has an example.")];
  const fields = fieldsOf(definition, example);
  return fields === undefined
    ? [h("p", { class: "quiet" }, "The help page has an example.")]
    : [functionForm(services, definition, example, fields)];
};

/** The example, at once or when a heavy one is ready. */
const exampleBox = (services: PanelServices, definition: CellFunction): Child => {
  const example = resumeWhenReady(() => exampleOf(definition, (raw) => services.engine.call(definition.id, raw)));
  if (!(example instanceof Promise)) return exampleParts(services, definition, example);
  const box = h("div", { class: "call-body" }, h("p", { class: "quiet" }, "Working the example out…"));
  example.then(
    (ready) => replace(box, exampleParts(services, definition, ready)),
    (error: unknown) => replace(box, h("p", { class: "fault" }, `${sentenceOf(error)}.`)),
  );
  return box;
};

const argumentList = (definition: CellFunction): Child => {
  const all = placedArgs(definition);
  return all.length === 0
    ? undefined
    : [h("h4", {}, "What the arguments take"), h("dl", { class: "arguments" }, all.map(argumentRow))];
};

const body = (services: PanelServices, definition: CellFunction): readonly Child[] => [
  h("pre", { class: "source form" }, h("code", {}, signatureOf(definition))),
  // Before what the arguments take: the lines of a block fill pages.
  exampleBox(services, definition),
  argumentList(definition),
  h("p", {}, helpLink(definition.id, definition.id)),
];

/** The card, closed; its content is created when it is first opened. */
export function functionCard(services: PanelServices, definition: CellFunction): HTMLElement {
  const content = h("div", { class: "card-body" });
  const toggle = (event: Event): void => {
    const details = event.currentTarget;
    if (!(details instanceof HTMLDetailsElement) || !details.open || content.childElementCount > 0) return;
    content.append(h("div", {}, body(services, definition)));
    markScrollable(content);
  };
  return h(
    "li",
    { class: "card" },
    h(
      "details",
      { toggle, "data-key": definition.id },
      h(
        "summary",
        { "data-key": `${definition.id} summary` },
        h("span", { class: "function-name" }, definition.id),
        h("span", { class: "summary-text" }, definition.summary),
      ),
      content,
    ),
  );
}
