/** Arguments of the air functions. */
import { ALTITUDE } from "../kernel/define/glossary";

export const SITE_ALTITUDE = ALTITUDE.default(0);
