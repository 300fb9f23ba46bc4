/** How a command on the workbook runs in a view: its progress, its result, why it failed. */
import { isCancelled } from "../../workbook/timeSlices";
import type { PanelServices } from "../services";
import { sentenceOf } from "../services";
import { h, replace, type Child } from "../elements";
import { orCancelled, progressBox } from "./progressBox";

/** Runs a command and shows its result, why it failed, or that it was cancelled. */
export async function reportInto(into: HTMLElement, work: () => Promise<readonly Child[]>): Promise<void> {
  try {
    replace(into, await work());
  } catch (error) {
    const cancelled = isCancelled(error);
    const text = cancelled ? "Cancelled: nothing was changed." : `Nothing was changed: ${sentenceOf(error)}.`;
    replace(into, h("p", { class: cancelled ? undefined : "fault" }, text));
  }
}

export interface RunningOptions {
  readonly signal: AbortSignal;
  onProgress(done: number, of: number): void;
  onStage(stage: string): void;
}

interface Command {
  readonly what: string;
  readonly key: string;
  /** What is counted: "formula". */
  readonly unit?: string;
  readonly going: HTMLElement;
  readonly result: HTMLElement;
  /** It changes the workbook: cancelled, it takes back what it changed, and ends when that is done. */
  readonly changes?: boolean;
}

/** Runs a command that can be cancelled, with a progress box while it runs. */
export async function withProgress(
  services: PanelServices,
  { what, key, unit = "formula", going, result, changes = false }: Command,
  work: (options: RunningOptions) => Promise<readonly Child[]>,
): Promise<void> {
  const ending = new AbortController();
  const box = progressBox(services, { what, key, cancel: () => ending.abort(), asked: true });
  const onProgress = (done: number, total: number): void =>
    box.update({ done, total, text: `${done.toLocaleString("en")} of ${total.toLocaleString("en")} ${unit}s` });
  replace(result);
  replace(going, box.root);
  const { signal } = ending;
  await reportInto(result, () => {
    const running = work({ signal, onProgress, onStage: box.stage });
    return changes ? running : orCancelled(running, signal);
  });
  box.end();
  if (going.contains(box.root)) replace(going);
}
