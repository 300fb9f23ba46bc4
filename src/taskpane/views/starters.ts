/** Starter sheets with a button that inserts each. */
import type { StarterSheet } from "../../sheets/sheet";
import { stamped } from "../../workbook/edition/stamp";
import type { PanelServices } from "../services";
import { action, h } from "../elements";

const card = (services: PanelServices, starter: StarterSheet, key: string): HTMLElement => {
  const insert = async (): Promise<void> => {
    services.announce(`Inserting ${starter.name}…`);
    await services.attempt(async () => {
      const name = await services.workbook.insert(stamped(starter, services.engine.edition));
      services.announce(`Inserted as the sheet “${name}”.`);
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

/** A section of all starter sheets; undefined if there are none. */
export const startersSection = (services: PanelServices, key: string): HTMLElement | undefined =>
  services.starters.length === 0
    ? undefined
    : h(
        "section",
        { "aria-labelledby": `${key}-title` },
        h("h3", { id: `${key}-title` }, "Starter sheets"),
        h("p", { class: "quiet" }, "A whole calculation with example values, on a sheet of its own."),
        h(
          "ul",
          { class: "plain" },
          services.starters.map((starter) => card(services, starter, key)),
        ),
      );
