/** Reads from the published typings of Office.js which API set each member of Excel's objects belongs to. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

/** Member → "1.4", or "1.1|1.2" where setting it needs a higher set than reading it. */
export type MemberSets = Readonly<Record<string, string>>;
/** Object → its members. Sets of `ExcelApi` have their number alone, the others their name too. */
export type ApiSets = Readonly<Record<string, MemberSets>>;

export const TYPINGS = createRequire(import.meta.url).resolve("@types/office-js/index.d.ts");

const CLASS = /^ {4}class (\w+) extends OfficeExtension\.ClientObject\b/;
const MEMBER = /^ {8}(?:readonly )?(\w+)\??[(:<]/;
const SET = /\[Api set: (Excel\w+) ([\d.]*\d)([^\]]*)\]/;
const TO_SET = /([\d.]*\d) for set(?:ting)?\b/;

function setOf(comment: string): string | undefined {
  const [, name, version, rest] = SET.exec(comment) ?? [];
  if (name === undefined || version === undefined) return undefined;
  const read = name === "ExcelApi" ? version : `${name} ${version}`;
  const write = TO_SET.exec(rest ?? "")?.[1];
  return write === undefined ? read : `${read}|${write}`;
}

const number = (set: string): number => Number(/\d+$/.exec(set.split("|")[0] ?? "")?.[0] ?? Infinity);

/** The lines of the namespace Excel, without the interfaces that describe plain data. */
function excelLines(text: string): readonly string[] {
  const lines = text.split("\n");
  const from = lines.findIndex((line) => line.startsWith("declare namespace Excel {"));
  const to = lines.findIndex((line, at) => at > from && line.startsWith("    namespace Interfaces {"));
  return lines.slice(from, to);
}

/** An overloaded member counts with the lowest of its sets; one without a comment with its object's. */
export function readApiSets(path: string = TYPINGS): ApiSets {
  const found: Record<string, Record<string, string>> = {};
  let members: Record<string, string> | undefined;
  let ofClass = "1.1";
  let comment = "";
  for (const line of excelLines(readFileSync(path, "utf8"))) {
    const name = CLASS.exec(line)?.[1];
    const member = members === undefined ? undefined : MEMBER.exec(line)?.[1];
    if (name !== undefined) {
      ofClass = setOf(comment) ?? "1.1";
      members = {};
      found[name] = members;
      comment = "";
    } else if (members !== undefined && member !== undefined) {
      const set = setOf(comment) ?? ofClass;
      const before = members[member];
      if (before === undefined || number(set) < number(before)) members[member] = set;
      comment = "";
    } else if (/^ {4}\}/.test(line)) {
      members = undefined;
      comment = "";
    } else if (/^\s*\/\*\*/.test(line)) comment = line;
    else comment += line;
  }
  return found;
}
