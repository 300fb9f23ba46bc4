/** Random workbook files: sheets with odd cells, formulas, styles and names, some of them damaged. */
import fc from "fast-check";
import { zipOf, plainBook } from "../workbook/package/zipParts";
import { formulaText } from "./formulaTexts";

const xml = (text: string): string =>
  text.replace(/[<&>"]/g, (c) => `&#${String(c.charCodeAt(0))};`).replace(/[^\t\x20-\ud7ff\ue000-\ufffd]/g, "");

const ours = fc.constantFrom(
  'WARMBACK.PIPE.HEADLOSS(A1,"2 in",100)',
  '_xldudf_WARMBACK_PIPE_HEADLOSS(A1,"2 in",100)',
  "WARMBACK.TEST.DOUBLE(B2)",
  "SUM(A:A)*WARMBACK.TEST.DOUBLE(1)",
  "Flow+1",
);
const formula = fc.oneof(
  { weight: 3, arbitrary: formulaText.map((text) => text.slice(1)) },
  { weight: 2, arbitrary: ours },
);

const address = fc.oneof(
  {
    weight: 8,
    arbitrary: fc
      .tuple(fc.constantFrom("A", "B", "C", "Z", "AA"), fc.integer({ min: 1, max: 12 }))
      .map((at) => at.join("")),
  },
  fc.constantFrom("XFD1048576", "A0", "a1", "", "1A", "A1048577", "ZZZZ9"),
);

const content = fc.oneof(
  fc.constantFrom("0", "40", "-1E+308", "1e999", "NaN", "", "text").map((v) => `><v>${v}</v>`),
  fc.string({ unit: "grapheme", maxLength: 12 }).map((text) => ` t="inlineStr"><is><t>${xml(text)}</t></is>`),
  fc.integer({ min: -1, max: 3 }).map((at) => ` t="s"><v>${String(at)}</v>`),
  fc.constantFrom("#N/A", "#NAME?", "odd").map((code) => ` t="e"><v>${code}</v>`),
  fc.constantFrom("0", "1", "2", "x").map((v) => ` t="b"><v>${v}</v>`),
  formula.map((text) => `><f>${xml(text)}</f><v>1</v>`),
  formula.map((text) => `><f t="array" ref="A1:B2">${xml(text)}</f><v>1</v>`),
  formula.map((text) => `><f t="shared" si="0" ref="A1:A9">${xml(text)}</f><v>1</v>`),
  fc.constant('><f t="shared" si="0"/><v>1</v>'),
);

const cell = fc
  .tuple(address, fc.constantFrom("", ' s="0"', ' s="1"', ' s="9999"', ' s="-1"'), content)
  .map(([at, style, inside]) => `<c${at === "" ? "" : ` r="${at}"`}${style}${inside}</c>`);

const row = fc
  .tuple(fc.constantFrom("", ' r="1"', ' r="3"', ' r="2" hidden="1"', ' r="0"'), fc.array(cell, { maxLength: 8 }))
  .map(([attributes, cells]) => `<row${attributes}>${cells.join("")}</row>`);

const extras = fc.constantFrom(
  "",
  '<mergeCells count="1"><mergeCell ref="A1:B2"/></mergeCells>',
  '<mergeCells count="1"><mergeCell ref="nowhere"/></mergeCells>',
  '<sheetProtection sheet="1"/>',
  '<drawing r:id="rId99"/>',
);

const sheet = fc
  .tuple(fc.array(row, { maxLength: 6 }), extras)
  .map(([rows, more]) => `<sheetData>${rows.join("")}</sheetData>${more}`);

const names = fc.constantFrom(
  "",
  "<definedNames><definedName name=\"Flow\">'S 1'!$A$1</definedName></definedNames>",
  '<definedNames><definedName name="Flow">#REF!</definedName></definedNames>',
  '<definedNames><definedName name="Flow">Flow</definedName></definedNames>',
);

const whole = fc
  .tuple(sheet, sheet, names)
  .map(([first, second, book]) => plainBook({ "S 1": first, T: second }, { book, strings: ["note", "2 in"] }));

type Parts = Record<string, string | Uint8Array>;

/** A part left out, cut off, or with a stretch of its text changed. */
const damage = fc
  .tuple(fc.nat(), fc.constantFrom("drop", "cut", "swap"), fc.nat())
  .map(([which, how, at]) => (parts: Parts): Parts => {
    const path = Object.keys(parts)[which % Object.keys(parts).length] ?? "";
    const { [path]: part = "", ...rest } = parts;
    const text = String(part);
    const place = at % Math.max(1, text.length);
    if (how === "drop") return rest;
    return {
      ...rest,
      [path]: how === "cut" ? text.slice(0, place) : `${text.slice(0, place)}<x>${text.slice(place + 3)}`,
    };
  });

/** Two of three files are whole. */
export const workbookBytes: fc.Arbitrary<Uint8Array> = fc
  .oneof(
    { weight: 2, arbitrary: whole },
    fc.tuple(whole, damage).map(([parts, apply]) => apply(parts)),
  )
  .map(zipOf);

export const COMMANDS = ["scan", "mend", "survey", "compare", "edit", "insert", "save"] as const;
export type Command = (typeof COMMANDS)[number];

export const commandLists = fc.array(fc.constantFrom(...COMMANDS), { minLength: 1, maxLength: 4 });
