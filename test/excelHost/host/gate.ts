/** Lets a member through only where the Excel in question has it, and into an undo group only where it can be undone. */
import type { Profile } from "../profiles";
import { atMost } from "../profiles";
import { HostError } from "../client/protocol";
import SETS from "../sets/apiSets.json";
import type { ApiSets } from "../sets/readTypings";
import { undoable } from "./undo";

const TABLE: ApiSets = SETS;

/** Members that only the library itself calls: `Excel.createWorkbook` does, of ExcelApi 1.8. */
const LIBRARY_ONLY: Readonly<Record<string, string>> = {
  "Application.createWorkbook": "1.8",
  "WorkbookCreated.open": "1.8",
};

/** "GetItem" → "getItem". */
export const memberName = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

/** Members that the client library adds for itself: no documentation names them. */
export const isInternal = (name: string): boolean => name.startsWith("_") || name === "GetItemAt";

/** What requests call otherwise than the documentation. */
const OTHERWISE: Readonly<Record<string, string>> = { "Worksheet.gridlines": "Worksheet.showGridlines" };

export function documented(type: string, name: string): string {
  const member = `${type}.${memberName(name)}`;
  return OTHERWISE[member] ?? member;
}

function setOf(type: string, name: string, writes: boolean): string | undefined {
  const [object = "", member = ""] = documented(type, name).split(".");
  const set = TABLE[object]?.[member] ?? LIBRARY_ONLY[`${object}.${member}`];
  const [read, write = read] = set?.split("|") ?? [];
  return writes ? write : read;
}

/** @throws HostError ApiNotFound for a member above the profile's set */
export function checkSet(profile: Profile, type: string, name: string, writes: boolean): void {
  if (isInternal(name) || TABLE[type] === undefined) return;
  const set = setOf(type, name, writes);
  if (set === undefined) throw new HostError("ApiNotFound", `the typings know no ${documented(type, name)}`);
  const there = /^[\d.]+$/.test(set) ? atMost(set, profile.api) : false;
  if (!there) throw new HostError("ApiNotFound", `${documented(type, name)} needs ExcelApi ${set}`);
}

/** @throws HostError UndoNotSupported for what can't be part of an undo group on this platform */
export function checkUndo(profile: Profile, type: string, name: string): void {
  const member = documented(type, name);
  if (!undoable(profile.platform, member)) throw new HostError("UndoNotSupported", `${member} can't be undone`);
}
