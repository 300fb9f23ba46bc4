/**
 * Where the heat goes: a pure decision from sensors and switches. The rules are data in their order; the
 * first one that holds decides. Everything that must not heat the pool comes before any minimum time.
 */
import { silent, type Trace } from "../kernel/define/steps";
import { quantityMark } from "../kernel/values/quantityMark";

export type Mode = "pool" | "outdoor" | "idle";

export interface DivertState {
  /** K */
  readonly pool: number;
  readonly setPoint: number;
  /** K, below the set point. */
  readonly band: number;
  readonly coolingCalls: boolean;
  readonly flowProven: boolean;
  /** K, of the pool. */
  readonly highLimit: number;
  readonly was: Mode;
  /** s; undefined counts as met. */
  readonly minutesInMode: number | undefined;
  readonly minimumMinutes: number;
  readonly heatingOrDefrost: boolean;
  readonly sensorGood: boolean;
  /** K */
  readonly leavingWater: number | undefined;
  readonly leavingLimit: number;
  readonly headPressureTrip: boolean;
}

export interface Decision {
  readonly mode: Mode;
  readonly valvePosition: "pool" | "outdoor";
  readonly outdoorFan: "on" | "off" | "as the machine's own control";
  readonly pumpWanted: "yes" | "no";
  readonly reason: string;
}

interface Rule {
  /** The text of the help page. */
  readonly description: string;
  readonly mode: (s: DivertState) => Mode;
  readonly holds: (s: DivertState) => boolean;
  readonly reason: (s: DivertState) => string;
}

const temperature = (value: number): string => quantityMark("temperature", value);
const outdoor = (): Mode => "outdoor";
const unchanged = ({ was }: DivertState): Mode => was;

/** Below the band, or within it while heating the pool. */
const wantsHeat = ({ pool, setPoint, band, was }: DivertState): boolean =>
  pool < setPoint - band || (pool < setPoint && was === "pool");

const isWithinMinimum = ({ was, minutesInMode, minimumMinutes }: DivertState): boolean =>
  was !== "idle" && minutesInMode !== undefined && minutesInMode < minimumMinutes;

const isLeavingTooHot = ({ leavingWater, leavingLimit }: DivertState): boolean =>
  leavingWater !== undefined && leavingWater >= leavingLimit;

/** In their order: the first that holds decides. */
export const DIVERT_RULES: readonly Rule[] = [
  {
    description: "heating or defrost: outdoor, at once",
    mode: outdoor,
    holds: (s) => s.heatingOrDefrost,
    reason: () => "heating or defrost: the pool exchanger must not become the evaporator",
  },
  {
    description: "no call for cooling: idle, valve in the outdoor position",
    mode: () => "idle",
    holds: (s) => !s.coolingCalls,
    reason: () => "no call for cooling",
  },
  {
    description: "head-pressure trip: outdoor, at once",
    mode: outdoor,
    holds: (s) => s.headPressureTrip,
    reason: () => "head-pressure trip",
  },
  {
    description: "flow not proven: outdoor, at once",
    mode: outdoor,
    holds: (s) => !s.flowProven,
    reason: () => "no proven flow through the pool exchanger",
  },
  {
    description: "sensor failed: outdoor, at once",
    mode: outdoor,
    holds: (s) => !s.sensorGood,
    reason: () => "pool sensor has failed",
  },
  {
    description: "pool at or above the high limit: outdoor, at once",
    mode: outdoor,
    holds: (s) => s.pool >= s.highLimit,
    reason: (s) => `pool at ${temperature(s.pool)}, high limit ${temperature(s.highLimit)}`,
  },
  {
    description: "leaving water at or above its limit: outdoor, at once",
    mode: outdoor,
    holds: isLeavingTooHot,
    reason: (s) =>
      `leaving water at ${temperature(s.leavingWater ?? s.leavingLimit)}, limit ${temperature(s.leavingLimit)}`,
  },
  {
    description: "minimum time in the mode not over: no change",
    mode: unchanged,
    holds: isWithinMinimum,
    reason: (s) =>
      `in this mode for ${quantityMark("minutes", s.minutesInMode ?? 0)}, at least ${quantityMark("minutes", s.minimumMinutes)}`,
  },
  {
    description: "pool below the set point less the band, or below the set point while heating: pool",
    mode: () => "pool",
    holds: wantsHeat,
    reason: (s) =>
      s.pool < s.setPoint - s.band
        ? `pool at ${temperature(s.pool)}, below ${temperature(s.setPoint - s.band)}`
        : `pool at ${temperature(s.pool)}, heated on to ${temperature(s.setPoint)}`,
  },
  {
    description: "else (pool warm enough, or cooling within the band): outdoor",
    mode: outdoor,
    holds: () => true,
    reason: (s) =>
      s.pool >= s.setPoint
        ? `pool at ${temperature(s.pool)}, set point ${temperature(s.setPoint)}`
        : `pool at ${temperature(s.pool)}, within the band: heat again below ${temperature(s.setPoint - s.band)}`,
  },
];

/** The pump should run in pool mode, if only the flow is missing, and to remove heat after the leaving limit. */
const isPumpWanted = (s: DivertState, mode: Mode): boolean => {
  if (mode === "pool") return true;
  const barred = s.heatingOrDefrost || !s.coolingCalls || s.headPressureTrip || !s.sensorGood || s.pool >= s.highLimit;
  return !barred && ((!s.flowProven && wantsHeat(s)) || isLeavingTooHot(s));
};

const fanIn = (s: DivertState, mode: Mode): Decision["outdoorFan"] => {
  if (s.heatingOrDefrost) return "as the machine's own control";
  return mode === "outdoor" ? "on" : "off";
};

/** The decision of the sequence and its reason. Never the pool without a call, proven flow, a good sensor, and both limits kept. */
export const divertStates = (s: DivertState, trace: Trace = silent): Decision => {
  const place = DIVERT_RULES.findIndex(({ holds }) => holds(s));
  const rule = DIVERT_RULES[place];
  if (!rule) throw new Error("no rule of the sequence holds");
  if (trace.on)
    DIVERT_RULES.slice(0, place + 1).forEach(({ description }, i) =>
      trace.lookup({
        table: "Sequence of operation",
        row: `rule ${i + 1}, ${description}`,
        result: i === place ? "holds: decides" : "does not hold",
        source: "commonPractice",
      }),
    );
  const mode = rule.mode(s);
  return {
    mode,
    valvePosition: mode === "pool" ? "pool" : "outdoor",
    outdoorFan: fanIn(s, mode),
    pumpWanted: isPumpWanted(s, mode) ? "yes" : "no",
    reason: rule.reason(s),
  };
};
