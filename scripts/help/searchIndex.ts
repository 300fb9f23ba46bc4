/** The help index's search: every page with its words, and the script that looks them up. */
import { readFileSync } from "node:fs";
import { CATALOGUE, type CellFunction, labelOf, placedArgs } from "../../core";
import { STARTER_SHEETS } from "../../src/sheets";
import { sheetFile } from "./sheetPages";
import { topicTitle } from "./topics";

interface Found {
  readonly file: string;
  readonly title: string;
  readonly summary: string;
  readonly words: string;
}

const functionEntry = (definition: CellFunction): Found => ({
  file: `${definition.id}.html`,
  title: definition.id,
  summary: definition.summary,
  words: [
    topicTitle(definition.topic),
    ...(definition.keywords ?? []),
    ...placedArgs(definition).map(([name]) => labelOf(name)),
  ].join(" "),
});

const entries = (): readonly Found[] => [
  ...CATALOGUE.map(functionEntry),
  ...STARTER_SHEETS.map((sheet) => ({
    file: sheetFile(sheet),
    title: `Starter sheet: ${sheet.name}`,
    summary: sheet.summary,
    words: Object.entries(sheet.cells)
      .flatMap(([at, { content }]) => (/^A\d/.test(at) && !String(content).startsWith("=") ? String(content) : []))
      .join(" "),
  })),
  { file: "panel.html", title: "The panel", summary: "Cautions, Explain, Find and Workbook.", words: "task pane side" },
];

export const searchScript = (): string =>
  readFileSync(new URL("search.js", import.meta.url), "utf8").replace("/* pages */ []", () =>
    JSON.stringify(entries()),
  );
