/** What the symbols of printed equations are: made at build time, as the functions script holds no help texts. */
import type { KindName } from "../../../core";

/** Form → symbol → kind and description; with the symbol "=" where the form holds in any units. */
export type SymbolTable = Readonly<Record<string, Readonly<Record<string, readonly [KindName, string]>>>>;

export interface SymbolSource {
  /** Empty where the table can't be had: equations then stay without their list of symbols. */
  table(): Promise<SymbolTable>;
}

export function symbolSource(address = "symbols.json"): SymbolSource {
  let table: Promise<SymbolTable> | undefined;
  const load = async (): Promise<SymbolTable> => {
    const answer = await fetch(address);
    return answer.ok ? ((await answer.json()) as SymbolTable) : {};
  };
  return { table: () => (table ??= load().catch(() => ({}))) };
}
