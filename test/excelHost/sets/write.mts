/** Writes the table of API sets anew: `npx tsx test/excelHost/sets/write.mts`, after an update of the typings. */
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { readApiSets } from "./readTypings";

writeFileSync(
  fileURLToPath(new URL("./apiSets.json", import.meta.url)),
  `${JSON.stringify(readApiSets(), undefined, 1)}\n`,
);
