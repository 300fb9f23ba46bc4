/** Cell functions called as Excel calls them: by Microsoft's custom-functions runtime, over the wire. */
import { beforeEach, describe, expect, it } from "vitest";
import { BLANK, type Argument, type FunctionFacts } from "./host/cellCalls";
import { excelHost, MAC_20, sheetNamed, WEB, WINDOWS_14, WINDOWS_20, type ExcelStandIn, type Profile } from "./index";

const FACTS: FunctionFacts = { id: "PIPE.BORE", parameters: [{}, {}, { dimensionality: "matrix" }] };
const REPEATS: FunctionFacts = { id: "NOTE.ALL", parameters: [{}, { repeating: true, dimensionality: "matrix" }] };

type Associate = (id: string, call: (...args: unknown[]) => unknown) => void;

let excel: ExcelStandIn;
let seen: unknown[][];

function open(profile: Profile, answer: (...args: unknown[]) => unknown = () => 1): void {
  excel = excelHost(profile, ["Data"]);
  seen = [];
  const associate = excel.client.CustomFunctions["associate"] as Associate;
  for (const id of ["PIPE.BORE", "NOTE.ALL"])
    associate(id, (...args) => {
      seen.push(args);
      return answer(...args);
    });
}

const data = () => sheetNamed(excel.host.book, "Data");
const call = (args: readonly Argument[], facts = FACTS, row = 0) =>
  excel.host.functions.call(data(), { row, column: 0 }, facts, args);

type ErrorClass = new (code: string, message?: string) => Error;
const failing = (code: string, message: string) => () => {
  const { Error: CellError } = excel.client.CustomFunctions as unknown as { Error: ErrorClass };
  return new CellError(code, message);
};

describe("A cell function", () => {
  beforeEach(() => open(WEB));

  it("gets a full list of arguments, null for those left out, and behind them the invocation", async () => {
    await call([40]);
    const [args = []] = seen;
    expect(args.slice(0, 3)).toEqual([40, null, null]);
    expect(args).toHaveLength(4);
    expect(args[3]).toMatchObject({ functionName: "PIPE.BORE", address: "Data!A1" });
  });

  it("gets all values of a repeated argument as one list", async () => {
    await call([1, [[2]], [[3]]], REPEATS);
    expect(seen[0]?.slice(0, 2)).toEqual([1, [[[2]], [[3]]]]);
  });

  it.each([
    [WEB, null],
    [WINDOWS_20, 0],
    [MAC_20, 0],
  ])("gets a blank cell on $name as %j, and within a matrix as 0", async (profile, blank) => {
    open(profile);
    await call([BLANK, null, [[BLANK, 1]]]);
    expect(seen[0]?.slice(0, 3)).toEqual([blank, null, [[0, 1]]]);
  });

  it("isn't called with an error: the cell shows the error", async () => {
    const cell = await call([{ error: "#DIV/0!" }]);
    expect([cell.value, cell.error, seen]).toEqual(["#DIV/0!", true, []]);
  });

  it("leaves #BUSY! in its cell until the result comes", async () => {
    const result = call([1]);
    expect(data().cells.get(0)?.value).toBe("#BUSY!");
    expect((await result).value).toBe(1);
    expect(data().cells.get(0)?.value).toBe(1);
  });

  it("hands its results on at most twice a second: a chain of cells costs that for each", async () => {
    const from = performance.now();
    for (let row = 0; row < 3; row++) await call([row], FACTS, row);
    expect(performance.now() - from).toBeGreaterThan(1_000);
  });

  it("spills a matrix", async () => {
    open(WEB, () => [
      ["density", 62.1],
      ["heat", ""],
    ]);
    await call([1]);
    expect([...data().cells.values()].map(({ value }) => value)).toEqual(["density", 62.1, "heat", ""]);
  });
});

describe("An error of a cell function", () => {
  it.each([
    ["#VALUE!", "bore: must be above 0 in"],
    ["#N/A", "outside the table"],
  ])("%s comes with its message", async (code, message) => {
    open(WEB, () => {
      throw failing(code, message)();
    });
    expect(await call([1])).toMatchObject({ value: code, error: true, message });
  });

  it("without a name of the host's is #VALUE!", async () => {
    open(WEB, () => {
      throw new Error("a slip of the product");
    });
    expect(await call([1])).toMatchObject({ value: "#VALUE!", error: true });
  });

  // OfficeDev/office-js #2174: not known which builds do so.
  it.each([
    [WEB, ["#N/A", 2]],
    [WINDOWS_14, ["#VALUE!"]],
  ])("in one cell of a table stays there on $name, or takes the table", async (profile, values) => {
    open(profile, () => [[failing("#N/A", "outside")(), 2]]);
    await call([1]);
    expect([...data().cells.values()].map(({ value }) => value)).toEqual(values);
  });
});
