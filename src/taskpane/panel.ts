/** Puts the panel together over a workbook. */
import type { StarterSheet } from "../sheets/sheet";
import { callLog, type CallLog } from "../workbook/log";
import type { Workbook } from "../workbook/port";
import { sentenceOf, type Desk } from "./desk";
import { h } from "./elements";
import { panelEngine } from "./engine";
import { mathSource } from "./mathml";
import { tabs } from "./tabs";
import { cautionsView } from "./views/cautions";
import { explainView } from "./views/explain";
import { findView } from "./views/find";

export interface PanelOptions {
  readonly starters?: readonly StarterSheet[];
  /** The calls that the functions made in this session: helps to read arguments that can't be read from the formula. */
  readonly log?: CallLog;
}

function deskOf(workbook: Workbook, status: HTMLElement, options: PanelOptions): Desk {
  const say = (text: string): void => {
    status.textContent = text;
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
  return {
    workbook,
    engine: panelEngine(options.log ?? callLog()),
    math: mathSource(),
    starters: options.starters ?? [],
    say,
    attempt,
    goTo: async (address) => {
      await attempt(() => workbook.select(address));
    },
  };
}

/** Fills `root` with the panel. The panel stays as long as the page. */
export function mountPanel(root: HTMLElement, workbook: Workbook, options: PanelOptions = {}): void {
  const status = h("p", { role: "status", class: "status" });
  const desk = deskOf(workbook, status, options);
  root.classList.add("panel");
  root.replaceChildren(
    ...tabs(
      [
        { id: "cautions", label: "Cautions", view: cautionsView(desk) },
        { id: "explain", label: "Explain", view: explainView(desk) },
        { id: "find", label: "Find", view: findView(desk) },
      ],
      "Views",
    ),
    status,
  );
}
