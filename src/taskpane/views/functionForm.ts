/** A form with a function's arguments: shows the result, then inserts the call at the selected cell. */
import type { CellFunction } from "../../../core";
import type { Address } from "../../workbook/port";
import { action, h, replace, type Child } from "../elements";
import { blankText, fieldUnit, filledCall, chosenSystem, type Filling, type FormField } from "../model/form";
import { entryOf, type FormEntry, type FormEvents } from "./formEntry";
import { insertChosen, type Chosen } from "../model/insertChosen";
import { insertionOf, type CallExample } from "../model/insertion";
import { sentenceOf, type PanelServices } from "../services";
import { resultLine } from "./result";

/** Delay between the last keystroke and the calculation, in milliseconds. */
const AFTER_TYPING = 300;

/** The formula, unless ranges of inputs fill it: their places are known on inserting only. */
const formulaLine = ({ definition, example, references }: Chosen): Child => {
  const { cells, formula } = insertionOf(definition, example, { sheet: "", row: 0, column: 0 }, references);
  return cells.length > 1 ? undefined : h("pre", { class: "source" }, h("code", {}, formula));
};

const resultParts = (chosen: Chosen): readonly Child[] => [
  formulaLine(chosen),
  h("div", { class: "gives" }, "gives ", resultLine(chosen.definition, chosen.example.outcome, chosen.example.system)),
];

/** Where references without a sheet look, until a cell is selected. */
async function placeOf(services: PanelServices): Promise<Address> {
  const at = await services.workbook.selection();
  return at ?? { sheet: "", row: 0, column: 0 };
}

/** The result box, which follows the fields. */
function liveResult(services: PanelServices, filling: Filling, texts: () => readonly string[]) {
  const box = h("div", { role: "status", class: "form-result" });
  let newest = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const work = async (): Promise<void> => {
    const own = ++newest;
    const waiting = setTimeout(() => replace(box, h("p", { class: "quiet" }, "Working it out…")), AFTER_TYPING);
    try {
      const chosen = await filledCall(filling, texts(), await placeOf(services));
      if (own === newest) replace(box, resultParts(chosen));
    } catch (error) {
      if (own === newest) replace(box, h("p", { class: "fault" }, sentenceOf(error)));
    } finally {
      clearTimeout(waiting);
    }
  };
  replace(box, resultParts({ definition: filling.definition, example: filling.example }));
  return {
    box,
    later(): void {
      clearTimeout(timer);
      timer = setTimeout(() => void work(), AFTER_TYPING);
    },
  };
}

/** The form, filled with the example. */
export function functionForm(
  services: PanelServices,
  definition: CellFunction,
  example: CallExample,
  fields: readonly FormField[],
): HTMLElement {
  const { id } = definition;
  const filling: Filling = { book: services.workbook, engine: services.engine, definition, example, fields };
  const entries: FormEntry[] = [];
  const texts = (): readonly string[] => entries.map((entry) => entry.text());
  const relabel = (): void => {
    const system = chosenSystem(fields, texts());
    const textAt = (name: string): string => entries.find(({ field }) => field.name === name)?.text() ?? "";
    for (const { field, label } of entries) label(fieldUnit(field, system, textAt), blankText(field, system));
  };
  const live = liveResult(services, filling, texts);
  let busy = false;
  const insert = async (): Promise<void> => {
    if (busy) return;
    busy = true;
    await services.attempt(async () => {
      const at = await services.workbook.selection();
      if (at === undefined) throw new Error("Select a cell first.");
      const chosen = await filledCall(filling, texts(), at);
      const { sentence } = await insertChosen(filling, chosen, at);
      services.announce(sentence);
    });
    busy = false;
  };
  const events: FormEvents = {
    changed() {
      relabel();
      live.later();
    },
    submit: () => void insert(),
  };
  entries.push(...fields.map((field) => entryOf(services, id, field, events)));
  relabel();
  const name = `Insert at the selected cell: ${id}`;
  return h(
    "div",
    { role: "group", "aria-label": `Arguments of ${id}` },
    entries.length === 0 ? undefined : h("h4", {}, "Arguments"),
    entries.map(({ row }) => row),
    live.box,
    h(
      "p",
      { class: "actions" },
      action("Insert at the selected cell", insert, { key: `insert ${id}`, primary: true, name }),
    ),
  );
}
