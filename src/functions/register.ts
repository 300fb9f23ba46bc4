/**
 * The functions script: associates every cell function at top level, at once and without waiting for anything, since a
 * late one shows #VALUE! when a workbook opens.
 */
import { NAMESPACE } from "../../core/kernel/describe";
import { EDITION } from "../../core/kernel/edition";
import { cellCall, tellCall } from "./call";
import { COMPILED } from "./compiled";
import { LOG } from "./session";

for (const [id, compiled] of COMPILED) CustomFunctions.associate(id, cellCall(compiled));

globalThis.warmback = { namespace: NAMESPACE, edition: EDITION, log: LOG, explain: tellCall };
