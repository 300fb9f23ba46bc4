/** A small function of every argument kind, for the kernel's own tests. */
import { block, choice, either, quantity, rows, several, text, yesNo } from "../../core/kernel/define/argument";
import { caution } from "../../core/kernel/define/caution";
import { cellFunction } from "../../core/kernel/define/cellFunction";
import { outside } from "../../core/kernel/values/fault";
import { BASIS } from "../../core/kernel/define/pressureBasis";
import { us } from "../../core/kernel/values/quantity";
import { NO_VALUE, list, of, table, word } from "../../core/kernel/define/result";

const SOURCE = "identity" as const;

const tooLong = caution({
  code: "SAMPLE-LONG",
  severity: "Caution",
  source: SOURCE,
  about: "Longer than a hundred metres.",
  needs: { length: "length", doubled: "length" },
  when: ({ length }) => length > 100,
  say: ({ length, doubled }, show) => `${show(length, "length")} doubles to ${show(doubled, "length")}`,
});

/** Doubles a length. */
export const doubling = cellFunction({
  id: "SAMPLE.DOUBLE",
  topic: "sample",
  summary: "Twice a length.",
  args: {
    length: quantity("length", "a length", { above: 0, to: 1e6, usual: [0, 1000] }),
    scale: choice("Scale", ["once", "twice"], "how often").otherwise("once"),
    add: quantity("length", "more").optionally(),
    shown: yesNo("whether shown").otherwise(true),
    name: text("a name", 10).otherwise("none"),
    share: either(
      choice("Share", ["none", "half"], "a share"),
      quantity("fraction", "a share", { to: 1 }),
      "a share",
    ).otherwise("none"),
    widths: several("length", "one or two widths", [1, 2]).otherwise([1]),
  },
  gives: of("length", "the doubled length"),
  facts: { doubled: "length" },
  cautions: [{ rule: tooLong, fires: { length: 400 } }],
  checks: [{ at: { length: 2 }, gives: 4, within: 1e-9, from: SOURCE }],
  work({ length, scale, add, share, widths }, { note }) {
    const doubled =
      (scale === "twice" ? 4 : 2) * length + (add ?? 0) + (share === "half" ? 0.5 : share === "none" ? 0 : share);
    note({ doubled });
    return doubled + (widths.length - 1) * (widths[1] ?? 0);
  },
});

/** Gives back a gauge reading and its absolute value. */
export const reading = cellFunction({
  id: "SAMPLE.READING",
  topic: "sample",
  summary: "A pressure reading, absolute and as read.",
  args: { pressure: quantity("pressure", "a reading", { reading: true }), basis: BASIS },
  gives: list("readings", {
    absolute: of("pressure", "absolute"),
    asRead: of("pressure", "as read", { reading: true }),
    note: word("a word"),
    missing: of("pressure", "never applies"),
    beyond: of("pressure", "always outside"),
  }),
  cautions: [],
  checks: [],
  work: ({ pressure }) => ({
    absolute: pressure,
    asRead: pressure,
    note: "fine",
    missing: NO_VALUE,
    beyond: outside("beyond: no value there"),
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
        waterTemperature: quantity("temperature", "the water").otherwise(us("temperature", 80)),
        windAt10m: quantity("wind speed", "the wind").optionally(),
        cover: choice("Cover", ["none", "bubble"], "the cover").otherwise("none"),
        mean: quantity("temperature", "a mean").otherwise({
          says: "as the water",
          from: (a) => a["waterTemperature"] as number,
        }),
      },
      "the block",
    ),
    curve: rows({ flow: quantity("water flow", "flow"), head: quantity("head", "head").otherwise(0) }, "a curve", {
      least: 1,
      most: 3,
    }).otherwise([]),
  },
  gives: table("rows", {
    item: word("what"),
    area: of("area", "area"),
    temperature: of("temperature", "t"),
    flow: of("water flow", "sum"),
  }),
  cautions: [],
  checks: [],
  work: ({ inputs, curve }) => [
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
    heavy: true,
    args: {
      value: quantity("number", "a value"),
      more: rows({ x: quantity("number", "x") }, "more", { least: 1, most: 9 }).optionally(),
    },
    gives: of("number", "the value"),
    cautions: [],
    checks: [],
    work({ value }) {
      count();
      return value;
    },
  });
