/** Random texts in the shape of formulas, most of them readable, some hostile in size, some cut or mangled. */
import fc from "fast-check";

const NUMBERS = ["0", "1", "2.5", "-3", "1E+308", "1E-308", "1E9", "1000000", ".5", "9007199254740993", "50%"];
const TEXTS = ['""', '"2 in"', '"1,200"', '"a""b"', '"é 水"', `"${"x".repeat(255)}"`];
const REFERENCES = [
  "A1",
  "$B$2",
  "A1:C3",
  "A:A",
  "1:1",
  "AA1",
  "XFD1048576",
  "'My sheet'!A1",
  "A1#",
  "noname",
  "[2]S!A1",
];
const CONSTANTS = ["{1,2;3,4}", '{"a","b;c"}', "{1;2;3}", "TRUE", "#N/A", "#REF!", "@A1"];
const OPERATORS = ["+", "-", "*", "/", "^", "&", "=", "<>", "<=", ">", ":", " ", ","];
const FUNCTIONS = (
  "SUM IF ROUND ABS INDEX LET LAMBDA MAP REDUCE MAKEARRAY SEQUENCE EXPAND RANDARRAY REPT MUNIT BESSELI BESSELK " +
  "BINOM.DIST POISSON.DIST HYPERLINK IMAGE OFFSET INDIRECT TEXT FILTER SORT VSTACK WRAPROWS COMBIN FACT BASE " +
  "WARMBACK.PIPE.HEADLOSS WARMBACK.EXCHANGER.LMTD WARMBACK.NOSUCH NOSUCH"
).split(" ");

const leaf = fc.constantFrom(...NUMBERS, ...TEXTS, ...REFERENCES, ...CONSTANTS);

const tree = fc.letrec<{ node: string }>((tie) => ({
  node: fc.oneof(
    { depthSize: "small", withCrossShrink: true },
    leaf,
    fc
      .tuple(tie("node"), fc.constantFrom(...OPERATORS), tie("node"))
      .map(([left, operator, right]) => left + operator + right),
    fc
      .tuple(fc.constantFrom(...FUNCTIONS), fc.array(tie("node"), { maxLength: 4 }))
      .map(([name, args]) => `${name}(${args.join(",")})`),
    fc.tuple(fc.constantFrom("(", "-(", "@("), tie("node")).map(([open, inside]) => `${open}${inside})`),
  ),
})).node;

/** Long chains and deep nesting, up to the longest formula. */
const tall = fc
  .tuple(fc.constantFrom("-", "(", "1+", "ABS(", "{", "IF(1,", '"a"&', "LAMBDA(x,", "'", "["), fc.nat({ max: 8_000 }))
  .map(([part, length]) => `${part.repeat(Math.floor(length / part.length))}1`);

/** A readable formula with a stretch cut out. */
const cut = fc
  .tuple(tree, fc.nat(), fc.nat({ max: 5 }))
  .map(([text, at, length]) => text.slice(0, at % text.length) + text.slice((at % text.length) + length));

const noise = fc.string({ unit: fc.constantFrom(..."=+-*/^&<>@%#$!'\"[]{}(),;:. aA1Z_\\é"), maxLength: 60 });

/** One line of text, as the evaluator reads lines; never blank. */
export const formulaText: fc.Arbitrary<string> = fc
  .oneof({ weight: 6, arbitrary: tree }, { weight: 1, arbitrary: tall }, { weight: 2, arbitrary: cut }, noise)
  .map((text) => `=${text.replace(/[\r\n]/g, " ")}`.trim());

/** The same in every run, so that a failure can be repeated. */
export const SEED = 20_260_101;

/** How many formulas: more where `VERIFY_FULL` is set. */
export const RUNS = process.env["VERIFY_FULL"] === "1" ? 5_000 : 200;

export const shortened = (text: string): string => (text.length > 80 ? `${text.slice(0, 77)}…` : text);
