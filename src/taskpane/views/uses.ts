/** Who uses these functions: all cells by function and sheet, failures first, with a filter. */
import { filteredUses, functionUses, type FunctionUse } from "../../workbook/scan/functionUses";
import { scanner } from "../../workbook/scan/scan";
import { cellsText } from "../../workbook/reader/reference";
import type { PanelServices } from "../services";
import { action, h, replace, type Child } from "../elements";
import { counted } from "../model/summary";
import { cellButton } from "./cellButtons";
import { withProgress } from "./commands";
import { longList } from "./longList";

const groupOf = ({ id, address, error }: FunctionUse): string =>
  `${error === undefined ? "" : "fails "}${id} on ${address.sheet}`;

function useItem(services: PanelServices, use: FunctionUse, first: boolean): HTMLElement {
  const { id, address, error } = use;
  return h(
    "li",
    { class: first ? "mend-item" : undefined },
    first ? h("p", {}, h("strong", {}, id), h("span", { class: "quiet" }, ` on ${address.sheet}`)) : undefined,
    cellButton(services, address, `use ${id} ${cellsText({ ...address, rows: 1, columns: 1 })}`),
    error === undefined ? undefined : h("span", { class: "fault" }, ` ${error}`),
  );
}

/** A filter over the uses, and the list below it. */
function usesParts(services: PanelServices, uses: readonly FunctionUse[]): readonly Child[] {
  if (uses.length === 0) return [h("p", {}, "No cell of this workbook uses these functions.")];
  const list = h("div", {});
  const count = h("p", { role: "status", class: "quiet" });
  const filter = h("input", { type: "search", id: "uses-filter", autocomplete: "off" });
  const draw = (): void => {
    const shown = filteredUses(uses, filter.value);
    const failing = shown.filter(({ error }) => error !== undefined).length;
    count.textContent = `${counted(shown.length, "use")}, ${String(failing)} ${failing === 1 ? "fails" : "fail"}`;
    const firsts = new Set(
      shown.filter((use, at) => groupOf(use) !== (shown[at - 1] && groupOf(shown[at - 1] as FunctionUse))),
    );
    replace(
      list,
      longList("uses", shown, (use) => useItem(services, use, firsts.has(use))),
    );
  };
  filter.addEventListener("input", draw);
  draw();
  return [
    h(
      "p",
      { class: "note-input" },
      h("label", { for: "uses-filter" }, "Filter by function, sheet, cell or error"),
      filter,
    ),
    count,
    list,
  ];
}

export function usesSection(services: PanelServices): HTMLElement {
  const result = h("div", { class: "outcome" });
  const going = h("div", { class: "going" });
  const look = (): Promise<void> =>
    withProgress(
      services,
      { what: "Looking through the workbook", key: "uses", unit: "cell", going, result },
      async ({ signal, onProgress }) => {
        const report = await scanner(services.workbook, services.engine).scan(undefined, signal, { onProgress });
        return report === undefined ? [] : usesParts(services, functionUses(report));
      },
    );
  return h(
    "section",
    { "aria-labelledby": "uses-title" },
    h("h3", { id: "uses-title" }, "Who uses these functions"),
    h("p", {}, "All cells by function and sheet, those that fail first."),
    h("p", { class: "actions" }, action("List the cells", look, { key: "uses" })),
    going,
    result,
  );
}
