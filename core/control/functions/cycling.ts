import { block, quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { HEAT_RATE } from "../../kernel/define/glossary";
import { listResult, quantityResult, wordResult } from "../../kernel/define/result";
import { us } from "../../kernel/values/quantity";
import { stoppedCapacity } from "../../exchanger/water/stoppedFlowEquations";
import { steadyCycle } from "../cycling";
import { shortCycling, startsEstimate, wideSwing } from "../cyclingCautions";
import { shortestCycle, startsByLoad, warmingRate } from "../cyclingEquations";

const least = (description: string) =>
  quantity("minutes", description, { from: 0, to: us("minutes", 120) }).default(us("minutes", 5));

const INPUTS = block(
  {
    heat: HEAT_RATE.describedAs("heat to the water while on"),
    volume: quantity("pool volume", "water that the sensor controls: pool, or exchanger", { above: 0 }),
    band: quantity("temperature difference", "dead band", { above: 0, to: us("temperature difference", 40) }),
    metal: quantity("mass", "titanium in the water", { from: 0 }).default(0),
    load: quantity("fraction", "heat that the water loses, as a share of heat; 0.5 switches most", {
      above: 0,
      below: 1,
    }).default(0.5),
    sensor: quantity("seconds", "time constant of the sensor: bare 1 to 5 s, in a well 10 to 60 s", {
      from: 0,
      to: 3600,
    }).default(15),
    leastOn: least("least time on"),
    leastOff: least("least time off"),
    compressorShare: quantity("fraction", "share of the time that the room runs the compressor", {
      from: 0,
      to: 1,
    }).default(0.5),
    compressorMost: quantity("number", "compressor starts an hour at half load", { from: 0, to: 60 }).default(3),
  },
  "input block: heat, volume, band, load, sensor, least times, compressor",
);

const POOL = { heat: 48000, volume: 20000, band: 1, sensor: 0 };
const LIMIT = { heat: 48000, volume: 1.2, metal: 8, band: 10, sensor: 0 };

export const controlCycling = cellFunction({
  id: "CONTROL.CYCLING",
  topic: "control",
  summary: "Starts an hour of diverting valve and compressor by dead band, mass of water and sensor lag.",
  keywords: ["short cycling", "dead band", "hysteresis", "differential", "starts per hour", "anti-recycle timer"],
  details: [
    "One well-mixed mass, constant heat and loss, a first-order sensor: the steady cycle is exact. Long against the sensor's time constant, the lag widens the swing by heat × lag over capacity.",
    "Least times on and off are kept: then the swing grows beyond the band. The pool's band never short-cycles; a limit of the leaving water, on a gallon or two, does: it must latch.",
    "Valve: one cycle for each of the band's, and one for each compressor start while the pool is chosen, as it falls back to outdoors when idle.",
  ],
  args: { inputs: INPUTS },
  returns: listResult("cycling", {
    onTime: quantityResult("minutes", "on, least times kept"),
    offTime: quantityResult("minutes", "off, least times kept"),
    cycles: quantityResult("number", "cycles an hour"),
    swing: quantityResult("temperature difference", "swing of the water"),
    bandCycles: quantityResult("number", "cycles an hour by the band alone"),
    shortestCycle: quantityResult("minutes", "shortest cycle by the band alone, at half load"),
    compressorStarts: quantityResult("number", "compressor starts an hour, by the room"),
    valveStarts: quantityResult("number", "cycles an hour of the diverting valve, at most"),
    governs: wordResult("band, or least times"),
  }),
  facts: { band: "temperature difference", bandOn: "minutes", bandOff: "minutes" },
  cautions: [
    { rule: shortCycling, raisedBy: { inputs: LIMIT } },
    { rule: wideSwing, raisedBy: { inputs: LIMIT } },
    { rule: startsEstimate, raisedBy: { inputs: POOL } },
  ],
  example: { inputs: { ...POOL, band: 2, load: 0.3, sensor: 30 } },
  checks: [
    {
      inputs: { inputs: POOL },
      expected: { shortestCycle: 834, swing: 1 },
      tolerance: "0.5 %",
      source: "commonPractice",
      remark: "4 × 166,800 BTU/°F × 1 °F / 48,000 BTU/h: 13.9 h",
    },
    {
      inputs: { inputs: LIMIT },
      expected: { shortestCycle: 0.55, governs: "least times" },
      tolerance: "0.5 %",
      source: "commonPractice",
      remark: "4 × 11 BTU/°F × 10 °F / 48,000 BTU/h: 33 s",
    },
    {
      inputs: { inputs: { ...POOL, compressorShare: 0.25 } },
      expected: { compressorStarts: 2.25 },
      tolerance: 1e-9,
      source: "commonPractice",
      remark: "4 × 3 × 0.25 × 0.75",
    },
    { inputs: { inputs: { ...POOL, band: 0 } }, expected: "#VALUE!", source: "identity" },
  ],
  compute({ inputs }, { trace, step, recordFacts }) {
    const { heat: Q, band: b, load: x, sensor: tau, leastOn, leastOff, compressorShare } = inputs;
    const C = step(stoppedCapacity, { V: inputs.volume, m: inputs.metal });
    const rise = step(warmingRate, { x, Q, C });
    const fall = (x * Q) / C;
    const bandOn = steadyCycle(rise, fall, tau, b, trace);
    const bandOff = (bandOn * rise) / fall;
    const onTime = Math.max(bandOn, leastOn, (leastOff * fall) / rise);
    const offTime = (onTime * rise) / fall;
    const held = onTime > bandOn;
    recordFacts({ band: b, ...(held && { bandOn, bandOff }) });
    const compressorStarts = step(startsByLoad, { Nm: inputs.compressorMost, x: compressorShare });
    const cycles = 3600 / (onTime + offTime);
    return {
      onTime,
      offTime,
      cycles,
      swing: rise * onTime,
      bandCycles: 3600 / (bandOn + bandOff),
      shortestCycle: step(shortestCycle, { C, b, Q, tau }),
      compressorStarts,
      valveStarts: cycles + (compressorStarts * onTime) / (onTime + offTime),
      governs: held ? "least times" : "band",
    };
  },
});
