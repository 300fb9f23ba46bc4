/** Loads the functions script into the worker, before the modules that take the core from it. */
import { BUILD, functionsFault } from "../../functions/buildHash";

declare function importScripts(...addresses: string[]): void;

importScripts(`functions.js?v=${BUILD}`, `notes.js?v=${BUILD}`);
const fault = functionsFault(globalThis.warmback);
if (fault !== undefined) throw new Error(fault);
