/** Parts that are being changed together: each text is read once, and nothing counts before all are done. */
import { contentTypes, editedTypes, typeOf } from "./contentTypes";
import { CONTENT_TYPES, hasPart, partText, withParts, type Package } from "./package";
import { relationsOf, relationsPath, type PartRelation } from "./relations";
import { appended, without } from "../xml/node";
import { scanXml, rootPrefix } from "../xml/scan";
import { escapedAttribute, spliced, type Splice } from "../xml/text";

export interface PartsEditor {
  /** As changed so far. */
  text(path: string): Promise<string>;
  has(path: string): boolean;
  set(path: string, content: string | Uint8Array): void;
  /** Replaces pieces of a part's text. */
  splice(path: string, splices: readonly Splice[]): Promise<void>;
  remove(path: string): void;
  /** Takes the relations of a part away for which `drop` says so. */
  removeRelations(path: string, drop: (relation: PartRelation) => boolean): Promise<void>;
  /** @returns its id */
  addRelation(path: string, type: string, target: string): Promise<string>;
  /** Says what a part is; undefined: no longer there. */
  setType(path: string, type: string | undefined): void;
  /** The package with all changes. */
  done(): Promise<Package>;
}

const EMPTY_RELATIONS =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"/>';

export function partsEditor(pack: Package): PartsEditor {
  const edits = new Map<string, string | Uint8Array | undefined>();
  const types = new Map<string, string | undefined>();
  const has = (path: string): boolean => (edits.has(path) ? edits.get(path) !== undefined : hasPart(pack, path));
  const text = async (path: string): Promise<string> => {
    const edited = edits.get(path);
    if (typeof edited === "string") return edited;
    return partText(pack, path);
  };
  const splice = async (path: string, splices: readonly Splice[]): Promise<void> => {
    const old = await text(path);
    const changed = spliced(old, splices);
    if (changed !== old) edits.set(path, changed);
  };
  const removeRelations: PartsEditor["removeRelations"] = async (path, drop) => {
    const own = relationsPath(path);
    if (!has(own)) return;
    const dropped = new Set((await relationsOf(pack, path)).filter(drop).map(({ id }) => id));
    if (dropped.size === 0) return;
    const nodes = scanXml(own, await text(own)).children;
    await splice(own, nodes.filter(({ attributes }) => dropped.has(attributes["Id"] ?? "")).map(without));
  };
  const addRelation: PartsEditor["addRelation"] = async (path, type, target) => {
    const own = relationsPath(path);
    const source = has(own) ? await text(own) : EMPTY_RELATIONS;
    const root = scanXml(own, source);
    const ids = new Set(root.children.map(({ attributes }) => attributes["Id"]));
    let number = root.children.length + 1;
    while (ids.has(`rId${number}`)) number++;
    const line = `<${rootPrefix(source)}Relationship Id="rId${number}" Type="${type}" Target="/${escapedAttribute(target)}"/>`;
    edits.set(own, spliced(source, [appended(source, root, line)]));
    return `rId${number}`;
  };
  return {
    text,
    has,
    splice,
    removeRelations,
    addRelation,
    set: (path, content) => void edits.set(path, content),
    remove(path) {
      edits.set(path, undefined);
      if (hasPart(pack, relationsPath(path))) edits.set(relationsPath(path), undefined);
      types.set(path, undefined);
    },
    setType: (path, type) => void types.set(path, type),
    async done() {
      if (types.size > 0) {
        const known = await contentTypes(pack);
        const changes = new Map([...types].filter(([path, type]) => typeOf(known, path) !== type));
        if (changes.size > 0) edits.set(CONTENT_TYPES, editedTypes(await text(CONTENT_TYPES), changes));
      }
      return withParts(pack, edits);
    },
  };
}
