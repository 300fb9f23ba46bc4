import { block, quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { HEAT_RATE, POOL_WATER } from "../../kernel/define/glossary";
import { NO_VALUE, listResult, quantityResult, wordResult } from "../../kernel/define/result";
import { notAvailable } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { hotStub, secondsToReach, sensorLag, stoppedCapacity, waterAtCutOut } from "../water/stoppedFlowEquations";
import { cutOutTooLate, flowProof, shutIn } from "../water/stoppedFlowCautions";

const degF = (value: number): number => us("temperature", value);
const hot = (description: string) => quantity("temperature", description, { from: degF(100), to: degF(212) });

const INPUTS = block(
  {
    heat: HEAT_RATE.describedAs("heat of the hot gas, held constant"),
    waterVolume: quantity("pool volume", "water in the shell", { above: 0, usual: [0, us("pool volume", 20)] }),
    metal: quantity("mass", "titanium in the coil", { from: 0 }).default(0),
    startWater: POOL_WATER.describedAs("water when its flow stops"),
    UA: quantity("heat conductance", "conductance between refrigerant and water", { above: 0 }),
    cutOut: quantity("temperature", "high-pressure cut-out, as its saturation temperature", {
      from: degF(90),
      to: degF(212),
    }).default(degF(150)),
    limit: hot("limit of the plastic").default(degF(140)),
    sensor: quantity("seconds", "time constant of the leaving sensor", { from: 0, to: 600 }).default(15),
    gas: quantity("temperature", "hot gas, for the stub", { from: degF(100), to: degF(300) }).default(degF(180)),
    air: quantity("temperature", "air at the stub", { from: degF(0), to: degF(130) }).default(degF(90)),
    stubWall: quantity("diameter", "wall of the stub", { above: 0, to: 0.02 }).default(0.0015),
    stubConductivity: quantity("conductivity", "conductivity of the stub, titanium by default", {
      above: 0,
    }).default(16),
  },
  "input block: heat, water, metal, start, UA, cut-out, limit, sensor, stub",
);

const EXAMPLE = { heat: 48000, waterVolume: 1.2, metal: 8, startWater: 90, UA: 3000 };

export const exchangerFlowStop = cellFunction({
  id: "EXCHANGER.FLOWSTOP",
  topic: "exchanger",
  summary: "Water stops with the hot gas on: time to the plastic's limit and to the cut-out, and what is fast enough.",
  keywords: ["loss of flow", "flow switch", "high-pressure switch", "interlock", "overheating", "PVC"],
  details: [
    "Water and titanium as one lump, heat constant, shell and refrigerant left out: times are on the short side. The condensing temperature rides heat/UA above the water: a coil that is too small trips early, a generous one lets the water get hotter.",
    "Allowed delay: from the stop of the flow to the stop of the gas, water alone counted; a sensor in a well takes its own lag off it. Order of interlocks: flow proof, high-pressure switch, leaving sensor, pool sensor.",
    "Stub: length of metal that cools from the hot gas to the limit by conduction alone, film 10 W/(m²·K); codes and makers ask for more (18 in at water heaters), and water that rises by itself carries heat further: turn the stub down.",
  ],
  args: { inputs: INPUTS },
  returns: listResult("the minute after the stop", {
    rate: quantityResult("temperature difference", "rise a minute"),
    secondsToLimit: quantityResult("seconds", "until the water is at the limit"),
    secondsToCutOut: quantityResult("seconds", "until the cut-out trips"),
    waterAtCutOut: quantityResult("temperature", "water when the cut-out trips"),
    first: wordResult("what comes first"),
    condensingAtStart: quantityResult("temperature", "condensing temperature as the flow stops"),
    condensingAtLimit: quantityResult("temperature", "condensing temperature with the water at the limit"),
    sensorReadsLow: quantityResult("temperature difference", "what the sensor reads low on this ramp"),
    allowedDelay: quantityResult("seconds", "left after the sensor's lag"),
    stub: quantityResult("diameter", "least stub of metal, by conduction alone"),
  }),
  facts: { secondsToLimit: "seconds", waterAtCutOut: "temperature", limit: "temperature" },
  cautions: [
    { rule: flowProof, raisedBy: { inputs: EXAMPLE } },
    { rule: cutOutTooLate, raisedBy: { inputs: { ...EXAMPLE, cutOut: 160 } } },
    { rule: shutIn, raisedBy: { inputs: EXAMPLE } },
  ],
  checks: [
    {
      inputs: { inputs: EXAMPLE },
      expected: { rate: 72.9, secondsToLimit: 41.2, secondsToCutOut: 36.2, waterAtCutOut: 134 },
      tolerance: "0.1 %",
      source: "stopFlowRows",
    },
    { inputs: { inputs: EXAMPLE }, expected: { sensorReadsLow: 18.2 }, tolerance: 0.05, source: "stopFlowRows" },
    {
      inputs: { inputs: { ...EXAMPLE, UA: 500 } },
      expected: "#N/A",
      source: "identity",
      remark: "condensing starts above the cut-out",
    },
  ],
  example: { inputs: EXAMPLE },
  compute({ inputs }, { step, recordFacts }) {
    const { heat: Q, startWater: T0, UA, cutOut, limit, sensor, gas, air } = inputs;
    const C = step(stoppedCapacity, { V: inputs.waterVolume, m: inputs.metal });
    const tripped = step(waterAtCutOut, { Tx: cutOut, Q, UA });
    if (!(tripped > T0))
      throw notAvailable(
        "inputs: heat over UA puts condensing above the cut-out before the flow stops: it has tripped already",
      );
    const toLimit = step(secondsToReach, { C, T: limit, T0, Q });
    if (!(toLimit > 0)) throw notAvailable("inputs: the water is above the plastic's limit before its flow stops");
    const toCutOut = step(secondsToReach, { C, T: tripped, T0, Q });
    recordFacts({ secondsToLimit: toLimit, waterAtCutOut: tripped, limit });
    return {
      rate: (60 * Q) / C,
      secondsToLimit: toLimit,
      secondsToCutOut: toCutOut,
      waterAtCutOut: tripped,
      // Equal to rounding, the water counts as first: the safe side.
      first: toCutOut < toLimit * (1 - 1e-9) ? "cut-out" : "water at its limit",
      condensingAtStart: T0 + Q / UA,
      condensingAtLimit: limit + Q / UA,
      sensorReadsLow: step(sensorLag, { Q, C, tau: sensor }),
      allowedDelay: Math.max(0, toLimit - sensor),
      stub:
        gas > limit && limit > air
          ? step(hotStub, { Th: gas, Tc: limit, Ta: air, h: 10, k: inputs.stubConductivity, w: inputs.stubWall })
          : NO_VALUE,
    };
  },
});
