/** Starter sheets with buttons that insert each, alone or with the sheet whose values it takes. */
import type { StarterSheet } from "../../sheets/sheet";
import { stamped } from "../../workbook/edition/stamp";
import { hasNamesOf, projectFor } from "../model/linkedStarters";
import type { PanelServices } from "../services";
import { action, h, replace } from "../elements";

/** The cards of a section: what an insertion changes on one shows on all. */
interface Cards {
  readonly key: string;
  readonly redraws: (() => Promise<void>)[];
}

const insertAll =
  (services: PanelServices, starters: readonly StarterSheet[], cards: Cards) => async (): Promise<void> => {
    services.announce(`Inserting ${starters.map(({ name }) => name).join(" and ")}…`);
    await services.attempt(async () => {
      const names: string[] = [];
      for (const starter of starters)
        names.push(await services.workbook.insert(stamped(starter, services.engine.edition)));
      const sheets = names.map((name) => `“${name}”`).join(" and ");
      services.announce(`Inserted as the ${names.length === 1 ? "sheet" : "sheets"} ${sheets}.`);
    });
    await Promise.all(cards.redraws.map((redraw) => redraw()));
  };

/** The button that inserts a sheet after the one that it takes values from, while the workbook lacks that one. */
function withProject(services: PanelServices, starter: StarterSheet, cards: Cards): HTMLElement {
  const place = h("span");
  const project = projectFor(services.starters, starter);
  if (project === undefined) return place;
  const draw = async (): Promise<void> => {
    const there = await hasNamesOf(services.workbook, project).catch(() => true);
    const insert = async (): Promise<void> => {
      // The workbook may have got the sheet since the button was drawn.
      const missing = !(await hasNamesOf(services.workbook, project).catch(() => false));
      await insertAll(services, missing ? [project, starter] : [starter], cards)();
    };
    const label = `Insert with ${project.name}`;
    const options = { key: `${cards.key} ${starter.id} linked`, name: `${label}: ${starter.name}` };
    replace(place, there ? undefined : action(label, insert, options));
  };
  cards.redraws.push(draw);
  void draw();
  return place;
}

const card = (services: PanelServices, starter: StarterSheet, cards: Cards): HTMLElement =>
  h(
    "li",
    { class: "card" },
    h("h4", {}, starter.name),
    h("p", {}, starter.summary),
    h(
      "p",
      { class: "actions" },
      action("Insert sheet", insertAll(services, [starter], cards), {
        key: `${cards.key} ${starter.id}`,
        name: `Insert sheet: ${starter.name}`,
      }),
      withProject(services, starter, cards),
    ),
  );

/** A section of starter sheets; undefined if there are none. */
export const startersSection = (
  services: PanelServices,
  key: string,
  starters: readonly StarterSheet[],
): HTMLElement | undefined => {
  const cards: Cards = { key, redraws: [] };
  return starters.length === 0
    ? undefined
    : h(
        "section",
        { "aria-labelledby": `${key}-title` },
        h("h3", { id: `${key}-title` }, "Starter sheets"),
        h("p", { class: "quiet" }, "A whole calculation with example values, on a sheet of its own."),
        h(
          "ul",
          { class: "plain" },
          starters.map((starter) => card(services, starter, cards)),
        ),
      );
};
