import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { list, of } from "../../kernel/define/result";
import { conductivityOfWater, densityOfWater, heatCapacityOfWater, viscosityOfWater } from "../equations";
import { latentHeatOfWater } from "../latentHeat";
import { vapourPressureOfWater } from "../saturation";

export const properties = cellFunction({
  id: "WATER.PROPERTIES",
  topic: "water",
  summary:
    "Properties of fresh liquid water: density, heat capacity, viscosity, conductivity, vapour pressure, latent heat.",
  finds: ["specific heat", "dynamic viscosity", "saturation pressure", "heat of evaporation", "thermal conductivity"],
  remarks: [
    "Fresh, air-free water near atmospheric pressure, 0 to 100 °C. Vapour pressure (absolute) and latent heat are those at saturation.",
    "Uncertainty against IAPWS-95: density 0.01 %, heat capacity 0.1 %, viscosity 1 %, conductivity 1.5 %, vapour pressure 0.05 %, latent heat 0.1 %.",
    "Salt raises density and viscosity and lowers heat capacity: for a salt pool (0.3 %) by less than 0.4 %, for sea water (3.5 %) by 3 to 8 %.",
  ],
  args: { temperature: WATER_TEMPERATURE },
  gives: list("properties of water", {
    density: of("density", "density"),
    heatCapacity: of("heat capacity", "heat capacity at constant pressure"),
    viscosity: of("viscosity", "dynamic viscosity"),
    conductivity: of("conductivity", "thermal conductivity"),
    vapourPressure: of("pressure", "vapour pressure, absolute"),
    latentHeat: of("enthalpy", "heat of evaporation"),
  }),
  cautions: [],
  checks: [
    { at: { temperature: 25, units: "SI" }, gives: { density: 997.0476 }, within: "0.01 %", from: "iapws95" },
    { at: { temperature: 25, units: "SI" }, gives: { heatCapacity: 4.181315 }, within: "0.1 %", from: "iapws95" },
    { at: { temperature: 25, units: "SI" }, gives: { viscosity: 0.8900225 }, within: "1 %", from: "iapws95" },
    { at: { temperature: 25, units: "SI" }, gives: { conductivity: 0.6065161 }, within: "1.5 %", from: "iapws95" },
    { at: { temperature: 25, units: "SI" }, gives: { vapourPressure: 3.169929 }, within: "0.05 %", from: "iapws95" },
    { at: { temperature: 25, units: "SI" }, gives: { latentHeat: 2441.676 }, within: "0.1 %", from: "iapws95" },
    {
      at: { temperature: 80 },
      gives: { latentHeat: 1048 },
      within: 2,
      from: "doePoolCovers",
      remark: "1,048 BTU for every pound evaporated at 80 °F.",
    },
  ],
  work: ({ temperature: T }, { trace, step }) => ({
    density: step(densityOfWater, { T }),
    heatCapacity: step(heatCapacityOfWater, { T }),
    viscosity: step(viscosityOfWater, { T }),
    conductivity: step(conductivityOfWater, { T }),
    vapourPressure: step(vapourPressureOfWater, { T }),
    latentHeat: latentHeatOfWater(T, trace),
  }),
});
