/**
 * `npx tsx src/preview/cli/handOver.mts in.xlsx out.xlsx [options]`: makes the hand-over copy of a workbook. A starter
 * sheet's id may replace the input file. Reads dist/functions.js where it has to calculate: build first.
 */
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import type * as HandOverFile from "../file/handOverFile";

const USAGE = `give a workbook or a starter sheet's id, and the file to write
  --list             shows sheets and what is hidden, and writes nothing
  --sheet NAME       hands over this sheet (again for each); else those with the functions and what they refer to
  --keep ID          keeps a hidden item that is dropped otherwise (again for each; ids by --list)
  --drop ID          drops a hidden item that is kept otherwise
  --freeze-others    turns formulas without these functions into values too
  --project TEXT     for the sheets that explain the copy
  --recalculate      works the workbook out first instead of taking the values that it holds
  --anyway           makes the copy in spite of cells that differ or can't be read`;

// The sheet engine's ES modules can't be imported by Node as they are: it is required.
const { listForHandOver, writeHandOver } = createRequire(import.meta.url)(
  "../file/handOverFile.ts",
) as typeof HandOverFile;

// The engine writes its own remarks with console.log and the like.
for (const method of ["log", "info", "debug", "warn"] as const) console[method] = () => undefined;

const FUNCTIONS = fileURLToPath(new URL("../../../dist", import.meta.url));

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    list: { type: "boolean", default: false },
    sheet: { type: "string", multiple: true },
    keep: { type: "string", multiple: true, default: [] },
    drop: { type: "string", multiple: true, default: [] },
    "freeze-others": { type: "boolean", default: false },
    project: { type: "string", default: "" },
    recalculate: { type: "boolean", default: false },
    anyway: { type: "boolean", default: false },
  },
});

async function list(from: string): Promise<string> {
  const { sheet: sheets, recalculate } = values;
  const { survey, hidden } = await listForHandOver(FUNCTIONS, from, { ...(sheets && { sheets }), recalculate });
  return [
    ...survey.sheets.map(
      ({ name, state, ours, failing }) =>
        `sheet ${name} (${state}): ${ours} cells with these functions, ${failing} with an error${survey.proposed.includes(name) ? ", proposed" : ""}`,
    ),
    ...hidden.map(({ id, sheet, text, byDefault, alwaysDropped }) => {
      const place = sheet === undefined ? "" : ` on ${sheet}`;
      return `${alwaysDropped === true ? "always dropped" : byDefault} ${id}: ${text}${place}`;
    }),
  ].join("\n");
}

try {
  const [from, to] = positionals;
  const { list: listed, sheet: sheets, keep, drop, project, recalculate, anyway } = values;
  if (from === undefined || (to === undefined && !listed)) throw new Error(USAGE);
  const options = { ...(sheets && { sheets }), keep, drop, project, recalculate, anyway };
  const text =
    to === undefined || listed
      ? await list(from)
      : await writeHandOver(FUNCTIONS, from, to, { ...options, freezeOthers: values["freeze-others"] });
  process.stdout.write(`${text}\n`);
} catch (thrown) {
  process.stderr.write(`hand-over: ${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
}
