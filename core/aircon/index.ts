import { catalogueOf } from "../kernel/define/catalogue";
import { airconAtOutdoor } from "./functions/atOutdoor";
import { airconFromTable } from "./functions/fromTable";
import { airconGain } from "./functions/gain";
import { airconHours } from "./functions/hours";
import { airconSeason } from "./functions/season";
import { airconRejected } from "./functions/rejected";
import { airconRejectedByRating } from "./functions/rejectedByRating";

export const airconFunctions = catalogueOf([
  airconRejected,
  airconRejectedByRating,
  airconAtOutdoor,
  airconGain,
  airconHours,
  airconSeason,
  airconFromTable,
]);
