/** The working of a call: a numbered tree of steps with equations, numbers put in, values and sources. */
import type { Step } from "../../../core/kernel/steps";
import type { System } from "../../../core/kernel/quantity";
import { workingLines, type WorkingLine } from "../../../core/kernel/working";
import type { Desk } from "../desk";
import { h, markScrollable } from "../elements";
import { titleOf, treeOf, type WorkingNode } from "../model/tree";
import { counted } from "../model/summary";
import { valueWithUnit } from "./result";

const MOST_LINES = 200;

/** The equation as text at once, as rendered MathML when that has come. */
function formulaBox(desk: Desk, form: string): HTMLElement {
  const box = h("div", { class: "formula wide", role: "group", "aria-label": "Equation" }, h("code", {}, form));
  void desk.math.of(form).then((math) => {
    if (math === undefined) return;
    box.replaceChildren(math);
    if (box.parentElement) markScrollable(box.parentElement);
  });
  return box;
}

const resultText = ({ form, value, unit }: WorkingLine): HTMLElement | undefined => {
  if (value === "" && unit === "") return undefined;
  const symbol = form === undefined ? undefined : /^\s*([A-Za-z]\w*)\s*=/.exec(form)?.[1];
  return h("p", { class: "step-value" }, symbol === undefined ? "= " : `${symbol} = `, valueWithUnit(value, unit));
};

const step = (desk: Desk, { line, below }: WorkingNode): HTMLElement =>
  h(
    "li",
    {},
    h("p", { class: "step-title" }, h("span", { class: "step-number" }, line.number), " ", titleOf(line)),
    line.form === undefined ? undefined : formulaBox(desk, line.form),
    line.numbers === ""
      ? undefined
      : h("p", { class: "numbers" }, line.form === undefined ? line.numbers : `= ${line.numbers}`),
    resultText(line),
    line.source === "" ? undefined : h("p", { class: "quiet" }, line.source),
    below.length === 0
      ? undefined
      : h(
          "ol",
          { class: "steps" },
          below.map((node) => step(desk, node)),
        ),
  );

/** All steps; beyond 200 lines it says how many are left out. */
export function workingOf(desk: Desk, steps: readonly Step[], system: System): HTMLElement {
  const lines = workingLines(steps, system);
  if (lines.length === 0)
    return h("p", { class: "quiet" }, "This function looks its answer up and has no steps to show.");
  const left = lines.length - MOST_LINES;
  return h(
    "div",
    {},
    h("p", { class: "quiet" }, "Numbers put into equations are in SI base units (K, Pa, m, kg, s, W)."),
    h(
      "ol",
      { class: "steps" },
      treeOf(lines.slice(0, MOST_LINES)).map((node) => step(desk, node)),
    ),
    left > 0 ? h("p", { class: "quiet" }, `${counted(left, "further step")} left out.`) : undefined,
  );
}
