/** The failures of the sequence, what it does in each, and the time there is. */
import type { Line } from "../layout";

interface Failure {
  readonly key: string;
  readonly label: string;
  /** Arguments of CONTROL.DIVERT that differ from an undisturbed pool. */
  readonly state: Partial<Record<StateKey, string>>;
  /** The clock: a formula, its format, and what it means. */
  readonly clock: string;
  readonly format: string;
  readonly means: string;
}

const USUAL = {
  pool: "[pool]",
  coolingCalls: "TRUE",
  flowProven: "TRUE",
  minutes: "1",
  heating: "FALSE",
  sensorGood: "TRUE",
  leaving: '""',
  trip: "FALSE",
};
type StateKey = keyof typeof USUAL;

const divert = (state: Failure["state"], row: number): string => {
  const s = { ...USUAL, ...state };
  return `INDEX(WARMBACK.CONTROL.DIVERT(${s.pool},[setPoint],[band],${s.coolingCalls},${s.flowProven},[highLimit],"pool",${s.minutes},5,${s.heating},${s.sensorGood},${s.leaving},[leavingLimit],${s.trip}),${row},2)`;
};

const FAILURES: readonly Failure[] = [
  {
    key: "noFlow",
    label: "Water flow lost",
    state: { flowProven: "FALSE" },
    clock: "=[toLimit]",
    format: "0",
    means: "s until the plastic's limit: EXCHANGER.FLOWSTOP",
  },
  {
    key: "trip",
    label: "Head-pressure control trips",
    state: { trip: "TRUE" },
    clock: "=[toCutOut]",
    format: "0",
    means: "s from flow lost to the cut-out: EXCHANGER.FLOWSTOP",
  },
  {
    key: "leavingHot",
    label: "Leaving water at its limit",
    state: { leaving: "[leavingLimit]" },
    clock: "=[limitCycles]",
    format: "0",
    means: "cycles an hour by its band alone: CONTROL.CYCLING",
  },
  {
    key: "sensorLost",
    label: "Pool sensor fails",
    state: { sensorGood: "FALSE" },
    clock: "=[volume]*8.3171*([highLimit]-[pool])/[heat]",
    format: "0.0",
    means: "h until the pool would be at its high limit",
  },
  {
    key: "poolHot",
    label: "Pool at its high limit",
    state: { pool: "[highLimit]" },
    clock: "=[poolCycles]",
    format: "0.00",
    means: "valve cycles an hour by the pool's band: CONTROL.CYCLING",
  },
  {
    key: "valveSlams",
    label: "A valve slams and stops the water",
    state: { flowProven: "FALSE" },
    clock: "=[surge]",
    format: "0",
    means: "psi of surge: PIPE.HAMMER",
  },
  {
    key: "defrost",
    label: "Heating or defrost begins",
    state: { heating: "TRUE" },
    clock: "=[shellHours]",
    format: "0.0",
    means: "h until still water in the shell freezes, by the air alone; a coil that evaporates is minutes",
  },
  {
    key: "powerOff",
    label: "Power off in frost",
    state: { coolingCalls: "FALSE" },
    clock: "=[pipeHours]",
    format: "0.0",
    means: "h until the pipe begins to freeze: PIPE.FREEZE",
  },
];

export const FAILURE_HEADS: Line = {
  label: "Failure",
  labelStyle: "Heading 3",
  value: "Sequence sends it",
  style: "Heading 3",
  source: "What the clock counts",
  sourceStyle: "Heading 3",
  note: "Why, by CONTROL.DIVERT",
  noteStyle: "Heading 3",
  extra: { C: { content: "Clock", style: "Heading 3" } },
};

export const FAILURE_LINES: readonly Line[] = FAILURES.map(({ key, label, state, clock, format, means }) => ({
  key,
  label,
  value: `=${divert(state, 1)}`,
  style: "Calculation",
  source: means,
  note: `=${divert(state, 5)}`,
  extra: { C: { content: clock, style: "Calculation", format } },
}));

export const FIRST_FAILURE = FAILURES[0]?.key ?? "";
export const LAST_FAILURE = FAILURES.at(-1)?.key ?? "";
