/** Formulas of one shape, parsed once, refer to the same cells as when each is parsed by itself. */
import { expect, test } from "vitest";
import { areasReader } from "../../../src/workbook/copy/formulaShapes";
import { referencesOf } from "../../../src/workbook/copy/reach";
import { meaningsIn } from "../../../src/workbook/copy/storedMeaning";
import type { NameEntry, SheetEntry } from "../../../src/workbook/package";
import type { Address, Area } from "../../../src/workbook/port";

const sheet = (name: string): SheetEntry =>
  ({ name, kind: "worksheet", state: "visible", path: `xl/${name}.xml` }) as SheetEntry;
const name = (text: string, formula: string): NameEntry => ({ name: text, formula, hidden: false }) as NameEntry;

const MEANINGS = meaningsIn(
  {
    sheets: [sheet("Loop"), sheet("A1")],
    names: [name("Flow", "Loop!$B$2"), name("Both", "Loop!$B$2+A1!$C$3"), name("_x1", "Loop!$D$4")],
    tables: [],
  } as unknown as Parameters<typeof meaningsIn>[0],
  () => undefined,
);

const FROM: Address = { sheet: "Loop", row: 4, column: 1 };

function parsedAlone(formula: string): readonly Area[] | undefined {
  const areas = referencesOf(formula, FROM)?.map((reference) => MEANINGS.reachOf(reference));
  return areas?.every((one) => one !== undefined) === true ? areas.flat() : undefined;
}

/** §: a cell that differs from formula to formula. */
const SHAPES = [
  ...["§", "$B$§", "§*2+1", "IF($B1>0,§/2,0)", "SUM(§:§)", "SUM(§:$C9)", "SUM($A1:§)", "§:§:§", "§%+-§^2"],
  ...[
    "Flow*§",
    "Both+§",
    "§+Both",
    "_x1/§",
    "Nothing+§",
    "§+Nothing",
    "SUM(A:A)+§",
    "SUM(1:3)*§",
    "SUM(1:1,A1:XFD1,§)",
  ],
  ...['IF(§="","none B7 ""C8""",§)', '"§ \u0001"&§', "'A1'!§+1", "A1!B2+§", "A1!§", "A1:INDEX(§,2)", "INDIRECT(§)"],
  ...["LOG10(§)", "LOG10 (§)", "§(2)", "ATAN2(§,A2)", "2§", "2.§", "1E5+§", "1E+§", "§.5", "§_x", "x§", "§ §", "(§,§)"],
  ...["LET(x,§,x+1)", "LET(§,5,§+1)", "LET(A1,5,B1+§)", "LET(B1,§,A1+B1)", "LAMBDA(§,§+1)(2)", "LAMBDA(x,x+§)(§)"],
  ...[
    "Table[§]",
    "§#",
    "@§",
    "{1,2}*§",
    "§?",
    "§é",
    "é§",
    "+§",
    "--§",
    "§<>§",
    "§,",
    "(§",
    "§)",
    "IF(§",
    "",
    "SUM()+§",
  ],
  ...["A0+§", "XFE1+§", "A1048577+§", "ABCD1+§", "AB12345678+§", "$§", "§$1", "A:§", "§:A", "5:§", "§:5", "TRUE+§"],
  ...["WARMBACK.PIPE.VELOCITY(§,Flow)", "_xlfn.SUM(§)", "IFERROR(§/§,#N/A)", "'it''s'!A1+§", "[2]Loop!A1+§"],
];

const CELLS = ["A1", "B2", "$C$3", "D$40", "$XFD1048576", "b7", "AA10", "XFE1", "A0", "C1048577"];

const formulasOf = (shape: string): readonly string[] =>
  CELLS.map((_, at) => {
    let next = at;
    return `=${shape.replaceAll("§", () => CELLS[next++ % CELLS.length] ?? "")}`;
  });

test("Formulas of one shape refer to the cells that each refers to by itself", () => {
  for (const shape of SHAPES) {
    const formulas = formulasOf(shape);
    // Each of them is the first of its shape once.
    for (const [at] of formulas.entries()) {
      const areasOf = areasReader(MEANINGS);
      for (const formula of [...formulas.slice(at), ...formulas.slice(0, at)])
        expect(areasOf(formula, FROM), formula).toEqual(parsedAlone(formula));
    }
  }
});

test("Formulas put together from pieces refer to the cells that each refers to by itself", () => {
  const PIECES = [
    "A1",
    "$B2",
    "C$3:D4",
    "(",
    ")",
    ",",
    ":",
    "+",
    "-",
    " ",
    '"',
    "x",
    "Flow",
    "LET(",
    "SUM(",
    "2",
    ".",
    "!",
  ];
  let seed = 7;
  const random = (below: number): number => {
    seed = (Math.imul(seed, 1_103_515_245) + 12_345) & 0x7fffffff;
    return (seed >> 8) % below;
  };
  const areasOf = areasReader(MEANINGS);
  for (let count = 0; count < 20_000; count++) {
    const length = 1 + random(7);
    const text = Array.from({ length }, () => PIECES[random(PIECES.length)] ?? "").join("");
    const moved = text.replace(/\d/g, () => String(1 + random(9)));
    for (const formula of [`=${text}`, `=${moved}`])
      expect(areasOf(formula, FROM), formula).toEqual(parsedAlone(formula));
  }
});
