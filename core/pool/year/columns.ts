/** Columns of the pool's year: names and order are frozen. */
import { of, word } from "../../kernel/result";

const temperature = (about: string) => of("temperature", about, { or: "frozen" });
const heat = (about: string) => of("heat", about);
const electricity = (about: string) => of("electric energy", about);

export const YEAR_COLUMNS = {
  air: of("temperature", "mean air temperature"),
  poolWithout: temperature("mean of the pool left to itself, without recovery"),
  poolWithoutLowest: temperature("its lowest"),
  poolWithoutHighest: of("temperature", "its highest"),
  poolWith: temperature("mean of the pool left to itself, with recovery"),
  poolWithLowest: temperature("its lowest"),
  poolWithHighest: of("temperature", "its highest"),
  warmDaysWithout: of("days", "days of the season whose mean reaches the set point, without recovery"),
  warmDaysWith: of("days", "the same with recovery"),
  evaporation: heat("lost by evaporation, with recovery"),
  convection: heat("lost by convection (surface rule: by all of the surface), with recovery"),
  radiation: heat("lost by radiation, with recovery"),
  ground: heat("lost to the ground, with recovery"),
  makeUp: heat("lost by make-up water and rain, with recovery"),
  lossWithout: heat("all losses without recovery"),
  lossWith: heat("all losses with recovery"),
  sun: heat("sun absorbed"),
  pumpHeat: heat("heat of the pump, with recovery"),
  heatRejected: heat("heat rejected by the air conditioner"),
  heatTaken: heat("of that taken by the pool"),
  heatOutdoors: heat("of that sent outdoors"),
  timeOnPool: of("time", "time the machine runs on the pool"),
  timeOutdoors: of("time", "time it runs on the outdoor coil"),
  timeIdle: of("time", "time it stands"),
  backUpWithout: heat("back-up heat that holds the set point, without recovery, hour by hour"),
  backUpWith: heat("the same with recovery"),
  backUpByMonth: heat("need by the month's balance of loss and sun, without recovery"),
  heatTakenHeld: heat("heat taken by the pool that back-up heat holds"),
  electricityWithout: electricity("cooling electricity on the outdoor coil alone"),
  electricityWith: electricity("cooling electricity with recovery, pool left to itself"),
  electricityHeld: electricity("cooling electricity with recovery, pool held by back-up heat"),
  extraPump: electricity("pump beyond its hours, and the tank's; pool left to itself"),
  extraPumpHeld: electricity("pump beyond its hours, and the tank's; pool held by back-up heat"),
  coolingNotMet: heat("cooling load beyond the machine's capacity, with recovery"),
  moneySaved: of("money", "saved by recovery: back-up heat and electricity"),
  carbonSaved: of("carbon dioxide", "saved by recovery"),
  heatToTank: heat("heat taken by the preheat tank"),
  timeOnTank: of("time", "time the machine runs on the tank"),
  tankMean: of("temperature", "mean of the tank; blank without one", { or: "" }),
  tankLoss: heat("lost by the tank to the air around it"),
  hotWaterLoad: heat("heat that the hot water drawn takes"),
  hotWaterRecovered: heat("of that out of the preheat tank"),
  heatToTankHeld: heat("heat taken by the tank beside the pool that back-up heat holds"),
  hotWaterRecoveredHeld: heat("hot water's heat out of the tank beside the pool that back-up heat holds"),
} as const;

export const YEAR_TABLE_COLUMNS = { month: word("month; the last row is the year"), ...YEAR_COLUMNS } as const;
