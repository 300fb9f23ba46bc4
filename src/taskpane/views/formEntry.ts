/** One argument in a function's form: its control, unit, greyed default and the button that takes a cell. */
import { h, type Child } from "../elements";
import { takenText, type FormField } from "../model/form";
import type { PanelServices } from "../services";

/** A field in the page. */
export interface FormEntry {
  readonly field: FormField;
  readonly row: HTMLElement;
  text(): string;
  /** Fills it as a user would. */
  fill(text: string): void;
  /** Writes unit and greyed default. */
  label(unit: string, blank: string): void;
}

export interface FormEvents {
  changed(): void;
  submit(): void;
}

type Control = HTMLInputElement | HTMLSelectElement;

const option = (value: string, text = value): HTMLElement => h("option", { value }, text);

function controlOf(field: FormField, id: string, key: string): { control: Control; list: Child } {
  const { words, hints, text } = field;
  if (words !== undefined) {
    const control = h("select", { id, "data-key": key }, option(""), ...words.map((word) => option(word)));
    control.value = text;
    return { control, list: undefined };
  }
  const listId = `${id}-words`;
  const control = h("input", {
    type: "text",
    id,
    autocomplete: "off",
    "data-key": key,
    list: hints === undefined ? undefined : listId,
    "aria-describedby": `${id}-about`,
  });
  control.value = text;
  const list = hints && h("datalist", { id: listId }, ...hints.map((word) => option(word)));
  return { control, list };
}

function fill(control: Control, text: string): void {
  if (control instanceof HTMLSelectElement && ![...control.options].some(({ value }) => value === text))
    control.append(option(text));
  control.value = text;
}

export function entryOf(
  services: PanelServices,
  id: string,
  field: FormField,
  { changed, submit }: FormEvents,
): FormEntry {
  const key = `form ${id} ${field.name}`;
  const own = `form-${id}-${field.name}`.replace(/[^\w-]/g, "-");
  const { control, list } = controlOf(field, own, key);
  const unitPlace = h("span", { class: "unit" });
  control.addEventListener("input", changed);
  control.addEventListener("keydown", (event) => {
    if (!(event instanceof KeyboardEvent) || event.key !== "Enter" || event.isComposing) return;
    event.preventDefault();
    submit();
  });
  const take = (): void =>
    void services.attempt(async () => {
      fill(control, await takenText(services.workbook, field));
      services.readOut(`${field.label}: ${control.value}`);
      changed();
    });
  const takeName = `Take cell for ${field.label}`;
  const optional = field.arg.presence === "required" ? undefined : h("span", { class: "tag" }, "optional");
  const row = h(
    "div",
    { class: "form-field" },
    h("label", { for: own }, field.label, optional),
    h(
      "div",
      { class: "form-line" },
      control,
      unitPlace,
      h(
        "button",
        {
          type: "button",
          class: "cell",
          "data-key": `${key} take`,
          "aria-label": takeName,
          title: takeName,
          click: take,
        },
        "Take cell",
      ),
    ),
    list,
    h("p", { class: "quiet", id: `${own}-about` }, field.arg.description),
  );
  return {
    field,
    row,
    text: () => control.value,
    fill: (text) => fill(control, text),
    label(unit, blank) {
      unitPlace.textContent = unit;
      if (control instanceof HTMLInputElement) control.placeholder = blank;
      else if (control.options[0] !== undefined) control.options[0].textContent = blank;
    },
  };
}
