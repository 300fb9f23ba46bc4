/** Finds functions by the words of a task. */
import { type Catalogue, type CellFunction, labelOf } from "../../../core";
import type { StarterSheet } from "../../sheets/sheet";
import { tradeWordsOf } from "./tradeWords";

interface Field {
  readonly words: readonly string[];
  readonly weight: number;
}

export interface Indexed {
  readonly definition: CellFunction;
  readonly fields: readonly Field[];
}

/** Words of a question that say nothing about the task. */
const EMPTY_WORDS = new Set(
  "a an and are at be by can do does find for from get give how i if in is it many much my need of on or per show tell that the there this to what when which will with work out".split(
    " ",
  ),
);

const plain = (word: string): string =>
  word.length > 3 && word.endsWith("s") && !word.endsWith("ss") ? word.slice(0, -1) : word;

/** The words of a text in lower case, without plural endings. */
export const wordsIn = (text: string): readonly string[] =>
  (
    text
      .normalize("NFKD")
      .toLowerCase()
      .match(/[\p{L}\p{N}]+/gu) ?? []
  ).map(plain);

const field = (weight: number, ...texts: readonly string[]): Field => ({
  words: [...new Set(texts.flatMap(wordsIn))],
  weight,
});

const argumentTexts = (definition: CellFunction): readonly string[] =>
  Object.entries(definition.args).flatMap(([name, { description, shape }]) => {
    const inner = shape.type === "block" ? Object.entries(shape.entries) : [];
    return [labelOf(name), description, ...inner.flatMap(([key, arg]) => [labelOf(key), arg.description])];
  });

/** By function: texts by which it is found besides those that its definition holds at run time. */
export type FinderTexts = Readonly<Record<string, Pick<CellFunction, "keywords" | "details">>>;

const tradeFields = (id: string): readonly Field[] => {
  const { first, other } = tradeWordsOf(id);
  return [field(7.5, ...first), field(6.5, ...other)];
};

export const indexOf = (catalogue: Catalogue, texts: FinderTexts): readonly Indexed[] =>
  catalogue.map((definition) => ({
    definition,
    fields: [
      field(8, definition.id),
      field(7, ...(texts[definition.id]?.keywords ?? [])),
      ...tradeFields(definition.id),
      field(6, definition.summary),
      field(3, definition.returns.description),
      field(2, ...argumentTexts(definition)),
      field(1, ...(texts[definition.id]?.details ?? [])),
    ],
  }));

const LEAST_STEM = 4;

/** A function that matches much worse than the best one isn't shown. */
const LEAST_SHARE = 0.25;

/** How well a word of the question matches a word of a text: 1 the whole word, less its beginning, 0 not at all. */
const meets = (asked: string, word: string): number => {
  if (asked === word) return 1;
  if (asked.length >= 2 && word.startsWith(asked)) return 0.5 + 0.4 * (asked.length / word.length);
  return word.length >= LEAST_STEM && asked.startsWith(word) ? 0.4 : 0;
};

const best = (asked: string, fields: readonly Field[]): number =>
  Math.max(0, ...fields.flatMap(({ words, weight }) => words.map((word) => weight * meets(asked, word))));

/** The words of a question that say something about the task; all of them if none does. */
const askedWords = (question: string): readonly string[] => {
  const all = wordsIn(question);
  const telling = all.filter((word) => !EMPTY_WORDS.has(word));
  return telling.length > 0 ? telling : all;
};

/** The starter sheets that match most words of a question, best first; all of them for an empty one. */
export function searchStarters(starters: readonly StarterSheet[], question: string): readonly StarterSheet[] {
  const asked = askedWords(question);
  if (asked.length === 0) return starters;
  return starters
    .map((starter) => {
      const titles = Object.values(starter.cells).flatMap(({ content, style }) =>
        style?.startsWith("Heading") === true && typeof content === "string" ? [content] : [],
      );
      const fields = [field(8, starter.name), field(6, starter.summary), field(3, ...titles)];
      const points = asked.map((word) => best(word, fields));
      return { starter, met: points.filter((each) => each > LEAST_POINTS).length, points };
    })
    .filter(({ met }) => met > 0 && met >= asked.length / 2)
    .sort((a, b) => sumOf(b.points) - sumOf(a.points))
    .map(({ starter }) => starter);
}

/** Less is the beginning of a heading's word only. */
const LEAST_POINTS = 2;

const sumOf = (points: readonly number[]): number => points.reduce((sum, each) => sum + each, 0);

const inId = (asked: string, { definition }: Indexed): boolean => definition.id.toLowerCase() === asked;

interface Score {
  readonly definition: CellFunction;
  readonly met: number;
  readonly points: number;
}

/**
 * The functions that match the question, best first: those that match more of its words precede others. Empty words are
 * ignored unless there are no others. An empty question matches all functions, in the catalogue's order.
 */
export const search = (index: readonly Indexed[], question: string): readonly CellFunction[] => {
  const asked = askedWords(question.replace(/^\s*=?\s*warmback\./i, ""));
  if (asked.length === 0) return index.map(({ definition }) => definition);
  const id = question
    .trim()
    .toLowerCase()
    .replace(/^=?warmback\./, "");
  const scores = index.map((one): Score => {
    const points = asked.map((word) => best(word, one.fields));
    const met = points.filter((each) => each > 0).length;
    const exact = inId(id, one) ? 100 : 0;
    return { definition: one.definition, met, points: points.reduce((sum, each) => sum + each, exact) };
  });
  const found = scores.filter(({ met }) => met > 0);
  const most = Math.max(0, ...found.map(({ met }) => met));
  const top = Math.max(0, ...found.map(({ points }) => points));
  return found
    .filter(({ met, points }) => met >= most / 2 && points >= top * LEAST_SHARE)
    .sort((a, b) => b.met - a.met || b.points - a.points)
    .map(({ definition }) => definition);
};
