import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { ALTITUDE, WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { standardAtmosphere } from "../../kernel/define/pressureBasis";
import { us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { densityOfWater } from "../../water/equations";
import { vapourPressureOfWater } from "../../water/saturation";
import { littleSuctionHead } from "../cautions";
import { suctionHead } from "../equations";

const head = (value: number): number => us("head", value);

export const pipeNpsh = cellFunction({
  id: "PIPE.NPSH",
  topic: "pipe",
  summary: "Net positive suction head available at a pump.",
  keywords: ["suction", "cavitation", "suction lift"],
  details: [
    "Open water surface, no margin included: handbooks subtract 2 ft more. A closed filter or vessel before the pump changes the surface pressure.",
  ],
  args: {
    altitude: ALTITUDE,
    water: WATER_TEMPERATURE,
    lift: quantity("head", "height of the pump above the water (below: negative)", {
      from: head(-100),
      to: head(35),
      usual: [head(-12), head(15)],
    }),
    suctionLoss: quantity("head", "head lost in the suction line", { from: 0, usual: [0, head(15)] }),
  },
  returns: quantityResult("head", "suction head available"),
  cautions: [{ rule: littleSuctionHead, raisedBy: { altitude: 7000, water: 80, lift: 12, suctionLoss: 5 } }],
  checks: [
    {
      inputs: { altitude: 0, water: 70, lift: -6, suctionLoss: 2 },
      expected: 37.06,
      tolerance: 0.12,
      source: "hydraulicsTexts",
      remark: "handbook example 33.9 + 6 − 0.839 − 2 − 2 = 35.06 includes a margin of 2 ft",
    },
    {
      inputs: { altitude: 0, water: 10, lift: 2.5, suctionLoss: 0.8, units: "SI" },
      expected: 6.91007,
      tolerance: 0.01,
      source: "npshRows",
    },
    {
      inputs: { altitude: 0, water: 28, lift: -0.5, suctionLoss: 0.5, units: "SI" },
      expected: 9.98409,
      tolerance: 0.01,
      source: "npshRows",
    },
  ],
  compute({ altitude, water, lift, suctionLoss }, { step }) {
    const pa = step(standardAtmosphere, { z: altitude });
    const pv = step(vapourPressureOfWater, { T: water });
    return step(suctionHead, { pa, pv, rho: step(densityOfWater, { T: water }), z: lift, hs: suctionLoss });
  },
});
