import type { SheetBook } from "../host/sheetBook";
import { forgetBook, keepBook, newestKept, type KeptBook } from "./keptBooks";

/** Keeps an edited workbook in the browser's store, and offers it again after a reload or when another file was opened. */

/** What is kept of the open workbook and how it comes back. */
export interface KeepableBook {
  name(): string;
  isEdited(): boolean;
  content(): Promise<KeptBook["content"]>;
  /** Answers whether the workbook is there; says itself why not. */
  restore(kept: KeptBook): Promise<boolean>;
}

export interface Offer {
  readonly bar: HTMLElement;
  readonly question: HTMLElement;
  readonly restore: HTMLElement;
  readonly discard: HTMLElement;
}

export interface Autosave {
  /** The workbook is in a file now: nothing of it need be kept. */
  saved(): void;
  /** Keeps the edited workbook, which another is to take the place of, and offers it from then on. */
  setAside(): Promise<void>;
}

/** Typing goes on for longer than this between two cells. */
const QUIET_MS = 1_500;

const timeText = (time: number): string => {
  const date = new Date(time);
  const clock = date.toLocaleTimeString([], { hour: "numeric", minute: "2-digit" });
  const today = date.toDateString() === new Date().toDateString();
  return today ? clock : `${date.toLocaleDateString([], { day: "numeric", month: "long" })}, ${clock}`;
};

/** @param onFault called with a sentence where the browser keeps nothing */
export function autosave(
  book: SheetBook,
  files: KeepableBook,
  offer: Offer,
  onFault: (sentence: string) => void,
): Autosave {
  let id = crypto.randomUUID() as string;
  let offered: KeptBook | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let warned = false;
  let seen = book.edits();
  const attempt = async (work: () => Promise<unknown>): Promise<void> => {
    try {
      await work();
    } catch {
      if (!warned) onFault("The browser keeps no copy of unsaved work here: save it often.");
      warned = true;
    }
  };
  const keep = async (): Promise<KeptBook | undefined> => {
    clearTimeout(timer);
    if (!files.isEdited()) return undefined;
    const kept = { id, name: files.name(), time: Date.now(), content: await files.content() };
    await keepBook(kept);
    return kept;
  };
  const show = (kept: KeptBook | undefined): void => {
    offered = kept;
    offer.bar.hidden = kept === undefined;
    if (kept !== undefined) offer.question.textContent = `Restore ${kept.name} of ${timeText(kept.time)}?`;
  };
  book.onChange(() => {
    if (book.edits() === seen) return;
    seen = book.edits();
    clearTimeout(timer);
    timer = setTimeout(() => void attempt(keep), QUIET_MS);
  });
  offer.restore.addEventListener("click", () => {
    const kept = offered;
    if (kept === undefined) return;
    show(undefined);
    void attempt(async () => {
      const replaced = await keep();
      if (!(await files.restore(kept))) return show(kept);
      id = kept.id;
      show(replaced);
    });
  });
  offer.discard.addEventListener("click", () => {
    const kept = offered;
    show(undefined);
    if (kept !== undefined) void attempt(() => forgetBook(kept.id));
  });
  addEventListener("beforeunload", (event) => {
    if (files.isEdited()) event.preventDefault();
  });
  void attempt(async () => show(await newestKept()));
  return {
    saved: () => {
      clearTimeout(timer);
      void attempt(() => forgetBook(id));
    },
    setAside: () =>
      attempt(async () => {
        const kept = await keep();
        id = crypto.randomUUID();
        if (kept !== undefined) show(kept);
      }),
  };
}
