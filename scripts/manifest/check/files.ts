import { VARIANTS, type Variant } from "../manifest";
import { RIBBON_ICON_SIZES } from "../icons";
import { everyElement, find, type XmlElement } from "../xml";
import type { Build, Finding } from "./finding";
import type { Resource } from "./resources";

/** What must hold for addresses: which manifest it is, and whether it goes to users. */
export interface Purpose {
  readonly variant: Variant;
  /** True: the placeholder host is a fault too. */
  readonly release: boolean;
}

interface Address {
  readonly url: string;
  readonly where: string;
  readonly line: number;
}

const BASE_ADDRESSES: readonly (readonly string[])[] = [
  ["IconUrl"],
  ["HighResolutionIconUrl"],
  ["SupportUrl"],
  ["DefaultSettings", "SourceLocation"],
];

function addressesOf(root: XmlElement, resources: readonly Resource[]): Address[] {
  const outer = BASE_ADDRESSES.flatMap((path) => find(root, ...path)).map((element) => ({
    url: element.attributes.get("DefaultValue") ?? "",
    where: element.name,
    line: element.line,
  }));
  const inner = resources
    .filter(({ kind }) => kind === "Url" || kind === "Image")
    .map(({ id, value, element }) => ({ url: value, where: `resource "${id}"`, line: element.line }));
  return [...outer, ...inner];
}

/** Folder of the pane's page: all the add-in's files lie under it. */
export function baseOf(root: XmlElement): string {
  const pane = find(root, "DefaultSettings", "SourceLocation")[0]?.attributes.get("DefaultValue") ?? "";
  return pane.replace(/[^/]*$/, "");
}

/** Path inside the build, or undefined for an address elsewhere. */
export function pathOf(url: string, base: string): string | undefined {
  return base !== "" && url.startsWith(base) ? url.slice(base.length).replace(/[?#].*$/, "") : undefined;
}

const isLocal = (host: string): boolean => host === "localhost" || /^127\.|^\[::1\]$|\.localhost$/.test(host);

function hostFault(url: URL, { variant, release }: Purpose): string | undefined {
  if (url.protocol !== "https:") return `must be https, got ${url.protocol.replace(":", "")}`;
  if (variant === "development") {
    return isLocal(url.hostname) ? undefined : `the development manifest points at ${VARIANTS.development.host}`;
  }
  if (isLocal(url.hostname)) return "the production manifest must not point at this computer";
  const placeholder = new URL(VARIANTS.production.host).hostname;
  if (release && url.hostname === placeholder) return `${placeholder} is a placeholder: write the manifest with --host`;
  return undefined;
}

function addressFaults({ url, where, line }: Address, base: string, build: Build, purpose: Purpose): Finding[] {
  const fault = (message: string): Finding[] => [{ rule: "url", line, message: `${where}: ${message}: "${url}"` }];
  if (!URL.canParse(url)) return fault("not an absolute address");
  const wrong = hostFault(new URL(url), purpose);
  if (wrong !== undefined) return fault(wrong);
  const path = pathOf(url, base);
  if (path === undefined) return fault(`is outside the add-in's own ${base}`);
  return build.has(path) ? [] : fault(`the build has no ${path}`);
}

/** Every address is https, on the right host, inside the add-in, and its file is in the build; no stray local address anywhere. */
export function checkAddresses(
  root: XmlElement,
  resources: readonly Resource[],
  build: Build,
  purpose: Purpose,
): Finding[] {
  const base = baseOf(root);
  const addresses = addressesOf(root, resources);
  const known = new Set(addresses.map(({ url }) => url));
  const others = everyElement(root).flatMap((element) =>
    [element.text, ...element.attributes.values()]
      .filter((value) => /^https?:/i.test(value) && !known.has(value))
      .map((url): Finding => ({
        rule: "url",
        line: element.line,
        message: `<${element.name}> holds an address that the add-in doesn't need: "${url}"`,
      })),
  );
  return [...addresses.flatMap((address) => addressFaults(address, base, build, purpose)), ...others];
}

function iconFaults(where: string, url: string, size: number, base: string, build: Build): Finding[] {
  const path = pathOf(url, base);
  if (path === undefined || !build.has(path)) return [];
  const picture = build.png(path);
  if (picture?.width === size && picture.height === size) return [];
  const got = picture ? `${picture.width} × ${picture.height} px` : "no PNG";
  return [{ rule: "icon", message: `${where}: expected ${path} to be ${size} × ${size} px, got ${got}` }];
}

/** Pictures have the sizes that they are declared with, and each ribbon icon offers all that the ribbon asks for. */
export function checkIcons(root: XmlElement, resources: readonly Resource[], build: Build): Finding[] {
  const base = baseOf(root);
  const outer = [["IconUrl", 32] as const, ["HighResolutionIconUrl", 64] as const].flatMap(([name, size]) =>
    find(root, name).flatMap((e) => iconFaults(name, e.attributes.get("DefaultValue") ?? "", size, base, build)),
  );
  const icons = everyElement(root).filter(({ name }) => name === "Icon");
  const inner = icons.flatMap(({ children, line }) => {
    const sizes = children.map((image) => Number(image.attributes.get("size")));
    const missing = RIBBON_ICON_SIZES.filter((size) => !sizes.includes(size));
    const lacks = missing.map((size): Finding => ({
      rule: "icon",
      line,
      message: `<Icon> lacks the ${size} px image`,
    }));
    const wrong = children.flatMap((image) => {
      const id = image.attributes.get("resid") ?? "";
      const url = resources.find((resource) => resource.id === id)?.value ?? "";
      return iconFaults(`icon "${id}"`, url, Number(image.attributes.get("size")), base, build);
    });
    return [...lacks, ...wrong];
  });
  return [...outer, ...inner];
}
