/** Contents as they are typed into Excel, so that it takes them for what they are. */
import type { CellWrite } from "../port";

/** A text that stays a text whatever it looks like. */
export const asText = (text: string): string => (text.startsWith("=") ? `'${text}` : String(asTyped(text)));

/** Texts that Excel would take for a number, a date or a truth value get its own mark for text. */
export function asTyped(content: CellWrite["content"]): string | number | boolean {
  if (typeof content !== "string") return content ?? "";
  if (content.startsWith("=")) return content;
  return /^\s*['\-+@.\d(#$€£%]|^(?:true|false)$|^[a-z]{3,9}[ .-]+\d/i.test(content) ? `'${content}` : content;
}
