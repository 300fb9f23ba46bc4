/** Which cell metadata mark dynamic arrays: [MS-XLSX] 2.6.206 (XLDAPR). */
import { hasPart, partTree, type Package } from "../parts/package";
import { relationsOf } from "../parts/relations";
import { childOf, childrenOf, isTrue, named, numberOf, type XmlNode } from "../xml/node";

export async function metadataPath(pack: Package, book: string): Promise<string | undefined> {
  return (await relationsOf(pack, book)).find(({ kind, target }) => kind === "sheetMetadata" && hasPart(pack, target))
    ?.target;
}

const ARRAY_TYPE = "XLDAPR";

/** Whether a record of the kind says dynamic. */
function isDynamic(record: XmlNode | undefined): boolean {
  return (
    record !== undefined &&
    named(record, "dynamicArrayProperties").some(({ attributes }) => isTrue(attributes["fDynamic"]))
  );
}

function dynamicIn(root: XmlNode): ReadonlySet<number> {
  const types = childrenOf(childOf(root, "metadataTypes"), "metadataType").map(({ attributes }) => attributes["name"]);
  const future = root.children.find(
    ({ name, attributes }) => name === "futureMetadata" && attributes["name"] === ARRAY_TYPE,
  );
  const records = childrenOf(future, "bk");
  const found = new Set<number>();
  childrenOf(childOf(root, "cellMetadata"), "bk").forEach((bk, at) => {
    const dynamic = childrenOf(bk, "rc").some(({ attributes }) => {
      const type = types[(numberOf(attributes["t"]) ?? 0) - 1];
      return type === ARRAY_TYPE && isDynamic(records[numberOf(attributes["v"]) ?? 0]);
    });
    if (dynamic) found.add(at + 1);
  });
  return found;
}

/** The values of a cell's `cm` that mark a dynamic array. */
export async function dynamicArrays(pack: Package, book: string): Promise<ReadonlySet<number>> {
  const path = await metadataPath(pack, book);
  return path === undefined ? new Set() : dynamicIn(await partTree(pack, path));
}
