/** Progress of running work: how far it is, how long it has taken, and a Cancel button. */
import { sentenceOf, type PanelServices } from "../services";
import { action, h } from "../elements";
import type { Progress } from "../jobs/jobTable";
import { CANCELLED, isCancelled } from "../../workbook/timeSlices";

/** Shorter work, in milliseconds, isn't shown: a flash helps nobody. */
const SHOWN_AFTER = 150;
/** The same for the host's reads, which may each be a round trip to a server. */
export const HOST_AFTER = 3000;
const SECOND = 1000;

interface Work {
  /** "Working out POOL.YEAR" */
  readonly what: string;
  readonly key: string;
  cancel(): void;
  /** The user started it: it is visible from its start. */
  readonly asked?: boolean;
  /** When it is shown and read out, in milliseconds. */
  readonly after?: number | undefined;
  /** Cancels the work from outside, and the box with it. */
  readonly signal?: AbortSignal;
  /** Called when the box becomes visible. */
  shown?(): void;
}

export interface ProgressBox {
  readonly root: HTMLElement;
  update(progress: Progress): void;
  /** Says what is done, with a bar that moves: nobody knows how far it is. */
  stage(text: string): void;
  /** Slow work begins: shows the box soon. */
  showNow(): void;
  /** Must be called when the work ends, however it ends. */
  end(): void;
}

/** A box that stays hidden until the work takes long, unless the user asked for the work. */
export function progressBox(services: PanelServices, work: Work): ProgressBox {
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
    services.readOut(`${what}…`);
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
    update({ done, total, text }) {
      stage.textContent = text;
      bar.max = total;
      // A bar at zero looks broken; one without a value moves.
      if (done > 0) bar.value = done;
    },
    stage(text) {
      stage.textContent = text;
      bar.removeAttribute("value");
    },
    showNow() {
      if (!due || after <= SHOWN_AFTER) return;
      clearTimeout(first);
      first = setTimeout(show, SHOWN_AFTER);
    },
    end,
  };
}

/** Replaces the box of cancelled or failed work, with a button that starts it again. */
export function stoppedBox(error: unknown, key: string, again: () => Promise<void> | void): HTMLElement {
  const cancelled = isCancelled(error);
  return h(
    "div",
    { class: "progress" },
    cancelled
      ? h("p", {}, h("strong", {}, "Cancelled."), " The cell keeps what it holds.")
      : h("p", { class: "fault" }, h("strong", {}, "Not worked out:"), ` ${sentenceOf(error)}.`),
    h("p", { class: "actions" }, action("Work it out", again, { key })),
  );
}

/** The result of work; rejects with CANCELLED as soon as `signal` aborts, whatever the host is doing. */
export const orCancelled = <T>(work: Promise<T>, signal: AbortSignal): Promise<T> =>
  new Promise((resolve, reject) => {
    const end = (): void => reject(CANCELLED);
    if (signal.aborted) end();
    signal.addEventListener("abort", end, { once: true });
    void work.then(resolve, reject).finally(() => signal.removeEventListener("abort", end));
  });

/** A controller that `outer` aborts too. */
export function endedBy(outer: AbortSignal | undefined): AbortController {
  const own = new AbortController();
  if (outer?.aborted === true) own.abort();
  else outer?.addEventListener("abort", () => own.abort(), { once: true });
  return own;
}
