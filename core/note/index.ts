import { catalogueOf } from "../kernel/define/catalogue";
import { agrees } from "./functions/agrees";
import { cautions } from "./functions/cautions";
import { edition } from "./functions/edition";
import { inputs } from "./functions/inputs";
import { selfTest } from "./functions/selfTest";
import { sources } from "./functions/sources";
import { working } from "./functions/working";

export const note = catalogueOf([working, cautions, sources, inputs, agrees, edition, selfTest]);
