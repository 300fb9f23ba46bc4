/** A calculation note as a page to print: rendered equations, the head repeated on every page, no line cut off. */
import { h, type Child } from "../elements";
import type { MathSource } from "../mathml";
import { NOT_SIGNED, type NoteCalculation, type NoteHead, type NoteStep } from "./calculation";

const field = (name: string, value: string): HTMLElement =>
  h(
    "td",
    { class: "note-field" },
    h("span", { class: "note-name" }, name),
    " ",
    h("span", { class: "note-entry" }, value === "" ? "\u00a0" : value),
  );

function headOf(head: NoteHead, place: string): HTMLElement {
  return h(
    "table",
    { class: "note-head" },
    h(
      "tr",
      {},
      h("td", { class: "note-title" }, "Calculation note"),
      field("Project", head.project),
      field("Sheet", place),
    ),
    h("tr", {}, field("By", head.by), field("Checked", head.checked), field("Approved", head.approved)),
    h("tr", {}, field("Revision", head.revision), field("Date", head.date), field("Edition", head.edition)),
  );
}

const row = (cells: readonly Child[], options: { readonly class?: string } = {}): HTMLElement =>
  h(
    "tr",
    options,
    cells.map((cell) => h("td", {}, cell)),
  );

const heading = (text: string): HTMLElement =>
  h("tr", { class: "note-heading" }, h("th", { colspan: 3, scope: "colgroup" }, text));
const wide = (cell: Child, name?: string): HTMLElement => h("tr", { class: name }, h("td", { colspan: 3 }, cell));

/** An equation, rendered where its MathML is there. */
async function equationBox(math: MathSource, form: string): Promise<HTMLElement> {
  const rendered = await math.of(form);
  return h("div", { class: "note-equation", "data-form": form }, rendered ?? h("code", {}, form));
}

async function stepRows(step: NoteStep, math: MathSource): Promise<readonly HTMLElement[]> {
  const equation = step.form === "" ? undefined : await equationBox(math, step.form);
  return [
    wide(
      [
        h("strong", {}, `${step.number} `),
        step.title,
        step.source === "" ? undefined : h("span", { class: "note-source" }, ` ${step.source}`),
      ],
      "note-step",
    ),
    ...(equation === undefined ? [] : [wide(equation)]),
    ...step.symbols.map(({ name, description, value, inSI }) => row([`${name}: ${description}`, value, inSI])),
    ...(step.numbers === "" ? [] : [wide(step.numbers, "note-numbers")]),
    ...(step.baseNumbers === "" ? [] : [wide(`in SI base units ${step.baseNumbers}`, "note-numbers")]),
    ...(step.value === "" ? [] : [row(["", h("strong", {}, step.value), step.inSI], { class: "note-value" })]),
  ];
}

async function bodyOf(one: NoteCalculation, math: MathSource): Promise<readonly HTMLElement[]> {
  const steps: HTMLElement[] = [];
  for (const step of one.steps) steps.push(...(await stepRows(step, math)));
  const [single] = one.result.length === 1 ? (one.result[0] ?? []) : [];
  return [
    wide(h("h1", {}, one.title)),
    wide([h("strong", {}, `${one.cell} `), h("code", {}, one.formula)]),
    wide([h("strong", {}, `${one.call} `), one.method]),
    heading("Inputs"),
    ...one.inputs.map(({ name, description, value, inSI, given }) =>
      row([`${name}: ${description}${given ? "" : " (default)"}`, value, inSI]),
    ),
    heading("Working"),
    ...(steps.length === 0 ? [wide("This function looks its answer up and has no steps to show.")] : steps),
    ...(one.left === 0 ? [] : [wide(`${String(one.left)} further steps are left out.`)]),
    heading("Result"),
    ...(single === undefined
      ? [
          wide(
            h(
              "table",
              { class: "note-result" },
              one.result.map((cells) => row(cells)),
            ),
          ),
        ]
      : [row(["", h("strong", {}, single), one.resultInSI], { class: "note-value" })]),
    heading("Cautions"),
    ...(one.cautions.length === 0
      ? [wide("None is raised.")]
      : one.cautions.map(({ severity, code, text }) =>
          wide([h("strong", {}, `${severity} `), text, h("span", { class: "note-source" }, ` ${code}`)]),
        )),
  ];
}

async function sheetOf(one: NoteCalculation, head: NoteHead, place: string, math: MathSource): Promise<HTMLElement> {
  const columns = ["Equation, symbols", "Value", "In SI"];
  return h(
    "table",
    { class: "note-sheet" },
    h(
      "colgroup",
      {},
      ["note-wide", "note-narrow", "note-narrow"].map((name) => h("col", { class: name })),
    ),
    // A table's head is repeated on every page.
    h(
      "thead",
      {},
      h("tr", {}, h("td", { colspan: 3 }, headOf(head, place))),
      h(
        "tr",
        { class: "note-columns" },
        columns.map((name) => h("th", { scope: "col" }, name)),
      ),
    ),
    h("tfoot", {}, h("tr", {}, h("td", { colspan: 3, class: "note-source" }, NOT_SIGNED))),
    h("tbody", {}, await bodyOf(one, math)),
  );
}

/** Below this share of its size a printed equation can't be read. */
const SMALLEST = 0.65;

/** Nothing can wrap inside an equation: one wider than the paper is made smaller, or is printed as text. */
function fitEquations(paper: HTMLElement): void {
  for (const box of paper.querySelectorAll<HTMLElement>(".note-equation")) {
    const share = box.clientWidth / box.scrollWidth;
    if (share >= 1) continue;
    if (share < SMALLEST) box.replaceWith(h("code", { class: "note-text" }, box.dataset["form"] ?? ""));
    else box.style.fontSize = `${String(Math.floor(share * 98))}%`;
  }
}

/** Puts the note on the page, to be printed; it takes the place of an earlier one and isn't seen on the screen. */
export async function layPaper(
  calculations: readonly NoteCalculation[],
  head: NoteHead,
  math: MathSource,
): Promise<HTMLElement> {
  const paper = h("div", { class: "note-paper", "aria-hidden": "true" });
  for (const [at, one] of calculations.entries())
    paper.append(await sheetOf(one, head, `${String(at + 1)} of ${String(calculations.length)}`, math));
  document.querySelector(".note-paper")?.remove();
  document.body.append(paper);
  document.body.classList.add("prints-note");
  fitEquations(paper);
  return paper;
}

/** Takes the note off the page, so that the page prints as before. */
export function removePaper(): void {
  document.querySelector(".note-paper")?.remove();
  document.body.classList.remove("prints-note");
}
