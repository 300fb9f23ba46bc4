/** Brings docs/blank-cells.md up to date with the catalogue: npm run blank-cells. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { blankCellRows, blankCellsPage } from "./blankCells";

const path = new URL("../docs/blank-cells.md", import.meta.url);
const text = existsSync(path) ? readFileSync(path, "utf8") : "";
const next = await blankCellsPage(blankCellRows());
if (next !== text) writeFileSync(path, next);
process.stdout.write(`docs/blank-cells.md ${next === text ? "is" : "was brought"} up to date\n`);
