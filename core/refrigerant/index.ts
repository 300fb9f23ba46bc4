import { catalogueOf } from "../kernel/define/catalogue";
import { chart } from "./functions/chart";
import { facts } from "./functions/facts";
import { glide } from "./functions/glide";
import { latent } from "./functions/latent";
import { list } from "./functions/list";
import { pressure } from "./functions/pressure";
import { saturated } from "./functions/saturated";
import { state } from "./functions/state";
import { subcooling } from "./functions/subcooling";
import { superheat } from "./functions/superheat";
import { temperature } from "./functions/temperature";

export const refrigerant = catalogueOf([
  pressure,
  temperature,
  glide,
  superheat,
  subcooling,
  latent,
  state,
  saturated,
  chart,
  facts,
  list,
]);
