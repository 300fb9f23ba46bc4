/** Finds the panel's host and mounts the panel. */
import "./controls";
import { STARTER_SHEETS } from "../sheets";
import { excelWorkbook } from "../workbook/excel/excelWorkbook";
import type { SessionLog } from "../workbook/callLog";
import type { Workbook } from "../workbook/port";
import { h } from "./elements";
import { metadataFault } from "./metadataFault";
import type { FinderTexts } from "./model/search";
import { mountPanel, type PanelOptions } from "./panel";
import { applyTheme } from "./theme";

/** Inserted by the bundler: texts that the functions script strips from definitions. */
declare const FINDER_TEXTS: FinderTexts;

/** What the page and the functions script pass to the panel. */
interface Surroundings {
  /** Set by the preview page before this script runs. */
  readonly warmbackPreview?: { readonly workbook: Workbook };
  readonly warmback?: { readonly log?: SessionLog };
}

const NO_HOST = "This panel works beside a workbook: open it from Excel's ribbon, or start the preview.";

const NO_OFFICE =
  "office.js didn't load from appsforoffice.microsoft.com, and the panel can't reach a workbook without it. Check the network connection, then open the workbook again.";

async function hostWorkbook({ warmbackPreview }: Surroundings): Promise<Workbook | undefined> {
  if (warmbackPreview) return warmbackPreview.workbook;
  const { host } = await Office.onReady();
  // In the shared runtime the theme may be missing, whatever the types say.
  const theme = Office.context.officeTheme as Office.OfficeTheme | undefined;
  applyTheme(theme);
  return host === null ? undefined : excelWorkbook();
}

/** Mounts the panel; returns the reason if there is no workbook. */
export async function start(root: HTMLElement): Promise<string | undefined> {
  const around = globalThis as Surroundings;
  if (around.warmbackPreview === undefined && typeof Office === "undefined") return NO_OFFICE;
  const workbook = await hostWorkbook(around);
  if (workbook === undefined) return NO_HOST;
  const log = around.warmback?.log;
  const options: PanelOptions = {
    starters: STARTER_SHEETS,
    finderTexts: typeof FINDER_TEXTS === "undefined" ? {} : FINDER_TEXTS,
    ...(log === undefined ? {} : { log }),
  };
  mountPanel(root, workbook, options);
  const stale = await metadataFault();
  if (stale !== undefined) root.prepend(h("p", { class: "fault", role: "alert" }, stale));
  return undefined;
}
