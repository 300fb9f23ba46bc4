const RULE = "give the https address that will serve the add-in, and optionally the file to write";

/**
 * The address that will serve the add-in, without slashes at its end.
 *
 * @throws where it is left out, isn't an https address or has a query, which no file can be put behind
 */
export function hostAddress(text: string | undefined): string {
  const host = text?.replace(/\/+$/, "") ?? "";
  if (!URL.canParse(host) || new URL(host).protocol !== "https:" || new URL(host).search !== "")
    throw new Error(`${RULE}; got ${JSON.stringify(text ?? "")}`);
  return host;
}
