/** Puts the panel together over a workbook. */
import type { StarterSheet } from "../sheets/sheet";
import { callLog, type CallLog } from "../workbook/log";
import type { Workbook } from "../workbook/port";
import { sentenceOf, type Desk } from "./desk";
import { h } from "./elements";
import { panelEngine } from "./engine";
import { mathSource } from "./mathml";
import type { FinderTexts } from "./model/search";
import { awayEngine } from "./runs/away";
import { startRuns } from "./runs/runs";
import { tabs } from "./tabs";
import { cautionsView } from "./views/cautions";
import { explainView } from "./views/explain";
import { findView } from "./views/find";
import { workbookView } from "./views/workbook";

export interface PanelOptions {
  readonly starters?: readonly StarterSheet[];
  readonly finderTexts?: FinderTexts;
  /** The calls that the functions made in this session: helps to read arguments that can't be read from the formula. */
  readonly log?: CallLog;
}

interface Lines {
  /** Shown and read out. */
  readonly shown: HTMLElement;
  /** Only read out. */
  readonly unseen: HTMLElement;
}

function deskOf(workbook: Workbook, { shown, unseen }: Lines, options: PanelOptions): Desk {
  const say = (text: string): void => {
    shown.textContent = text;
  };
  const attempt = async (work: () => Promise<void>): Promise<boolean> => {
    try {
      await work();
      return true;
    } catch (error) {
      say(sentenceOf(error));
      return false;
    }
  };
  const runs = startRuns();
  return {
    workbook,
    engine: awayEngine(panelEngine(options.log ?? callLog()), runs),
    runs,
    math: mathSource(),
    starters: options.starters ?? [],
    finderTexts: options.finderTexts ?? {},
    say,
    readOut(text) {
      unseen.textContent = text;
    },
    attempt,
    goTo: async (address) => {
      await attempt(() => workbook.select(address));
    },
  };
}

/** Fills `root` with the panel. The panel stays as long as the page. */
export function mountPanel(root: HTMLElement, workbook: Workbook, options: PanelOptions = {}): void {
  const shown = h("p", { role: "status", class: "status" });
  const unseen = h("p", { role: "status", class: "unseen" });
  const desk = deskOf(workbook, { shown, unseen }, options);
  // What was told goes with the next thing that the user does.
  const forget = (): void => {
    shown.textContent = "";
  };
  root.addEventListener("click", forget, { capture: true });
  root.addEventListener("keydown", forget, { capture: true });
  root.classList.add("panel");
  root.replaceChildren(
    ...tabs(
      [
        { id: "cautions", label: "Cautions", view: cautionsView(desk) },
        { id: "explain", label: "Explain", view: explainView(desk) },
        { id: "find", label: "Find", view: findView(desk) },
        { id: "workbook", label: "Workbook", view: workbookView(desk) },
      ],
      "Views",
    ),
    shown,
    unseen,
  );
}
