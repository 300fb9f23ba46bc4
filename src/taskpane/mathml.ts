/** Printed equations: MathML made at build time and fetched when the first equation is shown. */

export interface MathSource {
  /** The rendered form; undefined if there is none: the caller then shows the text. */
  of(form: string): Promise<Element | undefined>;
}

type Table = Readonly<Record<string, unknown>>;

const fetchTable = async (address: string): Promise<Table> => {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${String(answer.status)}`);
  return (await answer.json()) as Table;
};

const parse = (text: string): Element | undefined => {
  const found = new DOMParser().parseFromString(text, "text/html").body.firstElementChild;
  return found?.localName === "math" ? document.importNode(found, true) : undefined;
};

/** @param address of the table: form → MathML text */
export function mathSource(address = "mathml.json"): MathSource {
  let table: Promise<Table> | undefined;
  return {
    async of(form) {
      table ??= fetchTable(address).catch((): Table => ({}));
      const text = (await table)[form];
      return typeof text === "string" ? parse(text) : undefined;
    },
  };
}
