/**
 * Runs first in the panel's script: the definitions that it shares with the functions script get the finder's texts back,
 * which were left out there to keep it short.
 */
import type { CellFunction } from "../../core/kernel/cellFunction";
import { CATALOGUE } from "./compiled";

/** Id → the texts that its definition lacks in the functions script. */
export type FinderTexts = Readonly<Record<string, Pick<CellFunction, "finds" | "remarks">>>;

/** Put here by the build. */
declare const FINDER_TEXTS: FinderTexts;

for (const definition of CATALOGUE) Object.assign(definition, FINDER_TEXTS[definition.id]);
