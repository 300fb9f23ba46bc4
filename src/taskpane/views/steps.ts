/** The working of a call: a numbered tree of steps with equations, numbers put in, values and sources. */
import { fromBase, KINDS, readableNumber, readableUnit, type System, type WorkingLine } from "../../../core";
import type { PanelServices } from "../services";
import { h, markScrollable } from "../elements";
import { answersOf, symbolOf, titleOf, withLn, type WorkingNode, type WorkingTree } from "../model/workingTree";
import { counted } from "../model/summary";
import { valueWithUnit } from "./result";

interface Place {
  readonly services: PanelServices;
  readonly system: System;
}

/** The equation: as text first, as MathML once that is loaded. */
function formulaBox({ services }: Place, form: string): HTMLElement {
  const box = h("div", { class: "formula wide", role: "group", "aria-label": "Equation" }, h("code", {}, withLn(form)));
  void services.math.of(form).then((math) => {
    if (math === undefined) return;
    box.replaceChildren(math);
    if (box.parentElement) markScrollable(box.parentElement);
  });
  return box;
}

/** The symbols whose SI number in the equation isn't how this call gives such a value: each in the call's unit. */
function symbolLine({ services, system }: Place, { line: { form }, numbers }: WorkingNode): HTMLElement | undefined {
  if (form === undefined || numbers === undefined) return undefined;
  const box = h("p", { class: "quiet" });
  void services.symbols.table().then((table) => {
    const texts = Object.entries(numbers).flatMap(([name, value]) => {
      const [kind] = table[form]?.[name] ?? [];
      if (kind === undefined) return [];
      const unit = KINDS[kind][system];
      if (unit.factor === 1 && unit.shift === 0) return [];
      return [`${name} = ${readableNumber(fromBase(value, unit))} ${readableUnit(undefined, kind, system)}`];
    });
    box.textContent = texts.length === 0 ? "" : `In this call's units: ${texts.join(", ")}`;
    box.hidden = texts.length === 0;
  });
  box.hidden = true;
  return box;
}

/** The answer of an iteration, and how closely the relation's sides agree. */
const answerText = (node: WorkingNode): HTMLElement => {
  const answers = answersOf(node).map(([name, value]) => `${name} = ${readableNumber(value)}`);
  const { value } = node.line;
  const difference = typeof value === "number" ? readableNumber(Math.abs(value)) : String(value);
  return h(
    "p",
    { class: "step-value" },
    answers.length === 0 ? undefined : `${answers.join(", ")} `,
    h("span", { class: "quiet" }, `(the sides differ by ${difference})`),
  );
};

/** An equation's value in SI base units and in the cell's; a relation's answer; else the value alone. */
const resultText = (node: WorkingNode): HTMLElement | undefined => {
  const { line, base } = node;
  const { form, value, unit } = line;
  if (value === "" && unit === "") return undefined;
  const symbol = symbolOf(line);
  if (symbol === undefined && form !== undefined) return answerText(node);
  return h(
    "p",
    { class: "step-value" },
    symbol === undefined ? "= " : `${symbol} = `,
    base === undefined ? undefined : `${base} = `,
    valueWithUnit(value, unit),
  );
};

/** The right side with its numbers; of a relation both sides. */
const numbersText = (line: WorkingLine): HTMLElement | undefined => {
  const numbers = line.form === undefined ? line.numbers : withLn(line.numbers);
  return numbers === ""
    ? undefined
    : h("p", { class: "numbers" }, symbolOf(line) === undefined ? numbers : `= ${numbers}`);
};

function stepItem(place: Place, node: WorkingNode): HTMLElement {
  const { line, below } = node;
  return h(
    "li",
    {},
    h("p", { class: "step-title" }, h("span", { class: "step-number" }, line.number), " ", titleOf(line)),
    line.form === undefined ? undefined : formulaBox(place, line.form),
    numbersText(line),
    symbolLine(place, node),
    resultText(node),
    line.source === "" ? undefined : h("p", { class: "quiet" }, line.source),
    below.length === 0
      ? undefined
      : h(
          "ol",
          { class: "steps" },
          below.map((inner) => stepItem(place, inner)),
        ),
  );
}

/** All kept steps, and how many were left out. */
export function workingOf(services: PanelServices, { nodes, left }: WorkingTree, system: System): HTMLElement {
  if (nodes.length === 0) return h("p", { class: "quiet" }, "This function has no steps to show.");
  return h(
    "div",
    {},
    h("p", { class: "quiet" }, "Numbers put into equations are in SI base units (K, Pa, m, kg, s, W)."),
    h(
      "ol",
      { class: "steps" },
      nodes.map((node) => stepItem({ services, system }, node)),
    ),
    left > 0 ? h("p", { class: "quiet" }, `${counted(left, "further step")} left out.`) : undefined,
  );
}
