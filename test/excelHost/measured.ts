/**
 * Profiles of Excels that somebody has measured: docs/acceptance.md has a probe that prints one, and each file in
 * docs/acceptance-results/ holds what it printed.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Platform, Profile } from "./profile";

/** What the probe prints, as far as a profile needs it. */
export interface Measured {
  readonly platform: "OfficeOnline" | "PC" | "Mac";
  readonly version: string;
  readonly sets: Readonly<Record<string, string>>;
  /** What a cell function got for one blank cell. */
  readonly blank: 0 | null;
  readonly errorsInTables: boolean;
}

const PLATFORMS: Readonly<Record<string, Platform>> = { OfficeOnline: "web", PC: "windows", Mac: "mac" };

/** The limit of Excel on the web, which a probe doesn't try. */
const WEB_PAYLOAD = 5 * 1024 * 1024;

/** @throws Error where the text isn't what the probe prints */
export function profileOf(text: string, file: string): Profile {
  const { platform: printed, version, sets, blank, errorsInTables } = JSON.parse(text) as Partial<Measured>;
  const platform = PLATFORMS[printed ?? ""];
  const api = sets?.["ExcelApi"];
  if (platform === undefined || sets === undefined || api === undefined || (blank !== 0 && blank !== null))
    throw new Error(`${file}: platform, sets with ExcelApi and blank must be there as the probe prints them`);
  return {
    name: `measured ${platform} ${version ?? api} (${file})`,
    platform,
    api,
    payload: platform === "web" ? WEB_PAYLOAD : undefined,
    blank,
    errorsInTables: errorsInTables !== false,
    namesNeedFront: platform === "mac",
    sets,
  };
}

const FOLDER = fileURLToPath(new URL("../../docs/acceptance-results/", import.meta.url));

export function measuredProfiles(folder = FOLDER): readonly Profile[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((file) => file.endsWith(".json"))
    .sort()
    .map((file) => profileOf(readFileSync(`${folder}/${file}`, "utf8"), file));
}
