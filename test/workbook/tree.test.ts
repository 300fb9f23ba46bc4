import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isRefusal } from "../../src/workbook/reader/tokens";
import { print } from "./print";
import { parse } from "../../src/workbook/reader/tree";
import type { Tree } from "../../src/workbook/reader/tree";

/** A tree in brackets: (+ 1 2), f[NAME a b], r[A1], %[x], @[x], {a,b;c,d}. */
function shape(tree: Tree): string {
  switch (tree.kind) {
    case "number":
    case "boolean":
      return String(tree.value);
    case "text":
      return JSON.stringify(tree.value);
    case "error":
      return tree.error;
    case "omitted":
      return "_";
    case "reference":
      return `r[${tree.text}]`;
    case "array":
      return `{${tree.rows.map((row) => row.map(shape).join(",")).join(";")}}`;
    case "sign":
      return `${tree.sign}[${shape(tree.of)}]`;
    case "percent":
      return `%[${shape(tree.of)}]`;
    case "group":
      return `g[${shape(tree.of)}]`;
    case "binary":
      return `(${tree.operator} ${shape(tree.left)} ${shape(tree.right)})`;
    case "call":
      return `f[${[tree.name, ...tree.args.map(shape)].join(" ")}]`;
  }
}

const TREES: readonly (readonly [string, string])[] = [
  ["=1", "1"],
  ["1", "1"],
  ["=1.5", "1.5"],
  ["=.5", "0.5"],
  ["=5.", "5"],
  ["=1E3", "1000"],
  ["=1.5e-3", "0.0015"],
  ["=2E+2", "200"],
  ['="a"', '"a"'],
  ['=""', '""'],
  ['="say ""hi"""', '"say \\"hi\\""'],
  ['="2 in"', '"2 in"'],
  ['="a,b;(c)"', '"a,b;(c)"'],
  ["=TRUE", "true"],
  ["=false", "false"],
  ["=TRUE()", "f[TRUE]"],
  ["=#N/A", "#N/A"],
  ["=#DIV/0!", "#DIV/0!"],
  ["=#REF!", "#REF!"],
  ["=#name?", "#NAME?"],
  ["=#SPILL!", "#SPILL!"],
  ["=1+2", "(+ 1 2)"],
  ["=1+2*3", "(+ 1 (* 2 3))"],
  ["=1-2-3", "(- (- 1 2) 3)"],
  ["=8/4/2", "(/ (/ 8 4) 2)"],
  ["=2^3^2", "(^ (^ 2 3) 2)"],
  ["=-2^2", "(^ -[2] 2)"],
  ["=2^-1", "(^ 2 -[1])"],
  ["=--1", "-[-[1]]"],
  ["=+A1", "+[r[A1]]"],
  ["=5%", "%[5]"],
  ["=5%%", "%[%[5]]"],
  ["=-5%", "-[%[5]]"],
  ["=A1*5%", "(* r[A1] %[5])"],
  ["=1&2", "(& 1 2)"],
  ['=1+2&"x"', '(& (+ 1 2) "x")'],
  ["=A1=B1", "(= r[A1] r[B1])"],
  ["=A1<>B1", "(<> r[A1] r[B1])"],
  ["=A1<=B1", "(<= r[A1] r[B1])"],
  ["=A1>=B1", "(>= r[A1] r[B1])"],
  ["=A1<B1", "(< r[A1] r[B1])"],
  ["=A1>-1", "(> r[A1] -[1])"],
  ['=1&2="12"', '(= (& 1 2) "12")'],
  ["=(1+2)*3", "(* g[(+ 1 2)] 3)"],
  ["= 1 + 2 ", "(+ 1 2)"],
  ["=\n1\t+\r\n2", "(+ 1 2)"],
  ["=A1", "r[A1]"],
  ["=$A$1", "r[$A$1]"],
  ["=a1", "r[a1]"],
  ["=XFD1048576", "r[XFD1048576]"],
  ["=A1:B2", "r[A1:B2]"],
  ["=$A1:B$2", "r[$A1:B$2]"],
  ["=A:A", "r[A:A]"],
  ["=$A:$C", "r[$A:$C]"],
  ["=1:3", "r[1:3]"],
  ["=$1:$3", "r[$1:$3]"],
  ["=Sheet1!A1", "r[Sheet1!A1]"],
  ["=Sheet1!A1:B2", "r[Sheet1!A1:B2]"],
  ["='My sheet'!A1:B2", "r['My sheet'!A1:B2]"],
  ["='It''s'!A1", "r['It''s'!A1]"],
  ["='1'!$A$1", "r['1'!$A$1]"],
  ["=Sheet1!A:A", "r[Sheet1!A:A]"],
  ["=Pool_area", "r[Pool_area]"],
  ["=Inputs!Rate", "r[Inputs!Rate]"],
  ["=Fläche", "r[Fläche]"],
  ["=площадь*2", "(* r[площадь] 2)"],
  ["=_x.y", "r[_x.y]"],
  ["=A1x", "r[A1x]"],
  ["=XFE1", "r[XFE1]"],
  ["=TRUEish", "r[TRUEish]"],
  ["=A1#", "r[A1#]"],
  ["=Sheet1!$A$1#", "r[Sheet1!$A$1#]"],
  ["=SUM(A1#)", "f[SUM r[A1#]]"],
  ["=Rates#", "r[Rates#]"],
  ["=Pumps[Flow]", "r[Pumps[Flow]]"],
  ["=Pumps[[Flow]:[Head]]", "r[Pumps[[Flow]:[Head]]]"],
  ["=Pumps[#All]", "r[Pumps[#All]]"],
  ["=Pumps[[#Headers],[Flow]]", "r[Pumps[[#Headers],[Flow]]]"],
  ["=Pumps[@Flow]", "r[Pumps[@Flow]]"],
  ["=Pumps[@[Flow rate]]", "r[Pumps[@[Flow rate]]]"],
  ["=[@Flow]*2", "(* r[[@Flow]] 2)"],
  ["=[@[Flow rate]]", "r[[@[Flow rate]]]"],
  ["=[Flow]", "r[[Flow]]"],
  ["=Pumps['#x]", "r[Pumps['#x]]"],
  ["=Pumps[Flow '[in']]", "r[Pumps[Flow '[in']]]"],
  ["=[Book.xlsx]Sheet1!A1", "r[[Book.xlsx]Sheet1!A1]"],
  ["='[Book 2.xlsx]My sheet'!A1", "r['[Book 2.xlsx]My sheet'!A1]"],
  ["=Jan:Dec!A1", "r[Jan:Dec!A1]"],
  ["=Sheet1!#REF!", "r[Sheet1!#REF!]"],
  ["=A1:INDEX(B:B,3)", "(: r[A1] f[INDEX r[B:B] 3])"],
  ["=Sheet1!A1:Sheet1!B2", "(: r[Sheet1!A1] r[Sheet1!B2])"],
  ["=A1:B2 B1:C3", "(  r[A1:B2] r[B1:C3])"],
  ["=SUM((A1,B2))", "f[SUM g[(, r[A1] r[B2])]]"],
  ["=@A1:A9", "@[r[A1:A9]]"],
  ["=-@Rate", "-[@[r[Rate]]]"],
  ["=@WARMBACK.PIPE.SIZE(40,6)", "@[f[WARMBACK.PIPE.SIZE 40 6]]"],
  ["=warmback.pipe.size(40,6)", "f[warmback.pipe.size 40 6]"],
  ["=_xldudf_WARMBACK_PIPE_SIZE(40,6)", "f[_xldudf_WARMBACK_PIPE_SIZE 40 6]"],
  ["=[2]!_xldudf_WARMBACK_PIPE_SIZE(40)", "f[[2]!_xldudf_WARMBACK_PIPE_SIZE 40]"],
  ["=Book.xla!_xldudf_WARMBACK_PIPE_SIZE(40)", "f[Book.xla!_xldudf_WARMBACK_PIPE_SIZE 40]"],
  ["=NOW()", "f[NOW]"],
  ["=F(,)", "f[F _ _]"],
  ["=F(1,)", "f[F 1 _]"],
  ["=F(,1)", "f[F _ 1]"],
  ["=F(1,,3)", "f[F 1 _ 3]"],
  ["=F( )", "f[F]"],
  ["=LOG10(5)", "f[LOG10 5]"],
  ["=A1(5)", "f[A1 5]"],
  ['=IF(A1>0,"yes",)', 'f[IF (> r[A1] 0) "yes" _]'],
  ["=LET(x,2,x*x)", "f[LET r[x] 2 (* r[x] r[x])]"],
  ["=LAMBDA(x,x+1)", "f[LAMBDA r[x] (+ r[x] 1)]"],
  ["={1,2;3,4}", "{1,2;3,4}"],
  ['={"a",TRUE;#N/A,-1.5}', '{"a",true;#N/A,-[1.5]}'],
  ["=SUM({1,2,3}*2)", "f[SUM (* {1,2,3} 2)]"],
  ["=_xlfn.SINGLE(A1)", "f[_xlfn.SINGLE r[A1]]"],
];

const REFUSED: readonly string[] = [
  "=",
  "",
  "=1+",
  "=*1",
  "=(1",
  "=1)",
  "=F(1",
  "=F(1,2",
  '="open',
  "='open!A1",
  "=Pumps[open",
  "={1,2;3}",
  "={}",
  "={A1}",
  "={1,}",
  '={-"a"}',
  "=1 2",
  "=A1 5",
  '="a""b" "c"',
  "=!A1",
  "=1;2",
  "=A1,B1",
  "=~1",
  "=`x`",
  "=1E999",
  "=&1",
  "=%5",
  "=#WRONG!",
  "=A1##",
  `=${"(".repeat(400)}1${")".repeat(400)}`,
  `=${"-".repeat(400)}1`,
  `="${"x".repeat(9000)}"`,
];

describe("The parser", () => {
  test.each(TREES)("reads %s", (formula, expected) => {
    const tree = parse(formula);
    expect(isRefusal(tree) ? tree : shape(tree)).toEqual(expected);
  });

  test.each(REFUSED)("refuses %s with a reason and a place", (formula) => {
    const tree = parse(formula);
    expect(isRefusal(tree)).toBe(true);
    expect(tree).toMatchObject({ at: expect.any(Number) as number, why: expect.stringMatching(/\w/) as string });
  });

  test("gives the place of each call in the formula", () => {
    const formula = '=1+WARMBACK.PIPE.BORE( "2 in" )*2';
    const tree = parse(formula);
    const call =
      !isRefusal(tree) && tree.kind === "binary" && tree.right.kind === "binary" ? tree.right.left : undefined;
    expect(formula.slice(call?.start, call?.end)).toBe('WARMBACK.PIPE.BORE( "2 in" )');
  });

  test("never throws, whatever text comes", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: "binary" }),
          fc.string({ unit: fc.constantFrom(..."=A1B$!'\"#[]@{}(),;:+-*/^&<>% .x") }),
        ),
        (text) => {
          const tree = parse(`=${text}`);
          if (isRefusal(tree)) {
            expect(tree.why).toMatch(/\w/);
            expect(tree.at).toBeGreaterThanOrEqual(0);
            expect(tree.at).toBeLessThanOrEqual(text.length + 1);
          } else {
            expect(tree.start).toBeGreaterThanOrEqual(0);
            expect(tree.end).toBeLessThanOrEqual(text.length + 1);
          }
        },
      ),
      { numRuns: 3000 },
    );
  });

  test("takes a chain of 1,500 operators and refuses a longer one", () => {
    const tree = parse(`=1${"+1".repeat(1500)}`);
    expect(isRefusal(tree) ? "" : print(tree)).toHaveLength(3001);
    for (const chain of ["+1", "%", ":F()", " A1"]) {
      expect(parse(`=A1${chain.repeat(1501)}`)).toMatchObject({ why: "more operators than can be read" });
    }
  });
});

const SPAN = { start: 0, end: 0 };
const leaf: fc.Arbitrary<string> = fc.oneof(
  fc.double({ min: 0, max: 1e300, noNaN: true }).map((value) => String(value).toUpperCase()),
  fc.nat().map(String),
  fc.string().map((text) => `"${text.replaceAll('"', '""')}"`),
  fc.constantFrom("TRUE", "FALSE", "#N/A", "#DIV/0!", "{1,2;3,4}", '{"a",-1}'),
  fc.constantFrom(
    "A1",
    "$B$2:C9",
    "A:A",
    "1:3",
    "Inputs!B4",
    "'My sheet'!A1:B2",
    "A1#",
    "Pumps[Flow]",
    "[@[Flow rate]]",
    "Pool_area",
  ),
);
const { formula: formulas } = fc.letrec<{ formula: string }>((tie) => ({
  formula: fc.oneof(
    { depthSize: "small", withCrossShrink: true },
    leaf,
    fc
      .tuple(tie("formula"), fc.constantFrom("+", "-", "*", "/", "^", "&", "=", "<>", "<", ">=", " - "), tie("formula"))
      .map((all) => all.join("")),
    fc.tuple(fc.constantFrom("-", "+", "@", "--"), tie("formula")).map((all) => all.join("")),
    tie("formula").map((inner) => `(${inner})`),
    tie("formula").map((inner) => `(${inner})%`),
    fc
      .tuple(
        fc.constantFrom("SUM", "WARMBACK.PIPE.BORE", "_xldudf_WARMBACK_X", "LET"),
        fc.array(fc.oneof(tie("formula"), fc.constant("")), { maxLength: 4 }),
      )
      .map(([name, args]) => `${name}(${args.join(", ")})`),
  ),
}));

/** A tree with every span taken out. */
const bare = (tree: unknown): unknown =>
  JSON.parse(JSON.stringify(tree, (name, value: unknown) => (name === "start" || name === "end" ? undefined : value)));

describe("The printer", () => {
  test("prints what reads back as the same tree", () => {
    fc.assert(
      fc.property(formulas, (formula) => {
        const tree = parse(`=${formula}`);
        if (isRefusal(tree)) throw new Error(`${formula}: ${tree.why}`);
        const again = parse(`=${print(tree)}`);
        expect(bare(again)).toEqual(bare(tree));
      }),
      { numRuns: 2000 },
    );
  });

  test.each(TREES)("prints %s so that it reads back the same", (formula) => {
    const tree = parse(formula);
    if (isRefusal(tree)) throw new Error(tree.why);
    expect(bare(parse(print(tree)))).toEqual(bare(tree));
  });

  test("writes numbers in capitals and texts with doubled marks", () => {
    expect(print({ kind: "number", value: 1e30, ...SPAN })).toBe("1E+30");
    expect(print({ kind: "text", value: 'a"b', ...SPAN })).toBe('"a""b"');
  });
});
