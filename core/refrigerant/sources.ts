/** The bibliography keys behind a refrigerant's properties. */
import type { SourceKey } from "../kernel/reference";
import { isPure, type Fluid } from "./models/refrigerant";

const EQUATIONS: Readonly<Record<string, SourceKey>> = {
  "R-22": "kamei1995",
  "R-32": "tillnerRothYokozeki1997",
  "R-125": "lemmonJacobsen2005",
  "R-134a": "tillnerRothBaehr1994",
  "R-143a": "lemmonJacobsen2000",
  "R-290": "lemmonMcLindenWagner2009",
  "R-600a": "buckerWagner2006",
  "R-744": "spanWagner1996",
  "R-1234yf": "lemmonAkasaka2022",
  "R-1234ze(E)": "tholLemmon2016",
};

/** The equation of state of a pure refrigerant, or the mixture model of a blend. */
export const equationSource = (fluid: Fluid): SourceKey => {
  if (isPure(fluid)) return EQUATIONS[fluid.name] ?? "coolprop8";
  const holds = (name: string): boolean => fluid.components.some((part) => part.fluid.name === name);
  if (!holds("R-1234yf")) return "lemmonJacobsen2004";
  return holds("R-32") || holds("R-125") ? "bell2023" : "bell2022";
};

/** Every source that refrigerant properties may rest on. */
export const EQUATION_SOURCES: readonly SourceKey[] = [
  ...new Set<SourceKey>([...Object.values(EQUATIONS), "lemmonJacobsen2004", "bell2022", "bell2023"]),
];
