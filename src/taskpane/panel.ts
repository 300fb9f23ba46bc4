/** Assembles the panel for a workbook. */
import type { StarterSheet } from "../sheets/sheet";
import { sessionLog, type SessionLog } from "../workbook/callLog";
import type { Workbook } from "../workbook/port";
import { sentenceOf, type PanelServices } from "./services";
import { h } from "./elements";
import { watchDrops } from "./dropped";
import { panelEngine } from "./engine";
import { mathSource } from "./mathml";
import { cellLabels } from "./model/cellLabels";
import type { FinderTexts } from "./model/search";
import { markedList } from "./model/markedList";
import { workerEngine } from "./jobs/workerEngine";
import { startPanelJobs } from "./jobs/panelJobs";
import { heardWhileShown } from "./hostEvents";
import { tabs } from "./tabs";
import { symbolSource } from "./note/symbols";
import { paneVisibility } from "./visibility";
import { cautionsView } from "./views/cautions";
import { explainView } from "./views/explain";
import { findView } from "./views/find";
import { workbookView } from "./views/workbook";

export interface PanelOptions {
  readonly starters?: readonly StarterSheet[];
  readonly finderTexts?: FinderTexts;
  /** This session's calls: a source for arguments that can't be read from the formula. */
  readonly log?: SessionLog;
}

interface Lines {
  /** Shown and read out. */
  readonly shown: HTMLElement;
  /** Only read out. */
  readonly unseen: HTMLElement;
}

function panelServices(workbook: Workbook, { shown, unseen }: Lines, options: PanelOptions): PanelServices {
  const announce = (text: string): void => {
    shown.textContent = text;
  };
  const attempt = async (work: () => Promise<void>): Promise<boolean> => {
    try {
      await work();
      return true;
    } catch (error) {
      announce(sentenceOf(error));
      return false;
    }
  };
  const jobs = startPanelJobs();
  return {
    workbook,
    engine: workerEngine(panelEngine(options.log ?? sessionLog()), jobs),
    jobs,
    math: mathSource(),
    symbols: symbolSource(),
    starters: options.starters ?? [],
    finderTexts: options.finderTexts ?? {},
    labels: cellLabels(workbook),
    marked: markedList(),
    announce,
    readOut(text) {
      unseen.textContent = text;
    },
    attempt,
    goTo: async (address) => {
      await attempt(() => workbook.select(address));
    },
  };
}

/** Fills `root` with the panel, which lives as long as the page. */
export function mountPanel(root: HTMLElement, workbook: Workbook, options: PanelOptions = {}): void {
  const shown = h("p", { role: "status", class: "status" });
  const unseen = h("p", { role: "status", class: "unseen" });
  const visibility = paneVisibility();
  const services = panelServices(heardWhileShown(workbook, visibility), { shown, unseen }, options);
  // The next action of the user clears the announcement.
  const forget = (): void => {
    shown.textContent = "";
  };
  root.addEventListener("click", forget, { capture: true });
  root.addEventListener("keydown", forget, { capture: true });
  const workbookTab = workbookView(services);
  watchDrops({
    announce: services.announce,
    readWeather: (file) => {
      root.querySelector<HTMLElement>("#tab-workbook")?.click();
      workbookTab.weather.root.scrollIntoView();
      void workbookTab.weather.take(file);
    },
  });
  root.classList.add("panel");
  root.replaceChildren(
    ...tabs(
      [
        { id: "cautions", label: "Cautions", view: cautionsView(services) },
        { id: "explain", label: "Explain", view: explainView(services) },
        { id: "find", label: "Find", view: findView(services) },
        { id: "workbook", label: "Workbook", view: workbookTab },
      ],
      "Views",
      visibility,
    ),
    shown,
    unseen,
  );
}
