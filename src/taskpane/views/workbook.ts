/** Commands for the whole workbook: a copy for people without the add-in, and repair of formulas. */
import type { PanelServices, View } from "../services";
import { h } from "../elements";
import { checkSection } from "./checkAndSign";
import { compareSection } from "./compare";
import { editionSection } from "./edition";
import { handOverSection } from "./handOver";
import { mendSection } from "./mend";
import { markedNote } from "./note";
import { publishedChecks } from "./publishedChecks";
import { usesSection } from "./uses";
import { weatherSection, type WeatherSection } from "./weatherFile";

/** The view of commands on the whole workbook. */
export function workbookView(services: PanelServices): View & { readonly weather: WeatherSection } {
  const compare = compareSection(services);
  const weather = weatherSection(services);
  const root = h(
    "div",
    { class: "view" },
    h("h2", { tabindex: -1 }, "Workbook"),
    handOverSection(services),
    weather.root,
    mendSection(services),
    checkSection(services, (result) => markedNote(services, result)),
    compare.root,
    editionSection(services),
    usesSection(services),
    publishedChecks(services),
  );
  return { root, show: () => void services.attempt(compare.refresh), hide: () => undefined, weather };
}
