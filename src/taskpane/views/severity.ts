/** A severity as word, shape and colour: never colour alone. */
import { SEVERITIES } from "../../../core";
import { h, shape } from "../elements";

/** Octagon, triangle, diamond, circle; each with its own mark cut out. */
const SHAPES: Readonly<Record<string, string>> = {
  Danger: "M4.7 0h6.6L16 4.7v6.6L11.300 16H4.700L0 11.300V4.700ZM7 3v6h2V3ZM7 11v2h2v-2Z",
  Warning: "M8 0.500 16 15.500H0ZM7 6v5h2V6ZM7 12v2h2v-2Z",
  Caution: "M8 0 16 8 8 16 0 8ZM7 4v5h2V4ZM7 10.500v2h2v-2Z",
  Notice: "M8 0a8 8 0 1 0 .01 0ZM7 3.500v2h2v-2ZM7 7v6h2V7Z",
};

const knownWord = (severity: string): string =>
  (SEVERITIES as readonly string[]).includes(severity) ? severity : "Notice";

/** The class that colours what belongs to a severity. */
export const severityClass = (severity: string): string => `severity-${knownWord(severity).toLowerCase()}`;

/** Shape and word. */
export const severityMark = (severity: string): HTMLElement =>
  h("span", { class: `severity ${severityClass(severity)}` }, shape(SHAPES[knownWord(severity)] ?? ""), severity);
