import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { HEAT_RATE } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { listResult, quantityResult } from "../../kernel/define/result";
import { CYCLE_ARGS } from "../../cycle/args";
import { massFlowOf } from "../../cycle/equations";
import { cycleOf } from "../../cycle/working";
import { EQUATION_SOURCES, TRANSPORT_SOURCES } from "../../refrigerant/sources";
import { ADDED_LENGTH, SERVICE, TUBE_SIZE } from "../args";
import { fastLiquid, flashGas, lineLoss, noisyGas, oilInRiser } from "../cautions";
import { solveLineDrop } from "../lineDrop";
import { leastFlow } from "../suctionRiser";
import { boreOfTube } from "../tube";

const { refrigerant: REFRIGERANT, ...CONDITIONS } = CYCLE_ARGS;

const suctionRow = { service: "suction", evaporating: 40, condensing: 105, superheat: 0, subcooling: 0 } as const;

export const lineDrop = cellFunction({
  id: "LINE.DROP",
  topic: "line",
  summary: "Pressure lost in a refrigerant line, also as saturation temperature and flash gas.",
  keywords: ["line sizing", "suction line", "liquid line", "hot gas line", "friction", "lift", "flash gas"],
  details: [
    "Flow from the cycle; Colebrook on the tube's bore, drawn copper (0.0015 mm); the inlet density applies throughout, so drops above a tenth of the pressure come out too low.",
    "Suction and liquid lines start at the cycle's pressures, a discharge line ends at the condenser's. The line neither gains nor loses heat.",
    "Rise is from inlet to outlet, negative for a fall; fittings enter as equivalent length, valves and driers as pressure drop (LINE.VALVE computes it for a diverting valve).",
  ],
  args: {
    refrigerant: REFRIGERANT,
    service: SERVICE,
    size: TUBE_SIZE,
    length: ADDED_LENGTH.describedAs("straight length of the line"),
    cooling: HEAT_RATE.describedAs("cooling at the evaporator"),
    ...CONDITIONS,
    rise: quantity("length", "rise from the line's inlet to its outlet", {
      from: us("length", -500),
      to: us("length", 500),
      usual: [us("length", -100), us("length", 100)],
    }).default(0),
    fittingsLength: quantity("length", "equivalent length of the fittings", { from: 0 }).default(0),
    valveDrop: quantity("pressure drop", "drop of valves and driers", { from: 0 }).default(0),
  },
  returns: listResult("line", {
    massFlow: quantityResult("mass flow", "refrigerant mass flow"),
    velocity: quantityResult("velocity", "velocity"),
    frictionDrop: quantityResult("pressure drop", "lost by friction in tube and fittings"),
    columnDrop: quantityResult("pressure drop", "taken by the static column"),
    pressureDrop: quantityResult("pressure drop", "friction, column and valves together"),
    saturationDrop: quantityResult("temperature difference", "the same as saturation temperature"),
    outletQuality: quantityResult("fraction", "vapour's share at the end of a liquid line"),
  }),
  facts: { leastFlow: "mass flow" },
  memoised: true,
  cautions: [
    {
      rule: lineLoss,
      raisedBy: {
        refrigerant: "R-410A",
        service: "suction",
        size: "5/8 in",
        length: 100,
        cooling: 60000,
        evaporating: 45,
        condensing: 105,
      },
    },
    {
      rule: flashGas,
      raisedBy: {
        refrigerant: "R-410A",
        service: "liquid",
        size: "3/8 in",
        length: 100,
        cooling: 60000,
        evaporating: 45,
        condensing: 105,
        subcooling: 3,
        rise: 30,
      },
    },
    {
      rule: oilInRiser,
      raisedBy: {
        refrigerant: "R-410A",
        service: "suction",
        size: "1-5/8 in",
        length: 30,
        cooling: 24000,
        evaporating: 45,
        condensing: 105,
        rise: 20,
      },
    },
    {
      rule: fastLiquid,
      raisedBy: {
        refrigerant: "R-410A",
        service: "liquid",
        size: "1/4 in",
        length: 20,
        cooling: 60000,
        evaporating: 45,
        condensing: 105,
      },
    },
    {
      rule: noisyGas,
      raisedBy: {
        refrigerant: "R-410A",
        service: "suction",
        size: "5/8 in",
        length: 30,
        cooling: 90000,
        evaporating: 45,
        condensing: 105,
      },
    },
  ],
  sources: [...EQUATION_SOURCES, ...TRANSPORT_SOURCES, "colebrook1939"],
  checks: [
    {
      inputs: { refrigerant: "R-22", ...suctionRow, size: "1-3/8 in", length: 100, cooling: 121_200 },
      expected: { pressureDrop: 2.91, saturationDrop: 2 },
      tolerance: "3 %",
      source: "ashraeRefrigeration",
      remark: "10.1 tons at 2 °F and 2.91 psi per 100 ft, from memory",
    },
    {
      inputs: { refrigerant: "R-22", ...suctionRow, size: "2-1/8 in", length: 100, cooling: 397_200 },
      expected: { pressureDrop: 2.91 },
      tolerance: "3 %",
      source: "ashraeRefrigeration",
      remark: "33.1 tons at 2 °F and 2.91 psi per 100 ft, from memory",
    },
    {
      inputs: {
        refrigerant: "R-22",
        service: "liquid",
        size: "1/2 in",
        length: 10,
        cooling: 10,
        evaporating: -5,
        condensing: 35,
        superheat: 0,
        subcooling: 0,
        efficiency: 1,
        units: "SI",
      },
      expected: { massFlow: 224.874 },
      tolerance: "0.1 %",
      source: "coolprop8",
    },
  ],
  compute({ refrigerant, service, size, length, cooling, rise, fittingsLength, valveDrop, ...conditions }, context) {
    const { trace, step, recordFacts } = context;
    const solved = cycleOf({ refrigerant, ...conditions }, trace);
    const massFlow = step(massFlowOf, { Q: cooling, q: solved.cooling });
    const bore = boreOfTube(size, trace);
    if (service !== "liquid") recordFacts({ leastFlow: leastFlow(solved, service, bore) });
    return {
      massFlow,
      ...solveLineDrop({ service, bore, length, fittingsLength, rise, valveDrop }, solved, massFlow, trace),
    };
  },
});
