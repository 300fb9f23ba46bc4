/** The help pages: one for each cell function and a list of all. */
import { readFileSync } from "node:fs";
import { CATALOGUE, type CellFunction, EDITION, signatureOf, NAMESPACE } from "../../core";
import { STARTER_SHEETS } from "../../src/sheets";
import { helpPage, PAGES } from "../manifest/manifest";
import { argumentTables, resultText } from "./arguments";
import { checkTable, workedExample } from "./example";
import { collectHelp } from "./gather";
import { escaped, html, list, page, sections, table } from "./html";
import { cautionTable, dataList, equationCards, rangeList, sourceList } from "./method";
import { panelPage } from "./panelPage";
import { searchScript } from "./searchIndex";
import { sheetFile, sheetPage, sheetRows } from "./sheetPages";
import { topicTitle, TOPICS } from "./topics";
import { validationPage } from "../validation/page";

const FOOTER = `<p>${escaped(EDITION)}. A number in a cell carries no unit: its unit is the one that this page names, or the other system's where <code>units</code> is <code>"SI"</code>.</p>`;

const fileOf = (id: string): string => `${id}.html`;

const link = (definition: CellFunction): string => `<a href="${fileOf(definition.id)}">${escaped(definition.id)}</a>`;

const related = (definition: CellFunction): string =>
  list(
    CATALOGUE.filter((each) => each.topic === definition.topic && each !== definition).map((each) =>
      html(`${link(each)}: ${escaped(each.summary)}`),
    ),
  );

const SELF_TEST = "NOTE.SELFTEST";
const VALIDATION_LINK = `<p>How far every function lies from its references, row by row: <a href="validation.html">validation report</a>.</p>`;

const functionPage = (definition: CellFunction): string => {
  const gathered = collectHelp(definition);
  const { id, summary, topic, returns } = definition;
  const main = `<header>
<nav aria-label="Place"><a href="index.html">All functions</a> › <a href="index.html#${topic}">${escaped(topicTitle(topic))}</a></nav>
</header>
<main id="main" tabindex="-1">
<h1>${escaped(id)}</h1>
<p class="summary">${escaped(summary)}</p>
<pre tabindex="0"><code>=${escaped(signatureOf(definition))}</code></pre>
${sections([
  ["Arguments", argumentTables(definition)],
  ["Result", resultText(returns)],
  ["Worked example", workedExample(gathered)],
  [gathered.equations.length > 1 ? "Equations" : "Equation", equationCards(gathered)],
  ["Tables and properties that it reads", dataList(gathered)],
  ["Range and remarks", rangeList(definition, gathered)],
  ["Cautions", cautionTable(definition)],
  ["Published checks", checkTable(definition) + (id === SELF_TEST ? VALIDATION_LINK : "")],
  ["Sources", sourceList(gathered)],
  ["Related functions", related(definition)],
])}</main>`;
  return page(`${NAMESPACE}.${id}`, summary, main, FOOTER);
};

const INTRODUCTION = `<p>Type <code>=${NAMESPACE}.</code> in a cell and choose a function, or open the panel to find one by its task.</p>
<p>A number counts in US units unless the argument <code>units</code> says <code>"SI"</code>; a text may bring its own unit, such as <code>"105 degF"</code>, <code>"14 ¢/kWh"</code> or <code>"0.2 Btu/hr-ft2-F"</code>; a length may be <code>3' 6"</code> or <code>1 1/2 in</code>. <code>#VALUE!</code> asks for another input and says which; <code>#N/A</code> says that method, data or physics don't reach so far.</p>
<p>Leave out an optional argument that you don't need; don't point at a blank cell. Excel on the web passes a blank cell as nothing, Excel on Windows and on a Mac as 0. A 0 counts as left out where the argument's limits exclude it. Where 0 can be meant it counts, and the caution ZERO-OR-BLANK in the panel names the argument.</p>
<p>With two workbooks open, Excel's Function Arguments dialog may show <code>#VALUE!</code> beside a text argument although the cell is right: a fault of Excel's (OfficeDev/office-js issues 3352 and 4853).</p>`;

const topicTable = (topic: string): string => {
  const rows = CATALOGUE.filter((definition) => definition.topic === topic);
  if (rows.length === 0) return "";
  return `<section id="${topic}">
<h2>${escaped(topicTitle(topic))}</h2>
${table(
  `${String(rows.length)} function${rows.length === 1 ? "" : "s"}`,
  ["Function", "What it answers"],
  rows.map((definition) => [html(link(definition)), definition.summary]),
)}
</section>
`;
};

const indexPage = (): string => {
  const main = `<main id="main" tabindex="-1">
<h1>Warmback cell functions</h1>
${INTRODUCTION}
<div id="search" role="search" hidden>
<label for="search-words">Search functions, starter sheets and the panel</label>
<input id="search-words" type="search" autocomplete="off">
<p id="search-count" role="status"></p>
<ul id="search-found"></ul>
</div>
<p>Also: <a href="panel.html">the panel</a>, <a href="validation.html">the validation report</a>.</p>
<section id="starter-sheets">
<h2>Starter sheets</h2>
${table("Whole calculations of the invented Fernhill Hall, to fill in anew", ["Sheet", "What it answers"], sheetRows())}
</section>
<nav aria-label="Topics">
${list(
  Object.keys(TOPICS)
    .filter((topic) => CATALOGUE.some((definition) => definition.topic === topic))
    .map((topic) => html(`<a href="#${topic}">${escaped(topicTitle(topic))}</a>`)),
)}
</nav>
${Object.keys(TOPICS).map(topicTable).join("")}</main>
<script src="../assets/help.js"></script>`;
  return page("Warmback cell functions", "All cell functions by topic.", main, FOOTER);
};

/** All pages by their path inside the build, with their style. */
export const helpPages = (): Readonly<Record<string, string>> => ({
  [PAGES.help]: indexPage(),
  "assets/help.css": readFileSync(new URL("help.css", import.meta.url), "utf8"),
  "assets/help.js": searchScript(),
  "help/panel.html": panelPage(),
  "help/validation.html": validationPage(),
  ...Object.fromEntries(STARTER_SHEETS.map((sheet) => [`help/${sheetFile(sheet)}`, sheetPage(sheet)])),
  ...Object.fromEntries(CATALOGUE.map((definition) => [helpPage(definition.id), functionPage(definition)])),
});
