import { cellFunction } from "../../kernel/cellFunction";
import { list, NO_VALUE, of, word } from "../../kernel/result";
import { EQUATION_SOURCES, TRANSPORT_SOURCES } from "../../refrigerant/sources";
import {
  aboveGreatest,
  balanceFilms,
  balanceModel,
  belowLeast,
  coilFacts,
  frostingCoil,
  noPoolGain,
  waterTooWarm,
} from "../balanceCautions";
import { BALANCE_INPUTS } from "../balanceInputs";
import { attackedMetal, cleanCoil } from "../cautions";
import {
  fastWater,
  fastestFor,
  freezingShell,
  hotFilm,
  largeDrop,
  outsideCondensingData,
  poolChemistry,
  singleWall,
} from "../coilCautions";
import { balanceInputOf } from "../models/balanceBlock";
import { bothSides } from "../models/balanceTraced";
import { EXAMPLE_COIL } from "../coilInputs";
import { hotWaterBesidePlastic } from "../waterCautions";

const machine = { refrigerant: "R-410A", ratedCooling: 90000, waterFlow: 40, enteringWater: 82 } as const;
const fernhill = { ...machine, UA: 5000 } as const;

/** The example coil on the same machine. */
const coiled = {
  ...machine,
  ...EXAMPLE_COIL,
} as const;

/** The outdoor coil at its rating must give the rating back. */
const rating = { ...fernhill, refrigerant: "R-22" } as const;

/** Where the answer stands among the limits given. */
const limitsOf = (
  { condensing, leavingWater }: { readonly condensing: number; readonly leavingWater: number },
  limits: {
    readonly leastCondensing: number;
    readonly greatestCondensing: number;
    readonly greatestLeavingWater: number;
  },
): string => {
  const broken = [
    ...(condensing < limits.leastCondensing ? ["below the least condensing temperature"] : []),
    ...(condensing > limits.greatestCondensing ? ["above the greatest condensing temperature"] : []),
    ...(leavingWater > limits.greatestLeavingWater ? ["leaving water too warm"] : []),
  ];
  return broken.length === 0 ? "within the limits" : broken.join(", ");
};

export const balance = cellFunction({
  id: "EXCHANGER.BALANCE",
  topic: "exchanger",
  summary: "Where compressor, evaporator and pool water settle, beside the same machine on its outdoor coil.",
  finds: ["condensing temperature", "head pressure", "capacity", "operating point", "settle"],
  remarks: [
    "Compressor: constant swept volume from the rating, one isentropic efficiency; the volumetric efficiency falls with the pressure ratio as gas left in a clearance expands again.",
    "Evaporator: its cooling is proportional to entering wet bulb less evaporating temperature, as at the rating.",
    "Exchanger: the given UA against the mean of dew and bubble temperature, all heat counted at that; the true UA changes with water flow and load. Outdoor coil: its temperature difference is proportional to the heat, and condensing is held at the machine's least by cutting its fan, whose power is counted whole.",
    "Rated power, of the whole machine with its fans, gives the compressor's efficiency as POOL.YEAR takes it: both then draw the same.",
    "In place of UA: the coil's geometry with the labels of EXCHANGER.COIL. Condensing then settles where the coil's rating has no margin left at the machine's own heat; UA tells the conductance that gives the same answer with all heat at the mean condensing temperature (none where water leaves above that). The cautions of tube, films and water are raised as by EXCHANGER.COIL, which shows films and drops.",
    "Pressure is absolute. Power and COP on the outdoor coil count its fan where one is given; pumps are apart.",
  ],
  args: { inputs: BALANCE_INPUTS },
  gives: list("where it settles", {
    condensing: of("temperature", "condensing dew temperature on the pool"),
    condensingPressureAbsolute: of("pressure", "its pressure, absolute"),
    evaporating: of("temperature", "evaporating dew temperature on the pool"),
    heatIntoPool: of("heat rate", "heat into the pool water"),
    cooling: of("heat rate", "cooling on the pool"),
    power: of("electric power", "power of compressor and indoor fan on the pool"),
    COP: of("COP", "cooling over that power"),
    leavingWater: of("temperature", "water leaving"),
    condensingOutdoors: of("temperature", "condensing dew temperature on the outdoor coil"),
    condensingPressureOutdoors: of("pressure", "its pressure, absolute"),
    evaporatingOutdoors: of("temperature", "evaporating dew temperature on the outdoor coil"),
    heatOutdoors: of("heat rate", "heat to the outdoor air"),
    coolingOutdoors: of("heat rate", "cooling on the outdoor coil"),
    powerOutdoors: of("electric power", "compressor and fans there"),
    COPOutdoors: of("COP", "cooling over that power"),
    condensingChange: of("temperature difference", "pool less outdoors"),
    coolingChange: of("fraction", "relative change of cooling"),
    powerChange: of("fraction", "relative change of power"),
    COPChange: of("fraction", "relative change of COP"),
    limits: word("limits breached"),
    UA: of("heat conductance", "conductance of the pool exchanger against the mean condensing temperature"),
  }),
  facts: {
    least: "temperature",
    greatest: "temperature",
    warmest: "temperature",
    coiled: "yes/no",
    tubeMaterial: "word",
    outsideData: "word",
    waterVelocity: "velocity",
    fastest: "velocity",
    refrigerantDrop: "pressure drop",
    saturationDrop: "temperature difference",
    hottestFilm: "temperature",
    insideFouling: "fouling resistance",
    outsideFouling: "fouling resistance",
  },
  heavy: true,
  cautions: [
    { rule: belowLeast, fires: { inputs: { ...fernhill, enteringWater: 45 } } },
    { rule: aboveGreatest, fires: { inputs: { ...fernhill, UA: 2000 } } },
    { rule: waterTooWarm, fires: { inputs: { ...fernhill, waterFlow: 8 } } },
    { rule: hotWaterBesidePlastic, fires: { inputs: { ...fernhill, waterFlow: 3 } } },
    { rule: frostingCoil, fires: { inputs: { ...fernhill, indoorWetBulb: 46 } } },
    { rule: noPoolGain, fires: { inputs: { ...fernhill, UA: 2000, outdoor: 75 } } },
    { rule: balanceModel, fires: { inputs: fernhill } },
    { rule: hotFilm, fires: { inputs: { ...coiled, waterFlow: 5 } } },
    { rule: outsideCondensingData, fires: { inputs: { ...coiled, tubes: 1 } } },
    { rule: fastWater, fires: { inputs: { ...coiled, material: "copper", waterFlow: 2000 } } },
    { rule: largeDrop, fires: { inputs: { ...coiled, tubes: 1, tubeLength: 200 } } },
    { rule: cleanCoil, fires: { inputs: { ...coiled, outsideFouling: 0 } } },
    { rule: attackedMetal, fires: { inputs: { ...coiled, material: "copper" } } },
    { rule: poolChemistry, fires: { inputs: coiled } },
    { rule: freezingShell, fires: { inputs: coiled } },
    { rule: singleWall, fires: { inputs: coiled } },
    { rule: balanceFilms, fires: { inputs: coiled } },
  ],
  sources: [...EQUATION_SOURCES, ...TRANSPORT_SOURCES],
  checks: [
    {
      at: { inputs: rating },
      gives: { condensingOutdoors: 115, evaporatingOutdoors: 45, coolingOutdoors: 90000 },
      within: "0.001 %",
      from: "identity",
      remark: "the outdoor coil at its rating gives the rating back",
    },
    {
      at: { inputs: rating },
      gives: { COPOutdoors: 3.93 },
      within: 0.005,
      from: "coolprop8",
      remark: "R-22 at 45 and 115 °F, superheat and subcooling 10 °F, efficiency 0.65",
    },
    { at: { inputs: { ...fernhill, UA: 100 } }, gives: "#N/A", from: "identity", remark: "too small for any pressure" },
    { at: { inputs: { ...coiled, UA: 5000 } }, gives: "#VALUE!", from: "identity", remark: "UA and coil both" },
    { at: { inputs: machine }, gives: "#VALUE!", from: "identity", remark: "neither UA nor coil" },
  ],
  work({ inputs }, { trace, note }) {
    const sides = bothSides(balanceInputOf(inputs, trace), trace);
    const { pool, coil, outdoors, cooling, power, coolingOutdoors, powerOutdoors, change } = sides;
    note({
      least: inputs.leastCondensing,
      greatest: inputs.greatestCondensing,
      warmest: inputs.greatestLeavingWater,
      coiled: inputs.UA === undefined,
      fastest: fastestFor(inputs.material),
      ...(typeof inputs.material === "string" && { tubeMaterial: inputs.material }),
      insideFouling: inputs.insideFouling,
      outsideFouling: inputs.outsideFouling,
      ...(coil && coilFacts(coil)),
    });
    return {
      condensing: pool.condensing,
      condensingPressureAbsolute: pool.condensingPressure,
      evaporating: pool.evaporating,
      heatIntoPool: pool.rejected,
      cooling,
      power,
      COP: cooling / power,
      leavingWater: pool.leavingWater,
      condensingOutdoors: outdoors.condensing,
      condensingPressureOutdoors: outdoors.condensingPressure,
      evaporatingOutdoors: outdoors.evaporating,
      heatOutdoors: outdoors.rejected,
      coolingOutdoors,
      powerOutdoors,
      COPOutdoors: coolingOutdoors / powerOutdoors,
      condensingChange: pool.condensing - outdoors.condensing,
      coolingChange: change.cooling,
      powerChange: change.power,
      COPChange: change.COP,
      limits: limitsOf(pool, inputs),
      UA: pool.ua ?? NO_VALUE,
    };
  },
});
