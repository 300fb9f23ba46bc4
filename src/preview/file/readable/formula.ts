/**
 * Decides which formulas of a file the sheet engine works out as Excel does, and writes them so that it does. Whatever is
 * not on the lists here counts as unreadable, and its cell keeps the result that the file holds.
 */
import { callsUs } from "../../../workbook/package";
import type { Address } from "../../../workbook/port";
import { plainName } from "../../../workbook/reader/evaluate";
import { parseReference } from "../../../workbook/reader/reference";
import { bind, boundValue, hide, type Scope } from "../../../workbook/reader/scope";
import { isRefusal } from "../../../workbook/reader/tokens";
import { parse, type CallTree, type Tree } from "../../../workbook/reader/tree";
import { argumentKind, READABLE, takesMore } from "./functions";
import { wantsLongLines } from "./longFormula";
import { LONG_LINES } from "./longLines";
import type { NameMeaning } from "./names";
import {
  editAt,
  editedText,
  inOperator,
  isCallOf,
  isSpelled,
  reasonAgainst,
  refuseWith,
  SEVERAL_AREAS,
  SEVERAL_CELLS,
  takesSeveral,
  useAreas,
  useMeeting,
  useOf,
} from "./pass";
import type { FormulaEdit, FormulaPass, FormulaUse, ReadableBook } from "./pass";
import { isUnread, plainMeaning, sharedCells, textOf } from "./places";
import type { Meaning } from "./places";

/** As the engine takes it, with "=", or why it can't be read. */
export type ReadFormula = { readonly formula: string } | { readonly why: string };

function useName(
  tree: Tree & { kind: "reference" },
  meaning: NameMeaning,
  use: FormulaUse,
  asIs: boolean,
  pass: FormulaPass,
): void {
  if (meaning.kind === "unread") refuseWith(pass, meaning.why);
  else if (meaning.kind === "cells") useAreas(tree, meaning.areas, use, asIs && meaning.areas.length === 1, pass);
  else {
    const key = tree.text.toLowerCase();
    if (pass.naming.has(key)) return refuseWith(pass, "names that lead to themselves");
    const inner: FormulaPass = { ...pass, edits: [], naming: new Set([...pass.naming, key]) };
    read(meaning.tree, takesSeveral(use) ? "any" : "single", inner, undefined);
    if (!asIs || pass.writesOut || inner.edits.length > 0)
      editAt(pass, tree, editedText(`=(${meaning.text.slice(1)})`, inner.edits).slice(1));
  }
}

function readReference(
  tree: Tree & { kind: "reference" },
  use: FormulaUse,
  pass: FormulaPass,
  scope: Scope | undefined,
): void {
  if (scope !== undefined && boundValue(scope, plainName(tree.text)) !== undefined) return;
  const { at, known } = pass;
  if (/(?:^|!)#REF!$/i.test(tree.text)) return editAt(pass, tree, "#REF!");
  const plain = plainMeaning(tree.text, at, known.places, known.book.tables);
  if (plain !== undefined) {
    if (isUnread(plain)) refuseWith(pass, plain.why);
    else useAreas(tree, plain.areas, use, isSpelled(tree.text, plain.areas[0]), pass);
    return;
  }
  const found = parseReference(tree.text);
  if (found?.kind !== "name") return;
  if (found.spill) return refuseWith(pass, "references to a spilled range (#)");
  const meaning = known.names.meaning(found.name, found.sheet ?? at.sheet);
  if (meaning === undefined) return refuseWith(pass, "names that the workbook doesn't hold");
  const asIs = found.sheet === undefined && meaning.kind !== "unread" && !meaning.local;
  useName(tree, meaning, use, asIs, pass);
}

/** The areas of a reference or a name, for what joins two of them. */
function areasOf(tree: Tree, pass: FormulaPass): Meaning | undefined {
  if (tree.kind === "group") return areasOf(tree.of, pass);
  if (tree.kind !== "reference") return undefined;
  const plain = plainMeaning(tree.text, pass.at, pass.known.places, pass.known.book.tables);
  if (plain !== undefined) return plain;
  const found = parseReference(tree.text);
  if (found?.kind !== "name" || found.spill) return undefined;
  const named = pass.known.names.meaning(found.name, found.sheet ?? pass.at.sheet);
  return named?.kind === "cells" ? { areas: named.areas } : undefined;
}

function readIntersection(tree: Tree & { kind: "binary" }, use: FormulaUse, pass: FormulaPass): void {
  const [left, right] = [areasOf(tree.left, pass), areasOf(tree.right, pass)];
  const sides = [left, right].map((one) => (one === undefined || isUnread(one) ? [] : one.areas));
  const [a, b] = sides.map((areas) => (areas.length === 1 ? areas[0] : undefined));
  if (a === undefined || b === undefined) return refuseWith(pass, "intersections of ranges that aren't plain");
  const shared = sharedCells(a, b);
  if (shared === undefined) editAt(pass, tree, "#NULL!");
  else useAreas(tree, [shared], use, false, pass);
}

function readBinary(
  tree: Tree & { kind: "binary" },
  use: FormulaUse,
  pass: FormulaPass,
  scope: Scope | undefined,
): void {
  const { operator, left, right } = tree;
  if (operator === " ") return readIntersection(tree, use, pass);
  if (operator === ",") {
    if (use !== "ranges") return refuseWith(pass, SEVERAL_AREAS);
    read(left, use, pass, scope);
    return read(right, use, pass, scope);
  }
  if (operator === ":") {
    const plain = [left, right].every((one) => one.kind === "reference" || isCallOf(one, "INDEX"));
    if (!plain || use === "value" || use === "single") return refuseWith(pass, "ranges between calculated corners");
  }
  const inner = operator === ":" ? "single" : inOperator(use);
  read(left, inner, pass, scope);
  read(right, inner, pass, scope);
}

function readLet(tree: CallTree, use: FormulaUse, pass: FormulaPass, outer: Scope | undefined): void {
  const inner = bind(tree, plainName, outer);
  if (inner === undefined) return refuseWith(pass, "LET without pairs of names and values");
  let scope = outer;
  tree.args.forEach((argument, place) => {
    const last = place === tree.args.length - 1;
    if (last) read(argument, use, pass, inner);
    else if (place % 2 === 1) {
      read(argument, use === "any" ? "any" : "single", pass, scope);
      const name = tree.args[place - 1];
      if (name?.kind === "reference") scope = { name: plainName(name.text), tree: argument, within: scope, up: scope };
    }
  });
}

/** `@` and SINGLE: the cell of a range in the formula's row or column. */
function readSingle(tree: Tree, of: Tree | undefined, pass: FormulaPass, scope: Scope | undefined): void {
  const meaning = of && areasOf(of, pass);
  const bound = of?.kind === "reference" && scope !== undefined && boundValue(scope, plainName(of.text)) !== undefined;
  if (of === undefined || meaning === undefined || bound) return refuseWith(pass, "@ of a calculation");
  const area = isUnread(meaning) || meaning.areas.length > 1 ? undefined : meaning.areas[0];
  if (area === undefined) refuseWith(pass, "@ of something that isn't one range");
  else useMeeting(tree, area, pass);
}

function readCall(tree: CallTree, use: FormulaUse, pass: FormulaPass, scope: Scope | undefined): void {
  const name = plainName(tree.name);
  if (name === "SINGLE") return readSingle(tree, tree.args[0], pass, scope);
  if (name === "LET") return readLet(tree, use, pass, scope);
  if (name === "LAMBDA") return readLambda(tree, use, pass, scope);
  if (name === "ANCHORARRAY") return refuseWith(pass, "references to a spilled range (#)");
  if (scope !== undefined && boundValue(scope, name) !== undefined) {
    for (const argument of tree.args) read(argument, use === "any" ? "any" : "single", pass, scope);
    return;
  }
  const own = pass.known.ours.get(name) ?? READABLE.get(name);
  if (own === undefined) return readNamedLambda(tree, use, pass, scope);
  const why = reasonAgainst(tree, name, use, pass);
  if (why !== undefined) refuseWith(pass, why);
  tree.args.forEach((argument, at) =>
    read(argument, useOf(argumentKind(own, at), name, use, takesMore(own, at)), pass, scope),
  );
}

function readLambda(tree: CallTree, use: FormulaUse, pass: FormulaPass, scope: Scope | undefined): void {
  const result = tree.args.at(-1);
  if (result === undefined) refuseWith(pass, "a LAMBDA without a calculation");
  else read(result, use, pass, hide(tree, plainName, scope));
}

/** A name of the workbook that holds a LAMBDA is called like a function. */
function readNamedLambda(tree: CallTree, use: FormulaUse, pass: FormulaPass, scope: Scope | undefined): void {
  const meaning = /[!\]]/.test(tree.name) ? undefined : pass.known.names.meaning(tree.name, pass.at.sheet);
  const lambda = meaning?.kind === "formula" ? unbracketed(meaning.tree) : undefined;
  if (meaning?.kind !== "formula" || lambda === undefined || !isCallOf(lambda, "LAMBDA") || meaning.local)
    return refuseWith(pass, `the function ${plainName(tree.name).replace(/^.*!/, "")}`);
  const inner: FormulaPass = { ...pass, edits: [] };
  read(lambda, use === "any" ? "any" : "single", inner, undefined);
  if (inner.edits.length > 0) refuseWith(pass, "names of LAMBDAs with more than plain cells");
  for (const argument of tree.args) read(argument, use === "any" ? "any" : "single", pass, scope);
}

const unbracketed = (tree: Tree): Tree => (tree.kind === "group" ? unbracketed(tree.of) : tree);

function read(tree: Tree, use: FormulaUse, pass: FormulaPass, scope: Scope | undefined): void {
  if (tree.kind === "reference") readReference(tree, use, pass, scope);
  else if (tree.kind === "binary") readBinary(tree, use, pass, scope);
  else if (tree.kind === "call") readCall(tree, use, pass, scope);
  else if (tree.kind === "sign" && tree.sign === "@") readSingle(tree, tree.of, pass, scope);
  else if (tree.kind === "sign" || tree.kind === "percent") read(tree.of, inOperator(use), pass, scope);
  else if (tree.kind === "array" && (use === "value" || use === "single")) refuseWith(pass, SEVERAL_CELLS);
  else if (tree.kind === "group") readGroup(tree, use, pass, scope);
}

/** Brackets around several areas go, as the engine knows no union: each becomes an argument. */
function readGroup(tree: Tree & { kind: "group" }, use: FormulaUse, pass: FormulaPass, scope: Scope | undefined): void {
  if (tree.of.kind === "binary" && tree.of.operator === "," && use === "ranges") {
    editAt(pass, { start: tree.start, end: tree.start + 1 }, "");
    editAt(pass, { start: tree.end - 1, end: tree.end }, "");
  }
  read(tree.of, use, pass, scope);
}

/**
 * @param formula as it is typed, with "="
 * @param isArray stored as an array: every part of it may be several cells
 */
export function readFormula(formula: string, at: Address, isArray: boolean, known: ReadableBook): ReadFormula {
  const tree = parse(formula);
  if (isRefusal(tree)) return { why: "formulas that can't be taken apart" };
  const writesOut = callsUs(formula);
  const pass: FormulaPass = { at, known, edits: [], reasons: [], writesOut, naming: new Set() };
  read(tree, isArray ? "any" : "value", pass, undefined);
  const [why] = pass.reasons;
  if (why !== undefined) return { why };
  const edited = editedText(formula, pass.edits);
  return wantsLongLines(edited, at, known) ? { why: LONG_LINES } : { formula: edited };
}

/** A name of the whole workbook as the engine takes it; undefined where no formula that uses it can be read. */
export function readName(name: string, known: ReadableBook): string | undefined {
  const [first] = known.book.sheets;
  const meaning = known.names.meaning(name, "");
  if (meaning === undefined || meaning.kind === "unread") return undefined;
  const at = { sheet: first?.name ?? "", row: 0, column: 0 };
  if (meaning.kind === "cells") {
    const texts = meaning.areas.map((area) => textOf(area, { ...at, sheet: "" }));
    return texts.length === 1 ? texts[0] : undefined;
  }
  const naming = new Set([name.toLowerCase()]);
  const pass: FormulaPass = { at, known, edits: [], reasons: [], writesOut: false, naming };
  read(meaning.tree, "any", pass, undefined);
  return pass.reasons.length > 0
    ? undefined
    : editedText(
        meaning.text,
        pass.edits.map((one) => moved(one)),
      );
}

/** The tree of a name was read inside brackets. */
const moved = ({ start, end, text }: FormulaEdit): FormulaEdit => ({ start: start - 1, end: end - 1, text });
