/** The bibliography keys behind a refrigerant's properties. */
import type { SourceKey } from "../kernel/reference";
import { PURE_FLUIDS } from "./data/fluids/index";
import { PAIRS } from "./data/pairs";
import { TRANSPORT } from "./data/transport";
import { isPure, type Fluid } from "./refrigerant";

const LATEST_FIRST: readonly SourceKey[] = ["bell2023", "bell2022", "lemmonJacobsen2004"];

/** The equation of state of a pure refrigerant, or of a blend the latest paper among its pairs' mixture models. */
export const equationSource = (fluid: Fluid): SourceKey => {
  const names = fluid.components.map((part) => part.fluid.name);
  if (isPure(fluid)) return fluid.components[0]?.fluid.source ?? "coolprop8";
  const pairs = PAIRS.filter(({ first, second }) => names.includes(first) && names.includes(second));
  const keys = pairs.map(({ source }) => source);
  return LATEST_FIRST.find((key) => keys.includes(key)) ?? "lemmonJacobsen2004";
};

const distinct = (keys: readonly SourceKey[]): readonly SourceKey[] => [...new Set(keys)];

/** Every source of refrigerant properties. */
export const EQUATION_SOURCES: readonly SourceKey[] = distinct([
  ...PURE_FLUIDS.map(({ source }) => source),
  ...PAIRS.map(({ source }) => source),
]);

/** Every source of viscosity, conductivity and surface tension. */
export const TRANSPORT_SOURCES: readonly SourceKey[] = distinct([
  ...TRANSPORT.flatMap(({ viscosity, conductivity, surfaceTension }) => [
    viscosity.source,
    conductivity.source,
    surfaceTension.source,
  ]),
  "blendTransport",
  "weinaugKatz1943",
]);
