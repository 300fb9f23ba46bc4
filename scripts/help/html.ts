/** Small pieces of HTML as text. */

export const escaped = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");

/** A cell that is HTML already. */
export interface Html {
  readonly html: string;
}

export const html = (text: string): Html => ({ html: text });

export type Cell = string | Html;

const inner = (cell: Cell): string => (typeof cell === "string" ? escaped(cell) : cell.html);

export const code = (text: string): Html => html(`<code>${escaped(text)}</code>`);

/** Cards in a narrow window, or a table there too if its few columns fit. */
export type Layout = "cards" | "narrow";

/**
 * A table that becomes a list of cards in a narrow window, unless it is narrow itself. The roles keep it a table for screen
 * readers. The first cell of a row names the row.
 */
export const table = (
  caption: string,
  heads: readonly string[],
  rows: readonly (readonly Cell[])[],
  layout: Layout = "cards",
): string => {
  const head = heads.map((text) => `<th scope="col" role="columnheader">${escaped(text)}</th>`).join("");
  const body = rows.map((cells) => {
    const [first = "", ...others] = cells;
    const named = `<th scope="row" role="rowheader">${inner(first)}</th>`;
    const rest = others.map(
      (cell, place) =>
        `<td role="cell" data-head="${escaped(heads[place + 1] ?? "")}"${inner(cell) === "" ? ' class="empty"' : ""}>${inner(cell)}</td>`,
    );
    return `<tr role="row">${named}${rest.join("")}</tr>`;
  });
  return `<table role="table" class="${layout}">
<caption>${escaped(caption)}</caption>
<thead role="rowgroup"><tr role="row">${head}</tr></thead>
<tbody role="rowgroup">
${body.join("\n")}
</tbody>
</table>`;
};

/** A table of numbers in a box of its own, which scrolls sideways in a narrow window. */
export const scrolled = (caption: string, heads: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  `<div class="scroll" tabindex="0" role="region" aria-label="${escaped(caption)}">
${table(caption, heads, rows, "narrow")}
</div>`;

/** A collapsed part that a reader may open. @param summary HTML, @param content HTML */
export const collapsed = (summary: string, content: string, name = "whole"): string =>
  `<details class="${name}">
<summary>${summary}</summary>
${content}
</details>`;

/** A heading and its content. */
export type Section = readonly [title: string, content: string];

const anchor = (title: string): string => title.toLowerCase().replace(/\W+/g, "-");

/** The sections that aren't empty, preceded by links to them. */
export const sections = (all: readonly Section[]): string => {
  const full = all.filter(([, content]) => content !== "");
  const links = full.map(([title]) => html(`<a href="#${anchor(title)}">${escaped(title)}</a>`));
  const parts = full.map(
    ([title, content]) => `<section id="${anchor(title)}">\n<h2>${escaped(title)}</h2>\n${content}\n</section>\n`,
  );
  return `<nav aria-label="On this page">\n${list(links)}\n</nav>\n${parts.join("")}`;
};

export const list = (items: readonly Cell[]): string =>
  items.length === 0 ? "" : `<ul>\n${items.map((item) => `<li>${inner(item)}</li>`).join("\n")}\n</ul>`;

/** A whole page: no script, its style in a file beside it. */
export const page = (title: string, description: string, main: string, footer: string): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="description" content="${escaped(description)}">
<title>${escaped(title)}</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="../assets/help.css">
</head>
<body>
<a class="skip" href="#main">Skip to the content</a>
${main}
<footer>
${footer}
</footer>
</body>
</html>
`;
