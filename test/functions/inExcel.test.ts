/** Our cell functions called as Excel calls them, and what the panel then makes of their cells. */
import { describe, expect, it, vi } from "vitest";
import { cellCall } from "../../src/functions/call";
import { CATALOGUE, COMPILED } from "../../core/catalogue";
import { metadataOf } from "../../scripts/metadata";
import { LOG } from "../../src/functions/session";
import { panelEngine } from "../../src/taskpane/engine";
import { resultInSession } from "../../src/taskpane/jobs/sessionResult";
import { workerEngine } from "../../src/taskpane/jobs/workerEngine";
import { sheetCopies } from "../../src/workbook/copy/sheetCopies";
import { sessionLog } from "../../src/workbook/callLog";
import { readCells } from "../../src/workbook/reader/read";
import { BLANK, type Argument, type FunctionFacts } from "../excelHost/host/cellCalls";
import type { CellModel } from "../excelHost/model/workbook";
import { busyCell } from "../excelHost/oddities";
import { excelHost, install, MAC_20, PROFILES, type, WEB, WINDOWS_20, type Profile } from "../excelHost";
import { onExcel, type OnExcel } from "../workbook/onExcel";

const FACTS = { project: "", file: "", date: "2026-11-26" };

const METADATA = metadataOf(CATALOGUE, (id) => id).functions;

const factsOf = (id: string): FunctionFacts => {
  const found = METADATA.find((entry) => entry.id === id);
  if (found === undefined) throw new Error(`no function ${id}`);
  return found;
};

type Associate = (id: string, call: unknown) => void;

/** Calls one of ours for Data!A1, over the wire. */
async function call({ excel, sheet }: Pick<OnExcel, "excel" | "sheet">, id: string, args: readonly Argument[]) {
  const compiled = COMPILED.get(id);
  if (compiled === undefined) throw new Error(`no function ${id}`);
  (excel.client.CustomFunctions["associate"] as Associate)(id, cellCall(compiled));
  return excel.host.functions.call(sheet("Data"), { row: 0, column: 0 }, factsOf(id), args);
}

async function valueOn(profile: Profile, id: string, args: readonly Argument[]): Promise<CellModel["value"]> {
  const excel = excelHost(profile, ["Data"]);
  const restore = install(excel);
  try {
    return (await call({ excel, sheet: () => excel.host.book.active.sheet }, id, args)).value;
  } finally {
    restore();
  }
}

describe("A cell function of ours", () => {
  it.each(PROFILES)("gives its result through the runtime of $name", async (profile) => {
    expect(await valueOn(profile, "PIPE.VELOCITY", [40, "2 in"])).toBeCloseTo(3.9, 0);
  });

  it("gives the same for a left out argument as for a blank cell on the web", async () => {
    const ways: readonly Argument[] = [null, BLANK];
    const [omitted, blank] = await Promise.all(
      ways.map((arg) => valueOn(WEB, "PIPE.HEADLOSS", [40, "2 in", 100, null, arg])),
    );
    expect(blank).toBe(omitted);
  });

  it.each([WINDOWS_20, MAC_20])("takes a blank cell as left out on $name where 0 can't be meant", async (profile) => {
    const args = [40, "2 in", 100, null];
    expect(await valueOn(profile, "PIPE.HEADLOSS", [...args, BLANK])).toBe(await valueOn(WEB, "PIPE.HEADLOSS", args));
  });

  it("warns that 0 may come from a blank cell where 0 can be meant", () => {
    const codes = panelEngine(sessionLog())
      .cautionsOf("CYCLE.COP", ["R-410A", 45, 105, 0])
      .map(({ code }) => code);
    expect(codes).toContain("ZERO-OR-BLANK");
  });
});

describe.each([WEB, WINDOWS_20])("The panel beside $name", (profile) => {
  const on = onExcel(profile, "Data");

  it("finds again what a cell got in this session", async () => {
    await call(on, "PIPE.VELOCITY", [41, "2 in"]);
    expect(resultInSession(LOG.of("PIPE.VELOCITY"), [41, "2 in"])).toEqual({ value: expect.any(Number) as number });
  });

  it.each([
    ["the last argument", [106, BLANK]],
    ["the last two arguments", [107, BLANK, BLANK]],
    ["an argument before the last", [108, BLANK, 12]],
  ])("finds again what a cell got with a blank cell for %s, and works nothing again", async (_, last) => {
    // The session's calls are those of all tests: another evaporating temperature for each Excel.
    const args = ["R-410A", profile === WEB ? 45 : 46, ...last];
    const given = args.map((each) => (each === BLANK ? "B9" : typeof each === "string" ? `"${each}"` : String(each)));
    const formula = `=WARMBACK.CYCLE.COP(${given.join(",")})`;
    type(on.host, "Data!A1", formula);
    const { value } = await call(on, "CYCLE.COP", args as readonly Argument[]);
    const cell = { address: { sheet: "Data", row: 0, column: 0 }, formula, value };
    const run = vi.fn(() => Promise.reject(new Error("worked again")));
    const engine = workerEngine(panelEngine(LOG), { run, place: () => "worker" });
    const [reading] = await readCells(on.book, [cell], engine);
    expect(reading).toMatchObject({ checked: true, stale: false });
    expect(run).not.toHaveBeenCalled();
  });

  it("doesn't take a 0 in the session for an argument that was left out", async () => {
    await call(on, "CYCLE.COP", ["R-410A", 45, 109, 0]);
    const logged = LOG.of("CYCLE.COP");
    expect(resultInSession(logged, ["R-410A", 45, 109])).toBeUndefined();
    expect(resultInSession(logged, ["R-410A", 45, 109, 0])).toEqual({ value: expect.any(Number) as number });
  });

  it("doesn't call a cell out of date whose argument is a blank cell", async () => {
    const formula = '=WARMBACK.CYCLE.COP("R-410A",45,105,B9)';
    type(on.host, "Data!A1", formula);
    const { value } = await call(on, "CYCLE.COP", ["R-410A", 45, 105, BLANK]);
    const cell = { address: { sheet: "Data", row: 0, column: 0 }, formula, value };
    const [reading] = await readCells(on.book, [cell], panelEngine(sessionLog()));
    expect(reading).toMatchObject({ checked: true, stale: false });
  });

  it("hands nothing over while a cell still calculates, and names the cell", async () => {
    busyCell(on.host, "Data!A7", '=WARMBACK.PIPE.VELOCITY(40,"2 in")');
    await expect(sheetCopies(on.book, panelEngine(sessionLog()), FACTS)).rejects.toThrow(/Data!A7/);
  });
});
