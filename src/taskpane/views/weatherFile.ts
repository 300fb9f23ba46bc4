/** A weather file or a logger's file, dropped or chosen, becomes a sheet of this workbook. */
import type { RecordedFile } from "../../workbook/weather/readFile";
import {
  YEAR_INPUTS_NAME,
  bareSource,
  recordedSheet,
  recordedTitle,
  usedAs,
} from "../../workbook/weather/weatherSheet";
import { freeName } from "../../workbook/starterCells";
import type { Workbook } from "../../workbook/port";
import type { PanelServices } from "../services";
import { h, type Child } from "../elements";
import { counted } from "../model/summary";
import { fileDrop } from "./fileDrop";
import { withProgress, type RunningOptions } from "./commands";
import { longList } from "./longList";

/** What files of weather and logs are called. */
const NAMES = /\.(epw|csv|tsv|txt)(\.gz)?$|\.(gz|zip)$/i;
const ACCEPTED = ".epw,.csv,.tsv,.txt,.gz,.zip";

export const isWeatherName = (name: string): boolean => NAMES.test(name);

async function hasYearInputs(workbook: Workbook, sheet: string): Promise<boolean> {
  const [found] = await workbook.resolve([{ text: YEAR_INPUTS_NAME, from: { sheet, row: 0, column: 0 } }]);
  return found !== undefined;
}

const rowsText = ({ kind, rows }: RecordedFile): string =>
  kind === "log" ? counted(rows.length - 1, "reading") : rows.length > 13 ? "8,760 hourly rows" : "twelve monthly rows";

async function insertFile(
  { workbook }: PanelServices,
  found: RecordedFile,
  file: string,
  options: RunningOptions,
): Promise<readonly Child[]> {
  const sheets = (await workbook.sheets()).map(({ name }) => name);
  const title = freeName(recordedTitle(found, file), sheets);
  const known = sheets[0] === undefined ? false : await hasYearInputs(workbook, sheets[0]);
  const sheet = recordedSheet(found, { title, file, hasYearInputs: known });
  const name = await workbook.insert(sheet, options);
  const what = found.station === "" ? file : found.station;
  return [
    h("p", {}, `${what}: ${rowsText(found)} on the sheet “${name}”.`),
    h("p", { class: "quiet" }, found.period === "" ? found.source : `${bareSource(found)}. Period: ${found.period}`),
    h(
      "p",
      { class: "quiet" },
      found.kind === "weather" ? "To use them:" : "The readings, for functions that take a log:",
    ),
    h("p", { class: "formula-line" }, h("code", {}, usedAs(sheet))),
    found.faults.length === 0
      ? h("p", {}, "No gap, and no fault found in the file.")
      : h("h4", {}, `Found, left out or filled (${String(found.faults.length)})`),
    found.faults.length === 0 ? undefined : longList("weather faults", found.faults, (fault) => h("li", {}, fault)),
  ];
}

export interface WeatherSection {
  readonly root: HTMLElement;
  /** Reads a file that was dropped elsewhere on the panel. */
  take(file: File): Promise<void>;
}

export function weatherSection(services: PanelServices): WeatherSection {
  const result = h("div", { role: "status", class: "outcome" });
  const going = h("div", { class: "going" });
  const rows = h(
    "select",
    { id: "weather-rows" },
    h("option", { value: "months" }, "twelve monthly rows"),
    h("option", { value: "hours" }, "every hour (8,760 rows)"),
  );
  let busy = false;
  const read = async (bytes: Uint8Array, name: string): Promise<void> => {
    if (busy) return services.announce("One file at a time: the one before is still being read.");
    busy = true;
    await withProgress(
      services,
      { what: `Reading ${name}`, key: "weather file", unit: "row", going, result, changes: true },
      async (options) => {
        const { signal } = options;
        const found = await services.jobs.run("weather", { bytes, hourly: rows.value === "hours" }, { signal });
        return insertFile(services, found, name, options);
      },
    ).finally(() => (busy = false));
  };
  const root = h(
    "section",
    { "aria-labelledby": "weather-title" },
    h("h3", { id: "weather-title", tabindex: -1 }, "Weather or log from a file"),
    h(
      "p",
      {},
      "EPW, TMY3, a weather bureau's or a logger's CSV, also as .gz. It is read and checked on this computer and becomes a " +
        "sheet with its source, what was found in it, and how gaps were filled. A logger's readings become rows by the hour.",
    ),
    h("p", { class: "note-input" }, h("label", { for: "weather-rows" }, "A year of weather as"), rows),
    fileDrop("Drop the file anywhere on the panel, or choose it.", (bytes, name) => void read(bytes, name), {
      accept: ACCEPTED,
      key: "weather file",
    }),
    going,
    result,
  );
  return { root, take: async (file) => read(new Uint8Array(await file.arrayBuffer()), file.name) };
}
