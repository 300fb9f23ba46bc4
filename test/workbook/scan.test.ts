import type { CellInput } from "../../core";
import { describe, expect, test, vi } from "vitest";
import { pending } from "../../src/workbook/pending";
import { sessionLog } from "../../src/workbook/callLog";
import type { Address } from "../../src/workbook/port";
import { addressText } from "../../src/workbook/reader/reference";
import type { CautionReport } from "../../src/workbook/scan/report";
import { scanner } from "../../src/workbook/scan/scan";
import type { CautionEngine, ScanOptions } from "../../src/workbook/scan/scan";
import { fakePort } from "./fakeWorkbook";
import type { FakePort, GridCell } from "./fakeWorkbook";

/** A call as text. */
const callKey = (id: string, args: readonly CellInput[]): string => JSON.stringify([id, args]);

const cell = (formula: string, value: GridCell["value"]): GridCell => ({ formula, value });

const sheets = () => ({
  Inputs: { A1: 90, A2: "2 in", A3: 20, B1: { value: { code: "#DIV/0!" } } },
  Loop: {
    A1: cell("=WARMBACK.PIPE.VELOCITY(Inputs!A1,Inputs!A2)", 9),
    A2: cell('=WARMBACK.PIPE.VELOCITY(90,"2 in")', 9),
    A3: cell("=WARMBACK.PIPE.VELOCITY(Inputs!A3,Inputs!A2)", 2),
    A4: cell("=WARMBACK.PIPE.VELOCITY(Inputs!A3,Inputs!A2)*2", 5),
    A5: cell('=WARMBACK.PIPE.VELOCITY(VLOOKUP(1,A1:B2,2),"2 in")', 1),
    A6: cell('=WARMBACK.PIPE.VELOCITY(Inputs!B1,"2 in")', { code: "#DIV/0!" }),
    A7: cell('=WARMBACK.PIPE.VELOCITY(-1,"2 in")', { code: "#VALUE!" }),
    A8: cell("=SUM(1,2)", 3),
    A9: cell("=WARMBACK.PIPE.VELOCITY(1", { code: "#NAME?" }),
    A10: cell("=WARMBACK.POOL.YEAR(1)", 1),
    B1: "WARMBACK",
  },
});

function engine() {
  const calls: string[] = [];
  const cautioned: string[] = [];
  const made: CautionEngine = {
    known: new Set(["PIPE.VELOCITY", "POOL.YEAR"]),
    log: sessionLog(),
    call(id, args) {
      calls.push(callKey(id, args));
      const flow = Number(args[0]);
      return flow < 0
        ? { code: "#VALUE!", message: "flow: must be above 0 gpm, got -1 gpm" }
        : { value: id === "POOL.YEAR" ? 1 : flow / 10 };
    },
    cautionsOf(id, args) {
      cautioned.push(callKey(id, args));
      if (id === "POOL.YEAR") return [{ code: "rough-year", severity: "Notice", text: "monthly means" }];
      const flow = Number(args[0]);
      if (flow < 60) return [];
      return [
        { code: "fast-water", severity: "Caution", text: `water at ${String(flow / 10)} ft/s` },
        { code: "burst", severity: "Danger", text: "over the rating" },
      ];
    },
    heavy: (id) => id === "POOL.YEAR",
  };
  return { made, calls, cautioned };
}

const texts = (addresses: readonly Address[] | undefined): readonly string[] => (addresses ?? []).map(addressText);

const start = (options: ScanOptions = {}, fake: FakePort = fakePort(sheets())) => {
  const own = engine();
  return { ...own, fake, scan: scanner(fake.book, own.made, options) };
};

const must = (report: CautionReport | undefined): CautionReport => {
  if (report === undefined) throw new Error("the scan was ended");
  return report;
};

describe("A scan for cautions", () => {
  test("a scan groups cautions by severity, the gravest first, then code, with the cells that raise them", async () => {
    const { scan } = start();
    const { severities } = must(await scan.scan());
    expect(severities.map(({ severity, codes }) => [severity, codes.map(({ code }) => code)])).toEqual([
      ["Danger", ["burst"]],
      ["Caution", ["fast-water"]],
      ["Notice", ["rough-year"]],
    ]);
    const [note] = severities[1]?.codes[0]?.notes ?? [];
    expect(note).toMatchObject({ text: "water at 9 ft/s", ids: ["PIPE.VELOCITY"] });
    expect(texts(note?.cells)).toEqual(["Loop!A1", "Loop!A2"]);
  });

  test("cells of one calculation are one of a note's calls, those of another a second one", async () => {
    const same = 'WARMBACK.PIPE.VELOCITY(90,"2 in")';
    const book = {
      Loop: {
        A1: cell(`=${same}`, 9),
        A2: cell(`=${same}*2`, 18),
        A3: cell(`=${same}/3`, 3),
        A4: cell('=WARMBACK.PIPE.VELOCITY(90,"3 in")', 9),
      },
    };
    const { scan } = start({}, fakePort(book));
    const [note] = must(await scan.scan()).severities[1]?.codes[0]?.notes ?? [];
    expect(texts(note?.cells)).toEqual(["Loop!A1", "Loop!A2", "Loop!A3", "Loop!A4"]);
    expect(note?.calls.map(texts)).toEqual([["Loop!A1", "Loop!A2", "Loop!A3"], ["Loop!A4"]]);
  });

  test("lists the cells that use us, those that fail with their text, and those that can't be read or are stale", async () => {
    const { scan } = start();
    const report = must(await scan.scan());
    expect(texts(report.cells.map(({ address }) => address))).toHaveLength(8);
    expect(report.failing.map(({ address, error, message }) => [addressText(address), error, message])).toEqual([
      ["Loop!A6", "#DIV/0!", undefined],
      ["Loop!A7", "#VALUE!", "flow: must be above 0 gpm, got -1 gpm"],
      ["Loop!A9", "#NAME?", undefined],
    ]);
    expect(texts(report.unreadable)).toEqual(["Loop!A5", "Loop!A9"]);
    expect(texts(report.stale)).toEqual(["Loop!A4"]);
  });

  test("a scan computes equal calls once, and their cautions once", async () => {
    const { scan, calls, cautioned } = start();
    await scan.scan();
    await scan.scan();
    expect(calls.filter((key) => key === callKey("PIPE.VELOCITY", [90, "2 in"]))).toHaveLength(1);
    expect(cautioned.filter((key) => key === callKey("PIPE.VELOCITY", [90, "2 in"]))).toHaveLength(1);
    expect(new Set(calls).size).toBe(calls.length);
  });

  test("leaves heavy functions to the end", async () => {
    const { scan, calls } = start();
    await scan.scan();
    expect(calls.at(-1)).toBe(callKey("POOL.YEAR", [1]));
  });

  test("reads each sheet once, in blocks of at most 50,000 cells", async () => {
    const wide = Object.fromEntries(Array.from({ length: 30 }, (_, at) => [`A${String(at * 1000 + 1)}`, at]));
    const fake = fakePort({ Long: { ...wide, J1: 1 } });
    const { scan } = start({}, fake);
    await scan.scan();
    expect(fake.asked).toMatchObject({ reads: 6, areas: 6, largest: 50_000, resolves: 0 });
  });

  test("scans only the named sheets again, and keeps what the others raised", async () => {
    const { scan, fake } = start();
    const first = must(await scan.scan());
    const reads = fake.asked.reads;
    fake.sheets.get("Inputs")?.set("4,0", cell("=WARMBACK.POOL.YEAR(2)", 1));
    const second = must(await scan.scan(["Inputs"]));
    expect(fake.asked.reads).toBe(reads + 1);
    expect(second.cells).toHaveLength(first.cells.length + 1);
    expect(second.stale).toEqual(first.stale);
  });

  test("follows references to sheets that it doesn't scan this time", async () => {
    const { scan } = start();
    await scan.scan();
    const report = must(await scan.scan(["Loop"]));
    expect(texts(report.stale)).toEqual(["Loop!A4"]);
    expect(texts(report.severities[0]?.codes[0]?.notes[0]?.cells)).toEqual(["Loop!A1", "Loop!A2"]);
  });

  test("forgets a sheet that was deleted", async () => {
    const { scan, fake } = start();
    await scan.scan();
    fake.sheets.delete("Loop");
    expect(must(await scan.scan(["Loop"]))).toMatchObject({ cells: [], severities: [] });
  });

  test("a scan goes on in slices and lets others run between", async () => {
    let clock = 0;
    let turns = 0;
    const { scan } = start({
      slice: 8,
      now: () => (clock += 1),
      turn: () => {
        turns++;
        return Promise.resolve();
      },
    });
    await scan.scan();
    expect(turns).toBeGreaterThanOrEqual(2);
  });

  test("a scan is ended by a newer one, which does what the first left", async () => {
    const { scan } = start({ slice: 0 });
    const first = scan.scan();
    const second = scan.scan(["Inputs"]);
    expect(await first).toBeUndefined();
    expect(must(await second).cells).toHaveLength(8);
  });

  test("a scan is ended by a signal", async () => {
    const { scan } = start({ slice: 0 });
    const control = new AbortController();
    const running = scan.scan(undefined, control.signal);
    control.abort();
    expect(await running).toBeUndefined();
    expect(must(await scan.scan(["Inputs"])).cells).toHaveLength(8);
  });

  /** The engine, but heavy calls come a moment later, or when told to. */
  const later = (when: (signal?: AbortSignal) => Promise<void> = () => Promise.resolve()) => {
    const own = engine();
    const come = new Set<string>();
    const signals: (AbortSignal | undefined)[] = [];
    const wait = <T>(what: string, id: string, args: readonly CellInput[], give: () => T): T => {
      const key = `${what} ${callKey(id, args)}`;
      if (id !== "POOL.YEAR" || come.has(key)) return give();
      throw pending(async (signal) => {
        signals.push(signal);
        await when(signal);
        come.add(key);
      });
    };
    const made: CautionEngine = {
      ...own.made,
      call: (id, args) => wait("call", id, args, () => own.made.call(id, args)),
      cautionsOf: (id, args) => wait("cautions", id, args, () => own.made.cautionsOf(id, args)),
    };
    return { made, signals, calls: own.calls };
  };

  test("waits for heavy calls that come later, and reports what it would if they came at once", async () => {
    const { made, calls } = later();
    const waiting = scanner(fakePort(sheets()).book, made);
    expect(must(await waiting.scan())).toEqual(must(await start().scan.scan()));
    // Begun again for what was missing, but equal calls are still worked out once.
    expect(calls).toHaveLength(new Set(calls).size);
  });

  test("ends the work on heavy calls with itself, without a fault", async () => {
    const { made, signals } = later(
      (signal) => new Promise((_, refuse) => signal?.addEventListener("abort", () => refuse(new Error("ended")))),
    );
    const control = new AbortController();
    const running = scanner(fakePort(sheets()).book, made).scan(undefined, control.signal);
    await vi.waitFor(() => expect(signals).toHaveLength(1));
    control.abort();
    expect(signals[0]?.aborted).toBe(true);
    expect(await running).toBeUndefined();
  });

  test("notes a cell whose work broke off beside all others, and tries it again with the next scan", async () => {
    let broken = true;
    const heard: string[] = [];
    const { made } = later(() => (broken ? Promise.reject(new Error("broke off")) : Promise.resolve()));
    const own = scanner(fakePort(sheets()).book, made);
    const usual = must(await start().scan.scan());
    const first = must(await own.scan(undefined, undefined, { onWait: () => heard.push("onWait") }));
    expect(texts(first.uncomputed)).toEqual(["Loop!A10"]);
    expect(texts(first.cells.map(({ address }) => address))).toEqual(texts(usual.cells.map(({ address }) => address)));
    expect(first.severities.map(({ severity }) => severity)).toEqual(["Danger", "Caution"]);
    expect(heard).toEqual(["onWait"]);
    broken = false;
    expect(must(await own.scan(["Inputs"]))).toEqual(usual);
  });

  test("rejects with the host's own sentence", async () => {
    const { scan, fake } = start();
    const broken = { ...fake.book, read: () => Promise.reject(new Error("the host is away")) };
    await expect(scanner(broken, engine().made).scan()).rejects.toThrow("the host is away");
    expect((await scan.scan())?.cells).toHaveLength(8);
  });
});
