import type { Address } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import type { ShownValue } from "../file/differences";
import type { Difference, OpeningReport } from "../file/openingReport";

/** What there is to say of an opened file, as a sentence and as a list with the cells. */

const counted = (count: number, one: string, many: string): string =>
  `${count.toLocaleString("en-US")} ${count === 1 ? one : many}`;

export function reportLine({ unread, differing, changing, settings }: OpeningReport): string {
  const cells = unread.reduce((sum, kind) => sum + kind.cells.length, 0);
  const parts = [
    ...(unread.length === 0
      ? []
      : [
          `${counted(unread.length, "kind of formula", "kinds of formula")} that can't be read here (${counted(cells, "cell keeps its", "cells keep their")} result)`,
        ]),
    ...(differing.length === 0
      ? []
      : [counted(differing.length, "cell differs", "cells differ") + " from what the file last showed"]),
    ...(changing.length === 0
      ? []
      : [counted(changing.length, "cell changes", "cells change") + " at every calculation"]),
  ];
  return [...(parts.length === 0 ? [] : [`Opened: ${parts.join(", ")}.`]), ...settings].join(" ");
}

/** Cells of one kind that are shown before "Show more". */
const SHOWN = 24;

const valueText = (value: ShownValue): string => {
  if (Array.isArray(value)) return "a table";
  return value === null || value === "" ? "nothing" : String(value);
};

interface Line {
  readonly cell: Address;
  readonly text: string;
}

function cellList(title: string, lines: readonly Line[], select: (cell: Address) => void): HTMLElement {
  const section = document.createElement("section");
  const heading = document.createElement("h2");
  heading.textContent = title;
  const list = document.createElement("ul");
  const add = (from: number): void => {
    for (const { cell, text } of lines.slice(from, from + SHOWN)) {
      const item = document.createElement("li");
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = addressText(cell);
      button.addEventListener("click", () => select(cell));
      item.append(button, text === "" ? "" : ` ${text}`);
      list.append(item);
    }
    if (lines.length <= from + SHOWN) return;
    const more = document.createElement("button");
    more.type = "button";
    more.textContent = `Show more (${lines.length - from - SHOWN})`;
    more.addEventListener("click", () => {
      more.remove();
      add(from + SHOWN);
    });
    section.append(more);
  };
  section.append(heading, list);
  add(0);
  return section;
}

const differenceLine = (cell: Difference): Line => ({
  cell,
  text: `the file showed ${valueText(cell.stored)}, here ${valueText(cell.now)}`,
});

export function showReport(place: HTMLElement, report: OpeningReport, select: (cell: Address) => void): void {
  const { unread, differing, changing, settings } = report;
  const summary = document.createElement("summary");
  summary.textContent = reportLine(report);
  const kept = unread.map(({ why, cells }) =>
    cellList(
      `Can't be read here: ${why}`,
      cells.map((cell) => ({ cell, text: "" })),
      select,
    ),
  );
  place.replaceChildren(
    summary,
    ...kept,
    ...(differing.length === 0
      ? []
      : [cellList("Differs from what the file last showed", differing.map(differenceLine), select)]),
    ...(changing.length === 0
      ? []
      : [
          cellList(
            "Changes at every calculation, or follows from a cell that does",
            changing.map(differenceLine),
            select,
          ),
        ]),
  );
  place.hidden = kept.length + differing.length + changing.length + settings.length === 0;
}
