import { catalogueOf } from "../kernel/define/catalogue";
import { sinkRack } from "./functions/rack";
import { sinkSpace } from "./functions/space";
import { sinkTank } from "./functions/tank";

export const sinkFunctions = catalogueOf([sinkTank, sinkSpace, sinkRack]);
