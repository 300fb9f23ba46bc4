/** The working of a call: a numbered tree of steps with equations, numbers put in, values and sources. */
import type { WorkingLine } from "../../../core";
import type { PanelServices } from "../services";
import { h, markScrollable } from "../elements";
import { symbolOf, titleOf, type WorkingNode, type WorkingTree } from "../model/workingTree";
import { counted } from "../model/summary";
import { valueWithUnit } from "./result";

/** The equation: as text first, as MathML once that is loaded. */
function formulaBox(services: PanelServices, form: string): HTMLElement {
  const box = h("div", { class: "formula wide", role: "group", "aria-label": "Equation" }, h("code", {}, form));
  void services.math.of(form).then((math) => {
    if (math === undefined) return;
    box.replaceChildren(math);
    if (box.parentElement) markScrollable(box.parentElement);
  });
  return box;
}

/** An equation's value in SI base units and in the cell's; a relation's remaining difference; else the value alone. */
const resultText = ({ line, base }: WorkingNode): HTMLElement | undefined => {
  const { form, value, unit } = line;
  if (value === "" && unit === "") return undefined;
  const symbol = symbolOf(line);
  const before = symbol !== undefined ? `${symbol} = ` : form === undefined ? "= " : "left side − right side = ";
  return h(
    "p",
    { class: "step-value" },
    before,
    base === undefined ? undefined : `${base} = `,
    valueWithUnit(value, unit),
  );
};

/** The right side with its numbers; of a relation both sides. */
const numbersText = (line: WorkingLine): HTMLElement | undefined =>
  line.numbers === ""
    ? undefined
    : h("p", { class: "numbers" }, symbolOf(line) === undefined ? line.numbers : `= ${line.numbers}`);

function stepItem(services: PanelServices, node: WorkingNode): HTMLElement {
  const { line, below } = node;
  return h(
    "li",
    {},
    h("p", { class: "step-title" }, h("span", { class: "step-number" }, line.number), " ", titleOf(line)),
    line.form === undefined ? undefined : formulaBox(services, line.form),
    numbersText(line),
    resultText(node),
    line.source === "" ? undefined : h("p", { class: "quiet" }, line.source),
    below.length === 0
      ? undefined
      : h(
          "ol",
          { class: "steps" },
          below.map((inner) => stepItem(services, inner)),
        ),
  );
}

/** All kept steps, and how many were left out. */
export function workingOf(services: PanelServices, { nodes, left }: WorkingTree): HTMLElement {
  if (nodes.length === 0)
    return h("p", { class: "quiet" }, "This function looks its answer up and has no steps to show.");
  return h(
    "div",
    {},
    h("p", { class: "quiet" }, "Numbers put into equations are in SI base units (K, Pa, m, kg, s, W)."),
    h(
      "ol",
      { class: "steps" },
      nodes.map((node) => stepItem(services, node)),
    ),
    left > 0 ? h("p", { class: "quiet" }, `${counted(left, "further step")} left out.`) : undefined,
  );
}
