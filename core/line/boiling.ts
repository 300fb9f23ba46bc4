/** The temperature at which water boils, or ice sublimes, at a pressure. */
import { outOfRange } from "../kernel/values/fault";
import { bracketedRoot } from "../numeric/root";
import { quantityMark } from "../kernel/values/quantityMark";
import { silent, type Trace } from "../kernel/define/steps";
import { TRIPLE, sublimationPressure } from "../water/ice";
import { vapourPressureOfWater } from "../water/saturation";

/** Coldest ice in the search, K: far below 1 micron. */
const COLDEST = 150;
const HOTTEST = 640;

/** Temperature, K, at which the vapour pressure over ice (below the triple point) or liquid water is `pressure`, Pa absolute. */
export const boilingTemperature = (
  pressure: number,
  trace: Trace = silent,
): { readonly temperature: number; readonly over: "ice" | "water" } => {
  const over = pressure < TRIPLE.p ? "ice" : "water";
  const line = over === "ice" ? sublimationPressure : vapourPressureOfWater;
  const [low, high] = over === "ice" ? [COLDEST, TRIPLE.T] : [TRIPLE.T - 0.01, HOTTEST];
  const log = Math.log(pressure);
  const root = bracketedRoot((T) => Math.log(line.code({ T })) - log, low, high, { tolerance: 1e-10 });
  if (!root.found) {
    const limits = [sublimationPressure.code({ T: COLDEST }), vapourPressureOfWater.code({ T: HOTTEST })] as const;
    throw outOfRange({
      quantity: "vacuum (absolute)",
      limit: `from ${quantityMark("vacuum", limits[0])} to ${quantityMark("vacuum", limits[1])}`,
      got: quantityMark("vacuum", pressure),
    });
  }
  trace.remark(`Over ${over}: the triple point of water is at ${quantityMark("vacuum", TRIPLE.p)} absolute.`);
  trace.solution({
    unknown: "T",
    kind: "temperature",
    solves: `vapour pressure over ${over} equal to the vacuum`,
    bracket: root.bracket,
    iterations: root.iterations,
    residual: root.residual,
    answer: root.x,
  });
  trace.step(line, { T: root.x });
  return { temperature: root.x, over };
};
