/**
 * The functions script. Associates every cell function at top level, synchronously: a late one shows #VALUE! when a workbook
 * opens. The panel's worker has no host to associate with.
 */
import * as core from "../../core";
import { BUILD } from "./buildHash";
import { cellCall, reportCall } from "./call";
import { LOG } from "./session";

const { COMPILED, EDITION, NAMESPACE } = core;

if (typeof CustomFunctions !== "undefined")
  for (const [id, compiled] of COMPILED) CustomFunctions.associate(id, cellCall(compiled));

globalThis.warmback = { namespace: NAMESPACE, edition: EDITION, build: BUILD, log: LOG, core, explain: reportCall };
