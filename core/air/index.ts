import { catalogueOf } from "../kernel/define/catalogue";
import { barometer } from "./functions/barometer";
import { dewPoint } from "./functions/dewPoint";
import { humidityRatio } from "./functions/humidityRatio";
import { vaporPressure } from "./functions/vaporPressure";
import { wetBulb } from "./functions/wetBulb";

export const air = catalogueOf([dewPoint, wetBulb, humidityRatio, vaporPressure, barometer]);
