import { beforeEach, describe, expect, test, vi } from "vitest";

/** Excel's error class and codes, as its documentation describes them. */
class HostError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}
const ErrorCode = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
};

type Call = (...args: unknown[]) => unknown;

const start = async (): Promise<ReadonlyMap<string, Call>> => {
  const associated = new Map<string, Call>();
  const associate = (id: string, call: Call): void => void associated.set(id, call);
  vi.stubGlobal("CustomFunctions", { Error: HostError, ErrorCode, associate });
  vi.resetModules();
  await import("../../src/functions/register");
  return associated;
};

const thrownBy = (work: () => unknown): HostError => {
  try {
    work();
  } catch (thrown) {
    if (thrown instanceof HostError) return thrown;
    throw thrown;
  }
  throw new Error("nothing was thrown");
};

describe("the functions script", () => {
  let cells: ReadonlyMap<string, Call>;
  const call = (id: string, ...args: unknown[]): unknown => cells.get(id)?.(...args);

  beforeEach(async () => {
    cells = await start();
  });

  test("associates every function of the catalogue and leaves its surface", async () => {
    const { CATALOGUE } = await import("../../core/catalogue");
    expect([...cells.keys()]).toEqual(CATALOGUE.map(({ id }) => id));
    expect(globalThis.warmback?.namespace).toBe("WARMBACK");
    expect(globalThis.warmback?.edition).toMatch(/^Warmback \d+\.\d+\.\d+$/);
  });

  test("leaves the core's run-time door, and associates nothing where there is no host", async () => {
    vi.stubGlobal("CustomFunctions", undefined);
    vi.stubGlobal("warmback", undefined);
    vi.resetModules();
    await import("../../src/functions/register");
    expect(globalThis.warmback?.core.COMPILED.size).toBe(cells.size);
    expect(globalThis.warmback?.build).toBe("unbuilt");
  });

  test("answers a number", () => expect(call("PIPE.BORE", "2 in")).toBe(2.049));

  test("throws the host's error with code and message, and keeps a passed error's code", () => {
    const refused = thrownBy(() => call("PIPE.VELOCITY", -1, "2 in"));
    expect([refused.code, refused.message]).toEqual(["#VALUE!", "flow: must be above 0 gpm, got -1 gpm"]);
    expect(thrownBy(() => call("PIPE.VELOCITY", "#DIV/0!", "2 in")).code).toBe("#DIV/0!");
    expect(thrownBy(() => call("PIPE.VELOCITY", "#SPILL!", "2 in"))).toMatchObject({
      code: "#VALUE!",
      message: "flow: holds #SPILL!",
    });
  });

  test("takes an invocation that stale metadata appends as an omitted argument", () => {
    const invocation = { address: "Sheet1!A1", functionName: "PIPE.BORE" };
    expect(call("PIPE.BORE", "2 in", invocation)).toBe(2.049);
    expect(call("PIPE.BORE", "2 in", null, null, null, invocation)).toBe(2.049);
  });

  test("throws nothing but the host's error, whatever the arguments", () => {
    const odd = [undefined, {}, [], [[]], [[{}]], Number.NaN, Symbol("x"), () => 1, Object.create(null), 10n];
    const answering = new Set<string>();
    for (const id of cells.keys())
      for (const value of odd) {
        try {
          call(id, value, value, value);
          answering.add(id);
        } catch (thrown) {
          expect(thrown, `${id} of ${typeof value}`).toBeInstanceOf(HostError);
        }
      }
    // These take no argument and are given three, which a host may append; all others refuse each of the odd values.
    expect([...answering]).toEqual(["REFRIG.LIST", "CLIMATE.PLACES", "NOTE.EDITION", "NOTE.SELFTEST"]);
  });

  test("spreads the list in which a host passes repeated arguments", () => {
    const listed = call("NOTE.WORKING", "PIPE.BORE", [[["2 in"]], [["80"]]]);
    expect(listed).toEqual(call("NOTE.WORKING", "PIPE.BORE", "2 in", "80"));
    expect(call("NOTE.CAUTIONS", "PIPE.VELOCITY", [])).toEqual(call("NOTE.CAUTIONS", "PIPE.VELOCITY"));
  });

  test("logs each call with its outcome", () => {
    call("PIPE.BORE", "2 in");
    thrownBy(() => call("PIPE.BORE", "9 in"));
    const [last, first] = globalThis.warmback?.log.of("PIPE.BORE") ?? [];
    expect(first).toEqual({ id: "PIPE.BORE", args: ["2 in"], result: { value: 2.049 } });
    expect(last?.result).toMatchObject({ code: "#VALUE!" });
  });

  test("logs no call that Excel makes only to show a value beside a formula that is being typed", () => {
    const sizes = [true, false].map((isInValuePreview) => {
      const before = globalThis.warmback?.log.size() ?? 0;
      expect(call("PIPE.BORE", "2 in", null, null, null, { isInValuePreview })).toBe(2.049);
      return (globalThis.warmback?.log.size() ?? 0) - before;
    });
    expect(sizes).toEqual([0, 1]);
  });

  test("explains a call by value, error and cautions", () => {
    const explain = globalThis.warmback?.explain;
    expect(explain?.("PIPE.VELOCITY", [90, "2 in"])).toMatchObject({
      value: 8.756855730128645,
      cautions: [{ code: "PIPE-FAST-WATER", severity: "Warning" }],
    });
    expect(explain?.("PIPE.VELOCITY", [-1, "2 in"])).toMatchObject({ error: { code: "#VALUE!" }, cautions: [] });
    expect(explain?.("NO.SUCH", [])).toMatchObject({ error: { code: "#NAME?" } });
  });
});
