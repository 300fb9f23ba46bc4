import { block, choice, quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { NO_VALUE, listResult, quantityResult, wordResult } from "../../kernel/define/result";
import { heatWhenCooling, hotSupply, warmFloor } from "../cautions";
import { EMITTERS, spaceHeat } from "../spaceHeat";

const degF = (value: number): number => us("temperature", value);

const INPUTS = {
  emitter: choice("Emitter", EMITTERS, "emitter of the heat"),
  recoveredHeat: quantity("heat rate", "heat available at the condenser", { above: 0 }),
  heatNeeded: quantity("heat rate", "heat that the space needs at the same time", { above: 0 }),
  supplyWater: quantity("temperature", "water to the coil or floor", { from: degF(60), to: degF(180) }).default(
    degF(100),
  ),
  waterFlow: WATER_FLOW,
  room: quantity("temperature", "room air, or air to the coil", { from: degF(30), to: degF(100) }).default(degF(70)),
  airFlow: quantity("air flow", "air through the coil", { above: 0 }).optional(),
  effectiveness: quantity("fraction", "effectiveness of the coil", { above: 0, to: 1, usual: [0.3, 0.85] }).default(
    0.6,
  ),
  floorArea: quantity("area", "heated floor", { above: 0 }).optional(),
  floorResistance: quantity("fouling resistance", "from the mean water to the floor surface", { above: 0 }).default(
    us("fouling resistance", 0.6),
  ),
};

const COIL = {
  emitter: "air coil",
  "recovered heat": 100000,
  "heat needed": 80000,
  "supply water": 100,
  "water flow": 12,
  "air flow": 3000,
};
const FLOOR = {
  emitter: "floor loop",
  "recovered heat": 100000,
  "heat needed": 80000,
  "water flow": 12,
  "floor area": 1500,
};

export const sinkSpace = cellFunction({
  id: "SINK.SPACE",
  topic: "sink",
  summary: "Air or floor heating from recovered heat: heat into the coil or floor, and heat left over.",
  keywords: ["space heating", "reheat", "reclaim coil", "radiant floor", "floor heating"],
  details: [
    "Air coil: effectiveness × the smaller stream × (water − air); 0.6 without the maker's figure. Air at 0.075 lb/ft³.",
    "Floor: 8.92 (surface − room)^1.1 W/m² from the surface (EN 1264, from memory); the resistance from mean water to surface comes from the floor maker; 0.6 h·ft²·°F/BTU (common practice) is for tiles on screed.",
  ],
  args: { inputs: block(INPUTS, "labels, values and units: see NOTE.INPUTS") },
  returns: listResult("heat to the space", {
    emitterCapacity: quantityResult("heat rate", "capacity of the coil or floor"),
    heatToSpace: quantityResult("heat rate", "heat that goes to the space"),
    limitedBy: wordResult("what limits it"),
    shareOfNeed: quantityResult("fraction", "share of the need that is met"),
    heatStillNeeded: quantityResult("heat rate", "for another heater"),
    heatLeftOver: quantityResult("heat rate", "for the next sink"),
    leavingWater: quantityResult("temperature", "water leaving the coil or floor"),
    supplyAir: quantityResult("temperature", "air leaving the coil"),
    floorSurface: quantityResult("temperature", "floor surface"),
  }),
  facts: { supplyWater: "temperature" },
  cautions: [
    { rule: heatWhenCooling, raisedBy: { inputs: COIL } },
    { rule: hotSupply, raisedBy: { inputs: { ...COIL, "supply water": 120 } } },
    {
      rule: warmFloor,
      raisedBy: { inputs: { ...FLOOR, "floor resistance": 0.1, "floor area": 800, "supply water": 105 } },
    },
  ],
  checks: [
    {
      inputs: { inputs: COIL },
      expected: { emitterCapacity: 58300, shareOfNeed: 0.729, supplyAir: 88 },
      tolerance: "0.7 %",
      source: "commonPractice",
      remark: "1.08 × 3,000 cfm × 0.6 × 30 °F = 58,320 BTU/h; the air is warmed by 0.6 × 30 °F",
    },
    {
      inputs: {
        inputs: {
          emitter: "floor loop",
          "recovered heat": 100,
          "heat needed": 1.004,
          "supply water": 40,
          room: 20,
          "water flow": 5,
          "floor area": 10,
        },
        units: "SI",
      },
      expected: { floorSurface: 29 },
      tolerance: 0.05,
      source: "en1264",
      remark: "8.92 × 9^1.1 = 100 W/m², the usual limit where people stay",
    },
  ],
  compute({ inputs }, { trace, recordFacts }) {
    const found = spaceHeat(inputs, trace);
    recordFacts({ supplyWater: inputs.supplyWater });
    return {
      ...found,
      shareOfNeed: found.heatToSpace / inputs.heatNeeded,
      heatStillNeeded: inputs.heatNeeded - found.heatToSpace,
      heatLeftOver: inputs.recoveredHeat - found.heatToSpace,
      supplyAir: found.supplyAir ?? NO_VALUE,
      floorSurface: found.floorSurface ?? NO_VALUE,
    };
  },
});
