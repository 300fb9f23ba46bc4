import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { loadFunctions } from "../../src/preview/load";
import { startHeadless } from "../../src/preview/univer/start";
import { emptySheet } from "../../src/preview/data";
const set = loadFunctions(join(import.meta.dirname, "fixture"));
test("x", async () => {
  const t0 = performance.now();
  const book = startHeadless(set, { sheets: [emptySheet("Sheet1")], names: [] });
  await book.settled();
  console.log("start", performance.now() - t0);
  const fs = [
    "=WARMBACK.TEST.DOUBLE(4)",
    "=warmback.test.double(Z1)",
    "=WARMBACK.TEST.SHOW(Z1)",
    "=WARMBACK.TEST.SHOW(,2)",
    "=WARMBACK.TEST.SHOW()",
    '=WARMBACK.TEST.SHOW("7",TRUE)',
    "=WARMBACK.TEST.MATRIX(X1:Z2)",
    "=WARMBACK.TEST.MATRIX(5)",
    "=WARMBACK.TEST.MATRIX(Z:Z)",
    "=WARMBACK.TEST.SHOW(Y1:Z2)",
    "=WARMBACK.TEST.SHOW(1/0)",
    "=WARMBACK.TEST.TEXT(40)",
    "=WARMBACK.TEST.TEXT(TRUE)",
    '=WARMBACK.TEST.NUMBER("7")',
    '=WARMBACK.TEST.NUMBER("x")',
    '=WARMBACK.TEST.YESNO("true")',
    '=WARMBACK.TEST.FAIL("no")',
    "=WARMBACK.TEST.CRASH()",
    "=WARMBACK.TEST.RAGGED()",
    "=WARMBACK.TEST.INFINITE()",
    '=WARMBACK.TEST.JOIN(1,2,"a")',
    "=WARMBACK.TEST.DOUBLE(1,2)",
    "=IFERROR(WARMBACK.TEST.FAIL(1),WARMBACK.TEST.DOUBLE(3))",
    "=LET(x,WARMBACK.TEST.DOUBLE(3),x+1)",
    "=INDEX(WARMBACK.TEST.TABLE(3),2,2)",
    "=WARMBACK.TEST.DOUBLE(WARMBACK.TEST.DOUBLE(WARMBACK.TEST.DOUBLE(1)))",
    '=WARMBACK.TEST.DOUBLE(WARMBACK.TEST.FAIL("inner"))',
    "=1+",
    "=NOSUCH(1)",
    "=WARMBACK.TEST.SHOW({1,2;3,4})",
    '=WARMBACK.TEST.SHOW("7"&"")',
    '=WARMBACK.TEST.MATRIX({1,2;3,"a"})',
    "=SUM(WARMBACK.TEST.TABLE(3,1))",
  ];
  book.write(fs.map((content, i) => ({ sheet: "Sheet1", row: i, column: 0, content })));
  book.write([
    { sheet: "Sheet1", row: 0, column: 4, content: "=WARMBACK.TEST.TABLE(3)" },
    { sheet: "Sheet1", row: 5, column: 4, content: "=WARMBACK.TEST.GAPS()" },
    { sheet: "Sheet1", row: 10, column: 4, content: "=WARMBACK.TEST.MATRIX(E6:G7)" },
    { sheet: "Sheet1", row: 11, column: 4, content: "=WARMBACK.TEST.MATRIX(E6:G6)" },
    { sheet: "Sheet1", row: 12, column: 4, content: "=WARMBACK.TEST.DOUBLE(A17)" },
  ]);
  await book.settled();
  const b = book.read({ sheet: "Sheet1", row: 0, column: 0, rows: fs.length, columns: 7 });
  b.values.forEach((r, i) => console.log(fs[i], JSON.stringify(r), book.unreadable(fs[i]!)));
  console.log(JSON.stringify(book.used("Sheet1")), JSON.stringify(book.spill({ sheet: "Sheet1", row: 0, column: 4 })));
  console.log(JSON.stringify(book.calls({ sheet: "Sheet1", row: 25, column: 0 })));
  const d = book.data();
  console.log(JSON.stringify(d).slice(0, 600));
  book.dispose();
});
