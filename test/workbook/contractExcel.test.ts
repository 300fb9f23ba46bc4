/** The port's contract over Excel, on every profile of the stand-in. */
import { excelWorkbook } from "../../src/workbook/excel/excelWorkbook";
import { excelHost, install, PROFILES, sheetNamed } from "../excelHost";
import { contract } from "./contract";

for (const profile of PROFILES)
  contract(`Excel, ${profile.name}`, () => {
    const excel = excelHost(profile);
    const restore = install(excel);
    return Promise.resolve({
      book: excelWorkbook(),
      calculates: false,
      close: () => Promise.resolve(restore()),
      protect: (sheet) => {
        sheetNamed(excel.host.book, sheet).protection = {};
        return Promise.resolve();
      },
    });
  });
