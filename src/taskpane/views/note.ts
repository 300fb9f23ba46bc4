/** A calculation note: its head to fill in, and the ways to have it: sheets, print, copy. */
import { readMarked } from "../../workbook/check/markedCells";
import type { Address } from "../../workbook/port";
import { noteCalculation, type NoteCalculation, type NoteHead } from "../note/calculation";
import { noteSheet } from "../note/noteSheets";
import { noteText } from "../note/noteText";
import { layPaper, removePaper } from "../note/paper";
import type { SymbolSource } from "../note/symbols";
import { explainer, type Explainer } from "../model/explainer";
import { counted } from "../model/summary";
import type { PanelServices } from "../services";
import { action, h, type Child } from "../elements";
import { reportInto } from "./commands";

/** More calculations would be more sheets than anybody checks at once. */
const MOST = 24;

const FIELDS = [
  ["project", "Project"],
  ["by", "By"],
  ["checked", "Checked"],
  ["approved", "Approved"],
  ["revision", "Revision"],
  ["date", "Date"],
] as const;

interface HeadForm {
  readonly root: HTMLElement;
  read(): NoteHead;
}

const today = (): string => new Date().toLocaleDateString("en-CA");

function headForm(edition: string): HeadForm {
  const inputs = FIELDS.map(([key, name]) => {
    const box = h("input", { type: "text", id: `note-${key}`, maxlength: 80, value: key === "date" ? today() : "" });
    return { key, box, line: h("p", { class: "note-input" }, h("label", { for: box.id }, name), box) };
  });
  const value = (key: string): string => inputs.find((one) => one.key === key)?.box.value.trim() ?? "";
  return {
    root: h(
      "details",
      { "data-key": "note head" },
      h("summary", { "data-key": "note head summary" }, "Head of the note"),
      inputs.map(({ line }) => line),
    ),
    read: () => ({
      project: value("project"),
      by: value("by"),
      checked: value("checked"),
      approved: value("approved"),
      revision: value("revision"),
      date: value("date"),
      edition,
    }),
  };
}

interface Maker {
  readonly explains: Explainer;
  readonly symbols: SymbolSource;
}

/** The calculations of cells, one for each call whose arguments can be read. */
async function calculationsOf(
  services: PanelServices,
  cells: readonly Address[],
  { explains, symbols }: Maker,
): Promise<readonly NoteCalculation[]> {
  const table = await symbols.table();
  const found: NoteCalculation[] = [];
  for (const cell of await readMarked(services.workbook, services.engine, cells))
    for (const { id, args } of cell.reading.calls) {
      const values = args.flatMap((argument) => ("value" in argument ? [argument.value] : []));
      if (values.length !== args.length) continue;
      const explained = explains.known(id, values) ?? (await explains.work(id, values, {}));
      const one = noteCalculation(cell, id, explained, table);
      if (one !== undefined) found.push(one);
    }
  if (found.length > MOST)
    throw new Error(`a note holds at most ${String(MOST)} calculations, these are ${String(found.length)}`);
  return found;
}

const NOTHING = "None of these cells has a function whose inputs can be read.";

async function insertSheets(
  { workbook }: PanelServices,
  all: readonly NoteCalculation[],
  head: NoteHead,
): Promise<string> {
  let first: string | undefined;
  for (const [at, one] of all.entries()) {
    const name = await workbook.insert(noteSheet(one, head, { at: at + 1, of: all.length, first }));
    first ??= name;
  }
  return `${counted(all.length, "sheet")} inserted, the first is “${first ?? ""}”. Its head fills the others.`;
}

/** Buttons that make a note of cells; `cells` is asked when one is pressed. */
export function noteActions(
  services: PanelServices,
  cells: () => Promise<readonly Address[]>,
  result: HTMLElement,
  key: string,
  head?: () => NoteHead,
): HTMLElement {
  const maker: Maker = { explains: explainer(services.engine, services.jobs), symbols: services.symbols };
  const blank = (): NoteHead => ({
    project: "",
    by: "",
    checked: "",
    approved: "",
    revision: "",
    date: today(),
    edition: services.engine.edition,
  });
  const making = (work: (all: readonly NoteCalculation[], head: NoteHead) => Promise<string>) => (): Promise<void> =>
    reportInto(result, async () => {
      const all = await calculationsOf(services, await cells(), maker);
      return [h("p", {}, all.length === 0 ? NOTHING : await work(all, (head ?? blank)()))];
    });
  const print = making(async (all, filled) => {
    await layPaper(all, filled, services.math);
    addEventListener("afterprint", removePaper, { once: true });
    globalThis.print();
    return "The note was given to the browser's print window: choose PDF there to keep it.";
  });
  const copy = making(async (all, filled) => {
    await navigator.clipboard.writeText(noteText(all, filled));
    return "The note is on the clipboard as text.";
  });
  const parts: readonly Child[] = [
    action(
      "Note as sheets",
      making((all, filled) => insertSheets(services, all, filled)),
      { key: `${key} sheets` },
    ),
    // Excel's pane can't print.
    services.workbook.host === "preview" ? action("Print the note", print, { key: `${key} print` }) : undefined,
    action("Copy the note", copy, { key: `${key} copy` }),
  ];
  return h("p", { class: "actions" }, parts);
}

/** The part of the section on marked cells that makes a note of them. */
export function markedNote(services: PanelServices, result: HTMLElement): readonly Child[] {
  const form = headForm(services.engine.edition);
  const cells = async (): Promise<readonly Address[]> => services.marked.all();
  return [h("h4", {}, "Calculation note"), form.root, noteActions(services, cells, result, "note", form.read)];
}
