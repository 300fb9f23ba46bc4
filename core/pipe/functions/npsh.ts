import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { ALTITUDE, WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { standardAtmosphere } from "../../kernel/define/pressureBasis";
import { us } from "../../kernel/values/quantity";
import { of } from "../../kernel/define/result";
import { densityOfWater } from "../../water/equations";
import { vapourPressureOfWater } from "../../water/saturation";
import { littleSuctionHead } from "../cautions";
import { suctionHead } from "../equations";

const head = (value: number): number => us("head", value);

export const npsh = cellFunction({
  id: "PIPE.NPSH",
  topic: "pipe",
  summary: "Net positive suction head available at a pump.",
  finds: ["suction", "cavitation", "suction lift"],
  remarks: [
    "Open water surface, no margin inside: handbooks take off 2 ft more. A closed filter or vessel before the pump changes the surface pressure.",
  ],
  args: {
    altitude: ALTITUDE,
    water: WATER_TEMPERATURE,
    lift: quantity("head", "how far the water lies below the pump (above: negative)", {
      from: head(-100),
      to: head(35),
      usual: [head(-12), head(15)],
    }),
    suctionLoss: quantity("head", "head lost in the suction line", { from: 0, usual: [0, head(15)] }),
  },
  gives: of("head", "suction head available"),
  cautions: [{ rule: littleSuctionHead, fires: { altitude: 7000, water: 80, lift: 12, suctionLoss: 5 } }],
  checks: [
    {
      at: { altitude: 0, water: 70, lift: -6, suctionLoss: 2 },
      gives: 37.06,
      within: 0.12,
      from: "hydraulicsTexts",
      remark: "handbook example 33.9 + 6 − 0.839 − 2 − 2 = 35.06 holds a margin of 2 ft",
    },
    {
      at: { altitude: 0, water: 10, lift: 2.5, suctionLoss: 0.8, units: "SI" },
      gives: 6.91007,
      within: 0.01,
      from: "npshRows",
    },
    {
      at: { altitude: 0, water: 28, lift: -0.5, suctionLoss: 0.5, units: "SI" },
      gives: 9.98409,
      within: 0.01,
      from: "npshRows",
    },
  ],
  work({ altitude, water, lift, suctionLoss }, { step }) {
    const pa = step(standardAtmosphere, { z: altitude });
    const pv = step(vapourPressureOfWater, { T: water });
    return step(suctionHead, { pa, pv, rho: step(densityOfWater, { T: water }), z: lift, hs: suctionLoss });
  },
});
