/** Networks of the examples and checks, in US units. */
/** Two pipes share a given flow. */
export const PARALLEL = {
  rows: [
    ["A", "pool", "pipe 2 in", "2 in", null, 60, 4],
    ["A", "pool", "pipe 1-1/2 in", "1-1/2 in", null, 40, 3],
  ],
  nodes: [["A", 0, null, -60]],
};

/** H = 20 − 0.0306 Q², m and m³/h. */
export const PUMP = ["pump", 1, null, null, "20 m", 0, "0.0306 m/(m³/h)²"];
export const SHORT = [
  ["pool", "s", "suction", "2 in", null, 40, "5.5"],
  ["s", "d", "pump"],
  ["d", "pool", "return", "2 in", null, 60, "9"],
];
export const SPA = [
  ...SHORT.slice(0, 2),
  ["d", "r", "filter", null, null, null, null, null, null, null, null, "2.5 m", "14 m³/h"],
  ["r", "p", "pool valve", null, null, null, null, "60 Kv", 0.7, "linear"],
  ["p", "pool", "pool returns", "2 in", null, 60, "6"],
  ["r", "spa", "check valve, spa", "1-1/2 in", null, 45, "7.5"],
];
export const SPA_NODES = [
  ["pool", "-0.3 m", "0 m"],
  ["spa", "0.3 m", "0.6 m"],
];
export const roof = (speed: number) => ({
  rows: [
    ...SHORT.slice(0, 2),
    ["d", "top", "riser", "1-1/2 in", null, 45, "4"],
    ["top", "pool", "downcomer", "1-1/2 in", null, 40, "3.5"],
    ["top", "air", "vacuum breaker"],
  ],
  pumps: [["pump", speed, ...PUMP.slice(2)]],
  nodes: [["top", "4.9 m"]],
});
export const withPump = { rows: SHORT, pumps: [PUMP] };
