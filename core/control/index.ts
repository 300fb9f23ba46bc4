import { catalogueOf } from "../kernel/define/catalogue";
import { divert } from "./functions/divert";
import { sensorOhms } from "./functions/sensorOhms";
import { sensorTemp } from "./functions/sensorTemp";

export const control = catalogueOf([sensorTemp, sensorOhms, divert]);
