import { block, choice, quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE, WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { NO_VALUE, listResult, quantityResult } from "../../kernel/define/result";
import { notAvailable, valueError } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { NOMINAL_SIZE, SCHEDULE, STRAIGHT_LENGTH } from "../args";
import { EXPOSURE, FOAM, INSULATION } from "../heat/args";
import { ICE_POINT, frostTimes } from "../heat/freeze";
import { coldNight, drainDown, stillAirOnly, trickleNeedsPower } from "../heat/freezeCautions";
import { boreOf, pvcPipe, type Schedule } from "../straight/bore";

/** W/(m K) and J/(m³ K). */
const WALLS = {
  PVC: { conductivity: 0.17, capacity: 1390 * 900 },
  copper: { conductivity: 339, capacity: 8940 * 385 },
  titanium: { conductivity: 16, capacity: 4510 * 523 },
  steel: { conductivity: 45, capacity: 7850 * 470 },
} as const;
type Wall = keyof typeof WALLS;

const INPUTS = block(
  {
    size: NOMINAL_SIZE.optional(),
    schedule: SCHEDULE,
    start: WATER_TEMPERATURE.describedAs("water at the start").default(us("temperature", 40)),
    air: AIR_TEMPERATURE,
    ...EXPOSURE,
    insulation: INSULATION,
    insulationConductivity: FOAM,
    emissivity: quantity("fraction", "emissivity of the surface", { above: 0, to: 1 }).default(0.9),
    outsideDiameter: quantity("diameter", "outside diameter of a tube or shell, in place of size", {
      above: 0,
      to: 1,
    }).optional(),
    wall: quantity("diameter", "its wall", { above: 0, to: 0.1 }).optional(),
    material: choice("FrostWall", Object.keys(WALLS) as readonly Wall[], "material of the wall").default("PVC"),
    waterShare: quantity("fraction", "share of the bore that is water, less with a coil inside", {
      above: 0,
      to: 1,
    }).default(1),
    metal: quantity("mass per length", "metal inside, a length", { from: 0 }).default(0),
    metalHeatCapacity: quantity("heat capacity", "its heat capacity; titanium 0.125 BTU/(lb·°F)", {
      above: 0,
    }).default(us("heat capacity", 0.125)),
    length: STRAIGHT_LENGTH.describedAs("length that a trickle protects").default(us("length", 100)),
  },
  "input block: size or outside diameter and wall, water, air, wind, insulation, coil inside",
);

function diametersOf(
  size: string | undefined,
  schedule: Schedule,
  outside: number | undefined,
  wall: number | undefined,
): readonly [number, number] {
  if ((size === undefined) === (outside === undefined) || (outside === undefined) !== (wall === undefined))
    throw valueError("inputs: give size, or outside diameter and wall");
  if (size !== undefined) return [boreOf(size, schedule, "average"), us("diameter", pvcPipe(size, schedule).outside)];
  const [Do, w] = [outside ?? 0, wall ?? 0];
  if (!(2 * w < Do)) throw valueError("inputs: wall: must be below half of outside diameter");
  return [Do - 2 * w, Do];
}

const BARE = { size: "2 in", start: 40, air: 20, emissivity: 0.92 };
const SHELL = { size: "6 in", start: 50, air: 20, wind: 15, emissivity: 0.92, waterShare: 0.85, metal: "4500 g/m" };

export const pipeFreeze = cellFunction({
  id: "PIPE.FREEZE",
  topic: "pipe",
  summary: "Time until standing water in a pipe, coil or exchanger's shell begins to freeze and is solid.",
  keywords: ["frost", "freeze protection", "winterize", "burst pipe", "ice", "drain down", "trickle"],
  details: [
    "Water and wall cool as one lump; the loss, by PIPE.HEATLOSS's films, follows the temperature. Then ice grows inwards (Plank's form, latent heat 333.55 kJ/kg, ice 2.2 W/(m·K)). Times after freezing begins count from there.",
    "Water may cool some degrees below freezing before ice starts; that is not counted. Salt of a pool (3,200 ppm) lowers the freezing point by 0.3 °F only.",
    "By insulation alone: the handbook's form without wall and films, 7 to 40 % shorter: the safe side. A coil in a shell: size of the shell, share of water, metal of the coil.",
    "Wall heat capacities and conductivities of metals are round figures from memory; they hardly count.",
  ],
  args: { inputs: INPUTS },
  returns: listResult("frost", {
    untilFreezing: quantityResult("time", "until freezing begins"),
    thenTenthIce: quantityResult("time", "more, until a tenth is ice"),
    thenAllIce: quantityResult("time", "more, until all is ice"),
    untilSolid: quantityResult("time", "from the start until all is ice"),
    byInsulationAlone: quantityResult("time", "until freezing begins, wall and films left out"),
    trickle: quantityResult("water flow", "least flow that leaves the length at 34 °F"),
  }),
  facts: { wind: "wind speed", insulation: "diameter" },
  memoised: true,
  cautions: [
    { rule: drainDown, raisedBy: { inputs: BARE } },
    { rule: coldNight, raisedBy: { inputs: BARE } },
    { rule: trickleNeedsPower, raisedBy: { inputs: BARE } },
    { rule: stillAirOnly, raisedBy: { inputs: BARE } },
  ],
  example: { inputs: { ...BARE, wind: 15 } },
  checks: [
    {
      inputs: {
        inputs: {
          outsideDiameter: 2.375,
          wall: 0.154,
          material: "steel",
          insulation: 1.5,
          insulationConductivity: "0.025 BTU/(h·ft·°F)",
          start: 42,
          air: 20,
        },
      },
      expected: { byInsulationAlone: 4.6 },
      tolerance: 0.05,
      source: "ashraeFreezing",
      remark: "2 in steel pipe, 1-1/2 in of k 0.30 BTU·in/(h·ft²·°F)",
    },
    {
      inputs: { inputs: BARE },
      expected: { untilFreezing: 1.117, thenTenthIce: 2.435, thenAllIce: 25.37 },
      tolerance: "0.5 %",
      source: "freezeRows",
    },
    {
      inputs: { inputs: { ...SHELL, metalHeatCapacity: "1 kJ/(kg·K)" } },
      expected: { untilFreezing: 2.815, thenAllIce: 39.89 },
      tolerance: "0.02 %",
      source: "freezeRows",
      remark: "6 in shell with a coil, bare in a wind of 15 mph",
    },
    { inputs: { inputs: { ...BARE, air: 33 } }, expected: "#N/A", source: "identity", remark: "no frost" },
  ],
  compute({ inputs }, { trace, recordFacts }) {
    const { size, schedule, outsideDiameter, wall, air, wind, insulation } = inputs;
    const [bore, outside] = diametersOf(size, schedule, outsideDiameter, wall);
    if (!(air < ICE_POINT - 0.01)) throw notAvailable("inputs: air: is not below 32 °F: the water does not freeze");
    const found = frostTimes(
      {
        ...inputs,
        bore,
        outside,
        wall: WALLS[size === undefined ? inputs.material : "PVC"],
        metalCapacity: inputs.metal * inputs.metalHeatCapacity,
      },
      inputs,
      trace,
    );
    recordFacts({ wind, insulation });
    return {
      untilFreezing: found.toFreezing,
      thenTenthIce: found.tenthIce,
      thenAllIce: found.allIce,
      untilSolid: found.toFreezing + found.allIce,
      byInsulationAlone: found.insulationAlone ?? NO_VALUE,
      trickle: found.trickle ?? NO_VALUE,
    };
  },
});
