/** Which part leads to which: ECMA-376 part 2, 6.5. */
import { hasPart, partTree, type Package } from "./package";
import { escapedAttribute } from "../xml/text";

export interface PartRelation {
  readonly id: string;
  /** The whole type: an address. */
  readonly type: string;
  /** Its last piece, equal in both editions of the format: "worksheet". */
  readonly kind: string;
  /** A part's path, or whatever an external target says. */
  readonly target: string;
  readonly external: boolean;
  /** As it is written. */
  readonly raw: string;
}

export const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
export const STRICT_RELATIONS = "http://purl.oclc.org/ooxml/officeDocument/relationships";
const NAMESPACE = "http://schemas.openxmlformats.org/package/2006/relationships";

export function relationsPath(path: string): string {
  const cut = path.lastIndexOf("/") + 1;
  return `${path.slice(0, cut)}_rels/${path.slice(cut)}.rels`;
}

const folderOf = (path: string): string => path.slice(0, path.lastIndexOf("/") + 1);

/** A target as a part's path, written as it is. */
function resolved(from: string, target: string): string {
  const place = target.replaceAll("\\", "/");
  const whole = place.startsWith("/") ? place : `/${folderOf(from)}${place}`;
  const steps: string[] = [];
  for (const step of whole.split("/"))
    if (step === "..") steps.pop();
    else if (step !== "" && step !== ".") steps.push(step);
  return steps.join("/");
}

/** Zips hold part names with their escapes, or without: whichever is there. */
function partPath(pack: Package, from: string, target: string): string {
  const path = resolved(from, target.split("#")[0] ?? "");
  if (hasPart(pack, path)) return path;
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}

export const relationKind = (type: string): string => type.slice(type.lastIndexOf("/") + 1);

/** The relations of a part; those of the package itself under "". */
export async function relationsOf(pack: Package, path: string): Promise<readonly PartRelation[]> {
  const own = relationsPath(path);
  if (!hasPart(pack, own)) return [];
  const root = await partTree(pack, own);
  return root.children.flatMap(({ name, attributes }) => {
    const { Id: id, Type: type, Target: target, TargetMode: mode } = attributes;
    if (name !== "Relationship" || id === undefined || type === undefined || target === undefined) return [];
    const external = mode === "External";
    return [
      {
        id,
        type,
        kind: relationKind(type),
        target: external ? target : partPath(pack, path, target),
        external,
        raw: target,
      },
    ];
  });
}

/** The text of a relation part; targets are written from the package's root. */
export function relationsText(relations: readonly PartRelation[]): string {
  const lines = relations.map(({ id, type, target, external, raw }) => {
    // A place inside the workbook is written as it was: "#Loop!A1".
    const place = external || raw.startsWith("#") ? raw : `/${target}`;
    const mode = external ? ' TargetMode="External"' : "";
    return `<Relationship Id="${escapedAttribute(id)}" Type="${escapedAttribute(type)}" Target="${escapedAttribute(place)}"${mode}/>`;
  });
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Relationships xmlns="${NAMESPACE}">${lines.join("")}</Relationships>`;
}
