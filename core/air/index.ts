import { catalogueOf } from "../kernel/define/catalogue";
import { airBarometer } from "./functions/barometer";
import { airDewPoint } from "./functions/dewPoint";
import { airHumidityRatio } from "./functions/humidityRatio";
import { airVaporPressure } from "./functions/vaporPressure";
import { airWetBulb } from "./functions/wetBulb";

export const airFunctions = catalogueOf([airDewPoint, airWetBulb, airHumidityRatio, airVaporPressure, airBarometer]);
