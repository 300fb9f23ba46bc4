/** The Excels that the stand-in can be: what one platform at one API set does differently from another. */
import { measuredProfiles } from "./measured";
import type { Platform, Profile } from "./profile";

export type { Platform, Profile };

/** The limit of Excel on the web: "Resource limits and performance optimization for Office Add-ins", section Excel add-ins. */
const WEB_PAYLOAD = 5 * 1024 * 1024;

/** Sets of the client and of the host's surroundings that every current Excel has. */
const COMMON: Readonly<Record<string, string>> = {
  RichApiRuntime: "1.2",
  RichApiRuntimeFlag: "1.2",
  DelayForCellEdit: "1.1",
  ExcelApiUndo: "1.13",
  SharedRuntime: "1.1",
  CustomFunctions: "1.9",
  CustomFunctionsRuntime: "1.5",
  RibbonApi: "1.1",
  CompressedFile: "1.1",
  File: "1.1",
};

const OFFICE_2021 = { ...COMMON, CustomFunctions: "1.7", CustomFunctionsRuntime: "1.3" };

function web(api: string): Profile {
  return {
    name: `web ${api}`,
    platform: "web",
    api,
    payload: WEB_PAYLOAD,
    blank: null,
    errorsInTables: true,
    namesNeedFront: false,
    sets: COMMON,
  };
}

function desktop(platform: "windows" | "mac", api: string): Profile {
  const old = Number(api.split(".")[1]) < 16;
  return {
    name: `${platform === "mac" ? "Mac" : "Windows"} ${api}`,
    platform,
    api,
    payload: undefined,
    blank: 0,
    errorsInTables: !(platform === "windows" && old),
    namesNeedFront: platform === "mac",
    sets: { ...(old ? OFFICE_2021 : COMMON), OpenBrowserWindowApi: "1.1" },
  };
}

export const WEB = web("1.21");
export const WINDOWS_10 = desktop("windows", "1.10");
export const WINDOWS_14 = desktop("windows", "1.14");
export const WINDOWS_17 = desktop("windows", "1.17");
export const WINDOWS_20 = desktop("windows", "1.20");
export const MAC_14 = desktop("mac", "1.14");
export const MAC_20 = desktop("mac", "1.20");

export const PROFILES: readonly Profile[] = [
  ...[WEB, WINDOWS_10, WINDOWS_14, WINDOWS_17, WINDOWS_20, MAC_14, MAC_20],
  ...measuredProfiles(),
];

/** Whether version "1.9" is at most "1.10". */
export function atMost(version: string, highest: string): boolean {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  const [top = 0, below = 0] = highest.split(".").map(Number);
  return major < top || (major === top && minor <= below);
}

/** What `isSetSupported` answers. */
export function hasSet({ api, sets }: Profile, name: string, version = "1.1"): boolean {
  const highest = name === "ExcelApi" ? api : sets[name];
  return highest !== undefined && atMost(version, highest);
}
