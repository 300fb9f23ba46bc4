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

/**
 * A table that becomes a list of cards where there is no room. The roles keep it a table for screen readers then. The
 * first cell of a row names it.
 */
export const table = (caption: string, heads: readonly string[], rows: readonly (readonly Cell[])[]): string => {
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
  return `<table role="table">
<caption>${escaped(caption)}</caption>
<thead role="rowgroup"><tr role="row">${head}</tr></thead>
<tbody role="rowgroup">
${body.join("\n")}
</tbody>
</table>`;
};

/** A section with its heading; nothing where it is empty. */
export const section = (title: string, content: string): string =>
  content === "" ? "" : `<section>\n<h2>${escaped(title)}</h2>\n${content}\n</section>\n`;

export const list = (items: readonly Cell[]): string =>
  items.length === 0 ? "" : `<ul>\n${items.map((item) => `<li>${inner(item)}</li>`).join("\n")}\n</ul>`;

export const paragraphs = (texts: readonly string[]): string =>
  texts.map((text) => `<p>${escaped(text)}</p>`).join("\n");

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
<link rel="stylesheet" href="help.css">
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
