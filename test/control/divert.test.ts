import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/catalogue";
import { compile, evaluate } from "../../core/kernel/evaluate";
import { isFault } from "../../core/kernel/fault";
import { DIVERT_RULES, divert, type Decision, type DivertState, type Mode } from "../../core/control/models/divert";

const F = (value: number): number => (value + 459.67) / 1.8;
const MINUTE = 60;
const YES_NO = [true, false] as const;
const SET = 82;
const BAND = 2;
const LIMIT = 88;

/** Below the band, at its foot, in it, at the set point, above it, at the limit, above it: °F. */
const POOLS = [78, 80, 81, 82, 85, 88, 95];
const MODES: readonly Mode[] = ["pool", "outdoor", "idle"];
const MINUTES = [undefined, 0, 4.9, 5, 60];
const LEAVING = [undefined, 90, 104, 130];

interface Case {
  readonly f: number;
  readonly state: DivertState;
}

const each = <T, U>(list: readonly T[], of: (item: T) => readonly U[]): readonly U[] => list.flatMap(of);

const CASES: readonly Case[] = each(YES_NO, (coolingCalls) =>
  each(YES_NO, (flowProven) =>
    each(YES_NO, (heatingOrDefrost) =>
      each(YES_NO, (sensorGood) =>
        each(YES_NO, (headPressureTrip) =>
          each(POOLS, (f) =>
            each(MODES, (was) =>
              each(MINUTES, (minutes) =>
                LEAVING.map((leaving) => ({
                  f,
                  state: {
                    pool: F(f),
                    setPoint: F(SET),
                    band: BAND / 1.8,
                    coolingCalls,
                    flowProven,
                    highLimit: F(LIMIT),
                    was,
                    minutesInMode: minutes === undefined ? undefined : minutes * MINUTE,
                    minimumMinutes: 5 * MINUTE,
                    heatingOrDefrost,
                    sensorGood,
                    leavingWater: leaving === undefined ? undefined : F(leaving),
                    leavingLimit: F(104),
                    headPressureTrip,
                  },
                })),
              ),
            ),
          ),
        ),
      ),
    ),
  ),
);

/** The sequence once more, in another form: what bars the pool, then time, then band. */
const expectedMode = ({ f, state }: Case): Mode => {
  if (!state.heatingOrDefrost && !state.coolingCalls) return "idle";
  const leaving = state.leavingWater !== undefined && state.leavingWater > F(103.9);
  const barred = state.heatingOrDefrost || state.headPressureTrip || !state.flowProven || !state.sensorGood;
  if (barred || f >= LIMIT || leaving) return "outdoor";
  const minutes = state.minutesInMode === undefined ? 1e9 : state.minutesInMode / MINUTE;
  if (minutes < 5 && state.was !== "idle") return state.was;
  if (f >= SET) return "outdoor";
  if (f < SET - BAND) return "pool";
  return state.was === "pool" ? "pool" : "outdoor";
};

describe("the truth table", () => {
  test("holds for every combination of inputs and states", () => {
    expect(CASES).toHaveLength(2 ** 5 * POOLS.length * MODES.length * MINUTES.length * LEAVING.length);
    for (const one of CASES) expect(divert(one.state).mode, JSON.stringify(one)).toBe(expectedMode(one));
  });

  test("never sends heat to the pool without call, proven flow, good sensor, or at a limit, whatever the time", () => {
    let toPool = 0;
    for (const { f, state } of CASES) {
      const { mode, valvePosition } = divert(state);
      if (mode !== "pool" && valvePosition !== "pool") continue;
      toPool++;
      expect(state.coolingCalls && state.flowProven && state.sensorGood).toBe(true);
      expect(state.heatingOrDefrost || state.headPressureTrip).toBe(false);
      expect(f).toBeLessThan(LIMIT);
      expect(state.leavingWater ?? 0).toBeLessThan(F(104));
    }
    expect(toPool).toBe(54);
  });

  test("keeps valve, fan and pump in step with the mode", () => {
    for (const { state } of CASES) {
      const { mode, valvePosition, outdoorFan, pumpWanted, reason }: Decision = divert(state);
      expect(valvePosition).toBe(mode === "pool" ? "pool" : "outdoor");
      if (mode === "pool") expect([outdoorFan, pumpWanted]).toEqual(["off", "yes"]);
      if (mode === "idle") expect([outdoorFan, pumpWanted]).toEqual(["off", "no"]);
      if (mode === "outdoor") expect(outdoorFan).toBe(state.heatingOrDefrost ? "as the machine's own control" : "on");
      if (state.heatingOrDefrost || state.headPressureTrip || !state.sensorGood) expect(pumpWanted).toBe("no");
      expect(reason).not.toBe("");
    }
  });

  test("asks for the pump where only the flow is missing", () => {
    let asked = 0;
    for (const { f, state } of CASES) {
      const only = !state.flowProven && !state.heatingOrDefrost && state.coolingCalls && !state.headPressureTrip;
      if (!only || !state.sensorGood || f >= SET - BAND) continue;
      expect(divert(state).pumpWanted).toBe("yes");
      asked++;
    }
    expect(asked).toBe(60);
  });

  test("uses every rule, and names the first that holds", () => {
    const used = new Set(CASES.map(({ state }) => DIVERT_RULES.findIndex(({ holds }) => holds(state))));
    expect(used.size).toBe(DIVERT_RULES.length);
    const state = CASES.find((one) => !one.state.flowProven && one.state.headPressureTrip && one.state.coolingCalls);
    if (!state) throw new Error("no such case");
    expect(divert({ ...state.state, heatingOrDefrost: false }).reason).toBe("head-pressure trip");
    expect(divert({ ...state.state, heatingOrDefrost: true }).reason).toMatch(/evaporator/);
  });
});

describe("the mode at any temperature", () => {
  const temperature = fc.double({ min: F(33), max: F(119), noNaN: true });

  test("heat goes to the pool only below the high limit and with proven flow", () => {
    fc.assert(
      fc.property(
        temperature,
        temperature,
        temperature,
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.boolean(),
        fc.constantFrom(...MODES),
        fc.option(fc.double({ min: 0, max: 900, noNaN: true }), { nil: undefined }),
        (pool, setPoint, highLimit, band, flowProven, was, minutesInMode) => {
          const base = CASES[0]?.state;
          if (!base) throw new Error("no case");
          const calm = { coolingCalls: true, heatingOrDefrost: false, headPressureTrip: false, sensorGood: true };
          const state = { ...base, ...calm, pool, setPoint, highLimit, band, flowProven, was, minutesInMode };
          fc.pre(divert(state).mode === "pool");
          expect(flowProven).toBe(true);
          expect(pool).toBeLessThan(highLimit);
        },
      ),
      { numRuns: 500, maxSkipsPerRun: 100 },
    );
  });

  test("the dead band holds the mode: no rule but the set point ends heating, none but its foot begins it", () => {
    const base = CASES.find(({ state: s }) => s.coolingCalls && s.flowProven && s.sensorGood && !s.headPressureTrip);
    if (!base) throw new Error("no case");
    const at = (f: number, was: Mode): Mode =>
      divert({ ...base.state, heatingOrDefrost: false, leavingWater: undefined, pool: F(f), was }).mode;
    expect([79.9, 80.1, 81.9, 82].map((f) => at(f, "pool"))).toEqual(["pool", "pool", "pool", "outdoor"]);
    expect([82, 81.9, 80.1, 79.9].map((f) => at(f, "outdoor"))).toEqual(["outdoor", "outdoor", "outdoor", "pool"]);
  });
});

describe("the cell", () => {
  const definition = lookUp(CATALOGUE, "CONTROL.DIVERT");
  if (!definition) throw new Error("CONTROL.DIVERT is not listed");
  const compiled = compile(definition);

  test("tells its reason in the cell's units and takes blanks as defaults", () => {
    const us = evaluate(compiled, [88, 82, 2, true, true, 88, "pool"], CATALOGUE);
    expect(us).toEqual([
      ["mode", "outdoor", ""],
      ["valve position", "outdoor", ""],
      ["outdoor fan", "on", ""],
      ["pump wanted", "no", ""],
      ["reason", "pool at 88 °F, high limit 88 °F", ""],
    ]);
    const si = evaluate(compiled, [28, 28, 1, "yes", "TRUE", 31, "pool", "", "", "", "", "", "", "", "SI"], CATALOGUE);
    expect(JSON.stringify(si)).toContain("pool at 28 °C, set point 28 °C");
  });

  test("refuses a blank where a switch must be known", () => {
    const out = evaluate(compiled, [78, 82, 2, true, null, 88], CATALOGUE);
    expect(isFault(out) ? out.message : "").toMatch(/flowProven: is blank/);
  });
});
