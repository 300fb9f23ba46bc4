/** Hand over: the workbook is looked over, the user chooses, a copy is made. */
import type * as CopyModule from "../../workbook/copy/sheetCopies";
import { copyName } from "../../workbook/copy/copyName";
import type { CopyPlan } from "../../workbook/copy/handOver";
import type { CopyProgress } from "../../workbook/copy/copyWork";
import { isCancelled } from "../../workbook/timeSlices";
import { action, h, replace, type Child } from "../elements";
import { choiceOf, firstForm, type CopyForm } from "../model/copyChoice";
import { draftCopy, type CopyDraft } from "../model/handOver";
import { sentenceOf, type PanelServices } from "../services";
import { fileDrop } from "./fileDrop";
import { handOverForm, type HandOverForm } from "./handOverForm";
import { copyTexts, doubts, hasDoubts, sheetCopyTexts } from "./handOverTexts";
import { orCancelled, progressBox } from "./progressBox";

const NO_USE = "No cell of this workbook uses these functions.";

/** What copies sheets within the workbook is loaded when it is first needed. */
const copying = (): Promise<typeof CopyModule> =>
  import(/* webpackChunkName: "sheetCopies" */ "../../workbook/copy/sheetCopies");

/** The date on the user's clock: 2026-11-26. */
function today(): string {
  const now = new Date();
  const two = (number: number): string => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

interface Section {
  readonly services: PanelServices;
  /** What is going on: progress, or the choices. */
  readonly going: HTMLElement;
  readonly result: HTMLElement;
}

/** Runs a step with its progress; undefined where it was cancelled or failed, which is then said. */
async function step<T>(
  { services, going, result }: Section,
  what: string,
  run: (work: { signal: AbortSignal; onProgress: (progress: CopyProgress) => void }) => Promise<T>,
  failed?: (error: unknown) => readonly Child[],
): Promise<T | undefined> {
  const ending = new AbortController();
  const box = progressBox(services, { what, key: "hand over", cancel: () => ending.abort(), asked: true });
  replace(result);
  replace(going, box.root);
  try {
    return await orCancelled(run({ signal: ending.signal, onProgress: box.update }), ending.signal);
  } catch (error) {
    const text = isCancelled(error) ? "Cancelled: nothing was changed." : `Nothing was changed: ${sentence(error)}`;
    replace(
      result,
      h("p", { class: isCancelled(error) ? undefined : "fault" }, text),
      isCancelled(error) ? undefined : failed?.(error),
    );
    return undefined;
  } finally {
    box.end();
    replace(going);
  }
}

/** With a full stop, whoever wrote it. */
const sentence = (error: unknown): string => sentenceOf(error).replace(/\.?$/, ".");

async function makeFrom(section: Section, draft: CopyDraft, file: string, form: CopyForm): Promise<void> {
  const { services, going, result } = section;
  const facts = { project: form.project, file, date: today() };
  const plan: CopyPlan = { choice: choiceOf(form, draft.survey), others: form.others, facts };
  const copy = await step(section, "Making the copy", (work) => draft.make(plan, work));
  if (copy === undefined) return;
  // What the host does with it can't be cancelled.
  replace(going, h("p", { class: "quiet" }, "Handing the copy over…"));
  try {
    replace(result, copyTexts(copy, await services.workbook.deliverCopy(copy.bytes, copyName(file))));
  } catch (error) {
    replace(result, h("p", { class: "fault" }, `Nothing was changed: ${sentence(error)}`));
  }
  replace(going);
}

/** Follows what the chosen sheets come to: the newest choice counts, and one that was replaced before it was asked isn't. */
function consequences({ survey, consequences: ask }: CopyDraft, form: () => HandOverForm): () => void {
  let choices = 0;
  let isAsking = false;
  const follow = async (): Promise<void> => {
    choices += 1;
    if (isAsking) return;
    isAsking = true;
    for (let asked = 0; asked !== choices;) {
      asked = choices;
      const { form: chosen, show } = form();
      const found = await ask(choiceOf(chosen(), survey)).catch(sentence);
      // The choice may have changed while it was asked.
      if (asked === choices) show(found);
    }
    isAsking = false;
  };
  return () => void follow();
}

function choose(section: Section, draft: CopyDraft, file: string): void {
  const { services, going } = section;
  const { survey } = draft;
  const follow = consequences(draft, () => form);
  const form = handOverForm(survey, firstForm(survey, ""), { onChange: () => follow() });
  const label = hasDoubts(survey) ? "Make the copy all the same" : "Make the copy";
  replace(
    going,
    h("h4", { tabindex: -1 }, "What to hand over"),
    doubts(services, survey),
    form.root,
    h(
      "p",
      { class: "actions" },
      action(label, () => makeFrom(section, draft, file, form.form()), { key: "make copy", primary: true }),
      action("Cancel", () => replace(going), { key: "leave copy", name: "Cancel: make no copy" }),
    ),
  );
  going.querySelector("h4")?.focus();
  services.readOut("What to hand over: choose sheets and what the copy keeps.");
  follow();
}

async function lookOver(
  section: Section,
  bytesOf: (signal: AbortSignal) => Promise<Uint8Array>,
  file: string,
): Promise<void> {
  const { services, result } = section;
  const found = await step(
    section,
    "Looking through the workbook",
    async (work) => ({ draft: await draftCopy(services, await bytesOf(work.signal), work) }),
    () => otherWays(section),
  );
  if (found === undefined) return;
  if (found.draft === undefined) replace(result, h("p", {}, NO_USE));
  else choose(section, found.draft, file);
}

/** Where the workbook's bytes can't be had: the saved file, and only then copies of sheets beside the originals. */
function otherWays(section: Section): readonly Child[] {
  const { workbook, engine } = section.services;
  const { copySheets } = workbook;
  if (copySheets === undefined) return [];
  const take = (bytes: Uint8Array, name: string): void => void lookOver(section, () => Promise.resolve(bytes), name);
  const within = async (): Promise<void> => {
    const texts = await step(section, "Copying the sheets", async (work) => {
      const { sheetCopies } = await copying();
      const facts = { project: "", file: await workbook.documentName(), date: today() };
      const made = await sheetCopies(workbook, engine, facts, work);
      return made === undefined ? [h("p", {}, NO_USE)] : sheetCopyTexts(made, await copySheets(made.copies));
    });
    if (texts !== undefined) replace(section.result, texts);
  };
  return [
    fileDrop("Save the workbook and drop its file here, or choose it: the copy is made of the file.", take),
    h(
      "p",
      { class: "quiet" },
      "The last way: new sheets of this workbook hold the values. Nothing is dropped then, hidden things included, formulas on them refer to your own sheets, and making them empties Excel's undo list.",
    ),
    h("p", { class: "actions" }, action("Copy the sheets in this workbook", within, { key: "copy sheets" })),
  ];
}

export function handOverSection(services: PanelServices): HTMLElement {
  const section: Section = {
    services,
    going: h("div", { class: "going" }),
    result: h("div", { role: "status", class: "outcome" }),
  };
  const { workbook } = services;
  const run = async (): Promise<void> =>
    lookOver(section, (signal) => workbook.documentBytes(signal), await workbook.documentName().catch(() => ""));
  return h(
    "section",
    { "aria-labelledby": "hand-over-title" },
    h("h3", { id: "hand-over-title" }, "Hand over"),
    h(
      "p",
      {},
      "A copy for people without this add-in: values in place of every formula that needs it, a record of formula, " +
        "inputs, method, source and cautions, a Read me and a page for the supplier. You choose what goes into it; what " +
        "you leave out leaves no trace.",
    ),
    h("p", { class: "actions" }, action("Make a hand-over copy", run, { key: "hand over", primary: true })),
    section.going,
    section.result,
  );
}
