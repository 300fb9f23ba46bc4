import { quantity, yesNo } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { notAvailable } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { REFRIGERANT } from "../../refrigerant/args";
import { VESSEL_LENGTH } from "../args";
import { cascadeOnly, reliefByCode } from "../cautions";
import { RELIEF_FACTORS } from "../data/relief";
import { reliefCapacity } from "../equations";

const receiver = { refrigerant: "R-410A", diameter: 0.5, length: 3 } as const;

export const pressureRelief = cellFunction({
  id: "PRESSURE.RELIEF",
  topic: "pressure",
  summary: "Least capacity, as air, of the relief device of a refrigerant vessel.",
  keywords: ["relief valve", "receiver", "shell", "fusible plug", "burst disc"],
  details: [
    "C = f D L with outside diameter and length in feet (pounds of air a minute), f by refrigerant; 2.5 times with combustibles within 20 ft (6 m).",
    "R-1234yf, R-1234ze(E), R-452B, R-454B and R-513A have no factor in the table read: #N/A. Their makers or a newer edition give one; a neighbour's isn't used.",
  ],
  args: {
    refrigerant: REFRIGERANT,
    diameter: quantity("length", "outside diameter of the vessel (a length: ft or m)", {
      above: 0,
      usual: [us("length", 0.3), us("length", 6)],
    }),
    length: VESSEL_LENGTH,
    combustiblesNear: yesNo("combustibles within 20 ft (6 m) of the vessel").default(false),
  },
  returns: quantityResult("relief flow", "least relief capacity, as air"),
  cautions: [
    { rule: reliefByCode, raisedBy: receiver },
    { rule: cascadeOnly, raisedBy: { ...receiver, refrigerant: "R-744" } },
  ],
  checks: [
    {
      inputs: receiver,
      expected: 3.75,
      tolerance: 0.005,
      source: "reliefTable",
      remark: "factor 2.5 as printed, by hand 2.5 × 0.5 × 3",
    },
    {
      inputs: { ...receiver, combustiblesNear: true },
      expected: 9.375,
      tolerance: 0.005,
      source: "reliefTable",
      remark: "2.5 times as much",
    },
    {
      inputs: { ...receiver, refrigerant: "R-22" },
      expected: 2.4,
      tolerance: 0.005,
      source: "reliefTable",
      remark: "factor 1.6 as printed",
    },
    { inputs: { ...receiver, refrigerant: "R-454B" }, expected: "#N/A", source: "reliefTable" },
  ],
  compute({ refrigerant, diameter, length, combustiblesNear }, { trace, step }) {
    const f = RELIEF_FACTORS[refrigerant];
    if (f === undefined)
      throw notAvailable(
        `refrigerant: the table read prints no relief factor for ${refrigerant}; ask the vessel's maker or a newer edition of ASHRAE 15`,
      );
    trace.lookup({
      table: "Relief factor",
      row: refrigerant,
      result: { value: f, kind: "number" },
      source: "reliefTable",
    });
    return step(reliefCapacity, { f, n: combustiblesNear ? 2.5 : 1, D: diameter, L: length });
  },
});
