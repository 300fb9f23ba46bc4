/** Compares sheets of this workbook with each other or with those of a file. */
import {
  compareWorkbooks,
  type CautionChange,
  type Comparison,
  type LineDifference,
} from "../../workbook/compare/compare";
import type { ComparedCell } from "../../workbook/compare/keyedCells";
import { readSide } from "../../workbook/compare/readSide";
import { briefValue } from "../../workbook/check/markedCells";
import type { Workbook } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import type { PanelServices } from "../services";
import { action, h, replace, type Child } from "../elements";
import { chosenWorkbook } from "../model/chosenWorkbook";
import { counted } from "../model/summary";
import { cellButton } from "./cellButtons";
import { withProgress, type RunningOptions } from "./commands";
import { longList } from "./longList";
import { severityMark } from "./severity";

/** A workbook to compare, by the words that name it. */
interface Source {
  readonly title: string;
  readonly book: Workbook;
  readonly isFile: boolean;
  readonly sheets: readonly string[];
}

const WHOLE = "";

const signed = (value: number, unit = ""): string =>
  `${value > 0 ? "+" : ""}${String(Number(value.toPrecision(3)))}${unit}`;

const byHowMuch = ({ by, share }: LineDifference): string =>
  by === undefined ? "" : share === undefined ? ` (${signed(by)})` : ` (${signed(by)}, ${signed(share * 100, "%")})`;

interface Sides {
  readonly before: Source;
  readonly after: Source;
}

const place = (services: PanelServices, cell: ComparedCell, { isFile }: Source, key: string): Child =>
  isFile ? h("span", { class: "quiet" }, addressText(cell.address)) : cellButton(services, cell.address, key);

function differenceItem(services: PanelServices, one: LineDifference, sides: Sides, key: string): HTMLElement {
  const { label, before, after, formulaDiffers } = one;
  return h(
    "li",
    { class: "mend-item" },
    h(
      "p",
      {},
      h("strong", {}, label),
      " ",
      place(services, before, sides.before, `${key} before`),
      " ",
      place(services, after, sides.after, `${key} after`),
    ),
    h("p", {}, `${briefValue(before.value)} → ${briefValue(after.value)}${byHowMuch(one)}`),
    formulaDiffers
      ? h(
          "p",
          { class: "quiet" },
          "formulas: ",
          h("code", {}, before.formula || "a value"),
          " → ",
          h("code", {}, after.formula || "a value"),
        )
      : undefined,
  );
}

const cautionItem = (
  services: PanelServices,
  { cell, label, caution }: CautionChange,
  source: Source,
  key: string,
): HTMLElement =>
  h(
    "li",
    { class: "mend-item" },
    h(
      "p",
      {},
      severityMark(caution.severity),
      h("span", { class: "code" }, caution.code),
      " ",
      h("strong", {}, label),
      " ",
      place(services, cell, source, key),
    ),
    h("p", {}, caution.text),
  );

const part = <T>(title: string, all: readonly T[], key: string, item: (one: T) => HTMLElement): readonly Child[] =>
  all.length === 0 ? [] : [h("h4", {}, `${title} (${all.length.toLocaleString("en")})`), longList(key, all, item)];

const aloneItem = (services: PanelServices, cell: ComparedCell, source: Source, key: string): HTMLElement =>
  h("li", {}, place(services, cell, source, key), ` ${cell.label}: ${briefValue(cell.value)}`);

const sheetLine = (where: string, names: readonly string[]): Child =>
  names.length === 0
    ? undefined
    : h(
        "p",
        { class: "quiet" },
        `Only ${where}: ${counted(names.length, "sheet")} (${names.slice(0, 12).join(", ")}${names.length > 12 ? " …" : ""}).`,
      );

function comparisonParts(services: PanelServices, found: Comparison, sides: Sides): readonly Child[] {
  const { inputs, results, formulas, raised, cleared, onlyBefore, onlyAfter, sheetsBefore, sheetsAfter, compared } =
    found;
  const changes = inputs.length + results.length + formulas.length + raised.length + cleared.length;
  return [
    h(
      "p",
      {},
      compared === 0
        ? "These sheets have no line in common."
        : `${counted(compared, "cell")} compared: ${changes === 0 ? "no difference." : `${counted(inputs.length, "input")} and ${counted(results.length, "result")} differ, ${counted(raised.length, "caution")} raised and ${String(cleared.length)} cleared.`}`,
    ),
    sheetLine("before", sheetsBefore),
    sheetLine("after", sheetsAfter),
    part("Inputs that differ", inputs, "cmp inputs", (one) => differenceItem(services, one, sides, "cmp inputs")),
    part("Results that differ", results, "cmp results", (one) => differenceItem(services, one, sides, "cmp results")),
    part("Formulas that differ, with the same result", formulas, "cmp formulas", (one) =>
      differenceItem(services, one, sides, "cmp formulas"),
    ),
    part("Cautions raised since", raised, "cmp raised", (one) => cautionItem(services, one, sides.after, "cmp raised")),
    part("Cautions no longer raised", cleared, "cmp cleared", (one) =>
      cautionItem(services, one, sides.before, "cmp cleared"),
    ),
    part("Only before", onlyBefore, "cmp only before", (one) =>
      aloneItem(services, one, sides.before, "cmp only before"),
    ),
    part("Only after", onlyAfter, "cmp only after", (one) => aloneItem(services, one, sides.after, "cmp only after")),
  ];
}

interface Picker {
  readonly root: HTMLElement;
  /** The choice: a source with the sheets chosen of it. */
  chosen(): Source | undefined;
  offer(sources: readonly Source[]): void;
}

/** A list of whole workbooks and their sheets. */
function picker(label: string, id: string, preset: (sources: readonly Source[]) => string): Picker {
  const list = h("select", { id });
  let choices = new Map<string, Source>();
  return {
    root: h("p", { class: "note-input" }, h("label", { for: id }, label), list),
    chosen: () => choices.get(list.value),
    offer(sources) {
      const kept = list.value;
      choices = new Map(
        sources.flatMap((source, at) =>
          [WHOLE, ...source.sheets].map((sheet): [string, Source] => [
            `${String(at)}|${sheet}`,
            sheet === WHOLE ? source : { ...source, sheets: [sheet] },
          ]),
        ),
      );
      list.replaceChildren(
        ...[...choices].map(([value]) => {
          const [at = "0", sheet = ""] = [value.slice(0, value.indexOf("|")), value.slice(value.indexOf("|") + 1)];
          const title = sources[Number(at)]?.title ?? "";
          return h("option", { value }, sheet === WHOLE ? title : `${title}: ${sheet}`);
        }),
      );
      list.value = choices.has(kept) ? kept : preset(sources);
    },
  };
}

/** Makes the section, and what refreshes its lists of sheets. */
export function compareSection(services: PanelServices): { readonly root: HTMLElement; refresh(): Promise<void> } {
  const result = h("div", { role: "status", class: "outcome" });
  const going = h("div", { class: "going" });
  let file: Source | undefined;
  const before = picker("Before", "compare-before", (all) => `${String(all.length - 1)}|`);
  const after = picker("After", "compare-after", () => "0|");
  const refresh = async (): Promise<void> => {
    const sheets = (await services.workbook.sheets()).map(({ name }) => name);
    const own: Source = { title: "This workbook", book: services.workbook, isFile: false, sheets };
    const all = file === undefined ? [own] : [own, file];
    before.offer(all);
    after.offer(all);
  };
  const open = (chosen: File): Promise<void> =>
    withProgress(
      services,
      { what: `Reading ${chosen.name}`, key: "compare file", unit: "sheet", going, result },
      async (options) => {
        const book = await chosenWorkbook(services, chosen, options);
        const sheets = (await book.sheets()).map(({ name }) => name);
        file = { title: chosen.name, book, isFile: true, sheets };
        before.root.querySelector("select")?.replaceChildren();
        await refresh();
        return [
          h("p", {}, `${chosen.name}: ${counted(sheets.length, "sheet")}. Values are those that the file last showed.`),
        ];
      },
    );
  const input = h("input", { type: "file", id: "compare-file", accept: ".xlsx,.xlsm" });
  input.addEventListener("change", () => {
    const [chosen] = input.files ?? [];
    if (chosen !== undefined) void open(chosen);
  });
  const read = ({ book, sheets }: Source, { signal }: RunningOptions): ReturnType<typeof readSide> =>
    readSide(book, services.engine, sheets, signal);
  const run = (): Promise<void> =>
    withProgress(services, { what: "Comparing", key: "compare", going, result }, async (options) => {
      const [left, right] = [before.chosen(), after.chosen()];
      if (left === undefined || right === undefined) return [h("p", {}, "Choose what to compare first.")];
      const found = compareWorkbooks(await read(left, options), await read(right, options));
      return comparisonParts(services, found, { before: left, after: right });
    });
  const root = h(
    "section",
    { "aria-labelledby": "compare-title" },
    h("h3", { id: "compare-title" }, "Compare"),
    h(
      "p",
      {},
      "Two sheets, or this workbook with a file, such as an inquiry or an earlier issue. Lines are matched by what they are called, so they may have moved.",
    ),
    h("p", { class: "note-input" }, h("label", { for: "compare-file" }, "A file to compare with"), input),
    before.root,
    after.root,
    h("p", { class: "actions" }, action("Compare", run, { key: "compare" })),
    going,
    result,
  );
  replace(result);
  return { root, refresh };
}
