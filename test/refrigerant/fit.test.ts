import { gzipSync } from "node:zlib";
import { buildSync } from "esbuild";
import { describe, expect, it } from "vitest";
import { blendEquilibrium } from "../../core/refrigerant/equilibrium/blend";
import { pureEquilibrium } from "../../core/refrigerant/equilibrium/pure";
import type { Fluid } from "../../core/refrigerant/refrigerant";
import { loadRefrigerant, REFRIGERANTS } from "../../core/refrigerant/refrigerant";
import {
  curveDensity,
  curveIncipient,
  curvePressure,
  curveTemperature,
} from "../../core/refrigerant/saturation/saturationCurve";

const ALL = [...REFRIGERANTS, "R-125", "R-143a"];

function solve(fluid: Fluid, curve: "bubble" | "dew", T: number) {
  const line = fluid[curve];
  const start = {
    liquid: curveDensity(line, "liquid", T),
    vapour: curveDensity(line, "vapour", T),
    incipient: curveIncipient(line, T),
  };
  return fluid.mixture ? blendEquilibrium(fluid.mixture, curve, T, start) : pureEquilibrium(fluid.substance, T, start);
}

describe("the fitted saturation lines", () => {
  it.each(ALL)("the fitted lines of %s agree with equilibria solved afresh (a stale fit fails)", (name) => {
    const fluid = loadRefrigerant(name);
    for (const curve of ["bubble", "dew"] as const) {
      const data = (curve === "dew" ? fluid.lines.dew : undefined) ?? fluid.lines.bubble;
      for (let i = 0; i <= 12; i++) {
        const T = fluid.coldest + (i / 12) * (fluid.warmestSaturated - fluid.coldest);
        const found = solve(fluid, curve, T);
        expect(found, `${curve} at ${T} K`).toBeDefined();
        expect(found!.residual).toBeLessThan(1e-9);
        const log = (value: number, wanted: number) => Math.abs(Math.log(value / wanted));
        expect(log(curvePressure(fluid[curve], T), found!.pressure)).toBeLessThan(2 * data.pressure.error + 1e-11);
        for (const phase of ["liquid", "vapour"] as const)
          expect(log(curveDensity(fluid[curve], phase, T), found![phase])).toBeLessThan(2 * data[phase].error + 1e-9);
      }
    }
  });

  it("the fits state small errors of their own", () => {
    for (const name of ALL) {
      const { bubble, dew } = loadRefrigerant(name).lines;
      for (const curve of [bubble, dew ?? bubble]) {
        expect(curve.pressure.error).toBeLessThan(1e-9);
        expect(Math.min(curve.liquid.error, curve.vapour.error)).toBeLessThan(3e-8);
        expect(Math.max(curve.liquid.error, curve.vapour.error)).toBeLessThan(3e-5);
      }
    }
  });

  it.each(ALL)("gives the temperature of a pressure of %s back to 1e-9 K, to the very ends of the lines", (name) => {
    const fluid = loadRefrigerant(name);
    const [from, to] = [fluid.coldest, fluid.warmestSaturated];
    const even = Array.from({ length: 501 }, (_, i) => from + (i / 500) * (to - from));
    const nearTop = Array.from({ length: 30 }, (_, i) => to - 10 ** (1 - i / 5)).filter((T) => T > from);
    for (const curve of [fluid.bubble, fluid.dew])
      for (const T of [...even, ...nearTop]) {
        const back = curveTemperature(curve, curvePressure(curve, T));
        expect(Math.abs(back - T), `at ${T} K`).toBeLessThan(1e-9);
      }
  });

  it("the fits add less than 32 kB gzipped with all the other refrigerant data", () => {
    const folder = new URL("../../core/refrigerant/data/", import.meta.url).pathname;
    const files = ["saturation/index", "fluids/index", "pairs", "blends", "transport"];
    const { outputFiles } = buildSync({
      stdin: { contents: files.map((file) => `export * from "${folder}${file}";`).join("\n"), resolveDir: folder },
      bundle: true,
      minify: true,
      format: "esm",
      write: false,
    });
    expect(gzipSync(outputFiles[0]!.contents, { level: 9 }).length).toBeLessThan(32e3);
  });
});
