/** Finds the known word nearest to a mistyped one. */
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

const holds = (long: string, short: string): boolean => short.length > 2 && long.includes(short);

/** Extra letters count little if one word contains the other: "area" and "pool area", "bubble cover" and "bubble". */
const dissimilarity = (wanted: string, known: string): number =>
  holds(known, wanted) || holds(wanted, known) ? Math.abs(known.length - wanted.length) / 100 : distance(wanted, known);

const closest = (wanted: string, known: readonly string[]) =>
  known.reduce(
    (best, each) => {
      const far = dissimilarity(normalizeKey(wanted), normalizeKey(each));
      return far < best.far ? { each, far } : best;
    },
    { each: known[0] ?? "", far: Number.POSITIVE_INFINITY },
  );

/** The known word that is nearest; the first of equals. */
export const nearest = (wanted: string, known: readonly string[]): string => closest(wanted, known).each;

/** Share of the letters that may differ between a word and what it looks like. */
const ALIKE = 0.4;

/** The known word that one looks like: at least one letter may differ; undefined where it looks like none. */
export function lookalike(wanted: string, known: readonly string[]): string | undefined {
  const { each, far } = closest(wanted, known);
  return far <= Math.max(1, ALIKE * normalizeKey(wanted).length) ? each : undefined;
}

/** Wrong letters that still count as a typing error in a word of this length. */
const allowedTypos = (letters: number): number => (letters < 5 ? 1 : letters < 9 ? 2 : 3);

/** Whether a text is a known word with a few letters wrong, rather than a word of its own. */
export const isMisspelt = (text: string, known: readonly string[]): boolean => {
  const wanted = normalizeKey(text);
  return known.some(
    (each) => distance(wanted, normalizeKey(each)) <= allowedTypos(Math.min(wanted.length, each.length)),
  );
};
