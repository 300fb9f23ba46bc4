import { catalogueOf } from "../kernel/define/catalogue";
import { atOutdoor } from "./functions/atOutdoor";
import { gain } from "./functions/gain";
import { hours } from "./functions/hours";
import { rejected } from "./functions/rejected";
import { rejectedByRating } from "./functions/rejectedByRating";

export const aircon = catalogueOf([rejected, rejectedByRating, atOutdoor, gain, hours]);
