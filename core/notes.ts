/**
 * The core's door for the notes script: the parts of the definitions that only notes read, the bibliography's citations
 * among them. The functions script lacks these parts, so nothing that a plain cell calls may read them.
 */
import { CATALOGUE } from "./catalogue";
import type { NoteParts } from "./kernel/define/noteParts";

export const NOTE_PARTS: readonly NoteParts[] = CATALOGUE;
