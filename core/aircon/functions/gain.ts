import { cellFunction } from "../../kernel/define/cellFunction";
import { listResult, quantityResult } from "../../kernel/define/result";
import { CYCLE_ARGS } from "../../cycle/args";
import { coldCondensing } from "../../cycle/cautions";
import { copOf } from "../../cycle/equations";
import { cycleOf } from "../../cycle/working";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { gainInTheField, noGain } from "../gain/cautions";
import { changeOfCop, relativeChange } from "../gain/equations";

const { refrigerant: REFRIGERANT, evaporating: EVAPORATING, condensing: CONDENSING, ...STATE } = CYCLE_ARGS;

const usual = { evaporating: 45, condensingOutdoors: 115, condensingPool: 105 } as const;

export const airconGain = cellFunction({
  id: "AIRCON.GAIN",
  topic: "aircon",
  summary: "Change of capacity, power and COP when the condenser runs cooler on the pool than outdoors.",
  keywords: ["efficiency", "saving", "head pressure", "condensing temperature", "benefit"],
  details: [
    "Evaporating temperature, superheat and swept volume × volumetric efficiency are constant: the mass flow stays the same, cooling and work by mass change.",
    "Compressor only, single speed, with the same isentropic efficiency at both. In a real evaporator a higher capacity lowers the evaporating temperature a little.",
  ],
  args: {
    refrigerant: REFRIGERANT,
    evaporating: EVAPORATING,
    condensingOutdoors: CONDENSING.describedAs("dew temperature in the outdoor coil"),
    condensingPool: CONDENSING.describedAs("dew temperature in the pool exchanger"),
    ...STATE,
  },
  returns: listResult("change from outdoors to pool", {
    changeOfCapacity: quantityResult("fraction", "relative change of cooling capacity"),
    changeOfPower: quantityResult("fraction", "relative change of compressor power"),
    changeOfCOP: quantityResult("fraction", "relative change of COP"),
    outdoorCOP: quantityResult("COP", "COP of the compressor on the outdoor coil"),
    poolCOP: quantityResult("COP", "COP of the compressor on the pool"),
  }),
  facts: { cooler: "temperature difference", condensing: "temperature" },
  memoised: true,
  cautions: [
    { rule: gainInTheField, raisedBy: { refrigerant: "R-22", ...usual } },
    { rule: noGain, raisedBy: { refrigerant: "R-22", ...usual, condensingPool: 125 } },
    { rule: coldCondensing, raisedBy: { refrigerant: "R-22", ...usual, condensingPool: 75 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: { refrigerant: "R-22", ...usual },
      expected: { changeOfCapacity: 0.0449, changeOfCOP: 0.206, outdoorCOP: 3.93, poolCOP: 4.74 },
      tolerance: 0.005,
      source: "coolprop8",
      remark: "relative capacity 1.000 over 0.957, COP 4.74 over 3.93",
    },
    {
      inputs: { refrigerant: "R-134a", ...usual, condensingOutdoors: 120 },
      expected: { changeOfCapacity: 0.0846, changeOfCOP: 0.3187 },
      tolerance: 0.003,
      source: "coolprop8",
      remark: "relative capacity 1.000 over 0.922, COP 4.80 over 3.64",
    },
    {
      inputs: { refrigerant: "R-32", ...usual, condensingPool: 90 },
      expected: { changeOfCapacity: 0.1119, changeOfCOP: 0.7032 },
      tolerance: 0.005,
      source: "coolprop8",
      remark: "relative capacity 1.063 over 0.956, COP 6.37 over 3.74",
    },
  ],
  compute({ refrigerant, evaporating, condensingOutdoors, condensingPool, ...state }, { trace, step, recordFacts }) {
    const solve = (title: string, condensing: number) =>
      trace.within(title, () => cycleOf({ refrigerant, evaporating, condensing, ...state }, trace));
    const outdoors = solve("On the outdoor coil", condensingOutdoors);
    const pool = solve("On the pool", condensingPool);
    recordFacts({ cooler: condensingOutdoors - condensingPool, condensing: condensingPool });
    const cq = step(relativeChange, { a: outdoors.cooling, b: pool.cooling });
    const cw = step(relativeChange, { a: outdoors.work, b: pool.work });
    return {
      changeOfCapacity: cq,
      changeOfPower: cw,
      changeOfCOP: step(changeOfCop, { cq, cw }),
      outdoorCOP: step(copOf, { q: outdoors.cooling, w: outdoors.work }),
      poolCOP: step(copOf, { q: pool.cooling, w: pool.work }),
    };
  },
});
