import { catalogueOf } from "../kernel/define/catalogue";
import { noteAgrees } from "./functions/agrees";
import { noteCautions } from "./functions/cautions";
import { noteEdition } from "./functions/edition";
import { noteInputs } from "./functions/inputs";
import { noteSelfTest } from "./functions/selfTest";
import { noteSources } from "./functions/sources";
import { noteUncertainty } from "./functions/uncertainty";
import { noteVerdict } from "./functions/verdict";
import { noteWorking } from "./functions/working";

export const noteFunctions = catalogueOf([
  noteWorking,
  noteCautions,
  noteSources,
  noteInputs,
  noteAgrees,
  noteVerdict,
  noteEdition,
  noteSelfTest,
  noteUncertainty,
]);
