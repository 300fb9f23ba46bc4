/**
 * Repairs the text of a formula whose calls of ours were damaged: by a file without the add-in, by a lost book, by another
 * program, or by typing. A formula that is sound stays as it is; one whose meaning isn't certain is refused with the reason.
 */
import { readCalls } from "../reader/calls";
import { isRefusal, tokens, type Token } from "../reader/tokens";
import { parse } from "../reader/tree";
import type { MendKnowledge } from "./knowledge";
import { calledName, nearestName, withoutPrefix } from "./properName";
import { replaceParts, withCommas } from "./separators";

export type Repair =
  | { readonly state: "sound" }
  /** `notes`: what the user should know about the repaired formula. */
  | { readonly state: "mended"; readonly formula: string; readonly notes: readonly string[] }
  | { readonly state: "refused"; readonly why: string };

interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

const SOUND: Repair = { state: "sound" };
const refused = (why: string): Repair => ({ state: "refused", why });

const OUR_WORD = /warmback[._]/i;

/** A formula in braces, as some programs show an array formula, and typographic quotes from a text program. */
function plainText(formula: string): string {
  const inner = /^\s*(?:=\s*\{(?=\s*=?\s*[A-Za-z_@'[])|\{\s*=)([\s\S]*)\}\s*$/.exec(formula)?.[1];
  const text = inner === undefined ? formula : `=${inner.replace(/^\s*=?/, "")}`;
  return text.includes('"') ? text : text.replace(/[\u201c\u201d\u201e\u201f]/g, '"');
}

/** The place of the bracket that closes the one at `open`. */
function closing(found: readonly Token[], open: number): number | undefined {
  let depth = 0;
  for (let at = open; at < found.length; at++) {
    const kind = found[at]?.kind;
    if (kind === "(") depth++;
    else if (kind === ")" && --depth === 0) return at;
  }
  return undefined;
}

const isLostBook = (token: Token | undefined, next: Token): boolean =>
  token?.end === next.start && (token.kind === "error" || token.kind === "reference") && /#REF!$/i.test(token.text);

const cut = ({ start, end }: Token): Edit => ({ start, end, text: "" });

/** The edits that a call of ours needs at its name. */
function nameEdits(found: readonly Token[], at: number, proper: string): readonly Edit[] {
  const token = found[at] as Token;
  const before = found[at - 1];
  const edits: Edit[] = [];
  if (isLostBook(before, token)) edits.push(cut(before as Token));
  const bracket = found[at + 1];
  // A reference with our name before a bracket: a space came between.
  const end = token.kind === "reference" && bracket !== undefined ? bracket.start : token.end;
  if (token.text.toUpperCase() !== proper || end !== token.end) edits.push({ start: token.start, end, text: proper });
  return edits;
}

interface Found {
  readonly edits: Edit[];
  /** Places of `@` before our calls, each with the id of the call. */
  readonly marks: { readonly token: Token; readonly id: string }[];
  unknown?: string;
}

/** Operators that files keep as functions; nobody can type these names. */
const OPERATORS = new Set(["SINGLE", "ANCHORARRAY"]);

/** `_xlfn.SINGLE(x)` is @x; `_xlfn.ANCHORARRAY(A1)` is A1#. */
function operatorEdits(found: readonly Token[], at: number, name: string): readonly Edit[] {
  const [token, open] = [found[at] as Token, found[at + 1] as Token];
  const end = closing(found, at + 1);
  const close = end === undefined ? undefined : found[end];
  if (end === undefined || close === undefined) return [];
  if (name === "ANCHORARRAY")
    return [
      { start: token.start, end: open.end, text: "" },
      { start: close.start, end: close.end, text: "#" },
    ];
  const alone = end === at + 3 || (found[at + 2]?.kind === "function" && closing(found, at + 3) === end - 1);
  return alone
    ? [{ start: token.start, end: open.end, text: "@" }, cut(close)]
    : [{ start: token.start, end: token.end, text: "@" }];
}

/** Finds what to change, token by token. */
function editsOf(found: readonly Token[], { known }: MendKnowledge): Found {
  const all: Found = { edits: [], marks: [] };
  found.forEach((token, at) => {
    const calls = token.kind === "function" || (token.kind === "reference" && found[at + 1]?.kind === "(");
    if (!calls) {
      const plain = token.kind === "reference" ? token.text.replace(/^_xlpm\./i, "") : token.text;
      if (plain !== token.text) all.edits.push({ start: token.start, end: token.end, text: plain });
      return;
    }
    const called = calledName(token.text, known);
    if (called.whose === "unknown") all.unknown ??= called.proper;
    if (called.whose === "ours") {
      all.edits.push(...nameEdits(found, at, called.proper));
      const before = found[at - 1];
      if (before?.kind === "operator" && before.text === "@") all.marks.push({ token: before, id: called.id });
    }
    if (called.whose !== "other" || token.kind !== "function") return;
    const plain = withoutPrefix(token.text);
    if (OPERATORS.has(plain.toUpperCase())) all.edits.push(...operatorEdits(found, at, plain.toUpperCase()));
    else if (plain !== token.text) all.edits.push({ start: token.start, end: token.end, text: plain });
  });
  return all;
}

const KEEPS_MARK = "The @ stays: it takes the first value of a table.";

/** Takes away `@` before calls of one value, where it does nothing; notes where it stays. */
function withoutMarks(formula: string, knowledge: MendKnowledge): { readonly text: string; readonly notes: string[] } {
  const found = tokens(formula);
  if (isRefusal(found)) return { text: formula, notes: [] };
  const { marks } = editsOf(found, knowledge);
  const idle = marks.filter(({ id }) => knowledge.isSingle(id));
  const text = replaceParts(
    formula,
    idle.map(({ token }) => cut(token)),
  );
  return { text, notes: idle.length < marks.length ? [KEEPS_MARK] : [] };
}

/** Why a repaired formula can't be meant. */
function doubtOf(formula: string, knowledge: MendKnowledge): string | undefined {
  const tree = parse(formula);
  if (isRefusal(tree)) return `it can't be read: ${tree.why}`;
  const found = tokens(formula);
  if (isRefusal(found)) return undefined;
  if (found.some(({ kind, text }) => (kind === "error" || kind === "reference") && /#REF!$/i.test(text)))
    return "an input is lost (#REF!): refer to it again";
  const strange = found.find(({ text, kind }) => kind !== "text" && /(?:^|!)_xl(?!dudf_)[a-z]+\./i.test(text));
  if (strange !== undefined) return `what ${strange.text} means isn't known`;
  for (const { id, args } of readCalls(formula, knowledge.known)) {
    const most = knowledge.mostArguments(id);
    if (most !== undefined && args.length > most)
      return `${id} takes at most ${String(most)} arguments, here are ${String(args.length)}`;
  }
  return undefined;
}

function unknownName(name: string, known: ReadonlySet<string>): string {
  const near = nearestName(name, known);
  return `this edition has no function ${name}${near === undefined ? "" : `: is ${near} meant?`}`;
}

/**
 * @param nameless the cell shows #NAME?: then `@` before a sound call counts as damage too
 */
export function repairFormula(formula: string, knowledge: MendKnowledge, nameless = false): Repair {
  if (!OUR_WORD.test(formula) || !/^\s*[={]/.test(formula)) return SOUND;
  const plain = plainText(formula);
  const commas = withCommas(plain, knowledge.known);
  if (typeof commas !== "string") return refused(commas.why);
  const found = tokens(commas);
  if (isRefusal(found)) return refused(found.why);
  const { edits, unknown, marks } = editsOf(found, knowledge);
  if (!callsUs(found, knowledge)) return unknown === undefined ? SOUND : refused(unknownName(unknown, knowledge.known));
  if (unknown !== undefined) return refused(unknownName(unknown, knowledge.known));
  // A name in small letters is Excel's to write in capitals, no damage.
  const damage = edits.filter(({ start, end, text }) => commas.slice(start, end).toUpperCase() !== text);
  const damaged = damage.length > 0 || commas !== formula || (nameless && marks.length > 0);
  if (!damaged) return lostInput(found) ? refused("an input is lost (#REF!): refer to it again") : SOUND;
  const named = replaceParts(
    commas,
    [...edits].sort((a, b) => a.start - b.start),
  );
  const { text, notes } = withoutMarks(named, knowledge);
  const doubt = doubtOf(text, knowledge);
  return doubt === undefined ? { state: "mended", formula: text, notes } : refused(doubt);
}

const callsUs = (found: readonly Token[], { known }: MendKnowledge): boolean =>
  found.some(
    ({ kind, text }, at) =>
      (kind === "function" || (kind === "reference" && found[at + 1]?.kind === "(")) &&
      calledName(text, known).whose === "ours",
  );

const lostInput = (found: readonly Token[]): boolean =>
  found.some(({ kind, text }) => (kind === "error" || kind === "reference") && /#REF!$/i.test(text));
