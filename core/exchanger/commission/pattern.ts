/** What the pattern of differences means. Common practice of the trade: a pattern points, it doesn't prove. */
import { sideOf, type CommissionLine } from "./inputs";

export type SideOfExpected = "high" | "low" | "agrees" | undefined;
export type Sides = (key: string) => SideOfExpected;

export function sidesOf(lines: readonly CommissionLine[]): Sides {
  const sides = new Map(lines.map((line) => [line.key, sideOf(line)]));
  return (key) => sides.get(key);
}

interface Pattern {
  readonly when: (side: Sides) => boolean;
  readonly means: string;
}

const both = (side: Sides, pool: string, outdoor: string, is: SideOfExpected): boolean =>
  side(pool) === is && (side(outdoor) === is || side(outdoor) === undefined);

const noneIn = (side: Sides, keys: readonly string[], is: SideOfExpected): boolean =>
  keys.every((key) => side(key) !== is);

const PATTERNS: readonly Pattern[] = [
  {
    when: (side) => side("rest") === "high",
    means: "non-condensables: at rest the pressure is above saturation; recover, evacuate, weigh in again",
  },
  {
    when: (side) => side("rest") === "low",
    means:
      "pressure at rest below saturation: hardly any liquid left, wrong refrigerant, or not yet at one temperature",
  },
  { when: (side) => side("flow") === "low", means: "water flow below plan: filter, strainer, valves, pump speed" },
  {
    when: (side) =>
      side("condensing") === "high" &&
      side("outdoorCondensing") === "high" &&
      side("rest") === undefined &&
      noneIn(side, ["subcooling", "outdoorSubcooling"], "low"),
    means:
      "condensing high in both modes: overcharge or non-condensables; compare the pressure at rest with saturation",
  },
  {
    when: (side) => both(side, "subcooling", "outdoorSubcooling", "high") && side("rest") !== "high",
    means: "subcooling high: overcharge, or non-condensables",
  },
  {
    when: (side) =>
      both(side, "subcooling", "outdoorSubcooling", "low") &&
      (side("superheat") === "high" || side("evaporating") === "low" || side("outdoorSuperheat") === "high"),
    means: "subcooling low with superheat high or evaporating low: charge short; look for a leak first",
  },
  {
    when: (side) =>
      both(side, "subcooling", "outdoorSubcooling", "low") &&
      noneIn(side, ["superheat", "outdoorSuperheat"], "high") &&
      side("evaporating") !== "low",
    means: "subcooling low alone: charge a little short, or the device feeds too much",
  },
  {
    when: (side) =>
      new Set([side("subcooling"), side("outdoorSubcooling")]).size === 2 &&
      side("subcooling") !== undefined &&
      side("outdoorSubcooling") !== undefined,
    means:
      "subcooling differs between the modes: the two condensers hold different charge; receiver, or charge to suit both",
  },
  {
    when: (side) =>
      (side("superheat") === "high" || side("outdoorSuperheat") === "high") &&
      noneIn(side, ["subcooling", "outdoorSubcooling"], "low"),
    means: "superheat high with enough subcooling: restriction, strainer, or device set too tight",
  },
  {
    when: (side) => side("superheat") === "low" || side("outdoorSuperheat") === "low",
    means: "superheat low: liquid may reach the compressor; bulb, device, indoor airflow",
  },
  {
    when: (side) =>
      (side("evaporating") === "low" || side("outdoorEvaporating") === "low") &&
      noneIn(side, ["superheat", "outdoorSuperheat"], "high"),
    means: "evaporating low without high superheat: indoor airflow, filter, load",
  },
  {
    when: (side) =>
      (side("conductance") === "low" || side("condensing") === "high") &&
      side("outdoorCondensing") !== "high" &&
      side("subcooling") !== "high" &&
      side("flow") !== "low",
    means: "the pool exchanger takes less than planned: fouling or scale, air in the shell, less flow than read",
  },
  {
    when: (side) => side("outdoorCondensing") === "high" && side("condensing") !== "high",
    means: "condensing high outdoors only: dirty coil, fan, air drawn in again",
  },
  {
    when: (side) =>
      (side("heat") === "high" || side("heat") === "low") &&
      side("condensing") === "agrees" &&
      side("power") !== side("heat"),
    means:
      "the water's heat alone differs: flow meter or water sensors; swap the sensors, check the flow by the pump curve",
  },
  {
    when: (side) => side("heat") === "low" && side("condensing") === "low",
    means: "less heat at a lower condensing temperature: less load than taken, or a compressor that pumps less",
  },
  {
    when: (side) => side("power") === "high" && side("condensing") === "agrees",
    means: "power high at the condensing expected: voltage, motor, or a fan that the inputs don't count",
  },
];

/** The meanings of the differences, most telling first; empty where all agree. */
export function meaningsOf(side: Sides): readonly string[] {
  return PATTERNS.filter(({ when }) => when(side)).map(({ means }) => means);
}
