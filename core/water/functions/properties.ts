import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { listResult, quantityResult } from "../../kernel/define/result";
import { conductivityOfWater, densityOfWater, heatCapacityOfWater, viscosityOfWater } from "../equations";
import { latentHeatOfWater } from "../latentHeat";
import { vapourPressureOfWater } from "../saturation";

export const waterProperties = cellFunction({
  id: "WATER.PROPERTIES",
  topic: "water",
  summary:
    "Properties of fresh liquid water: density, heat capacity, viscosity, conductivity, vapour pressure, latent heat.",
  keywords: [
    "specific heat",
    "dynamic viscosity",
    "saturation pressure",
    "heat of evaporation",
    "thermal conductivity",
  ],
  details: [
    "Fresh, air-free water near atmospheric pressure, 0 to 100 °C. Vapour pressure (absolute) and latent heat are at saturation.",
    "Uncertainty against IAPWS-95: density 0.01 %, heat capacity 0.1 %, viscosity 1 %, conductivity 1.5 %, vapour pressure 0.05 %, latent heat 0.1 %.",
    "Salt raises density and viscosity and lowers heat capacity: for a salt pool (0.3 %) by less than 0.4 %, for sea water (3.5 %) by 3 to 8 %.",
  ],
  args: { temperature: WATER_TEMPERATURE },
  returns: listResult("properties of water", {
    density: quantityResult("density", "density"),
    heatCapacity: quantityResult("heat capacity", "heat capacity at constant pressure"),
    viscosity: quantityResult("viscosity", "dynamic viscosity"),
    conductivity: quantityResult("conductivity", "thermal conductivity"),
    vapourPressure: quantityResult("pressure", "vapour pressure, absolute"),
    latentHeat: quantityResult("enthalpy", "heat of evaporation"),
  }),
  cautions: [],
  checks: [
    {
      inputs: { temperature: 25, units: "SI" },
      expected: { density: 997.0476 },
      tolerance: "0.01 %",
      source: "iapws95",
    },
    {
      inputs: { temperature: 25, units: "SI" },
      expected: { heatCapacity: 4.181315 },
      tolerance: "0.1 %",
      source: "iapws95",
    },
    {
      inputs: { temperature: 25, units: "SI" },
      expected: { viscosity: 0.8900225 },
      tolerance: "1 %",
      source: "iapws95",
    },
    {
      inputs: { temperature: 25, units: "SI" },
      expected: { conductivity: 0.6065161 },
      tolerance: "1.5 %",
      source: "iapws95",
    },
    {
      inputs: { temperature: 25, units: "SI" },
      expected: { vapourPressure: 3.169929 },
      tolerance: "0.05 %",
      source: "iapws95",
    },
    {
      inputs: { temperature: 25, units: "SI" },
      expected: { latentHeat: 2441.676 },
      tolerance: "0.1 %",
      source: "iapws95",
    },
    {
      inputs: { temperature: 80 },
      expected: { latentHeat: 1048 },
      tolerance: 2,
      source: "doePoolCovers",
      remark: "1,048 BTU per pound evaporated at 80 °F.",
    },
  ],
  compute: ({ temperature: T }, { trace, step }) => ({
    density: step(densityOfWater, { T }),
    heatCapacity: step(heatCapacityOfWater, { T }),
    viscosity: step(viscosityOfWater, { T }),
    conductivity: step(conductivityOfWater, { T }),
    vapourPressure: step(vapourPressureOfWater, { T }),
    latentHeat: latentHeatOfWater(T, trace),
  }),
});
