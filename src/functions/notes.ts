/**
 * The definitions with all that notes are made from, once the notes script has brought it. Calls of functions about
 * functions wait for it; where it didn't come, the next call fetches it again.
 */
import { CATALOGUE, COMPILED, type Catalogue, type Compiled, type NoteParts, withNoteParts } from "../../core";
import { BUILD, scriptFault } from "./buildHash";

/** Complete definitions, and their compiled forms with the memory of those that cells call. */
export interface Definitions {
  readonly CATALOGUE: Catalogue;
  readonly COMPILED: ReadonlyMap<string, Compiled>;
}

const SCRIPT = "notes.js";

function completed(parts: readonly NoteParts[]): Definitions {
  const catalogue = withNoteParts(CATALOGUE, parts);
  const compiled = catalogue.flatMap((definition) => {
    const one = COMPILED.get(definition.id);
    return one === undefined ? [] : [[definition.id, { ...one, definition }] as const];
  });
  return { CATALOGUE: catalogue, COMPILED: new Map(compiled) };
}

/** Waits until the page's own scripts have had their turn. */
const pageLoaded = (): Promise<void> =>
  new Promise((resolve) => {
    if (document.readyState === "complete") resolve();
    else addEventListener("load", () => resolve(), { once: true });
  });

const fetchScript = (): Promise<void> =>
  new Promise((resolve) => {
    const script = document.createElement("script");
    script.src = `${SCRIPT}?v=${BUILD}`;
    script.onload = script.onerror = () => {
      script.remove();
      resolve();
    };
    document.head.append(script);
  });

export interface LateNotes {
  /** Undefined until the notes script has run. */
  now(): Definitions | undefined;
  /** @throws Error of another build's script */
  add(build: string, parts: readonly NoteParts[]): Definitions;
  /** @returns the definitions; rejects, with a sentence, where the script can't be had */
  whenAdded(): Promise<Definitions>;
}

/** Sources that run unbundled have whole definitions from the start. */
const whole = (): Definitions | undefined =>
  CATALOGUE.every((definition) => Object.hasOwn(definition, "checks")) ? { CATALOGUE, COMPILED } : undefined;

export function lateNotes(): LateNotes {
  let added = whole();
  let coming: Promise<Definitions> | undefined;
  const find = async (): Promise<Definitions> => {
    if (typeof document !== "undefined") {
      await pageLoaded();
      if (added === undefined) await fetchScript();
    }
    coming = undefined;
    if (added === undefined) throw new Error(scriptFault(SCRIPT, undefined));
    return added;
  };
  return {
    now: () => added,
    add: (build, parts) => {
      const fault = scriptFault(SCRIPT, { build });
      if (fault !== undefined) throw new Error(fault);
      return (added = completed(parts));
    },
    whenAdded: async () => added ?? (coming ??= find()),
  };
}
