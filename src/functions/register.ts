/**
 * The functions script: associates every cell function at top level, at once and without waiting for anything, since a
 * late one shows #VALUE! when a workbook opens. In the panel's worker there is no host to associate with.
 */
import * as core from "../../core";
import { BUILD } from "./buildHash";
import { cellCall, tellCall } from "./call";
import { LOG } from "./session";

const { COMPILED, EDITION, NAMESPACE } = core;

if (typeof CustomFunctions !== "undefined")
  for (const [id, compiled] of COMPILED) CustomFunctions.associate(id, cellCall(compiled));

globalThis.warmback = { namespace: NAMESPACE, edition: EDITION, build: BUILD, log: LOG, core, explain: tellCall };
