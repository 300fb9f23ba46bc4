/** Lines that a text takes in a column, word by word, without a host to measure it. */

/**
 * Characters by their width in thousandths of the text's size: those of Liberation Sans 2 (its hmtx table), which was
 * drawn to Arial's widths.
 */
const BY_WIDTH: readonly (readonly [width: number, characters: string])[] = [
  [191, "'"],
  [222, "ijl"],
  [260, "|"],
  [278, " !,./:;I[\\]ft"],
  [334, '()-`r{}"'],
  [389, "*"],
  [500, "Jcksvxyz^"],
  [584, "+<=>~"],
  [611, "FTZ"],
  [667, "&ABEKPSVXY"],
  [722, "CDHNRUw"],
  [778, "GOQ"],
  [833, "Mm"],
  [889, "%"],
  [944, "W"],
  [1015, "@"],
];

/** Figures, the other small letters, and most accented ones and signs. */
const USUAL = 556;

/** By code. */
const WIDTHS: readonly number[] = BY_WIDTH.reduce<number[]>(
  (widths, [width, characters]) => {
    for (const each of characters) widths[each.charCodeAt(0)] = width;
    return widths;
  },
  Array.from({ length: 128 }, () => USUAL),
);

/** The second half of a character that takes two codes. */
const isSecondHalf = (code: number): boolean => code >= 0xdc00 && code < 0xe000;

/** Width of a text in ems. */
function ems(text: string): number {
  let sum = 0;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    sum += WIDTHS[code] ?? (isSecondHalf(code) ? 0 : USUAL);
  }
  return sum / 1000;
}

/** Pixels at 96 to the inch: text of 10 points, and a column that shows one figure of the usual font. */
const EM_PIXELS = 10 * (96 / 72);
const FIGURE_PIXELS = 7;
/** Programs round the widths of letters up or down; a line is taken to hold this share of its column. */
const USABLE = 0.96;

/** No character is wider, in ems. */
const WIDEST = 1.016;

/** Breaks at spaces; a word wider than its column goes on in the next line. */
export function textLines(text: string, columnFigures: number): number {
  const room = (columnFigures * FIGURE_PIXELS * USABLE) / EM_PIXELS;
  if (!text.includes("\n")) return text.length * WIDEST < room ? 1 : linesOf(text, room);
  return text.split("\n").reduce((sum, part) => sum + linesOf(part, room), 0);
}

function linesOf(text: string, room: number): number {
  if (!text.includes(" ")) return Math.max(1, Math.ceil(ems(text) / room));
  let [lines, used] = [1, 0];
  for (const word of text.split(" ")) {
    const width = ems(word);
    const along = used === 0 ? width : used + ems(" ") + width;
    if (along <= room) used = along;
    else {
      const own = Math.max(1, Math.ceil(width / room));
      lines += used === 0 ? own - 1 : own;
      used = width - (own - 1) * room;
    }
  }
  return lines;
}
