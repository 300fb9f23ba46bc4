/** Arguments that several topics share: their words, units and limits as help pages print them, and what raises no notice. */
import { describe, expect, test } from "vitest";
import type { ArgData } from "../../core/kernel/define/argument";
import * as glossary from "../../core/kernel/define/glossary";
import { argText, limitsText } from "../../core/kernel/explain/describe";
import { showReadable } from "../../core/kernel/values/quantity";

const usualOf = ({ shape }: ArgData): string | undefined => {
  if (shape.type !== "quantity" || shape.usual === undefined || typeof shape.kind !== "string") return undefined;
  const { kind } = shape;
  return shape.usual.map((each) => showReadable(each, kind, "US")).join(" to ");
};

describe("A shared argument", () => {
  test.each<[string, ArgData, string, string, string | undefined]>([
    ["water flow", glossary.WATER_FLOW, "gpm (SI: m³/h): water flow", "above 0 gpm", "2 gpm to 1000 gpm"],
    [
      "water temperature",
      glossary.WATER_TEMPERATURE,
      "°F (SI: °C): water temperature",
      "from 32 °F, to 212 °F",
      "40 °F to 110 °F",
    ],
    [
      "pool water",
      glossary.POOL_WATER,
      "°F (SI: °C): temperature of the pool water",
      "from 32 °F, to 120 °F",
      "45 °F to 104 °F",
    ],
    [
      "air temperature",
      glossary.AIR_TEMPERATURE,
      "°F (SI: °C): air temperature (dry bulb)",
      "from -60 °F, to 150 °F",
      "-20 °F to 120 °F",
    ],
    ["humidity", glossary.HUMIDITY, "relative humidity of the air, as a fraction", "from 0, to 1", undefined],
    [
      "heat rate",
      glossary.HEAT_RATE,
      "BTU/h (SI: kW): heat per hour",
      "above 0 BTU/h",
      "1000 BTU/h to 5,000,000 BTU/h",
    ],
    ["altitude", glossary.ALTITUDE, "ft (SI: m): altitude above sea level", "from -1640 ft, to 16,404 ft", undefined],
  ])("for %s says its units, limits and what is usual", (_, arg, words, limits, usual) => {
    expect([argText(arg), limitsText(arg.shape, "US"), usualOf(arg)]).toEqual([words, limits, usual]);
    expect(arg.presence).toBe("required");
  });
});
