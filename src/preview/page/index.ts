import type {} from "./shim";
import { BUILD, functionsFault } from "../../functions/buildHash";
import { STARTER_SHEETS } from "../../sheets";
import type { Workbook } from "../../workbook/port";
import type { BookData } from "../file/bookData";
import type { FunctionsMetadata } from "../host/functionsMetadata";
import { formulaTexts } from "../file/formulaTexts";
import { cycleAreas, focusFirst } from "./areas";
import { showCellChoices } from "./cellChoices";
import { connectFiles, deliverFile, deliverPicture } from "./files";
import { laterWorkbook } from "./laterWorkbook";
import { followScheme, followWindow, movablePanel } from "./layout";
import { connectMessage } from "./message";
import { showSheetCharts } from "./sheetCharts";
import { showSheetFolds } from "./sheetFolds";
import { starterBook } from "../file/starterBook";
import type { ScreenBook } from "../univer/screen";
import type { FunctionSet } from "../univer/start";
import { previewWorkbook } from "../host/previewWorkbook";

/** The preview page: the sheet engine with the very functions script and panel that Excel runs. */

declare global {
  /** The panel's script finds its workbook here. */
  var warmbackPreview: { readonly workbook: Workbook } | undefined;
}

type ExplainCall = NonNullable<typeof globalThis.warmback>["explain"];

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

const functionSet = async (): Promise<FunctionSet & { readonly explain: ExplainCall }> => {
  const { warmback, warmbackShim } = globalThis;
  const fault = functionsFault(warmback);
  if (fault !== undefined) throw new Error(fault);
  if (warmback === undefined || warmbackShim === undefined) throw new Error("shim.js didn't load");
  const answer = await fetch("functions.json");
  if (!answer.ok) throw new Error("functions.json can't be loaded");
  const metadata = (await answer.json()) as FunctionsMetadata;
  const { namespace, explain } = warmback;
  return { namespace, metadata, associated: warmbackShim.associated, explain };
};

/** Two frames: what was changed before is on the screen then. A page in the background draws none. */
const painted = (): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, 200);
    requestAnimationFrame(() => requestAnimationFrame(() => resolve()));
  });

/** The sheet engine is most of the page's script: it is fetched at once and run when the panel shows. */
const sheetEngine = () => import(/* webpackChunkName: "sheet", webpackPrefetch: true */ "../univer/screen");

const connectAreas = (book: ScreenBook): void => {
  const [top, message, sheet, side] = [element("top"), element("message"), element("sheet"), element("side")];
  const enterSheet = (): boolean => {
    book.focus();
    return true;
  };
  const enterMessage = (): boolean => {
    if (!focusFirst(message)) message.focus();
    return true;
  };
  cycleAreas(
    [
      { element: top, enter: () => focusFirst(top) },
      { element: message, enter: enterMessage },
      { element: sheet, enter: enterSheet },
      { element: side, enter: () => focusFirst(side) },
    ],
    2,
  );
};

/** Waits until the engine has drawn the first results, or for as long as anyone would look at a picture. */
const drawnBy = async (book: ScreenBook): Promise<void> => {
  const tooLong = new Promise((resolve) => setTimeout(resolve, 8_000));
  await Promise.race([book.whenCalculated(), tooLong]);
  await painted();
};

const startSheet = async (drawn: Promise<void>): Promise<Workbook> => {
  const set = await functionSet();
  await drawn;
  const { startOnScreen } = await sheetEngine();
  const [sheet, grid] = [element("sheet"), document.createElement("div")];
  grid.className = "grid";
  sheet.prepend(grid);
  const book = startOnScreen(grid, set, firstBook());
  void drawnBy(book).then(() => {
    sheet.querySelector(".still")?.remove();
    sheet.removeAttribute("aria-busy");
  });
  followScheme(book.setDark);
  followWindow(book.allowFrozen);
  connectMessage(book, element("said"), (id, args) => set.explain(id, args).cautions.length);
  showCellChoices(book, element("work"));
  connectAreas(book);
  const files = connectFiles(book, formulaTexts(set.namespace, set.metadata), {
    open: element("open"),
    save: element("save"),
    file: element("file") as HTMLInputElement,
    cancel: element("cancel"),
    status: element("status"),
    report: element("opening"),
    offer: {
      bar: element("offer"),
      question: element("question"),
      restore: element("restore"),
      discard: element("discard"),
    },
    showPanel: () => {
      if (document.body.classList.contains("folded")) element("toggle").click();
    },
  });
  showSheetCharts(book, book.charts, element("work"));
  showSheetFolds(book, element("work"), element("folds"));
  for (const id of ["open", "save"]) element(id).removeAttribute("disabled");
  return previewWorkbook(book, { ...files, deliver: deliverFile }, deliverPicture);
};

const say = (thrown: unknown, part: "panel" | "sheet"): void => {
  const text = `The ${part} didn't start: ${thrown instanceof Error ? thrown.message : String(thrown)}`;
  element("status").textContent = text.replace(/\.?$/, ".");
};

const start = async (): Promise<void> => {
  movablePanel(element("splitter"), element("side"), element("toggle"));
  let panelDrawn: () => void = () => undefined;
  const drawn = new Promise<void>((resolve) => (panelDrawn = resolve));
  const starting = startSheet(drawn);
  starting.catch((thrown: unknown) => {
    say(thrown, "sheet");
    element("sheet").textContent = "";
    element("sheet").removeAttribute("aria-busy");
    element("panel").textContent = "The panel needs the sheet.";
  });
  globalThis.warmbackPreview = { workbook: laterWorkbook(starting) };
  try {
    await addScript(`taskpane.js?v=${BUILD}`);
    await painted();
  } catch (thrown) {
    say(thrown, "panel");
    element("panel").textContent = "The panel isn't there. Reload the page to try again.";
  }
  panelDrawn();
};

void start();
