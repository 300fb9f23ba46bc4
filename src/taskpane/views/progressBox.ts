/** Work that goes on: how far it is, how long it has taken, and a button that ends it. */
import { sentenceOf, type PanelServices } from "../services";
import { action, h } from "../elements";
import type { Progress } from "../jobs/job";
import { CANCELLED } from "../jobs/jobQueue";

/** Work that takes less, in milliseconds, isn't shown: a flash tells nobody anything. */
const SHOWN_AFTER = 150;
/** The same for the host's reads, each of which may be a round trip to a server: that they go on is no news. */
export const HOST_AFTER = 3000;
const SECOND = 1000;

interface Work {
  /** "Working out POOL.YEAR" */
  readonly what: string;
  readonly key: string;
  cancel(): void;
  /** The user waits for it: it is seen from its start. */
  readonly asked?: boolean;
  /** When it is shown and read out, in milliseconds. */
  readonly after?: number | undefined;
  /** What ends it from outside ends what is shown of it too. */
  readonly signal?: AbortSignal;
  /** It takes long enough to be seen. */
  shown?(): void;
}

export interface ProgressBox {
  readonly root: HTMLElement;
  tell(progress: Progress): void;
  /** What comes next takes long of itself: it is shown soon. */
  showNow(): void;
  /** Must be called when the work is over, however it ended. */
  end(): void;
}

/** A box that is hidden until the work takes long, unless it was asked for. */
export function progressBox(desk: PanelServices, work: Work): ProgressBox {
  const { what, key, cancel, asked = false, after = SHOWN_AFTER, signal, shown } = work;
  const stage = h("p", { class: "quiet" }, "starting");
  const seconds = h("span", { class: "count" });
  const bar = h("progress", { "aria-label": what });
  const began = performance.now();
  const root = h(
    "div",
    { class: "progress", hidden: !asked },
    h("p", { class: "running" }, h("span", {}, `${what}…`), seconds),
    bar,
    stage,
    h("p", { class: "actions" }, action("Cancel", cancel, { key, name: `Cancel: ${what}` })),
  );
  const count = (): void => {
    seconds.textContent = `${String(Math.round((performance.now() - began) / SECOND))} s`;
  };
  let due = true;
  const show = (): void => {
    due = false;
    root.hidden = false;
    desk.readOut(`${what}…`);
    shown?.();
  };
  let first = setTimeout(show, after);
  const ticking = setInterval(count, SECOND);
  const end = (): void => {
    due = false;
    clearTimeout(first);
    clearInterval(ticking);
  };
  signal?.addEventListener("abort", end, { once: true });
  return {
    root,
    tell({ done, total, text }) {
      stage.textContent = text;
      bar.max = total;
      // A bar that stands at nothing looks broken; one without a value moves.
      if (done > 0) bar.value = done;
    },
    showNow() {
      if (!due || after <= SHOWN_AFTER) return;
      clearTimeout(first);
      first = setTimeout(show, SHOWN_AFTER);
    },
    end,
  };
}

/** What stands in the place of work that was ended or failed, with a button that begins it again. */
export function stoppedBox(error: unknown, key: string, again: () => Promise<void> | void): HTMLElement {
  const cancelled = error === CANCELLED;
  return h(
    "div",
    { class: "progress" },
    cancelled
      ? h("p", {}, h("strong", {}, "Cancelled."), " The cell keeps what it holds.")
      : h("p", { class: "fault" }, h("strong", {}, "Not worked out:"), ` ${sentenceOf(error)}.`),
    h("p", { class: "actions" }, action("Work it out", again, { key })),
  );
}

/** What work comes to; CANCELLED as soon as `signal` ends it, whatever the host is at. */
export const orCancelled = <T>(work: Promise<T>, signal: AbortSignal): Promise<T> =>
  new Promise((resolve, reject) => {
    const end = (): void => reject(CANCELLED);
    if (signal.aborted) end();
    signal.addEventListener("abort", end, { once: true });
    void work.then(resolve, reject).finally(() => signal.removeEventListener("abort", end));
  });

/** An own way to end work that `outer` ends too. */
export function endedBy(outer: AbortSignal | undefined): AbortController {
  const own = new AbortController();
  if (outer?.aborted === true) own.abort();
  else outer?.addEventListener("abort", () => own.abort(), { once: true });
  return own;
}
