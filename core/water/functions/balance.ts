import { block, choice, quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { POOL_WATER } from "../../kernel/define/glossary";
import { NO_VALUE, listResult, quantityResult } from "../../kernel/define/result";
import { us } from "../../kernel/values/quantity";
import { valueError } from "../../kernel/values/fault";
import { attackedByChloride, attackedByChlorine, attackingWater, indexUncertain, scalingFilm } from "../scaleCautions";
import { balanceWater } from "../scale";

const mgL = (description: string, to: number) => quantity("number", `${description}, mg/L`, { from: 0, to });

const INPUTS = block(
  {
    water: POOL_WATER.default(us("temperature", 80)),
    film: quantity("temperature", "warmest film (EXCHANGER.COIL's hottest film)", {
      from: us("temperature", 32),
      to: us("temperature", 194),
    }).optional(),
    pH: quantity("number", "pH", { from: 6.5, to: 9 }),
    calciumHardness: quantity("number", "calcium hardness, mg/L as CaCO3", { above: 0, to: 3000 }),
    totalAlkalinity: quantity("number", "total alkalinity, mg/L as CaCO3", { above: 0, to: 1000 }),
    cyanuricAcid: mgL("cyanuric acid", 400).default(0),
    borate: mgL("borate as boron", 200).default(0),
    dissolvedSolids: mgL("total dissolved solids, salt included", 15_000).default(1000),
    salt: mgL("salt (NaCl) among them", 15_000).default(0),
    freeChlorine: mgL("free chlorine", 20).optional(),
    material: choice(
      "WettedMetal",
      ["titanium", "cupronickel", "copper", "stainless 304", "stainless 316"],
      "metal in the water",
      {
        "stainless steel 304": "stainless 304",
        "stainless steel 316": "stainless 316",
      },
    ).optional(),
  },
  "input block: temperatures, pH, hardness, alkalinity, cyanuric acid, borate, solids, salt",
);

/** mg of chloride in a mg of salt. */
const CHLORIDE = 35.453 / 58.443;

const SITE = { water: 76, pH: 7, calciumHardness: 200, totalAlkalinity: 50, dissolvedSolids: 500 };
const EXAMPLE = {
  film: 120,
  pH: 7.5,
  calciumHardness: 250,
  totalAlkalinity: 100,
  cyanuricAcid: 40,
  dissolvedSolids: 800,
};

export const waterBalance = cellFunction({
  id: "WATER.BALANCE",
  topic: "water",
  summary: "Saturation index of pool water at its own temperature and at the exchanger's warm film.",
  keywords: ["Langelier", "LSI", "scale", "calcite", "corrosion", "cyanuric acid", "precipitation potential"],
  details: [
    "Index 0: neither dissolves nor deposits calcite; −0.3 to +0.3 is good, to ±0.5 balanced. Heated closed to the air pH falls about 0.002 per °F, so the index rises 0.005 per °F of film; the table of the site, which holds pH, says more.",
    "Constants of Plummer and Busenberg, activities by Standard Methods 2330, cyanurate and borate taken off the alkalinity. No ion pairs: on average 0.02 above PHREEQC at the water's temperature, 0.05 at a film of 110 to 150 °F, up to 0.4 at pH 8.2 with hardness 800.",
    "Precipitation: calcite in mg/L that would bring the index to 0, + where it comes out. Scale also needs time and nuclei. Balanced pH and hardness: each by itself makes the index 0 at the water's temperature.",
    "Chloride is counted from the salt. Limits of the metals are those printed in water-quality tables of water-source machines.",
  ],
  args: { inputs: INPUTS },
  returns: listResult("balance of the water", {
    index: quantityResult("number", "saturation index at the water's temperature"),
    filmIndex: quantityResult("number", "at the film, heated closed to the air"),
    filmPh: quantityResult("number", "pH at the film"),
    filmIndexPhHeld: quantityResult("number", "at the film, with pH held"),
    precipitation: quantityResult("number", "precipitation potential, mg/L as CaCO3"),
    filmPrecipitation: quantityResult("number", "precipitation potential at the film, mg/L"),
    siteTable: quantityResult("number", "index by the table used on site"),
    carbonateAlkalinity: quantityResult("number", "alkalinity of carbonate alone, mg/L"),
    balancedPh: quantityResult("number", "pH that makes the index 0"),
    balancedHardness: quantityResult("number", "calcium hardness that makes the index 0, mg/L"),
  }),
  facts: {
    worstIndex: "number",
    index: "number",
    material: "word",
    chloride: "number",
    freeChlorine: "number",
    water: "temperature",
    pHAndHardness: "yes/no",
  },
  memoised: true,
  cautions: [
    { rule: scalingFilm, raisedBy: { inputs: { ...EXAMPLE, film: 150, pH: 7.8 } } },
    { rule: attackingWater, raisedBy: { inputs: SITE } },
    { rule: indexUncertain, raisedBy: { inputs: { ...EXAMPLE, pH: 8.1, calciumHardness: 700 } } },
    {
      rule: attackedByChloride,
      raisedBy: { inputs: { ...EXAMPLE, material: "cupronickel", dissolvedSolids: 4000, salt: 3200 } },
    },
    { rule: attackedByChlorine, raisedBy: { inputs: { ...EXAMPLE, material: "copper", freeChlorine: 3 } } },
  ],
  example: { inputs: EXAMPLE },
  checks: [
    { inputs: { inputs: SITE }, expected: { siteTable: -0.9 }, tolerance: 0.05, source: "siteTable" },
    {
      inputs: { inputs: { ...SITE, water: 94, pH: 8, calciumHardness: 400, totalAlkalinity: 150 } },
      expected: { siteTable: 1.1 },
      tolerance: 0.05,
      source: "siteTable",
    },
    {
      inputs: { inputs: EXAMPLE },
      expected: {
        index: 0.009,
        filmIndex: 0.247,
        filmPh: 7.451,

        filmPrecipitation: 7.68,
        carbonateAlkalinity: 87.17,
      },
      tolerance: 0.005,
      source: "saturationRows",
    },
    {
      inputs: { inputs: { ...EXAMPLE, cyanuricAcid: 350 } },
      expected: "#N/A",
      source: "identity",
      remark: "cyanurate takes all alkalinity",
    },
  ],
  compute({ inputs }, { trace, recordFacts }) {
    const { film, material, salt, dissolvedSolids, freeChlorine, pH, calciumHardness, water } = inputs;
    if (salt > dissolvedSolids)
      throw valueError(`inputs: salt: must be at most the dissolved solids of ${dissolvedSolids} mg/L, got ${salt}`);
    const found = balanceWater(inputs, film ?? water, trace);
    const atFilm = (value: number): number | "" => (film === undefined ? NO_VALUE : value);
    recordFacts({
      index: found.index,
      worstIndex: Math.max(found.index, found.filmIndex),
      water: Math.max(water, film ?? water),
      chloride: CHLORIDE * salt,
      pHAndHardness: pH > 8 && calciumHardness > 400,
      ...(material !== undefined && { material }),
      ...(freeChlorine !== undefined && { freeChlorine }),
    });
    return {
      index: found.index,
      filmIndex: atFilm(found.filmIndex),
      filmPh: atFilm(found.filmPh),
      filmIndexPhHeld: atFilm(found.filmIndexPhHeld),
      precipitation: found.precipitation,
      filmPrecipitation: atFilm(found.filmPrecipitation),
      siteTable: Number.isNaN(found.siteTable) ? NO_VALUE : found.siteTable,
      carbonateAlkalinity: found.carbonateAlkalinity,
      balancedPh: Number.isNaN(found.balancedPh) ? NO_VALUE : found.balancedPh,
      balancedHardness: calciumHardness * 10 ** -found.index,
    };
  },
});
