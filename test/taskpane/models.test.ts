import { describe, expect, test } from "vitest";
import { lookUp } from "../../core/kernel/define/catalogue";
import { CATALOGUE } from "../../core/catalogue";
import { compile } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { workingLines } from "../../core/kernel/explain/working";
import { counted, listed, scanSentence } from "../../src/taskpane/model/summary";
import {
  answersOf,
  symbolOf,
  titleOf,
  withLn,
  workingTree,
  type WorkingNode,
} from "../../src/taskpane/model/workingTree";
import { contrast, pageTheme } from "../../src/taskpane/theme";
import { report, type SheetNotes } from "../../src/workbook/scan/report";

const A1 = { sheet: "S", row: 0, column: 0 };
const NOTHING: SheetNotes = { raised: [], cells: [], failing: [], unreadable: [], uncomputed: [], stale: [] };
const USED: SheetNotes = { ...NOTHING, cells: [{ address: A1, formula: "=X()", ids: ["X"] }] };

describe("The sentence of a scan", () => {
  test("the sentence says that nothing uses the functions", async () => {
    expect(scanSentence(await report([NOTHING], () => undefined))).toBe(
      "No cell of this workbook uses these functions yet.",
    );
  });

  test("the sentence says that no caution is raised", async () => {
    expect(scanSentence(await report([USED], () => undefined))).toBe(
      "These numbers raise no caution. 1 cell uses these functions.",
    );
  });

  test("the sentence counts notes by severity and cells that fail", async () => {
    const raised = (["Notice", "Danger", "Danger"] as const).map((severity, at) => ({
      caution: { code: `C${String(at)}`, severity, text: `text ${String(at)}` },
      id: "X",
      address: A1,
    }));
    const failing = [{ address: A1, error: "#VALUE!" }];
    expect(scanSentence(await report([{ ...USED, raised, failing }], () => undefined))).toBe(
      "3 notes: 2 Danger and 1 Notice. 1 cell uses these functions, 1 fails.",
    );
  });
});

test("Counts and lists read as words", () => {
  expect([counted(1, "cell"), counted(1200, "cell"), counted(2, "copy", "copies")]).toEqual([
    "1 cell",
    "1,200 cells",
    "2 copies",
  ]);
  expect([listed([]), listed(["a"]), listed(["a", "b", "c"])]).toEqual(["", "a", "a, b and c"]);
});

describe("The working as a tree", () => {
  const stepsOf = (id: string, ...raw: readonly unknown[]): ReturnType<typeof explain> => {
    const definition = lookUp(CATALOGUE, id);
    if (definition === undefined) throw new Error(`no ${id}`);
    return explain(compile(definition), raw, CATALOGUE);
  };
  const numbers = (nodes: readonly WorkingNode[]): readonly string[] =>
    nodes.flatMap(({ line, below }) => [line.number, ...numbers(below)]);

  test("the tree holds every line once, in order, below its group", () => {
    const { steps } = stepsOf("CYCLE.STATES", "R-410A", 45, 105);
    const { nodes, left } = workingTree(steps, "US", 200);
    expect(numbers(nodes)).toEqual(workingLines(steps, "US").map(({ number }) => number));
    expect(
      nodes.every(({ line, below }) => below.every((inner) => inner.line.number.startsWith(`${line.number}.`))),
    ).toBe(true);
    expect(left).toBe(0);
  });

  test("the tree is cut after a number of lines and says how many are left", () => {
    const { steps } = stepsOf("CYCLE.STATES", "R-410A", 45, 105);
    const all = workingLines(steps, "US").length;
    const { nodes, left } = workingTree(steps, "US", 3);
    expect(numbers(nodes)).toHaveLength(3);
    expect(left).toBe(all - 3);
  });

  test("an equation's value is given in the base unit where the cell has another", () => {
    const { steps } = stepsOf("PIPE.VELOCITY", 40, "2 in");
    const [velocity] = workingTree(steps, "US", 200).nodes.filter(({ line }) => line.form !== undefined);
    expect(velocity?.base).toMatch(/^1\.18\d* m\/s$/);
    const [metric] = workingTree(steps, "SI", 200).nodes.filter(({ line }) => line.form !== undefined);
    expect(metric?.base).toBeUndefined();
  });

  test("an iteration is shown by its answer", () => {
    const all = (nodes: readonly WorkingNode[]): readonly WorkingNode[] =>
      nodes.flatMap((node) => [node, ...all(node.below)]);
    const { steps } = stepsOf("PIPE.HEADLOSS", 40, "2 in", 100);
    const relation = all(workingTree(steps, "US", 200).nodes).find(({ line }) => line.form?.startsWith("1 / sqrt(f)"));
    const [[name, value] = ["", 0]] = relation === undefined ? [] : answersOf(relation);
    expect(name).toBe("f");
    expect(value).toBeGreaterThan(0.01);
    expect(value).toBeLessThan(0.03);
  });

  test("the natural logarithm is written ln, others stay", () => {
    expect(withLn("R = log(a / b) + log10(c)")).toBe("R = ln(a / b) + log10(c)");
  });

  test("a title is parted from its form, and a symbol from a relation", () => {
    const line = { number: "1", numbers: "", value: "", unit: "", source: "" };
    expect(titleOf({ ...line, text: "Mean velocity: v = Q / A", form: "v = Q / A" })).toBe("Mean velocity");
    expect(symbolOf({ ...line, text: "", form: "v = Q / A" })).toBe("v");
    expect(symbolOf({ ...line, text: "", form: "1 / sqrt(f) = 2" })).toBeUndefined();
  });
});

describe("The host's theme", () => {
  test("the host's theme gives its colours and the scheme that they make", () => {
    expect(pageTheme({ bodyBackgroundColor: "#262626", bodyForegroundColor: "#FFFFFF" })).toEqual({
      scheme: "dark",
      background: "rgb(38 38 38)",
      foreground: "rgb(255 255 255)",
    });
    expect(pageTheme({ bodyBackgroundColor: "e6e6e6", bodyForegroundColor: "262626" })?.scheme).toBe("light");
  });

  test("a theme that is missing, broken, or unreadable is ignored", () => {
    expect(pageTheme(undefined)).toBeUndefined();
    expect(pageTheme({})).toBeUndefined();
    expect(pageTheme({ bodyBackgroundColor: "white", bodyForegroundColor: "#000000" })).toBeUndefined();
    expect(pageTheme({ bodyBackgroundColor: "#777777", bodyForegroundColor: "#888888" })).toBeUndefined();
  });

  test("contrast is computed as in the accessibility guidelines: black on white is 21 to 1", () => {
    expect(contrast([0, 0, 0], [255, 255, 255])).toBeCloseTo(21, 10);
    // Known borderline of the guidelines: #767676 on white is the lightest grey above 4.5.
    expect(contrast([0x76, 0x76, 0x76], [255, 255, 255])).toBeGreaterThan(4.5);
    expect(contrast([0x77, 0x77, 0x77], [255, 255, 255])).toBeLessThan(4.5);
  });
});
