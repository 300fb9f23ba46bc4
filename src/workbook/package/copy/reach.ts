/** Which parts a copy may lead to: everything else stays behind, whatever it is. */
import type { PartRelation } from "../parts/relations";

/** By the kind of relation that leads to a part: the kinds that may lead on from there. */
const FROM: Readonly<Record<string, readonly string[]>> = {
  worksheet: ["drawing", "vmlDrawing", "comments", "table", "hyperlink", "image", "pivotTable"],
  chartsheet: ["drawing", "image"],
  drawing: [
    "chart",
    "chartEx",
    "image",
    "hyperlink",
    "diagramData",
    "diagramLayout",
    "diagramQuickStyle",
    "diagramColors",
    "diagramDrawing",
  ],
  chart: ["chartUserShapes", "image", "themeOverride", "chartStyle", "chartColorStyle"],
  chartEx: ["image", "themeOverride", "chartStyle", "chartColorStyle"],
  chartUserShapes: ["image"],
  themeOverride: ["image"],
  vmlDrawing: ["image"],
  diagramData: ["image"],
  diagramDrawing: ["image"],
  theme: ["image"],
  pivotTable: ["pivotCacheDefinition"],
};

/** Addresses that lead to the web or to a mailbox; a path on somebody's disk tells where they work. */
const OPEN_ADDRESS = /^(?:https?|mailto|ftp):/i;

/** Whether a relation may stay, by kind alone; links to places in the workbook are looked at where they are used. */
export function mayLead(from: string, { kind, external, raw }: PartRelation): boolean {
  if (FROM[from]?.includes(kind) !== true) return false;
  if (!external) return true;
  return kind === "hyperlink" && (OPEN_ADDRESS.test(raw) || raw.startsWith("#"));
}

/** A path on a disk or a share, as pictures carry it in their description. */
export const LOCAL_PATH = /^(?:[A-Za-z]:[\\/]|\\\\|file:|\/(?:Users|home|Volumes)\/)/;
