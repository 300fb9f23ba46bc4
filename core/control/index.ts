import { catalogueOf } from "../kernel/define/catalogue";
import { controlCycling } from "./functions/cycling";
import { controlDivert } from "./functions/divert";
import { controlSensorOhms } from "./functions/sensorOhms";
import { controlSensorTemp } from "./functions/sensorTemp";

export const controlFunctions = catalogueOf([controlSensorTemp, controlSensorOhms, controlDivert, controlCycling]);
