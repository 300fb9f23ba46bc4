/** The change log as data, for the panel's check of another edition's workbook. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { LoggedChange } from "../src/workbook/edition/editionCheck";
import { ROOT } from "./root";

const ID = /\b[A-Z]{3,}\.[A-Z][A-Z0-9]+(?:\.[A-Z0-9]+)?\b/g;

/** The lines of a change log, by the edition of their heading, with the functions that each names. */
export function changesIn(text: string): readonly LoggedChange[] {
  let edition = "";
  return text.split("\n").flatMap((line): readonly LoggedChange[] => {
    const heading = /^## (.+)$/.exec(line)?.[1];
    if (heading !== undefined) edition = heading.trim();
    const change = /^- (.+)$/.exec(line)?.[1];
    if (change === undefined) return [];
    const plain = change.replaceAll("**", "").replaceAll("`", "");
    return [{ edition, text: plain, ids: [...new Set(plain.match(ID) ?? [])] }];
  });
}

export const changesText = (): string => JSON.stringify(changesIn(readFileSync(join(ROOT, "CHANGELOG.md"), "utf8")));
