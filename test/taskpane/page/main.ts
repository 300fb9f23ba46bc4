/** The workbook of a test page: the pool loop of Fernhill Hall, an invented community hall. */
import { BUILD } from "../../../src/functions/buildHash";
import { panelEngine, type PanelEngine } from "../../../src/taskpane/engine";
import { sessionLog } from "../../../src/workbook/callLog";
import { makeBook, type Book } from "./book";

declare global {
  var book: Book;
}

const log = sessionLog();
const plain = panelEngine(log);
const engine: PanelEngine = {
  ...plain,
  call(id, args) {
    const outcome = plain.call(id, args);
    log.add(id, args, outcome);
    return outcome;
  },
};

const asked = new URLSearchParams(location.search);
const book = makeBook(["Pool loop", "Refrigerant", "Notes"], engine, {
  places: asked.has("places"),
  saves: asked.has("saves"),
});
globalThis.book = book;
Object.assign(globalThis, {
  warmbackPreview: { workbook: book.workbook },
  warmback: { build: BUILD, notes: true, ...(asked.has("session") && { log }) },
});

if (!asked.has("empty")) {
  const loop = (at: string, content: string | number): void => book.type("Pool loop", at, content);
  loop("A1", "Fernhill Hall (invented): pool loop");
  loop("B3", 90);
  loop("B4", "2 in");
  loop("B5", 100);
  loop("B7", "=WARMBACK.PIPE.HEADLOSS(B3,B4,B5)");
  loop("B8", "=WARMBACK.PIPE.VELOCITY(B3,B4)");
  loop("B9", '=WARMBACK.PIPE.HEADLOSS(1,"1 in",B5)');
  loop("B10", '=WARMBACK.PIPE.HEADLOSS(40,"2 in",-5)');
  loop("B11", '=WARMBACK.PIPE.SIZE(B3,6,"80")');
  loop("B12", "=WARMBACK.PIPE.HEADLOSS(XLOOKUP(1,A1:A9,B1:B9),B4,B5)");
  loop("B13", '=WARMBACK.PIPE.HEADLOSS(40,"2 in",100,,"25 degC",,,"SI")');
  loop("D3", '=WARMBACK.CYCLE.STATES("R-410A",45,105)');
  book.type("Refrigerant", "A1", '=WARMBACK.REFRIG.SUPERHEAT("R-410A",130,40)');
  book.type("Refrigerant", "A2", '=WARMBACK.REFRIG.SUBCOOLING("R-410A",340,106)+0');
  void book.calculate();
}
