import { join } from "node:path";
import { test } from "vitest";
import { loadFunctions } from "../../src/preview/load";
import { startHeadless } from "../../src/preview/univer/start";
import { emptySheet } from "../../src/preview/data";
const set = loadFunctions(join(import.meta.dirname, "fixture"));
test("x", async () => {
  for (const n of [50, 500, 2000]) {
    const t0 = performance.now();
    const sheets = Array.from({ length: n }, (_, i) => ({
      ...emptySheet("S" + i),
      cells: [
        {
          row: 0,
          column: 100,
          value: null,
          formula: i % 2 ? "=WARMBACK.TEST.TABLE(20)" : `=WARMBACK.TEST.DOUBLE(${i})`,
        },
        { row: 19000, column: 900, value: null, format: "0" },
      ],
    }));
    const book = startHeadless(set, { sheets, names: [] });
    console.log("made", performance.now() - t0);
    await book.settled();
    console.log(
      n,
      "start",
      performance.now() - t0,
      JSON.stringify(book.read({ sheet: "S" + (n - 1), row: 0, column: 100, rows: 3, columns: 2 }).values),
    );
    book.dispose();
  }
}, 100000);
