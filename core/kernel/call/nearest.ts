/** The nearest known word to a mistyped one. */
import { normalizeKey } from "../define/argument";

/** Edit distance of Levenshtein. */
const distance = (a: string, b: string): number => {
  let row = Array.from({ length: b.length + 1 }, (_, place) => place);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const swap = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
};

/** Letters that are missing count little where all that was typed stands in the known word: "area" is "pool area". */
const dissimilarity = (wanted: string, known: string): number =>
  wanted.length > 2 && known.includes(wanted) ? (known.length - wanted.length) / 100 : distance(wanted, known);

/** The known word that is nearest; the first of equals. */
export const nearest = (wanted: string, known: readonly string[]): string =>
  known.reduce(
    (best, each) => {
      const far = dissimilarity(normalizeKey(wanted), normalizeKey(each));
      return far < best.far ? { each, far } : best;
    },
    { each: known[0] ?? "", far: Number.POSITIVE_INFINITY },
  ).each;

/** Letters that a word of this length may have wrong and still be meant for another. */
const slips = (letters: number): number => (letters < 5 ? 1 : letters < 9 ? 2 : 3);

/** Whether a text is a known word with a few letters wrong, rather than a word of its own. */
export const isMisspelt = (text: string, known: readonly string[]): boolean => {
  const wanted = normalizeKey(text);
  return known.some((each) => distance(wanted, normalizeKey(each)) <= slips(Math.min(wanted.length, each.length)));
};
