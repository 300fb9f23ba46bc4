/** Finds functions by the words of a task, and starter sheets. */
import type { CellFunction } from "../../../core";
import type { StarterSheet } from "../../sheets/sheet";
import type { PanelServices, View } from "../services";
import { h, replace, type Child } from "../elements";
import { indexOf, search, searchStarters } from "../model/search";
import { counted } from "../model/summary";
import { functionCard } from "./functionCard";
import { startersSection } from "./starters";

const AFTER_TYPING = 150;
const MOST_SHOWN = 40;

const topicsOf = (functions: readonly CellFunction[]): readonly (readonly [string, readonly CellFunction[]])[] => {
  const topics = new Map<string, CellFunction[]>();
  for (const definition of functions)
    topics.set(definition.topic, [...(topics.get(definition.topic) ?? []), definition]);
  return [...topics];
};

const cards = (services: PanelServices, functions: readonly CellFunction[]): HTMLElement =>
  h(
    "ul",
    { class: "plain" },
    functions.map((definition) => functionCard(services, definition)),
  );

/** All functions by topic, under the starter sheets. */
const everything = (services: PanelServices, functions: readonly CellFunction[]): readonly Child[] => [
  startersSection(services, "starters", services.starters),
  topicsOf(functions).map(([topic, inTopic]) =>
    h(
      "section",
      {},
      h(
        "h3",
        { class: "topic" },
        h("span", {}, topic),
        h("span", { class: "count" }, counted(inTopic.length, "function")),
      ),
      cards(services, inTopic),
    ),
  ),
];

/** What a question finds. */
interface Found {
  readonly functions: readonly CellFunction[];
  readonly starters: readonly StarterSheet[];
}

const nothing = (question: string): readonly Child[] => [
  h("p", {}, `No function or sheet matches “${question}”.`),
  h(
    "p",
    { class: "quiet" },
    "Try the words of the task: heat loss, pipe size, head, superheat, warm up, price of heat.",
  ),
];

const found = (services: PanelServices, { functions, starters }: Found, question: string): readonly Child[] => {
  if (functions.length + starters.length === 0) return nothing(question);
  const left = functions.length - MOST_SHOWN;
  return [
    functions.length === 0
      ? undefined
      : [
          h("h3", {}, "Functions", h("span", { class: "count" }, String(functions.length))),
          cards(services, functions.slice(0, MOST_SHOWN)),
          left > 0 ? h("p", { class: "quiet" }, `${String(left)} more: add a word.`) : undefined,
        ],
    startersSection(services, "starters", starters),
  ];
};

/** The view of the finder. */
export function findView(services: PanelServices): View {
  const index = indexOf(services.engine.catalogue, services.finderTexts);
  const results = h("div", { class: "results" });
  let timer: ReturnType<typeof setTimeout> | undefined;
  let drawn: string | undefined;

  const draw = (question: string): void => {
    if (question === drawn) return;
    const first = drawn === undefined;
    drawn = question;
    const functions = search(index, question);
    const starters = searchStarters(services.starters, question);
    replace(
      results,
      question === "" ? everything(services, functions) : found(services, { functions, starters }, question),
    );
    const sheets = starters.length === 0 ? "" : ` and ${counted(starters.length, "starter sheet")}`;
    if (!first) services.readOut(`${counted(functions.length, "function")}${sheets} found.`);
  };

  const input = h(
    "fluent-text-input",
    { type: "text", "data-key": "search", placeholder: "heat loss, pipe size, superheat" },
    "What do you want to work out?",
  );
  const typed = (event: Event): void => {
    const { target } = event;
    const value = target !== null && "value" in target ? String(target.value) : "";
    clearTimeout(timer);
    timer = setTimeout(() => draw(value.trim()), AFTER_TYPING);
  };
  input.addEventListener("input", typed);
  const root = h("div", { class: "view" }, h("h2", { tabindex: -1 }, "Find"), h("search", {}, input), results);
  return { root, show: () => draw(drawn ?? ""), hide: () => clearTimeout(timer) };
}
