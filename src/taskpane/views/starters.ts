/** Starter sheets with a button that inserts each. */
import type { StarterSheet } from "../../sheets/sheet";
import type { PanelServices } from "../services";
import { action, h } from "../elements";

const card = (desk: PanelServices, starter: StarterSheet, key: string): HTMLElement => {
  const insert = async (): Promise<void> => {
    desk.announce(`Inserting ${starter.name}…`);
    await desk.attempt(async () => {
      const name = await desk.workbook.insert(starter);
      desk.announce(`Inserted as the sheet “${name}”.`);
    });
  };
  return h(
    "li",
    { class: "card" },
    h("h4", {}, starter.name),
    h("p", {}, starter.summary),
    h(
      "p",
      { class: "actions" },
      action("Insert sheet", insert, { key: `${key} ${starter.id}`, name: `Insert sheet: ${starter.name}` }),
    ),
  );
};

/** A section of all starter sheets; nothing where there are none. */
export const startersSection = (desk: PanelServices, key: string): HTMLElement | undefined =>
  desk.starters.length === 0
    ? undefined
    : h(
        "section",
        { "aria-labelledby": `${key}-title` },
        h("h3", { id: `${key}-title` }, "Starter sheets"),
        h("p", { class: "quiet" }, "A whole calculation with example values, on a sheet of its own."),
        h(
          "ul",
          { class: "plain" },
          desk.starters.map((starter) => card(desk, starter, key)),
        ),
      );
