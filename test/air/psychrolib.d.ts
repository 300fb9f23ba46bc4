/** The part of the npm package psychrolib that is used here: temperatures in °C and pressures in Pa once set to SI. */
declare module "psychrolib" {
  interface Psychrometrics {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(dryBulb: number): number;
    GetTDewPointFromVapPres(dryBulb: number, vapourPressure: number): number;
    GetTWetBulbFromHumRatio(dryBulb: number, humidityRatio: number, pressure: number): number;
  }
  const psychrometrics: Psychrometrics;
  export = psychrometrics;
}
