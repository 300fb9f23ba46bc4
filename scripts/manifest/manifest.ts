import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../root";

/** The add-in's files that the manifest names, as paths inside the build. */
export const PAGES = {
  functions: "functions.js",
  notes: "notes.js",
  metadata: "functions.json",
  pane: "taskpane.html",
  help: "help/index.html",
} as const;

/** Page that explains one cell function, as a path inside the build. */
export const helpPage = (id: string): string => `help/${id}.html`;

export type Variant = "production" | "development";

/** The two manifests: they differ in their files' host, identity and shown name, in nothing else. */
export const VARIANTS: Readonly<Record<Variant, { file: string; host: string; id: string; name: string }>> = {
  // The production host is a placeholder (RFC 2606 reserves ".example"): it MUST be set at release, `scripts/manifest/write.mts --host …`.
  production: {
    file: "manifest.xml",
    host: "https://warmback.example",
    id: "fd660e58-5ad8-4d13-8196-793bbd7adcc3",
    name: "Warmback",
  },
  development: {
    file: "manifest.dev.xml",
    host: "https://localhost:3000",
    id: "1271e67c-8f5c-4d81-a453-38aea166e9bf",
    name: "Warmback (development)",
  },
};

/** Greatest lengths of texts, characters (Microsoft Learn, add-in only manifest reference: String, Resources, Url). */
export const LIMITS = { resid: 32, shortString: 125, longString: 250, url: 2048, namespace: 32 } as const;

/**
 * The manifest's four-part version: 1.major.minor.patch of the package. Excel on the web wants four numbers and
 * Microsoft's validator refuses a version below 1.0, which a package before its first release has.
 * @throws RangeError when the package's version isn't three numbers.
 */
export function manifestVersion(packageVersion: string): string {
  if (!/^\d{1,5}\.\d{1,5}\.\d{1,5}$/.test(packageVersion)) {
    throw new RangeError(`version: expected three numbers like 0.1.0, got "${packageVersion}"`);
  }
  return `1.${packageVersion}`;
}

/**
 * The host as the manifest needs it, without a closing slash; a path below the host is allowed.
 * @throws RangeError when it isn't an https address without query and fragment.
 */
export function checkedHost(host: string): string {
  const url = URL.canParse(host) ? new URL(host) : undefined;
  const plain = url !== undefined && url.search === "" && url.hash === "" && url.username === "";
  if (!plain || url.protocol !== "https:") {
    throw new RangeError(`host: expected an https address like https://warmback.example, got "${host}"`);
  }
  return (url.origin + url.pathname).replace(/\/+$/, "");
}

const escaped = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");

/** What one written manifest depends on. `host`: where the build is served, https; `packageVersion`: three numbers. */
export interface ManifestSettings {
  readonly variant: Variant;
  readonly packageVersion: string;
  /** Omitted: the variant's own host; for production that is a placeholder. */
  readonly host?: string;
}

const TEMPLATE = join(ROOT, "manifest/manifest.template.xml");

/** A template with its marks, such as {{host}}, filled in. @throws RangeError for a mark that has no value */
function filled(template: string, values: Readonly<Record<string, string>>): string {
  return template.replace(/\{\{(\w+)\}\}/g, (mark, name: string) => {
    const value = values[name];
    if (value === undefined) throw new RangeError(`template: nothing is known for ${mark}`);
    return escaped(value);
  });
}

/**
 * The add-in only (XML) manifest for Excel, from its template.
 * @throws RangeError for a host or a version that a manifest can't hold.
 */
export function manifestXml({ variant, packageVersion, host }: ManifestSettings): string {
  const { id, name, host: usualHost } = VARIANTS[variant];
  return filled(readFileSync(TEMPLATE, "utf8"), {
    id,
    name,
    version: manifestVersion(packageVersion),
    host: checkedHost(host ?? usualHost),
  });
}
