/** A small function of every argument kind, for the kernel's own tests. */
import { block, choice, either, quantity, rows, several, text, yesNo } from "../../core/kernel/define/argument";
import { caution } from "../../core/kernel/define/caution";
import { cellFunction } from "../../core/kernel/define/cellFunction";
import { notAvailable } from "../../core/kernel/values/fault";
import { BASIS } from "../../core/kernel/define/pressureBasis";
import { us } from "../../core/kernel/values/quantity";
import { NO_VALUE, listResult, quantityResult, tableResult, wordResult } from "../../core/kernel/define/result";

const SOURCE = "identity" as const;

export const tooLong = caution({
  code: "SAMPLE-LONG",
  severity: "Caution",
  source: SOURCE,
  description: "Longer than a hundred metres.",
  needs: { length: "length", doubled: "length" },
  when: ({ length }) => length > 100,
  message: ({ length, doubled }, show) => `${show(length, "length")} doubles to ${show(doubled, "length")}`,
});

/** Doubles a length. */
export const doubling = cellFunction({
  id: "SAMPLE.DOUBLE",
  topic: "sample",
  summary: "Twice a length.",
  args: {
    length: quantity("length", "a length", { above: 0, to: 1e6, usual: [0, 1000] }),
    scale: choice("Scale", ["once", "twice"], "how often").default("once"),
    add: quantity("length", "more").optional(),
    shown: yesNo("whether shown").default(true),
    name: text("a name", 10).default("none"),
    share: either(
      choice("Share", ["none", "half"], "a share"),
      quantity("fraction", "a share", { to: 1 }),
      "a share",
    ).default("none"),
    widths: several("length", "one or two widths", [1, 2]).default([1]),
  },
  returns: quantityResult("length", "the doubled length"),
  facts: { doubled: "length" },
  cautions: [{ rule: tooLong, raisedBy: { length: 400 } }],
  checks: [{ inputs: { length: 2 }, expected: 4, tolerance: 1e-9, source: SOURCE }],
  compute({ length, scale, add, share, widths }, { recordFacts }) {
    const doubled =
      (scale === "twice" ? 4 : 2) * length + (add ?? 0) + (share === "half" ? 0.5 : share === "none" ? 0 : share);
    recordFacts({ doubled });
    return doubled + (widths.length - 1) * (widths[1] ?? 0);
  },
});

/** Gives back a gauge reading and its absolute value. */
export const reading = cellFunction({
  id: "SAMPLE.READING",
  topic: "sample",
  summary: "A pressure reading, absolute and as read.",
  args: { pressure: quantity("pressure", "a reading", { reading: true }), basis: BASIS },
  returns: listResult("readings", {
    absolute: quantityResult("pressure", "absolute"),
    asRead: quantityResult("pressure", "as read", { reading: true }),
    note: wordResult("a word"),
    missing: quantityResult("pressure", "never applies"),
    beyond: quantityResult("pressure", "always outside"),
  }),
  cautions: [],
  checks: [],
  compute: ({ pressure }) => ({
    absolute: pressure,
    asRead: pressure,
    note: "fine",
    missing: NO_VALUE,
    beyond: notAvailable("beyond: no value there"),
  }),
});

/** An input block and rows. */
export const blocks = cellFunction({
  id: "SAMPLE.BLOCK",
  topic: "sample",
  summary: "Reads a block and rows.",
  args: {
    inputs: block(
      {
        poolArea: quantity("area", "the pool's surface", { above: 0 }),
        waterTemperature: quantity("temperature", "the water").default(us("temperature", 80)),
        windAt10m: quantity("wind speed", "the wind").optional(),
        cover: choice("Cover", ["none", "bubble"], "the cover").default("none"),
        mean: quantity("temperature", "a mean").default({
          words: "as the water",
          from: (a) => a["waterTemperature"] as number,
        }),
      },
      "the block",
    ),
    curve: rows({ flow: quantity("water flow", "flow"), head: quantity("head", "head").default(0) }, "a curve", {
      least: 1,
      most: 3,
    }).default([]),
  },
  returns: tableResult("rows", {
    item: wordResult("what"),
    area: quantityResult("area", "area"),
    temperature: quantityResult("temperature", "t"),
    flow: quantityResult("water flow", "sum"),
  }),
  cautions: [],
  checks: [],
  compute: ({ inputs, curve }) => [
    {
      item: inputs.cover,
      area: inputs.poolArea,
      temperature: inputs.mean,
      flow: curve.reduce((sum, { flow, head }) => sum + flow + 0 * head, 0),
    },
  ],
});

/** A remembered function that counts its runs through `count`. */
export const heavyOne = (count: () => void): ReturnType<typeof cellFunction> =>
  cellFunction({
    id: "SAMPLE.HEAVY",
    topic: "sample",
    summary: "Counts its runs.",
    memoised: true,
    args: {
      value: quantity("number", "a value"),
      more: rows({ x: quantity("number", "x") }, "more", { least: 1, most: 9 }).optional(),
    },
    returns: quantityResult("number", "the value"),
    cautions: [],
    checks: [],
    compute({ value }) {
      count();
      return value;
    },
  });
