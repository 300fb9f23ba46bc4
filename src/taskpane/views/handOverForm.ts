/** The choices of a hand-over: sheets, formulas of others, hidden things. */
import type { SurveyedSheet } from "../../workbook/copy/survey";
import type { SurveyFacts } from "../../workbook/copy/surveyFacts";
import { h, replace } from "../elements";
import type { Consequences } from "../jobs/job";
import { joiningSentences, isListed, type CopyForm } from "../model/copyChoice";
import { counted } from "../model/summary";
import { hiddenThings } from "./hiddenThings";
import { tick } from "./tick";

export interface HandOverForm {
  readonly root: HTMLElement;
  /** The choice as it is now. */
  form(): CopyForm;
  /** Shows what the sheets come to; an error where they can't be handed over. */
  show(consequences: Consequences | string): void;
}

interface Handlers {
  /** The sheets or the hidden things to keep changed. */
  onChange(): void;
}

function sheetHint({ state, ours, failing }: SurveyedSheet): string | undefined {
  const parts = [
    ...(state === "visible" ? [] : ["hidden"]),
    ...(ours === 0 ? [] : [`${counted(ours, "cell")} ${ours === 1 ? "uses" : "use"} these functions`]),
    ...(failing === 0 ? [] : [`${counted(failing, "cell")} ${failing === 1 ? "shows" : "show"} an error`]),
  ];
  return parts.length === 0 ? undefined : parts.join(", ");
}

interface State {
  project: string;
  readonly sheets: Set<string>;
  others: CopyForm["others"];
  readonly hidden: Map<string, boolean>;
}

function sheetSet(survey: SurveyFacts, state: State, joining: HTMLElement, { onChange }: Handlers): HTMLElement {
  const change = (name: string) => (on: boolean) => {
    if (on) state.sheets.add(name);
    else state.sheets.delete(name);
    onChange();
  };
  return h(
    "fieldset",
    {},
    h("legend", {}, "Sheets"),
    survey.sheets.map((sheet) =>
      tick(sheet.name, {
        key: `sheet ${sheet.name}`,
        checked: state.sheets.has(sheet.name),
        change: change(sheet.name),
        hint: sheetHint(sheet),
      }),
    ),
    joining,
  );
}

function formulaSet(state: State): HTMLElement {
  const one = (value: CopyForm["others"], label: string): HTMLElement =>
    h(
      "label",
      { class: "tick" },
      h("input", {
        type: "radio",
        name: "other-formulas",
        "data-key": `others ${value}`,
        checked: state.others === value,
        change: () => void (state.others = value),
      }),
      h("span", {}, label),
    );
  return h(
    "fieldset",
    {},
    h("legend", {}, "Formulas that need none of these functions"),
    one("live", "keep calculating"),
    one("frozen", "become values"),
  );
}

export function handOverForm(survey: SurveyFacts, first: CopyForm, handlers: Handlers): HandOverForm {
  const state: State = {
    project: first.project,
    sheets: new Set(first.sheets),
    others: first.others,
    hidden: new Map(first.hidden),
  };
  const joining = h("div", { role: "status", class: "outcome" });
  const hidden = h("div");
  const project = h(
    "fluent-text-input",
    {
      type: "text",
      "data-key": "project",
      input: ({ target }) => {
        if (target !== null && "value" in target) state.project = String(target.value);
      },
    },
    "Project, for the sheets that explain the copy",
  );
  return {
    root: h(
      "div",
      { class: "choices" },
      project,
      sheetSet(survey, state, joining, handlers),
      formulaSet(state),
      hidden,
    ),
    form: () => ({ ...state, sheets: new Set(state.sheets), hidden: new Map(state.hidden) }),
    show(consequences) {
      if (typeof consequences === "string") {
        replace(joining, h("p", { class: "fault" }, consequences));
        return;
      }
      replace(
        joining,
        joiningSentences(consequences.kept).map((text) => h("p", { class: "quiet" }, text)),
      );
      replace(hidden, hiddenThings(consequences.hidden.filter(isListed), state.hidden, handlers.onChange));
    },
  };
}
