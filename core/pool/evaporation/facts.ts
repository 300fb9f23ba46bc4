/** Facts about evaporation that the cautions read. */
import { takesHandbookFactor, type EvaporationMethod } from "./evaporation";

export const EVAPORATION_FACTS = {
  evaporationBy: "word",
  evaporation: "mass flow",
  poolTemperature: "temperature",
  handbookActivity: "number",
  quietActivity: "number",
  windOnIndoorRelation: "wind speed",
  windAt3m: "wind speed",
} as const;

export const evaporationFacts = (
  method: EvaporationMethod,
  activity: number,
  water: number,
  wind: number,
  rate: number,
) => ({
  evaporationBy: method,
  evaporation: rate,
  poolTemperature: water,
  ...(takesHandbookFactor(method) ? { handbookActivity: activity } : { quietActivity: activity }),
  ...(method === "ASHRAE indoor" || method === "VDI 2089" ? { windOnIndoorRelation: wind } : {}),
  ...(method === "McMillan" ? { windAt3m: wind } : {}),
});
