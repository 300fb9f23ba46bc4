/** Stands in for the starter sheets. */
import type { StarterSheet } from "../../../src/sheets/sheet";

export const STARTER_SHEETS: readonly StarterSheet[] = [
  {
    id: "sample",
    name: "Recovery sizing",
    summary: "What the air conditioner of Fernhill Hall (invented) gives up and what the lap pool can take.",
    widths: [20],
    cells: { A1: { content: "Fernhill Hall" } },
    names: {},
    frozenRows: 1,
    print: { area: "A1:A1", landscape: false, fitToWidth: true, titleRows: "1:1", footer: "" },
  },
];
