import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { listResult, quantityResult } from "../../kernel/define/result";
import { CYCLE_ARGS } from "../../cycle/args";
import { cycleOf } from "../../cycle/working";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { GAS_SERVICE, TUBE_SIZE } from "../args";
import { riserAtPartLoad } from "../cautions";
import { coolingOfFlow, lineVelocity } from "../equations";
import { lineState } from "../lineState";
import { leastFlow } from "../suctionRiser";
import { boreOfTube } from "../tube";

const { refrigerant: REFRIGERANT, ...CONDITIONS } = CYCLE_ARGS;

/** Condensing in mild weather, where machines run unloaded. */
const MILD = us("temperature", 80);

/** Least difference between evaporating and mild condensing, K, for a warm evaporator. */
const LEAST_LIFT = us("temperature difference", 20);

export const lineRiser = cellFunction({
  id: "LINE.RISER",
  topic: "line",
  summary: "Least mass flow and cooling that carry oil up a suction or discharge riser.",
  keywords: ["oil return", "oil entrainment", "part load", "vertical line", "trap"],
  details: [
    "Dimensionless gas velocity of 0.85² at flow reversal of the oil film; oil of 960 kg/m³ (59.9 lb/ft³). The criterion is from memory; remembered handbook capacities agree within 4 %.",
    "Part load is in mild weather, condensing at 80 °F (26.7 °C): the colder liquid gives more cooling for the same flow, thinner discharge gas needs less flow.",
  ],
  args: { refrigerant: REFRIGERANT, service: GAS_SERVICE, size: TUBE_SIZE, ...CONDITIONS },
  returns: listResult("riser", {
    leastMassFlow: quantityResult("mass flow", "least mass flow"),
    leastVelocity: quantityResult("velocity", "gas velocity at that flow"),
    leastCooling: quantityResult("heat rate", "cooling at that flow"),
    leastCoolingPartLoad: quantityResult("heat rate", "the greater of that and the same in mild weather"),
  }),
  memoised: true,
  cautions: [
    {
      rule: riserAtPartLoad,
      raisedBy: { refrigerant: "R-410A", service: "suction", size: "7/8 in", evaporating: 45, condensing: 105 },
    },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: {
        refrigerant: "R-22",
        service: "suction",
        size: "7/8 in",
        evaporating: -40,
        condensing: 90,
        superheat: 10,
        subcooling: 0,
      },
      expected: { leastCooling: 3576 },
      tolerance: "4 %",
      source: "ashraeRefrigeration",
      remark: "0.298 tons, from memory",
    },
    {
      inputs: {
        refrigerant: "R-22",
        service: "suction",
        size: "1-1/8 in",
        evaporating: -40,
        condensing: 90,
        superheat: 10,
        subcooling: 0,
      },
      expected: { leastCooling: 6960 },
      tolerance: "4 %",
      source: "ashraeRefrigeration",
      remark: "0.580 tons, from memory",
    },
  ],
  compute({ refrigerant, service, size, ...conditions }, { trace, step }) {
    const bore = boreOfTube(size, trace);
    const solved = cycleOf({ refrigerant, ...conditions }, trace);
    const leastMassFlow = leastFlow(solved, service, bore, trace);
    const rho = lineState(solved, service).density;
    const leastCooling = step(coolingOfFlow, { m: leastMassFlow, q: solved.cooling });
    const mildCondensing = Math.min(conditions.condensing, Math.max(MILD, conditions.evaporating + LEAST_LIFT));
    const inMild = trace.within("Part load in mild weather", () => {
      const mild = cycleOf({ refrigerant, ...conditions, condensing: mildCondensing }, trace);
      return step(coolingOfFlow, { m: leastFlow(mild, service, bore, trace), q: mild.cooling });
    });
    return {
      leastMassFlow,
      leastVelocity: step(lineVelocity, { m: leastMassFlow, rho, D: bore }),
      leastCooling,
      leastCoolingPartLoad: Math.max(leastCooling, inMild),
    };
  },
});
