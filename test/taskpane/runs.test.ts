/** The line of long work over workers that are acted, and the engine whose heavy calls come through it. */
import type { CellInput, CellScalar } from "../../core";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { BUILD } from "../../src/functions/buildHash";
import { MIAMI_MONTHS } from "../../core/pool/data/miami";
import { panelEngine } from "../../src/taskpane/engine";
import { workerEngine } from "../../src/taskpane/jobs/workerEngine";
import type { JobRequest } from "../../src/taskpane/jobs/job";
import { jobRunner } from "../../src/taskpane/jobs/runJob";
import type { Progress } from "../../src/taskpane/jobs/jobTable";
import { startPanelJobs } from "../../src/taskpane/jobs/panelJobs";
import { resumeWhenReady } from "../../src/workbook/pending";
import { sessionLog } from "../../src/workbook/callLog";
import { CANCELLED } from "../../src/workbook/timeSlices";
import { YEAR } from "./yearCells";

const CALL = { id: "CYCLE.COP", args: ["R-410A", 45, 105] } as const;
const ARGS: CellInput[] = [...CALL.args];

/** A worker that does what a test tells it to. */
class Acted {
  onmessage: ((event: { data: unknown }) => void) | null = null;
  onmessageerror: (() => void) | null = null;
  onerror: ((event: { preventDefault(): void }) => void) | null = null;
  readonly asked: JobRequest[] = [];
  ended = false;
  postMessage(ask: JobRequest): void {
    // What goes to a worker is copied: a function in it throws here as there.
    this.asked.push(structuredClone(ask));
  }
  terminate(): void {
    this.ended = true;
  }
  say(data: unknown): void {
    this.onmessage?.({ data: structuredClone(data) });
  }
  ready(build = BUILD): void {
    this.say({ ready: build });
  }
  fail(): void {
    this.onerror?.({ preventDefault: () => undefined });
  }
  async work(): Promise<void> {
    const ask = this.asked.at(-1);
    if (ask === undefined) throw new Error("nothing was asked");
    const result = await jobRunner()(ask.kind, ask.input, {
      report: () => undefined,
      yieldTurn: async () => undefined,
    });
    this.say({ number: ask.number, result });
  }
}

const hiring = () => {
  const hired: Acted[] = [];
  const runs = startPanelJobs(() => {
    const worker = new Acted();
    hired.push(worker);
    return worker as unknown as Worker;
  });
  return { hired, runs };
};

const outcomeHere = () => panelEngine(sessionLog()).call(CALL.id, ARGS);

describe("Long work", () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  test("work goes to one worker, one piece after the other, with the results that it would have here", async () => {
    const { hired, runs } = hiring();
    const first = runs.run("report", { id: CALL.id, args: ARGS });
    const second = runs.run("explain", { id: CALL.id, args: ARGS });
    const [worker] = hired;
    worker?.ready();
    expect(worker?.asked.map(({ kind }) => kind)).toEqual(["report"]);
    await worker?.work();
    expect((await first).outcome).toEqual(outcomeHere());
    expect(worker?.asked.map(({ kind }) => kind)).toEqual(["report", "explain"]);
    await worker?.work();
    expect(await second).toEqual(panelEngine(sessionLog()).explain(CALL.id, ARGS));
    expect(hired).toHaveLength(1);
    expect(runs.place()).toBe("worker");
  });

  test("work reports its progress", async () => {
    const { hired, runs } = hiring();
    const told: Progress[] = [];
    void runs.run("check", {}, { onProgress: (progress) => told.push(progress) });
    hired[0]?.ready();
    hired[0]?.say({ number: 1, progress: { done: 2, total: 9, text: "2 of 9" } });
    hired[0]?.say({ number: 7, progress: { done: 3, total: 9, text: "of another piece" } });
    expect(told).toEqual([{ done: 2, total: 9, text: "2 of 9" }]);
  });

  test("running work is ended with its worker; waiting work goes on in a new one", async () => {
    const { hired, runs } = hiring();
    const ending = new AbortController();
    const first = runs.run("check", {}, { signal: ending.signal });
    const second = runs.run("report", { id: CALL.id, args: ARGS });
    hired[0]?.ready();
    ending.abort();
    await expect(first).rejects.toBe(CANCELLED);
    expect(hired.map(({ ended }) => ended)).toEqual([true, false]);
    hired[0]?.say({ number: 1, result: [] });
    hired[1]?.ready();
    await hired[1]?.work();
    expect((await second).outcome).toEqual(outcomeHere());
  });

  test("waiting work is taken out of the queue; the worker goes on", async () => {
    const { hired, runs } = hiring();
    const ending = new AbortController();
    const first = runs.run("report", { id: CALL.id, args: ARGS });
    const second = runs.run("check", {}, { signal: ending.signal });
    hired[0]?.ready();
    ending.abort();
    await expect(second).rejects.toBe(CANCELLED);
    await hired[0]?.work();
    await first;
    expect(hired).toHaveLength(1);
    expect(hired[0]?.asked.map(({ kind }) => kind)).toEqual(["report"]);
    await expect(runs.run("check", {}, { signal: ending.signal })).rejects.toBe(CANCELLED);
  });

  test("work that breaks off is rejected, and the next piece gets a new worker", async () => {
    const { hired, runs } = hiring();
    const first = runs.run("check", {});
    hired[0]?.ready();
    hired[0]?.fail();
    await expect(first).rejects.toThrow("the calculation stopped");
    const second = runs.run("report", { id: "NO.SUCH", args: [] });
    hired[1]?.ready();
    hired[1]?.say({ number: 2, failed: "there is no function NO.SUCH" });
    await expect(second).rejects.toThrow("there is no function NO.SUCH");
    expect(hired).toHaveLength(2);
  });

  test("work whose answer can't be read is rejected instead of waiting for ever", async () => {
    const { hired, runs } = hiring();
    const first = runs.run("check", {});
    hired[0]?.ready();
    hired[0]?.onmessageerror?.();
    await expect(first).rejects.toThrow("the calculation stopped");
    expect(hired[0]?.ended).toBe(true);
  });

  test("work waits for a worker whose first message comes late, after the page was busy", async () => {
    const { hired, runs } = hiring();
    const first = runs.run("report", { id: CALL.id, args: ARGS });
    vi.advanceTimersByTime(15_000);
    hired[0]?.ready();
    vi.advanceTimersByTime(60_000);
    await hired[0]?.work();
    expect((await first).outcome).toEqual(outcomeHere());
    expect(runs.place()).toBe("worker");
  });

  test("a worker is started once more a while after one didn't start, and no third time", async () => {
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"], shouldAdvanceTime: true });
    const { hired, runs } = hiring();
    const again = () => runs.run("report", { id: CALL.id, args: ARGS });
    const first = again();
    hired[0]?.fail();
    await first;
    await again();
    expect([hired.length, runs.place()]).toEqual([1, "page"]);
    for (const count of [2, 2]) {
      vi.advanceTimersByTime(60_000);
      const late = again();
      expect(hired).toHaveLength(count);
      if (hired.at(-1)?.ended === false) hired.at(-1)?.fail();
      expect((await late).outcome).toEqual(outcomeHere());
      expect(runs.place()).toBe("page");
    }
  });

  test("a worker that nobody needs any more ends, and another starts when work comes again", async () => {
    const { hired, runs } = hiring();
    for (const count of [1, 2]) {
      const told = runs.run("report", { id: CALL.id, args: ARGS });
      expect(hired).toHaveLength(count);
      hired.at(-1)?.ready();
      vi.advanceTimersByTime(600_000);
      expect(hired.at(-1)?.ended).toBe(false);
      await hired.at(-1)?.work();
      await told;
      vi.advanceTimersByTime(600_000);
      expect(hired.at(-1)?.ended).toBe(true);
    }
  });

  const onPage = async (spoil: (worker: Acted) => void): Promise<void> => {
    const { hired, runs } = hiring();
    const first = runs.run("report", { id: CALL.id, args: ARGS });
    const second = runs.run("explain", { id: CALL.id, args: ARGS });
    const [worker] = hired;
    if (worker === undefined) throw new Error("no worker was tried");
    spoil(worker);
    vi.useRealTimers();
    expect((await first).outcome).toEqual(outcomeHere());
    expect(await second).toEqual(panelEngine(sessionLog()).explain(CALL.id, ARGS));
    expect([worker.ended, hired.length, runs.place()]).toEqual([true, 1, "page"]);
  };

  test.each([
    ["its file can't be loaded", (worker: Acted) => worker.fail()],
    ["it is of another build", (worker: Acted) => worker.ready("0123456789ab")],
    ["it says nothing", () => vi.advanceTimersByTime(60_000)],
  ])("work is done on the page where a worker is made but %s", async (_, spoil) => {
    await onPage(spoil);
  });

  test("work is done on the page where no worker can be made, and can be ended there between two functions", async () => {
    vi.useRealTimers();
    const runs = startPanelJobs(() => {
      throw new Error("refused by the page's policy");
    });
    const ending = new AbortController();
    const told: number[] = [];
    const checks = runs.run(
      "check",
      {},
      {
        signal: ending.signal,
        onProgress({ done }) {
          told.push(done);
          if (done === 3) ending.abort();
        },
      },
    );
    await expect(checks).rejects.toBe(CANCELLED);
    expect(told).toEqual([0, 1, 2, 3]);
    expect((await runs.run("report", { id: CALL.id, args: ARGS })).outcome).toEqual(outcomeHere());
    expect(told).toEqual([0, 1, 2, 3]);
  });
});

describe("Work on the page", () => {
  test("work on the page lets others run before each piece, even one without stages", async () => {
    const runs = startPanelJobs(() => {
      throw new Error("refused by the page's policy");
    });
    await runs.run("report", { id: CALL.id, args: ARGS });
    const order: string[] = [];
    const tell = (name: string) =>
      runs.run("report", {
        id: CALL.id,
        get args() {
          order.push(name);
          return ARGS;
        },
      });
    const click = new MessageChannel();
    click.port1.onmessage = () => {
      order.push("a click");
      click.port1.close();
    };
    const first = tell("first").then(() => click.port2.postMessage(0));
    await Promise.all([first, tell("second")]);
    expect([...new Set(order)]).toEqual(["first", "a click", "second"]);
  });
});

describe("An engine whose heavy calls come later", () => {
  const here = panelEngine(sessionLog());
  const year: CellInput[] = [YEAR, MIAMI_MONTHS];

  test("an engine with later calls gives, raises and describes what the engine here does, computing each call once", async () => {
    const { hired, runs } = hiring();
    const engine = workerEngine(here, runs);
    const working = vi
      .waitFor(() => hired[0] ?? Promise.reject(new Error("no worker yet")))
      .then(async (worker) => {
        worker.ready();
        await worker.work();
        await vi.waitFor(() => expect(worker.asked).toHaveLength(2));
        await worker.work();
      });
    const passes = vi.fn(() => ({
      outcome: engine.call("POOL.YEAR", year),
      cautions: engine.cautionsOf("POOL.YEAR", year),
      described: engine.describe("POOL.YEAR", year),
    }));
    expect(await resumeWhenReady(passes)).toEqual({
      outcome: here.call("POOL.YEAR", year),
      cautions: here.cautionsOf("POOL.YEAR", year),
      described: here.describe("POOL.YEAR", year),
    });
    await working;
    expect(passes).toHaveBeenCalledTimes(3);
    expect(hired[0]?.asked).toHaveLength(2);
  });

  test("an engine with later calls computes light calls at once", () => {
    const { hired, runs } = hiring();
    const engine = workerEngine(here, runs);
    const velocity = (): unknown => engine.call("PIPE.VELOCITY", [90, "2 in"]);
    expect(resumeWhenReady(velocity)).toEqual(here.call("PIPE.VELOCITY", [90, "2 in"]));
    expect(hired).toHaveLength(0);
  });

  test("a result of this session is taken as it is, for the very same arguments only", () => {
    const { runs } = hiring();
    const log = sessionLog();
    const engine = workerEngine(panelEngine(log), runs);
    log.add(CALL.id, ARGS, { value: 7 });
    expect(engine.call(CALL.id, [...ARGS])).toEqual({ value: 7 });
    for (const other of [
      ["R-410A", 45, 106],
      ["R-410A", "45", 105],
      ["R-410A", 45, 105, 0],
      ["R-410A", 45, 105, ""],
    ])
      expect(() => engine.call(CALL.id, other), JSON.stringify(other)).toThrow("has not come yet");
  });

  test("a blank at the end is the same as an argument left out, and a zero at the end is neither", () => {
    const { runs } = hiring();
    const log = sessionLog();
    const engine = workerEngine(panelEngine(log), runs);
    log.add(CALL.id, ARGS, { value: 7 });
    expect(engine.call(CALL.id, [...ARGS, null, null])).toEqual({ value: 7 });
    log.add(CALL.id, [...ARGS, 0], { value: 8 });
    expect(engine.call(CALL.id, [...ARGS, 0])).toEqual({ value: 8 });
    expect(engine.call(CALL.id, [...ARGS, null])).toEqual({ value: 7 });
  });

  test("a blank is told from a zero where both were computed in this session; else either matches a blank", () => {
    const { runs } = hiring();
    const log = sessionLog();
    const engine = workerEngine(panelEngine(log), runs);
    const wind = (value: string | number | null): CellInput[] => [
      [...(YEAR as readonly (readonly CellScalar[])[]), ["wind at water", value]],
      MIAMI_MONTHS,
    ];
    const asked = (value: string | number | null): unknown => engine.call("POOL.YEAR", wind(value));
    log.add("POOL.YEAR", wind(0), { value: 5 });
    expect([asked(null), asked(0)]).toEqual([{ value: 5 }, { value: 5 }]);
    log.add("POOL.YEAR", wind(""), { value: 5 });
    expect(asked(null)).toEqual({ value: 5 });
    log.add("POOL.YEAR", wind(""), { value: 6 });
    expect(() => asked(null)).toThrow("has not come yet");
    log.add("POOL.YEAR", wind(null), { value: 7 });
    expect([asked(null), asked(0), asked("")]).toEqual([{ value: 7 }, { value: 5 }, { value: 6 }]);
  });

  test("the result of a blank is not taken for a zero's", () => {
    const { runs } = hiring();
    const log = sessionLog();
    const wind = (value: number | null): CellInput[] => [
      [...(YEAR as readonly (readonly CellScalar[])[]), ["wind at water", value]],
      MIAMI_MONTHS,
    ];
    log.add("POOL.YEAR", wind(null), { value: 7 });
    const engine = workerEngine(panelEngine(log), runs);
    expect(() => engine.call("POOL.YEAR", wind(0))).toThrow("has not come yet");
  });

  test("a result that came twice is kept like one that came once", async () => {
    let runsDone = 0;
    const gives = { outcome: { value: 1 }, cautions: [] };
    const engine = workerEngine(panelEngine(sessionLog()), {
      run: () => {
        runsDone += 1;
        return Promise.resolve(gives as never);
      },
      place: () => "worker",
    });
    const text = "x".repeat(100_000);
    const call = (at: number) => (): unknown => engine.call(CALL.id, [`${String(at)} ${text}`]);
    const all = Array.from({ length: 100 }, (_, at) => call(at));
    // Two views ask at the same time: both bring it.
    for (const each of all) await Promise.all([resumeWhenReady(each), resumeWhenReady(each)]);
    expect(runsDone).toBe(200);
    for (const each of all) expect(each()).toEqual({ value: 1 });
  });
});

describe("A pass that lacks something", () => {
  test("a pass is made again until it lacks nothing, and other errors pass on", async () => {
    expect(resumeWhenReady(() => 5)).toBe(5);
    expect(() =>
      resumeWhenReady(() => {
        throw new Error("a fault");
      }),
    ).toThrow("a fault");
    const refusing = workerEngine(panelEngine(sessionLog()), {
      run: () => Promise.reject(CANCELLED),
      place: () => undefined,
    });
    await expect(resumeWhenReady(() => refusing.call(CALL.id, ARGS))).rejects.toBe(CANCELLED);
  });
});
