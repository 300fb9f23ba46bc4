/** What lasts as long as the functions script: the one log of this session's calls, and the notes when they have come. */
import { sessionLog } from "../workbook/callLog";
import { lateNotes } from "./notes";

export const LOG = sessionLog();

export const NOTES = lateNotes();
