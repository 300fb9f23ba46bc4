/** Work on the page's file: one piece at a time, with its progress, its outcome and Cancel. */
import type { Progress } from "../../taskpane/jobs/jobTable";

interface WorkControls {
  readonly cancel: HTMLElement;
  readonly status: HTMLElement;
}

/** Work with progress in the status line, and an end by Cancel. */
export interface Work {
  readonly signal: AbortSignal;
  onProgress(progress: Progress): void;
}

/** Runs one piece of work at a time: a new one ends the one before. */
export function workRunner({ cancel, status }: WorkControls) {
  let ending: AbortController | undefined;
  cancel.addEventListener("click", () => ending?.abort());
  /** Answers whether the work was done. */
  return async (verb: string, work: (slices: Work) => Promise<string>): Promise<boolean> => {
    ending?.abort();
    const own = new AbortController();
    ending = own;
    cancel.hidden = false;
    status.textContent = verb;
    try {
      const onProgress = ({ text }: Progress): void => {
        if (!own.signal.aborted) status.textContent = `${verb} ${text}`;
      };
      status.textContent = await work({ signal: own.signal, onProgress });
      return true;
    } catch (thrown) {
      const said = thrown instanceof Error ? thrown.message : String(thrown);
      status.textContent = own.signal.aborted ? "Cancelled: the workbook is as it was." : said;
      return false;
    } finally {
      if (ending === own) cancel.hidden = true;
    }
  };
}
