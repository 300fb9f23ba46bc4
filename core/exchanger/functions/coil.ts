import { cellFunction } from "../../kernel/cellFunction";
import { list, NO_VALUE, of, word } from "../../kernel/result";
import { refrigerant as fluidOf } from "../../refrigerant/models/refrigerant";
import { EQUATION_SOURCES, TRANSPORT_SOURCES } from "../../refrigerant/sources";
import { attackedMetal, cleanCoil } from "../cautions";
import {
  bonding,
  fastWater,
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
} from "../coilCautions";
import { COIL_INPUTS, EXAMPLE_COIL } from "../coilInputs";
import { rateCoil } from "../models/coil";
import { conductivityOfWall } from "../models/overall";
import { zonesOf } from "../models/zonesTraced";
import { hotWaterBesidePlastic } from "../waterCautions";

const fernhill = {
  refrigerant: "R-410A",
  heatRejected: 112000,
  condensing: 105,
  evaporating: 45,
  waterFlow: 40,
  enteringWater: 82,
  ...EXAMPLE_COIL,
} as const;

export const coil = cellFunction({
  id: "EXCHANGER.COIL",
  topic: "exchanger",
  summary: "A helical tube coil in a shell rated by geometry: area, films, drops, velocities, hold-up.",
  finds: ["titanium coil", "condenser", "film coefficient", "rating", "size of an exchanger", "U value"],
  remarks: [
    "Duty and temperatures as EXCHANGER.ZONES; every zone has its own films, wall temperature and U on the outside area. Margin is area given over area needed, less one.",
    "Gas and liquid: Gnielinski with Schmidt's gain of a coil. Condensing: Shah 2009 averaged along the share of vapour, a straight-tube relation; above 1 °F of glide with the vapour's resistance (Silver, Bell and Ghaly).",
    "Water: one cylinder across the flow, forced (Churchill and Bernstein) and natural (Churchill and Chu) joined by fourth powers. It flows along the shell past the coil's ring, through core and gap alike: close the core to speed it up.",
    "Drops: friction only, two phases by Müller-Steinhagen and Heck with the coil's friction; bundle drop is that of the water along the hydraulic diameter alone. Most of the head is lost in the two ports: their bore gives the water drop, one velocity head in, half of one out, and 0.3 of one a turn; baffles are left out. Hold-up by Rouhani and Axelsson.",
    "Parallel tubes are wound into each other on one diameter; the pitch is that of neighbouring turns.",
  ],
  args: { inputs: COIL_INPUTS },
  gives: list("the coil's rating", {
    duty: of("heat rate", "heat to be passed"),
    areaNeeded: of("area", "outside area that the duty needs"),
    areaGiven: of("area", "outside area of the coil"),
    margin: of("fraction", "area given over area needed, less one"),
    leavingWater: of("temperature", "water leaving at the duty"),
    pinchDifference: of("temperature difference", "least difference between the streams"),
    gasFilm: of("film coefficient", "inside, desuperheating"),
    condensingFilm: of("film coefficient", "inside, condensing"),
    liquidFilm: of("film coefficient", "inside, subcooling"),
    waterFilm: of("film coefficient", "outside, beside condensing"),
    waterFilmForced: of("film coefficient", "of it, forced flow alone"),
    waterFilmNatural: of("film coefficient", "of it, natural flow alone"),
    gasU: of("film coefficient", "overall, desuperheating"),
    condensingU: of("film coefficient", "overall, condensing"),
    liquidU: of("film coefficient", "overall, subcooling"),
    gasArea: of("area", "needed by desuperheating"),
    condensingArea: of("area", "needed by condensing"),
    liquidArea: of("area", "needed by subcooling"),
    UA: of("heat conductance", "conductance that the duty asks for"),
    governing: word("largest resistance while condensing"),
    gasVelocity: of("velocity", "gas entering the tube"),
    waterVelocity: of("velocity", "water past the coil"),
    refrigerantDrop: of("pressure drop", "friction drop of the refrigerant"),
    saturationDrop: of("temperature difference", "what it costs in dew temperature"),
    bundleDrop: of("pressure drop", "friction of the water along the coil only"),
    refrigerantHoldUp: of("mass", "refrigerant in the coil while it runs"),
    coilHeight: of("length", "height of the coil"),
    hottestFilm: of("temperature", "warmest surface that water touches"),
    waterDrop: of("pressure drop", "drop of the water, ports included"),
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
  heavy: true,
  cautions: [
    { rule: hotFilm, fires: { inputs: { ...fernhill, condensing: 150, waterFlow: 5, refrigerant: "R-22" } } },
    {
      rule: hotWaterBesidePlastic,
      fires: { inputs: { ...fernhill, condensing: 150, waterFlow: 3, refrigerant: "R-22" } },
    },
    { rule: shortArea, fires: { inputs: { ...fernhill, tubeLength: 20 } } },
    { rule: portsLeftOut, fires: { inputs: fernhill } },
    { rule: bonding, fires: { inputs: fernhill } },
    { rule: filmsUncertain, fires: { inputs: fernhill } },
    { rule: outsideCondensingData, fires: { inputs: { ...fernhill, tubes: 1 } } },
    { rule: fastWater, fires: { inputs: { ...fernhill, material: "copper", waterFlow: 2000 } } },
    { rule: largeDrop, fires: { inputs: { ...fernhill, tubes: 1 } } },
    { rule: cleanCoil, fires: { inputs: { ...fernhill, outsideFouling: 0 } } },
    { rule: attackedMetal, fires: { inputs: { ...fernhill, material: "copper" } } },
    { rule: poolChemistry, fires: { inputs: fernhill } },
    { rule: freezingShell, fires: { inputs: fernhill } },
    { rule: singleWall, fires: { inputs: fernhill } },
  ],
  sources: [...EQUATION_SOURCES, ...TRANSPORT_SOURCES],
  checks: [
    {
      at: { inputs: fernhill },
      gives: { areaGiven: 39.27 },
      within: 0.01,
      from: "identity",
      remark: "π × 0.625 in × 60 ft × 4",
    },
    {
      at: { inputs: { ...fernhill, portBore: 1.592 } },
      gives: { waterDrop: 0.42 },
      within: 0.02,
      from: "hydraulicsTexts",
      remark: "1.5 velocity heads of two 1-1/2 in ports: 0.97 ft; the coil adds little",
    },
    {
      at: { inputs: { ...fernhill, outsideDiameter: 0.5, tubes: 1, tubeLength: 2.51327, coilDiameter: 9.6 } },
      gives: { areaGiven: 0.329 },
      within: 0.0005,
      from: "kern1950",
      remark: "Example 20.2, one turn",
    },
    { at: { inputs: { ...fernhill, pitch: 0.5 } }, gives: "#VALUE!", from: "identity", remark: "turns would overlap" },
    { at: { inputs: { ...fernhill, condensing: 80 } }, gives: "#N/A", from: "identity" },
  ],
  work({ inputs }, { trace, note }) {
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
    note({
      coiled: true,
      portsKnown: inputs.portBore !== undefined,
      outsideData: rating.outsideData,
      fastest: fastestFor(material),
      insideFouling,
      outsideFouling,
    });
    if (typeof material === "string") note({ tubeMaterial: material });
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
