import { catalogueOf } from "../kernel/define/catalogue";
import { refrigChart } from "./functions/chart";
import { refrigFacts } from "./functions/facts";
import { refrigGlide } from "./functions/glide";
import { refrigLatent } from "./functions/latent";
import { refrigList } from "./functions/list";
import { refrigPressure } from "./functions/pressure";
import { refrigSaturated } from "./functions/saturated";
import { refrigState } from "./functions/state";
import { refrigSubcooling } from "./functions/subcooling";
import { refrigSuperheat } from "./functions/superheat";
import { refrigTemperature } from "./functions/temperature";

export const refrigerantFunctions = catalogueOf([
  refrigPressure,
  refrigTemperature,
  refrigGlide,
  refrigSuperheat,
  refrigSubcooling,
  refrigLatent,
  refrigState,
  refrigSaturated,
  refrigChart,
  refrigFacts,
  refrigList,
]);
