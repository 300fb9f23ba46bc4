import { catalogueOf } from "../kernel/catalogue";
import { chart } from "./functions/chart";
import { glide } from "./functions/glide";
import { latent } from "./functions/latent";
import { list } from "./functions/list";
import { pressure } from "./functions/pressure";
import { subcooling } from "./functions/subcooling";
import { superheat } from "./functions/superheat";
import { temperature } from "./functions/temperature";

export const refrigerant = catalogueOf([pressure, temperature, glide, superheat, subcooling, latent, chart, list]);
