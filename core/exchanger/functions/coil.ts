import { cellFunction } from "../../kernel/define/cellFunction";
import { listResult, NO_VALUE, quantityResult, wordResult } from "../../kernel/define/result";
import { loadRefrigerant as fluidOf } from "../../refrigerant/refrigerant";
import { EQUATION_SOURCES, TRANSPORT_SOURCES } from "../../refrigerant/sources";
import { attackedMetal, cleanCoil } from "../surface/cautions";
import {
  bonding,
  fastCoilWater,
  fastestFor,
  filmsUncertain,
  freezingShell,
  hotFilm,
  largeDrop,
  outsideCondensingData,
  poolChemistry,
  portsLeftOut,
  shortArea,
  singleWall,
} from "../coil/cautions";
import { COIL_INPUTS, EXAMPLE_COIL } from "../coil/inputs";
import { rateCoil } from "../coil/coil";
import { conductivityOfWall } from "../surface/overall";
import { zonesOf } from "../zones/working";
import { hotWaterInPlastic } from "../water/cautions";

const fernhill = {
  refrigerant: "R-410A",
  heatRejected: 112000,
  condensing: 105,
  evaporating: 45,
  waterFlow: 40,
  enteringWater: 82,
  ...EXAMPLE_COIL,
} as const;

export const exchangerCoil = cellFunction({
  id: "EXCHANGER.COIL",
  topic: "exchanger",
  summary: "A helical tube coil in a shell rated by geometry: area, films, drops, velocities, hold-up.",
  keywords: ["titanium coil", "condenser", "film coefficient", "rating", "size of an exchanger", "U value"],
  details: [
    "Duty and temperatures as in EXCHANGER.ZONES; every zone has its own films, wall temperature and U on the outside area. Margin is area given over area needed, less one.",
    "Gas and liquid: Gnielinski with Schmidt's gain of a coil. Condensing: Shah 2009 averaged along the share of vapour, a straight-tube relation; above 1 °F of glide with the vapour's resistance (Silver, Bell and Ghaly).",
    "Water: one cylinder across the flow, forced (Churchill and Bernstein) and natural (Churchill and Chu) convection combined by fourth powers. It flows along the shell past the coil, through core and gap alike: close the core to speed it up.",
    "Drops: friction only, two phases by Müller-Steinhagen and Heck with the coil's friction; bundle drop is the water's friction by hydraulic diameter alone. Most of the head is lost in the two ports: their bore gives the water drop, with one velocity head in, half of one out, and 0.3 of one per turn; baffles are ignored. Hold-up by Rouhani and Axelsson.",
    "Parallel tubes are wound into each other on one diameter; the pitch is between neighbouring turns.",
  ],
  args: { inputs: COIL_INPUTS },
  returns: listResult("the coil's rating", {
    duty: quantityResult("heat rate", "heat to be passed"),
    areaNeeded: quantityResult("area", "outside area that the duty needs"),
    areaGiven: quantityResult("area", "outside area of the coil"),
    margin: quantityResult("fraction", "area given over area needed, less one"),
    leavingWater: quantityResult("temperature", "water leaving at the duty"),
    pinchDifference: quantityResult("temperature difference", "least difference between the streams"),
    gasFilm: quantityResult("film coefficient", "inside, desuperheating"),
    condensingFilm: quantityResult("film coefficient", "inside, condensing"),
    liquidFilm: quantityResult("film coefficient", "inside, subcooling"),
    waterFilm: quantityResult("film coefficient", "outside, in the condensing zone"),
    waterFilmForced: quantityResult("film coefficient", "of it, forced flow alone"),
    waterFilmNatural: quantityResult("film coefficient", "of it, natural flow alone"),
    gasU: quantityResult("film coefficient", "overall, desuperheating"),
    condensingU: quantityResult("film coefficient", "overall, condensing"),
    liquidU: quantityResult("film coefficient", "overall, subcooling"),
    gasArea: quantityResult("area", "needed by desuperheating"),
    condensingArea: quantityResult("area", "needed by condensing"),
    liquidArea: quantityResult("area", "needed by subcooling"),
    UA: quantityResult("heat conductance", "conductance that the duty needs"),
    governing: wordResult("largest resistance while condensing"),
    gasVelocity: quantityResult("velocity", "gas entering the tube"),
    waterVelocity: quantityResult("velocity", "water past the coil"),
    refrigerantDrop: quantityResult("pressure drop", "friction drop of the refrigerant"),
    saturationDrop: quantityResult("temperature difference", "its loss of dew temperature"),
    bundleDrop: quantityResult("pressure drop", "friction of the water along the coil only"),
    refrigerantHoldUp: quantityResult("mass", "refrigerant in the coil while it runs"),
    coilHeight: quantityResult("length", "height of the coil"),
    hottestFilm: quantityResult("temperature", "warmest surface that water touches"),
    waterDrop: quantityResult("pressure drop", "drop of the water, ports included"),
  }),
  facts: {
    coiled: "yes/no",
    portsKnown: "yes/no",
    tubeMaterial: "word",
    outsideData: "word",
    fastest: "velocity",
    insideFouling: "fouling resistance",
    outsideFouling: "fouling resistance",
  },
  memoised: true,
  cautions: [
    { rule: hotFilm, raisedBy: { inputs: { ...fernhill, condensing: 150, waterFlow: 5, refrigerant: "R-22" } } },
    {
      rule: hotWaterInPlastic,
      raisedBy: { inputs: { ...fernhill, condensing: 150, waterFlow: 3, refrigerant: "R-22" } },
    },
    { rule: shortArea, raisedBy: { inputs: { ...fernhill, tubeLength: 20 } } },
    { rule: portsLeftOut, raisedBy: { inputs: fernhill } },
    { rule: bonding, raisedBy: { inputs: fernhill } },
    { rule: filmsUncertain, raisedBy: { inputs: fernhill } },
    { rule: outsideCondensingData, raisedBy: { inputs: { ...fernhill, tubes: 1 } } },
    { rule: fastCoilWater, raisedBy: { inputs: { ...fernhill, material: "copper", waterFlow: 2000 } } },
    { rule: largeDrop, raisedBy: { inputs: { ...fernhill, tubes: 1 } } },
    { rule: cleanCoil, raisedBy: { inputs: { ...fernhill, outsideFouling: 0 } } },
    { rule: attackedMetal, raisedBy: { inputs: { ...fernhill, material: "copper" } } },
    { rule: poolChemistry, raisedBy: { inputs: fernhill } },
    { rule: freezingShell, raisedBy: { inputs: fernhill } },
    { rule: singleWall, raisedBy: { inputs: fernhill } },
  ],
  sources: [...EQUATION_SOURCES, ...TRANSPORT_SOURCES],
  checks: [
    {
      inputs: { inputs: fernhill },
      expected: { areaGiven: 39.27 },
      tolerance: 0.01,
      source: "identity",
      remark: "π × 0.625 in × 60 ft × 4",
    },
    {
      inputs: { inputs: { ...fernhill, portBore: 1.592 } },
      expected: { waterDrop: 0.42 },
      tolerance: 0.02,
      source: "hydraulicsTexts",
      remark: "1.5 velocity heads of two 1-1/2 in ports: 0.97 ft; the coil adds little",
    },
    {
      inputs: { inputs: { ...fernhill, outsideDiameter: 0.5, tubes: 1, tubeLength: 2.51327, coilDiameter: 9.6 } },
      expected: { areaGiven: 0.329 },
      tolerance: 0.0005,
      source: "kern1950",
      remark: "Example 20.2, one turn",
    },
    {
      inputs: { inputs: { ...fernhill, pitch: 0.5 } },
      expected: "#VALUE!",
      source: "identity",
      remark: "turns would overlap",
    },
    { inputs: { inputs: { ...fernhill, condensing: 80 } }, expected: "#N/A", source: "identity" },
  ],
  compute({ inputs }, { trace, recordFacts }) {
    const found = trace.within("Zones", () => zonesOf(inputs, trace));
    const { material, insideFouling, outsideFouling } = inputs;
    const rating = rateCoil(
      fluidOf(inputs.refrigerant),
      found,
      { ...inputs, conductivity: conductivityOfWall(material, trace) },
      inputs.waterFlow,
      trace,
    );
    const { desuperheating, condensing, subcooling } = rating.zones;
    recordFacts({
      coiled: true,
      portsKnown: inputs.portBore !== undefined,
      outsideData: rating.outsideData,
      fastest: fastestFor(material),
      insideFouling,
      outsideFouling,
    });
    if (typeof material === "string") recordFacts({ tubeMaterial: material });
    return {
      duty: found.total.duty,
      areaNeeded: rating.areaNeeded,
      areaGiven: rating.areaGiven,
      margin: rating.margin,
      leavingWater: found.total.waterOut,
      pinchDifference: found.total.least.difference,
      gasFilm: desuperheating?.insideFilm ?? NO_VALUE,
      condensingFilm: condensing?.insideFilm ?? NO_VALUE,
      liquidFilm: subcooling?.insideFilm ?? NO_VALUE,
      waterFilm: condensing?.outside.film ?? NO_VALUE,
      waterFilmForced: condensing?.outside.forced ?? NO_VALUE,
      waterFilmNatural: condensing?.outside.natural ?? NO_VALUE,
      gasU: desuperheating?.U ?? NO_VALUE,
      condensingU: condensing?.U ?? NO_VALUE,
      liquidU: subcooling?.U ?? NO_VALUE,
      gasArea: desuperheating?.area ?? 0,
      condensingArea: condensing?.area ?? 0,
      liquidArea: subcooling?.area ?? 0,
      UA: rating.UA,
      governing: condensing?.governing ?? "",
      gasVelocity: rating.gasVelocity,
      waterVelocity: rating.waterVelocity,
      refrigerantDrop: rating.refrigerantDrop,
      saturationDrop: rating.saturationDrop,
      bundleDrop: rating.bundleDrop,
      refrigerantHoldUp: rating.holdUp,
      coilHeight: rating.height,
      hottestFilm: rating.hottestFilm,
      waterDrop: rating.waterDrop ?? NO_VALUE,
    };
  },
});
