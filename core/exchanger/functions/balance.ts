import { cellFunction } from "../../kernel/define/cellFunction";
import { listResult, NO_VALUE, quantityResult, wordResult } from "../../kernel/define/result";
import { valueError } from "../../kernel/values/fault";
import { boardDrivesMachine, boardFacts } from "../../cycle/machine/cautions";
import { EQUATION_SOURCES, TRANSPORT_SOURCES } from "../../refrigerant/sources";
import {
  aboveGreatestCondensing,
  balanceFilms,
  balanceModel,
  belowLeastCondensing,
  coilFacts,
  costlyHotGas,
  frostingCoil,
  noPoolGain,
  waterTooWarm,
} from "../balance/cautions";
import type { Balance } from "../balance/balance";
import { heatArriving } from "../balance/equations";
import { BALANCE_INPUTS, HOT_GAS_DROP } from "../balance/inputs";
import { attackedMetal, cleanCoil } from "../surface/cautions";
import {
  fastCoilWater,
  fastestFor,
  freezingShell,
  hotFilm,
  largeDrop,
  outsideCondensingData,
  poolChemistry,
  singleWall,
} from "../coil/cautions";
import { balanceInputOf } from "../balance/fromBlock";
import { bothSides } from "../balance/bothSides";
import { EXAMPLE_COIL } from "../coil/inputs";
import { hotWaterInPlastic } from "../water/cautions";

const machine = { refrigerant: "R-410A", ratedCooling: 90000, waterFlow: 40, enteringWater: 82 } as const;
const fernhill = { ...machine, UA: 5000 } as const;

/** The example coil on the same machine. */
const coiled = {
  ...machine,
  ...EXAMPLE_COIL,
} as const;

/** The outdoor coil at its rating must reproduce the rating. */
const rating = { ...fernhill, refrigerant: "R-22" } as const;

/** R-22, rated at 0 and 50 °C; evaporator and exchanger let it settle at 0 and 30 °C. */
const fiftyAtCompressor = {
  refrigerant: "R-22",
  ratedCooling: 100,
  ratedEvaporating: 0,
  ratedCondensing: 50,
  ratedIndoorWetBulb: 20,
  indoorWetBulb: 23.3305,
  superheat: 10,
  subcooling: 5,
  efficiency: 0.7,
  waterFlow: 50,
  enteringWater: 20,
  UA: 17318,
} as const;

const IF_GIVEN = { optional: true } as const;

/** The limits that the answer breaks, in words. */
const limitsOf = (
  { condensing, dischargeCondensing }: Balance,
  leavingWater: number,
  limits: {
    readonly leastCondensing: number;
    readonly greatestCondensing: number;
    readonly greatestLeavingWater: number;
  },
): string => {
  const broken = [
    ...(condensing < limits.leastCondensing ? ["below the least condensing temperature"] : []),
    ...(dischargeCondensing > limits.greatestCondensing ? ["above the greatest condensing temperature"] : []),
    ...(leavingWater > limits.greatestLeavingWater ? ["leaving water too warm"] : []),
  ];
  return broken.length === 0 ? "within the limits" : broken.join(", ");
};

/** What a drop costs; no rows without one. */
const costOf = (pool: Balance, withoutDrop: Balance | undefined) => ({
  saturatedDischarge: withoutDrop && pool.dischargeCondensing,
  dischargePressureAbsolute: withoutDrop && pool.dischargePressure,
  coolingLost: withoutDrop && withoutDrop.cooling - pool.cooling,
  powerAdded: withoutDrop && pool.power - withoutDrop.power,
});

export const exchangerBalance = cellFunction({
  id: "EXCHANGER.BALANCE",
  topic: "exchanger",
  summary: "Equilibrium of compressor, evaporator and pool water, compared with the same machine on its outdoor coil.",
  keywords: ["condensing temperature", "head pressure", "capacity", "operating point", "settle"],
  details: [
    "Compressor: constant swept volume from the rating, one isentropic efficiency; the volumetric efficiency falls with the pressure ratio as gas left in the clearance re-expands.",
    "Evaporator: its cooling is proportional to entering wet bulb less evaporating temperature, as at the rating.",
    "Exchanger: the given UA, with all heat at the mean of dew and bubble temperature; the true UA changes with water flow and load. Outdoor coil: its temperature difference is proportional to the heat; cutting its fan holds condensing at the machine's least, but the fan's power counts in full.",
    "Rated power, of the whole machine with its fans, gives the compressor's efficiency as in POOL.YEAR: both then draw the same.",
    "In place of UA: the coil's geometry with the labels of EXCHANGER.COIL. Condensing then settles where the coil has no spare area at the machine's own heat; UA is the conductance that gives the same answer with all heat at the mean condensing temperature (none if water leaves above that). Cautions on tube, films and water are those of EXCHANGER.COIL, which shows films and drops.",
    "A stage or speed by label stage: low cooling and low power, or a share between least and full speed. A ten-coefficient map (map flow, map power, numbers parted by ;) takes the place of efficiency and swept volume: it is read at the condensing dew temperature where it settles, on pool and outdoor coil alike; the evaporator follows from rated cooling at rated condensing.",
    "Pressure is absolute. Power and COP on the outdoor coil include its fan if given; pumps are extra.",
    "hotGasDrop: the compressor works against condensing pressure plus this drop (LINE.DROP's discharge line, LINE.VALVE's valve), the gas keeps its enthalpy, and the liquid leaves at the exchanger's pressure. Greatest condensing then limits the compressor's saturated discharge. Last rows: that temperature, and what the drop costs against the same exchanger without it. The outdoor coil is taken without drop.",
    "Line and pipe loss come off the heat into the pool; condensing settles as if all heat reached the exchanger, a little high.",
  ],
  args: {
    inputs: BALANCE_INPUTS,
    hotGasDrop: HOT_GAS_DROP,
  },
  unitsAfter: "inputs",
  returns: listResult("the equilibrium", {
    condensing: quantityResult("temperature", "condensing dew temperature on the pool"),
    condensingPressureAbsolute: quantityResult("pressure", "its pressure, absolute"),
    evaporating: quantityResult("temperature", "evaporating dew temperature on the pool"),
    heatIntoPool: quantityResult("heat rate", "heat into the pool water"),
    cooling: quantityResult("heat rate", "cooling on the pool"),
    power: quantityResult("electric power", "power of compressor and indoor fan on the pool"),
    COP: quantityResult("COP", "cooling over that power"),
    leavingWater: quantityResult("temperature", "water leaving"),
    condensingOutdoors: quantityResult("temperature", "condensing dew temperature on the outdoor coil"),
    condensingPressureOutdoors: quantityResult("pressure", "its pressure, absolute"),
    evaporatingOutdoors: quantityResult("temperature", "evaporating dew temperature on the outdoor coil"),
    heatOutdoors: quantityResult("heat rate", "heat to the outdoor air"),
    coolingOutdoors: quantityResult("heat rate", "cooling on the outdoor coil"),
    powerOutdoors: quantityResult("electric power", "compressor and fans there"),
    COPOutdoors: quantityResult("COP", "cooling over that power"),
    condensingChange: quantityResult("temperature difference", "pool less outdoors"),
    coolingChange: quantityResult("fraction", "relative change of cooling"),
    powerChange: quantityResult("fraction", "relative change of power"),
    COPChange: quantityResult("fraction", "relative change of COP"),
    limits: wordResult("limits breached"),
    UA: quantityResult("heat conductance", "conductance of the pool exchanger against the mean condensing temperature"),
    saturatedDischarge: quantityResult("temperature", "with a drop: dew temperature at the compressor", IF_GIVEN),
    dischargePressureAbsolute: quantityResult("pressure", "with a drop: its pressure, absolute", IF_GIVEN),
    coolingLost: quantityResult("heat rate", "with a drop: cooling that it costs", IF_GIVEN),
    powerAdded: quantityResult("electric power", "with a drop: power that it adds", IF_GIVEN),
  }),
  facts: {
    least: "temperature",
    highest: "temperature",
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
    boardDriven: "word",
  },
  memoised: true,
  cautions: [
    { rule: belowLeastCondensing, raisedBy: { inputs: { ...fernhill, enteringWater: 45 } } },
    { rule: aboveGreatestCondensing, raisedBy: { inputs: { ...fernhill, UA: 2000 } } },
    { rule: costlyHotGas, raisedBy: { inputs: fernhill, hotGasDrop: 15 } },
    { rule: waterTooWarm, raisedBy: { inputs: { ...fernhill, waterFlow: 8 } } },
    { rule: hotWaterInPlastic, raisedBy: { inputs: { ...fernhill, waterFlow: 3 } } },
    { rule: frostingCoil, raisedBy: { inputs: { ...fernhill, indoorWetBulb: 46 } } },
    { rule: noPoolGain, raisedBy: { inputs: { ...fernhill, UA: 2000, outdoor: 75 } } },
    { rule: balanceModel, raisedBy: { inputs: fernhill } },
    { rule: hotFilm, raisedBy: { inputs: { ...coiled, waterFlow: 5 } } },
    { rule: outsideCondensingData, raisedBy: { inputs: { ...coiled, tubes: 1 } } },
    { rule: fastCoilWater, raisedBy: { inputs: { ...coiled, material: "copper", waterFlow: 2000 } } },
    { rule: largeDrop, raisedBy: { inputs: { ...coiled, tubes: 1, tubeLength: 200 } } },
    { rule: cleanCoil, raisedBy: { inputs: { ...coiled, outsideFouling: 0 } } },
    { rule: attackedMetal, raisedBy: { inputs: { ...coiled, material: "copper" } } },
    { rule: poolChemistry, raisedBy: { inputs: coiled } },
    { rule: freezingShell, raisedBy: { inputs: coiled } },
    { rule: singleWall, raisedBy: { inputs: coiled } },
    { rule: balanceFilms, raisedBy: { inputs: coiled } },
    { rule: boardDrivesMachine, raisedBy: { inputs: { ...fernhill, communicating: true } } },
  ],
  sources: [...EQUATION_SOURCES, ...TRANSPORT_SOURCES],
  checks: [
    {
      inputs: { inputs: rating },
      expected: { condensingOutdoors: 115, evaporatingOutdoors: 45, coolingOutdoors: 90000 },
      tolerance: "0.001 %",
      source: "identity",
      remark: "the outdoor coil at its rating reproduces the rating",
    },
    {
      inputs: { inputs: rating },
      expected: { COPOutdoors: 3.93 },
      tolerance: 0.005,
      source: "coolprop8",
      remark: "R-22 at 45 and 115 °F, superheat and subcooling 10 °F, efficiency 0.65",
    },
    {
      inputs: { inputs: { ...fernhill, UA: 100 } },
      expected: "#N/A",
      source: "identity",
      remark: "too small for any pressure",
    },
    {
      inputs: { inputs: fiftyAtCompressor, hotGasDrop: 750.812, units: "SI" },
      expected: { condensing: 30, evaporating: 0, saturatedDischarge: 50, cooling: 116.653, power: 33.064 },
      tolerance: 0.02,
      source: "coolprop8",
      remark: "worked apart: suction gas and work of the cycle at 0 and 50 °C, liquid of the cycle at 0 and 30 °C",
    },
    {
      inputs: { inputs: { ...coiled, UA: 5000 } },
      expected: "#VALUE!",
      source: "identity",
      remark: "both UA and coil",
    },
    { inputs: { inputs: machine }, expected: "#VALUE!", source: "identity", remark: "neither UA nor coil" },
  ],
  compute({ inputs, hotGasDrop }, { trace, step, recordFacts, system }) {
    const sides = bothSides({ ...balanceInputOf(inputs, system, trace), hotGasDrop }, trace);
    const { pool, coil, withoutDrop, outdoors, cooling, power, coolingOutdoors, powerOutdoors, change } = sides;
    const { lineLoss: Ql, pipeLoss: Qp } = inputs;
    const lost = Ql + Qp > 0;
    const heatIntoPool = lost ? step(heatArriving, { Qr: pool.rejected, Ql, Qp }) : pool.rejected;
    if (!(heatIntoPool > 0)) throw valueError("inputs: line and pipe loss must be below the heat rejected");
    const leavingWater = pool.leavingWater - (lost ? Ql / pool.capacityRate : 0);
    recordFacts({
      least: inputs.leastCondensing,
      highest: pool.dischargeCondensing,
      greatest: inputs.greatestCondensing,
      warmest: inputs.greatestLeavingWater,
      coiled: inputs.UA === undefined,
      fastest: fastestFor(inputs.material),
      ...(typeof inputs.material === "string" && { tubeMaterial: inputs.material }),
      insideFouling: inputs.insideFouling,
      outsideFouling: inputs.outsideFouling,
      ...boardFacts(inputs),
      ...(coil && coilFacts(coil)),
    });
    return {
      condensing: pool.condensing,
      condensingPressureAbsolute: pool.condensingPressure,
      evaporating: pool.evaporating,
      heatIntoPool,
      cooling,
      power,
      COP: cooling / power,
      leavingWater,
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
      limits: limitsOf(pool, leavingWater, inputs),
      UA: pool.ua ?? NO_VALUE,
      ...costOf(pool, withoutDrop),
    };
  },
});
