/** A function as a card of the finder: its summary and, opened, its arguments, an example and a button that inserts it. */
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
import { action, h, markScrollable, replace, type Child } from "../elements";
import { insertChosen } from "../model/insertChosen";
import { exampleOf, type CallExample } from "../model/insertion";
import { helpLink } from "./callSection";
import { resultLine } from "./result";

async function insert(services: PanelServices, definition: CellFunction, example: CallExample): Promise<void> {
  const at = await services.workbook.selection();
  if (at === undefined) throw new Error("Select a cell first.");
  const host = { book: services.workbook, engine: services.engine };
  const { sentence } = await insertChosen(host, { definition, example }, at);
  services.announce(sentence);
}

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
  const run = async (): Promise<void> => {
    await services.attempt(() => insert(services, definition, example));
  };
  const button = action("Insert at the selected cell", run, {
    key: `insert ${definition.id}`,
    primary: true,
    name: `Insert at the selected cell: ${definition.id}`,
  });
  return [
    h("h4", {}, "Example"),
    h("pre", { class: "source" }, h("code", {}, example.formula)),
    h("div", { class: "gives" }, "gives ", resultLine(definition, example.outcome, example.system)),
    h("p", { class: "actions" }, button),
  ];
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
    : [h("h4", {}, "Arguments"), h("dl", { class: "arguments" }, all.map(argumentRow))];
};

const body = (services: PanelServices, definition: CellFunction): readonly Child[] => [
  h("pre", { class: "source form" }, h("code", {}, signatureOf(definition))),
  // Before the arguments: those of a block fill pages, and most users look for the example.
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
