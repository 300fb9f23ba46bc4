import { copyFileSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { dirname, join, sep } from "node:path";
import { headersFile } from "../../manifest/headers";
import { ROOT } from "../root";
import { ICON_SIZES, iconPath } from "./icons";
import { manifestXml, VARIANTS, type Variant } from "./manifest";

const HEADERS = "_headers";

/** The version that package.json states. */
export function packageVersion(): string {
  const text: unknown = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8"));
  const version = typeof text === "object" && text !== null && "version" in text ? text.version : undefined;
  return typeof version === "string" ? version : "";
}

/** Every file below a folder, as paths with forward slashes. */
export function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((path) => statSync(join(folder, path)).isFile())
    .map((path) => path.split(sep).join("/"));
}

/** Puts the icons, both manifests and the header file beside the built files; `host` is the production host. */
export function writeOutput(out: string, host?: string): readonly string[] {
  const written: string[] = [];
  const place = (path: string): string => {
    mkdirSync(dirname(join(out, path)), { recursive: true });
    written.push(path);
    return join(out, path);
  };
  for (const size of ICON_SIZES) copyFileSync(join(ROOT, `manifest/icons/icon-${size}.png`), place(iconPath(size)));
  const version = packageVersion();
  const writeManifest = (variant: Variant, at?: string): void =>
    writeFileSync(
      place(VARIANTS[variant].file),
      manifestXml({ variant, packageVersion: version, ...(at !== undefined && { host: at }) }),
    );
  writeManifest("production", host);
  writeManifest("development");
  const published = filesBelow(out).filter((path) => path !== HEADERS);
  writeFileSync(place(HEADERS), headersFile(published));
  return written;
}
