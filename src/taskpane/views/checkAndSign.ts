/** Marked cells, and what is made of them: a check table. */
import { checkTableSheet } from "../../workbook/check/checkTable";
import { readMarked } from "../../workbook/check/markedCells";
import { selectedCells } from "../../workbook/check/selectedCells";
import type { PanelServices } from "../services";
import { action, h, replace, type Child } from "../elements";
import { counted } from "../model/summary";
import { cellButton } from "./cellButtons";
import { reportInto } from "./commands";
import { longList } from "./longList";

/** Adds the selected cells to the marked ones and says so. */
export async function markSelected(services: PanelServices): Promise<void> {
  await services.attempt(async () => {
    const selected = await selectedCells(services.workbook);
    if ("why" in selected) return services.announce(selected.why);
    const { cells } = selected;
    const added = cells.filter((cell) => services.marked.add(cell)).length;
    if (cells.length > 1) services.announce(`${counted(added, "cell")} marked.`);
    else services.announce(added === 1 ? "Marked." : "This cell is marked already.");
  });
}

function markedParts(services: PanelServices): readonly Child[] {
  const { marked } = services;
  const all = marked.all();
  if (all.length === 0) return [h("p", { class: "quiet" }, "No cell is marked yet.")];
  return [
    h("p", {}, `${counted(all.length, "cell")} marked:`),
    longList("marked", all, (address) =>
      h(
        "li",
        { class: "marked-item" },
        cellButton(services, address, "marked"),
        " ",
        action("Take out", () => marked.remove(address), {
          key: `take out ${String(address.row)} ${String(address.column)} ${address.sheet}`,
        }),
      ),
    ),
  ];
}

/** A section on marked cells; `more` adds what else is made of them. */
export function checkSection(
  services: PanelServices,
  more: (result: HTMLElement) => readonly Child[] = () => [],
): HTMLElement {
  const { marked, workbook, engine } = services;
  const list = h("div", {});
  const result = h("div", { role: "status", class: "outcome" });
  const draw = (): void => replace(list, markedParts(services));
  marked.onChange(draw);
  draw();
  const make = (): Promise<void> =>
    reportInto(result, async () => {
      const all = marked.all();
      if (all.length === 0) return [h("p", {}, "Mark at least one cell first.")];
      const name = await workbook.insert(checkTableSheet(await readMarked(workbook, engine, all), engine.edition));
      return [
        h("p", {}, `Inserted as the sheet “${name}”. Type the hand values and both initials there.`),
        h("p", { class: "quiet" }, "Named initials are no digital signature."),
      ];
    });
  return h(
    "section",
    { "aria-labelledby": "check-title" },
    h("h3", { id: "check-title" }, "Check and sign"),
    h(
      "p",
      {},
      "Mark the cells to check, here or under Explain. A check table sets a hand value beside each and gives a verdict; a " +
        "calculation note prints how each comes about.",
    ),
    h(
      "p",
      { class: "actions" },
      action("Mark the selected cells", () => markSelected(services), { key: "mark" }),
      action("Take all out", () => marked.clear(), { key: "unmark" }),
    ),
    list,
    h("p", { class: "actions" }, action("Make a check table", make, { key: "check table", primary: true })),
    more(result),
    result,
  );
}
