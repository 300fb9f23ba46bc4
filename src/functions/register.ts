/**
 * The functions script. Associates every cell function at top level, synchronously: a late one shows #VALUE! when a workbook
 * opens. The panel's worker has no host to associate with.
 */
import * as core from "../../core";
import { BUILD } from "./buildHash";
import { cellCall, reportCall } from "./call";
import type { WarmbackGlobal } from "./globals";
import { LOG, NOTES } from "./session";

const { COMPILED, EDITION, NAMESPACE } = core;

if (typeof CustomFunctions !== "undefined")
  for (const [id, compiled] of COMPILED) CustomFunctions.associate(id, cellCall(compiled));

const common = { namespace: NAMESPACE, edition: EDITION, build: BUILD, log: LOG, explain: reportCall };

const addNotes: WarmbackGlobal["addNotes"] = (build, parts) => {
  globalThis.warmback = { ...common, core: { ...core, ...NOTES.add(build, parts) }, notes: true, addNotes };
};

globalThis.warmback = { ...common, core, notes: false, addNotes };
