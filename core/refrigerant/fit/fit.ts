// Fits the saturation lines of every refrigerant to converged phase equilibria and writes core/refrigerant/data/saturation/.
// Run: npx tsx core/refrigerant/fit/fit.ts [name ...]; then prettier on the folder.
import { writeFileSync } from "node:fs";
import type { PiecewiseFit } from "../../numeric/chebyshev";
import { packSeries } from "../../numeric/packedSeries";
import { BLENDS } from "../data/blends";
import { PURE_FLUIDS } from "../data/fluids/index";
import { PAIRS } from "../data/pairs";
import type { CurveData, SaturationData, SeriesData } from "../data/saturationData";
import type { ConvergedRefrigerant } from "../equilibrium/converged";
import { convergedBlend, convergedPure } from "../equilibrium/converged";
import { fitCurve, type FittedCurve } from "./curves";

const folder = new URL("../data/saturation/", import.meta.url);

function fit(name: string, converged: ConvergedRefrigerant): SaturationData {
  const { critical, bubble, dew, zero } = converged;
  const curve = (line: typeof bubble, loosely: "liquid" | "vapour" | undefined): FittedCurve =>
    fitCurve({ ...line, critical: critical.temperature }, loosely);
  return {
    name,
    from: bubble.range[0],
    to: bubble.range[1],
    critical,
    zero,
    bubble: roundedCurve(curve(bubble, dew && "vapour")),
    ...(dew && { dew: roundedCurve(curve(dew, "liquid")) }),
  };
}

// Last digits kept: each well below the error of the fit, so that the tables stay short.
const KEPT = { pressure: 10, liquid: 9, vapour: 9, incipient: 8 } as const;

/** A series with its coefficients rounded and packed; the error includes what rounding may add. */
function rounded(series: PiecewiseFit, digits: number): SeriesData {
  const unit = 10 ** -digits;
  return {
    ...packSeries(series, digits),
    error: Number((series.error + ((series.degree + 1) * unit) / 2).toExponential(2)),
  };
}

const roundedCurve = (curve: FittedCurve): CurveData => ({
  pressure: rounded(curve.pressure, KEPT.pressure),
  liquid: rounded(curve.liquid, KEPT.liquid),
  vapour: rounded(curve.vapour, KEPT.vapour),
  incipient: curve.incipient.map((series) => rounded(series, KEPT.incipient)),
});

function write(data: SaturationData): void {
  const file = data.name.toLowerCase().replace(/[()]/g, "");
  const constant = `${data.name.toUpperCase().replace(/[-()]/g, "")}_LINE`;
  const about = `${data.name}: fitted by core/refrigerant/fit/fit.ts to converged equilibria of the equation of state.`;
  const body = JSON.stringify(data, null, 1).replace(/"(\w+)":/g, "$1:");
  const text = `import type { SaturationData } from "../saturationData";\n\n/** ${about} */\nexport const ${constant}: SaturationData = ${body};\n`;
  writeFileSync(new URL(`${file}.ts`, folder), text);
}

const wanted = process.argv.slice(2);
const chosen = (name: string) => wanted.length === 0 || wanted.includes(name);
for (const fluid of PURE_FLUIDS) if (chosen(fluid.name)) report(fit(fluid.name, convergedPure(fluid)));
for (const blend of BLENDS) {
  if (chosen(blend.name)) report(fit(blend.name, convergedBlend(blend, PURE_FLUIDS, PAIRS)));
}

function report(data: SaturationData): void {
  write(data);
  const line = (curve: CurveData) =>
    [curve.pressure, curve.liquid, curve.vapour, ...curve.incipient]
      .map((s) => `${s.halvings.length} x ${s.error.toExponential(1)}`)
      .join(", ");
  console.log(data.name, data.critical, `bubble ${line(data.bubble)}`, data.dew ? `dew ${line(data.dew)}` : "");
}
