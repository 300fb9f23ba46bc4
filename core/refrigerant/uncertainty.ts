/** Uncertainty of a refrigerant's equation of state. */
import { isPure, type Fluid } from "./refrigerant";

/** For the mixture models; from memory of the papers' summaries, papers not consulted. */
const BLEND =
  "density 0.1 to 0.5 %, vapour pressure 0.5 to 1 % (bubble line), heat capacity 0.5 to 1 %, speed of sound 0.5 to 1 %";

/** Expected uncertainties as the authors state them, all properties in one sentence. */
export const statedUncertainty = (fluid: Fluid): string =>
  isPure(fluid) ? (fluid.components[0]?.fluid.uncertainty ?? "") : BLEND;

/** Properties with an uncertainty of their own. */
export type StatedUncertainty = "density" | "vapour pressure" | "heat capacity" | "speed of sound";

const NOT_STATED = "not stated by the authors";

/** The part of the statement on one property: "0.1 %". */
export const uncertaintyOf = (fluid: Fluid, property: StatedUncertainty): string => {
  const part = statedUncertainty(fluid)
    .split(/, (?=density|vapour pressure|heat capacity|speed of sound)/)
    .find((each) => each.startsWith(property));
  return part === undefined ? NOT_STATED : part.slice(property.length).trim();
};

/** A share in per cent: 0.06 is "about 6 %". */
export const aboutPerCent = (share: number): string => `about ${Number((100 * share).toPrecision(2))} %`;
