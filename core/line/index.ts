import { catalogueOf } from "../kernel/catalogue";
import { bore } from "./functions/bore";
import { charge } from "./functions/charge";
import { roomLimit } from "./functions/roomLimit";
import { targetSuperheat } from "./functions/targetSuperheat";
import { testPressure } from "./functions/testPressure";

export const line = catalogueOf([bore, charge, testPressure, targetSuperheat, roomLimit]);
