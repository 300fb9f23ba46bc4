import { quantity, rows, text } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { NO_VALUE, quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { sumOf } from "../../numeric/series";
import { traceFor } from "../../kernel/define/steps";
import { densityOfWater } from "../../water/equations";
import { drainCover } from "../network/cautions";
import { LINK_COLUMNS, NETWORK_INPUTS_DEFAULT, PUMP_COLUMNS } from "../network/networkArgs";
import { CURVE_COLUMNS } from "../network/partCurve";
import { flowBelowNeed, slowestTurnoverAtSpeed, speedLosses } from "../network/networkCautions";
import { checkEfficiencyPoints, leastSpeedFor, pumpInSystem, systemOf, wirePower } from "../network/speeds";

const { flow, head, H0, b, c } = PUMP_COLUMNS;

const SYSTEM_COLUMNS = {
  ...LINK_COLUMNS,
  from: LINK_COLUMNS.from.optional(),
  to: LINK_COLUMNS.to.optional(),
  element: text("element; the pump's has pump in its name", 80).optional(),
  staticHead: quantity("head", "height that the pump lifts to", { from: -100, to: 1000 }).default(0),
  ...CURVE_COLUMNS,
};

const PUMP = [[null, null, "20 m", 0, "0.0306 m/(m³/h)²"]];
const system = (staticHead: string) => [
  ["loss", "known flow", "static head"],
  ["8 m", "14 m³/h", staticHead],
];
const EXAMPLE = {
  pump: PUMP,
  system: system("0 m"),
  schedule: [
    [1, 2],
    [0.4, 12, null, 25],
  ],
  efficiency: 0.45,
  price: 0.16,
  volume: 20000,
};

export const pipeSpeeds = cellFunction({
  id: "PIPE.SPEEDS",
  topic: "pipe",
  summary: "A pump at the speeds of a schedule: flow, head, power, energy, cost, turnover, least speed.",
  keywords: ["variable speed pump", "affinity laws", "turnover", "pump schedule", "energy factor", "wire to water"],
  details: [
    'Pump rows: flow, head (points), or H0, b, c. System: one row under the header "loss, known flow, static head", or the rows of PIPE.NETWORK with one pump and the pool as the only level.',
    "Schedule rows: speed as a share of the curve's, hours a day, its own price (tariff period), least flow of what runs then (feeder, heater, exchanger, flow switch, EXCHANGER.HOLDHEAD's flow): the last column is the least speed for it.",
    "Efficiency from wire to water: one number, or rows of efficiency and flow at the curve's speed; at other speeds it is taken at the similar point and corrected by Sarbu and Borza. Water at 80 °F.",
    "Affinity laws hold against friction alone; against static head this solves pump and system at every speed. Below the speed that reaches the height there is no flow.",
    "The highest flow here belongs into PIPE.DRAINCOVER.",
  ],
  args: {
    pump: rows({ flow, head, H0, b, c }, "rows of the pump: flow, head, or H0, b, c", { least: 1, most: 200 }),
    system: rows(SYSTEM_COLUMNS, 'one row under "loss, known flow, static head", or rows of PIPE.NETWORK', {
      least: 1,
      most: 200,
    }),
    schedule: rows(
      {
        speed: quantity("number", "speed as a share of the curve's", { above: 0, to: 1.5 }),
        hours: quantity("time", "hours a day", { from: 0, to: us("time", 24) }).default(0),
        price: quantity("price of electricity", "price in that period", { from: 0 }).optional(),
        leastFlow: WATER_FLOW.describedAs("least flow at that speed").optional(),
      },
      "rows: speed, hours a day, [price], [least flow]",
      { least: 1, most: 48 },
    ),
    efficiency: rows(
      {
        efficiency: quantity("fraction", "efficiency from wire to water", { above: 0, to: 1 }),
        flow: WATER_FLOW.describedAs("flow at the curve's speed").optional(),
      },
      "wire-to-water efficiency, or rows: efficiency, flow",
      { least: 1, most: 50 },
    ).default({ words: "unknown", from: () => [] }),
    price: quantity("price of electricity", "price of electricity", { from: 0 }).optional(),
    volume: quantity("pool volume", "volume of the pool", { above: 0 }).optional(),
  },
  returns: tableResult(
    "the pump by speed",
    {
      what: wordResult("speed, and the day's total"),
      flow: quantityResult("water flow", "flow"),
      head: quantityResult("head", "head of the pump"),
      power: quantityResult("electric power", "electric power"),
      hours: quantityResult("time", "hours a day"),
      energy: quantityResult("electric energy", "energy a day"),
      cost: quantityResult("money", "cost a day"),
      turnover: quantityResult("time", "time to turn the pool over; of the total, at the day's mean flow"),
      leastSpeed: quantityResult("number", "least speed for the least flow"),
    },
    { total: true },
  ),
  facts: { shortFlow: "water flow", neededFlow: "water flow", slowestTurnover: "time", lowestSpeed: "number" },
  memoised: true,
  cautions: [
    { rule: drainCover, raisedBy: EXAMPLE },
    { rule: flowBelowNeed, raisedBy: { ...EXAMPLE, schedule: [[0.3, 10, null, 40]] } },
    { rule: slowestTurnoverAtSpeed, raisedBy: EXAMPLE },
    { rule: speedLosses, raisedBy: EXAMPLE },
  ],
  example: EXAMPLE,
  checks: [
    {
      inputs: { pump: PUMP, system: system("1 m"), schedule: [[0.5, 10]], units: "SI" },
      expected: { row: "50 % speed", column: "flow", value: 7.483956 },
      tolerance: 1e-5,
      source: "pumpSpeedRows",
    },
    {
      inputs: { pump: PUMP, system: system("1 m"), schedule: [[1, 10, null, 20]] },
      expected: { row: "100 % speed", column: "leastSpeed", value: 0.352 },
      tolerance: 0.0005,
      source: "pumpSpeedRows",
      remark: "sqrt((Hs + (k + c) Q²)/H0)",
    },
    {
      inputs: { ...EXAMPLE, schedule: [[1, 5]], efficiency: 0.8655155, price: 0.16 },
      expected: { row: "total", column: "cost", value: 175 / 365 },
      tolerance: 0.002,
      source: "poolEnergyNotes",
      remark: "3 kWh a day, here as 600 W for 5 h: 175 $ a year",
    },
    {
      inputs: { pump: PUMP, system: system("2.5 m"), schedule: [[0.3, 10]], units: "SI" },
      expected: { row: "30 % speed", column: "flow", value: 0 },
      tolerance: 1e-9,
      source: "pumpSpeedRows",
      remark: "the head at no flow doesn't reach the height",
    },
  ],
  compute({ pump, system: given, schedule, efficiency, price, volume }, { trace, recordFacts }) {
    checkEfficiencyPoints(efficiency);
    const water = NETWORK_INPUTS_DEFAULT.water;
    const rho = densityOfWater.code({ T: water });
    const pointAt = pumpInSystem(systemOf(given), pump, NETWORK_INPUTS_DEFAULT);
    const lines = schedule.map(({ speed, hours, price: own, leastFlow }) => {
      const what = `${Number((100 * speed).toPrecision(4))} % speed`;
      const point = pointAt(speed, traceFor(what, trace));
      const power =
        efficiency.length === 0
          ? NO_VALUE
          : point.flow > 0
            ? wirePower(point, speed, efficiency, rho, traceFor(what, trace))
            : 0;
      const energy = power === NO_VALUE ? NO_VALUE : power * hours;
      const rate = own ?? price;
      return {
        what,
        ...point,
        power,
        hours,
        energy,
        cost: energy === NO_VALUE || rate === undefined ? NO_VALUE : energy * rate,
        turnover: volume === undefined || point.flow === 0 ? NO_VALUE : volume / point.flow,
        leastSpeed: leastFlow === undefined ? NO_VALUE : (leastSpeedFor(pointAt, leastFlow) ?? NO_VALUE),
      };
    });
    const short = lines.findIndex((line, i) => line.flow < (schedule[i]?.leastFlow ?? 0) * (1 - 1e-9));
    const turnovers = lines.flatMap(({ turnover }) => (turnover === NO_VALUE ? [] : [turnover]));
    recordFacts({
      lowestSpeed: Math.min(...schedule.map(({ speed }) => speed)),
      ...(turnovers.length > 0 && { slowestTurnover: Math.max(...turnovers) }),
      ...(short >= 0 && { shortFlow: lines[short]?.flow ?? 0, neededFlow: schedule[short]?.leastFlow ?? 0 }),
    });
    const hours = sumOf(lines, (line) => line.hours);
    const moved = sumOf(lines, (line) => line.flow * line.hours);
    const total = (values: readonly (number | "")[]): number | "" =>
      values.includes(NO_VALUE) ? NO_VALUE : sumOf(values, Number);
    const sum = {
      what: "total",
      flow: hours > 0 ? moved / hours : NO_VALUE,
      head: NO_VALUE,
      power: NO_VALUE,
      hours,
      energy: total(lines.map((line) => line.energy)),
      cost: total(lines.map((line) => line.cost)),
      turnover: volume === undefined || moved === 0 ? NO_VALUE : (volume * hours) / moved,
      leastSpeed: NO_VALUE,
    };
    return [...lines, sum];
  },
});
