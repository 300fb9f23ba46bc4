/**
 * R-407A and R-449A at 40 °C and in single-stage cycles between dew temperatures (10 K useful superheat, 3 K subcooling,
 * isentropic efficiency 0.65): CoolProp 8.0.0, whose printed digits are held.
 */
import { describe, expect, it } from "vitest";
import { solveCycle } from "../../core/cycle/cycle";
import { loadRefrigerant } from "../../core/refrigerant/refrigerant";
import { refrigerantSaturationPressure } from "../../core/refrigerant/saturation/saturation";

// Bubble and dew pressure, kPa.
const AT_40 = [
  ["R-407A", 1837.0, 1645.1],
  ["R-449A", 1858.3, 1652.2],
] as const;

// Evaporating and condensing, °C: rejection factor, share of desuperheating, discharge temperature.
const CYCLES = [
  ["R-407A", -7, 40, 1.352, 0.218, 79],
  ["R-407A", -7, 30, 1.258, 0.175, 65],
  ["R-407A", -30, 40, 1.644, 0.296, 101],
  ["R-407A", -30, 30, 1.51, 0.255, 87],
  ["R-449A", -7, 40, 1.349, 0.214, 79],
  ["R-449A", -7, 30, 1.257, 0.173, 64],
  ["R-449A", -30, 40, 1.639, 0.292, 100],
  ["R-449A", -30, 30, 1.506, 0.251, 86],
] as const;

describe("the blends of refrigeration racks", () => {
  it.each(AT_40)("%s has another program's pressures at 40 °C", (name, bubble, dew) => {
    const fluid = loadRefrigerant(name);
    expect(Math.abs(refrigerantSaturationPressure(fluid, 313.15, "bubble") / 1000 - bubble)).toBeLessThan(0.06);
    expect(Math.abs(refrigerantSaturationPressure(fluid, 313.15, "dew") / 1000 - dew)).toBeLessThan(0.06);
  });

  it.each(CYCLES)("%s at %i/%i °C has another program's cycle", (name, te, tc, factor, share, discharge) => {
    const found = solveCycle({
      refrigerant: loadRefrigerant(name),
      evaporating: te + 273.15,
      condensing: tc + 273.15,
      superheat: 10,
      subcooling: 3,
      efficiency: 0.65,
    });
    expect(Math.abs(found.rejectionFactor - factor)).toBeLessThan(0.0006);
    expect(Math.abs(found.shares.desuperheating - share)).toBeLessThan(0.0006);
    expect(Math.abs(found.discharge.temperature - 273.15 - discharge)).toBeLessThan(0.6);
  });
});
