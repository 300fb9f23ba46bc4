import type {} from "./shim";
import { BUILD, functionsFault } from "../../functions/buildHash";
import { STARTER_SHEETS } from "../../sheets";
import type { Workbook } from "../../workbook/port";
import type { BookData } from "../file/bookData";
import type { FunctionsMetadata } from "../host/functionsMetadata";
import { formulaTexts } from "../file/formulaTexts";
import { connectFiles, deliverFile, deliverPicture } from "./files";
import { followScheme, movablePanel } from "./layout";
import { connectMessage } from "./message";
import { showSheetCharts } from "./sheetCharts";
import { starterBook } from "../file/starterBook";
import { startOnScreen } from "../univer/screen";
import { previewWorkbook } from "../host/previewWorkbook";

/** The preview page: the sheet engine with the very functions script and panel that Excel runs. */

declare global {
  /** The panel's script finds its workbook here. */
  var warmbackPreview: { readonly workbook: Workbook } | undefined;
}

const element = (id: string): HTMLElement => {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no element #${id}`);
  return found;
};

const addScript = (source: string): Promise<void> =>
  new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = source;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`${source} can't be loaded`));
    document.body.append(script);
  });

/** What a first visit shows: the main job and the values that the other sheets share. */
const FIRST = ["recovery-sizing", "project"];

const firstBook = (): BookData =>
  starterBook(FIRST.flatMap((id) => STARTER_SHEETS.find((starter) => starter.id === id) ?? []));

const start = async (): Promise<void> => {
  const { warmback, warmbackShim } = globalThis;
  const fault = functionsFault(warmback);
  if (fault !== undefined) throw new Error(fault);
  if (warmback === undefined || warmbackShim === undefined) throw new Error("shim.js didn't load");
  const answer = await fetch("functions.json");
  if (!answer.ok) throw new Error("functions.json can't be loaded");
  const metadata = (await answer.json()) as FunctionsMetadata;
  const { namespace } = warmback;
  const set = { namespace, metadata, associated: warmbackShim.associated };
  const book = startOnScreen(element("sheet"), set, firstBook());
  followScheme(book.setDark);
  connectMessage(book, element("message"), (id, args) => warmback.explain(id, args).cautions.length);
  const texts = formulaTexts(namespace, metadata);
  const files = connectFiles(book, texts, {
    open: element("open"),
    save: element("save"),
    file: element("file") as HTMLInputElement,
    cancel: element("cancel"),
    status: element("status"),
    report: element("opening"),
  });
  showSheetCharts(book, book.charts, element("work"));
  movablePanel(element("splitter"), element("side"), element("toggle"));
  globalThis.warmbackPreview = { workbook: previewWorkbook(book, { ...files, deliver: deliverFile }, deliverPicture) };
  await addScript(`taskpane.js?v=${BUILD}`);
};

start().catch((thrown: unknown) => {
  const text = `The sheet didn't start: ${thrown instanceof Error ? thrown.message : String(thrown)}`;
  element("status").textContent = text.replace(/\.?$/, ".");
  element("panel").textContent = "The panel needs the sheet.";
});
