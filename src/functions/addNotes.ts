/** The notes script: cautions, checks, examples and citations, for the functions script that ran before it. */
import { NOTE_PARTS } from "../../core/notes";
import { BUILD } from "./buildHash";

globalThis.warmback?.addNotes(BUILD, NOTE_PARTS);
