/** Answers what was loaded of an object. */
import { HostError, type QueryInfo } from "../client/protocol";
import { checkSet, documented } from "./gate";
import type { Host } from "./objects";
import type { HostObject, ObjectType } from "./objects";

const typeOf = (host: Host, { type }: HostObject): ObjectType<unknown> => host.types[type] as ObjectType<unknown>;

/** How the client finds an object again: by its reference, or by its id in its collection. */
export function stamp(host: Host, on: HostObject): Record<string, unknown> {
  if (on.kept !== undefined) return { _ReferenceId: on.kept };
  const id = typeOf(host, on).id?.(on.target);
  return id === undefined ? {} : { _Id: id };
}

const original = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

/** "protection/protected" and "name" → { Protection: ["protected"], Name: [] }. */
function branches(select: readonly string[]): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const path of select) {
    const [first = "", ...rest] = path.split(/[/.]/);
    const below = found.get(original(first)) ?? [];
    found.set(original(first), rest.length === 0 ? below : [...below, rest.join("/")]);
  }
  return found;
}

/** What "*" and an empty load mean: every property that this Excel has. */
function everything(host: Host, on: HostObject): readonly string[] {
  return Object.entries(typeOf(host, on).properties ?? {}).flatMap(([name, { get }]) => {
    if (get === undefined) return [];
    try {
      checkSet(host.profile, on.type, name, false);
      return [name];
    } catch {
      return [];
    }
  });
}

function one(host: Host, on: HostObject, select: readonly string[]): Record<string, unknown> {
  const { target } = on;
  const type = typeOf(host, on);
  const asked = select.length === 0 || select.includes("*") ? [...select, ...everything(host, on)] : select;
  const found = stamp(host, on);
  for (const [name, below] of branches(asked.filter((each) => each !== "*"))) {
    checkSet(host.profile, on.type, name, false);
    const property = type.properties?.[name];
    const part = type.parts?.[name];
    if (property?.get !== undefined) found[name] = property.get(target, host);
    else if (part === undefined) {
      host.unknown.push(`${documented(on.type, name)} to load`);
      throw new HostError("NotImplemented", `the stand-in doesn't know ${documented(on.type, name)} to load`);
    } else {
      const inner = part(target, host);
      found[name] = inner === null ? null : query(host, inner, { Select: below });
    }
  }
  return found;
}

export function query(host: Host, on: HostObject, { Select: select = [], Top, Skip = 0 }: QueryInfo): unknown {
  const type = typeOf(host, on);
  if (type.items === undefined) return one(host, on, select);
  const items = type.items(on.target, host).slice(Skip, Top === undefined ? undefined : Skip + Top);
  return { ...stamp(host, on), _Items: items.map((item) => one(host, item, select)) };
}
