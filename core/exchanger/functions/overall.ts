import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { FILM, FOULING, TUBE_MATERIAL } from "../args";
import { attackedMetal, cleanCoil, contestedTitanium } from "../surface/cautions";
import { conductivityOfWall, overallOf } from "../surface/overall";

const bareTube = { insideFilm: 300, outsideFilm: 400, outsideDiameter: 0.625, wall: 0.028 };

export const exchangerOverall = cellFunction({
  id: "EXCHANGER.OVERALL",
  topic: "exchanger",
  summary: "Overall coefficient U of a tube on its outside area: films, wall and fouling.",
  keywords: ["U value", "overall heat transfer coefficient", "fouling", "wall resistance", "titanium"],
  details: [
    "The wall is a cylinder; inside film and inside fouling are converted to the outside area. The working shows the share of each resistance and which one governs.",
    "Titanium 16.0 W/(m·K), the lowest published; cupronickel 90-10 44.9, stainless 304 15.0, copper (C12200) 339.",
  ],
  args: {
    insideFilm: FILM.describedAs("film coefficient inside, on the inside area"),
    outsideFilm: FILM.describedAs("film coefficient outside, on the outside area"),
    outsideDiameter: quantity("diameter", "outside diameter of the tube", {
      above: 0,
      usual: [us("diameter", 0.2), us("diameter", 3)],
    }),
    wall: quantity("diameter", "wall thickness of the tube", {
      above: 0,
      usual: [us("diameter", 0.01), us("diameter", 0.25)],
    }),
    material: TUBE_MATERIAL,
    insideFouling: FOULING.describedAs("fouling resistance inside, on the inside area"),
    outsideFouling: FOULING.describedAs("fouling resistance outside, on the outside area"),
  },
  returns: quantityResult("film coefficient", "overall coefficient U on the outside area"),
  facts: { coiled: "yes/no", tubeMaterial: "word" },
  cautions: [
    { rule: cleanCoil, raisedBy: { ...bareTube, material: "titanium" } },
    { rule: attackedMetal, raisedBy: { ...bareTube, material: "copper", outsideFouling: 0.0005 } },
    { rule: contestedTitanium, raisedBy: { ...bareTube, material: "titanium", outsideFouling: 0.0005 } },
  ],
  checks: [
    {
      inputs: { insideFilm: 3560, outsideFilm: 880.3, outsideDiameter: 25.4, wall: 2.2, material: 74.5, units: "SI" },
      expected: 663.1,
      tolerance: 0.1,
      source: "dutta2001",
    },
    {
      inputs: {
        insideFilm: 400,
        outsideFilm: 400,
        outsideDiameter: 1000,
        wall: 0.0001,
        material: 250,
        outsideFouling: 0.001,
      },
      expected: 166.667,
      tolerance: 0.01,
      source: "identity",
      remark: "a clean 200 with fouling 0.001 leaves 1/(1/200 + 0.001), on a nearly flat wall",
    },
    {
      inputs: {
        insideFilm: 1000,
        outsideFilm: 2000,
        outsideDiameter: 20,
        wall: 5,
        material: 16,
        insideFouling: 0.0001,
        outsideFouling: 0.0002,
        units: "SI",
      },
      expected: 300.0105,
      tolerance: 0.01,
      source: "identity",
      remark: "1/(0.0005 + 0.0002 + 0.02 ln 2/32 + 0.0002 + 0.002)",
    },
  ],
  compute({ material, ...tube }, { trace, recordFacts }) {
    recordFacts({ coiled: true, ...(typeof material === "string" && { tubeMaterial: material }) });
    return overallOf({ ...tube, conductivity: conductivityOfWall(material, trace) }, trace);
  },
});
