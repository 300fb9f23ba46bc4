/** The panel's script: finds its host and mounts the panel in the element `#panel`. */
import "@fluentui/web-components/button/define.js";
import "@fluentui/web-components/text-input/define.js";
import { STARTER_SHEETS } from "../sheets";
import { excelWorkbook } from "../workbook/excel";
import type { CallLog } from "../workbook/log";
import type { Workbook } from "../workbook/port";
import { mountPanel, type PanelOptions } from "./panel";
import { applyTheme } from "./theme";

export { mountPanel } from "./panel";

/** What the page and the functions' script leave for the panel. */
interface Surroundings {
  /** Set by the preview page before this script runs. */
  readonly warmbackPreview?: { readonly workbook: Workbook };
  readonly warmback?: { readonly log?: CallLog };
}

const NO_HOST = "This panel works beside a workbook: open it from Excel's ribbon, or start the preview.";

async function hostWorkbook({ warmbackPreview }: Surroundings): Promise<Workbook | undefined> {
  if (warmbackPreview) return warmbackPreview.workbook;
  if (typeof Office === "undefined") return undefined;
  const { host } = await Office.onReady();
  // In the shared runtime the theme may be missing, whatever the types say.
  const theme = Office.context.officeTheme as Office.OfficeTheme | undefined;
  applyTheme(theme);
  return host === null ? undefined : excelWorkbook();
}

async function start(root: HTMLElement, around: Surroundings): Promise<void> {
  const workbook = await hostWorkbook(around);
  if (workbook === undefined) {
    root.textContent = NO_HOST;
    return;
  }
  const log = around.warmback?.log;
  const options: PanelOptions = { starters: STARTER_SHEETS, ...(log === undefined ? {} : { log }) };
  mountPanel(root, workbook, options);
}

const root = document.getElementById("panel");
if (root !== null) void start(root, globalThis as Surroundings);
