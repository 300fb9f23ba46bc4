import { NAMESPACE } from "../../../core";
import { LIMITS } from "../manifest";
import { everyElement, find, type XmlElement } from "../xml";
import type { Finding } from "./finding";
import type { Resource } from "./resources";

const GUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;
const VERSION = /^\d{1,5}(\.\d{1,5}){3}$/;

const SETS: Readonly<Record<string, string>> = {
  SharedRuntime: "1.1",
  ExcelApi: "1.10",
  CustomFunctionsRuntime: "1.3",
};

const textOf = (root: XmlElement, name: string): string => find(root, name)[0]?.text ?? "";
const valueOf = (root: XmlElement, name: string): string => find(root, name)[0]?.attributes.get("DefaultValue") ?? "";

/** Id, version and the texts that Office lists the add-in by. */
export function checkIdentity(root: XmlElement): Finding[] {
  const findings: Finding[] = [];
  const id = textOf(root, "Id");
  if (!GUID.test(id)) findings.push({ rule: "identity", message: `Id: expected a GUID without braces, got "${id}"` });
  const version = textOf(root, "Version");
  if (!VERSION.test(version)) {
    findings.push({ rule: "identity", message: `Version: expected four numbers (Excel on the web), got "${version}"` });
  } else if (Number.parseInt(version, 10) < 1) {
    findings.push({ rule: "identity", message: `Version: Microsoft's validator wants 1.0 or above, got "${version}"` });
  }
  const locale = textOf(root, "DefaultLocale");
  if (!/^[a-z]{2,3}-[A-Z]{2}$/.test(locale)) {
    findings.push({ rule: "identity", message: `DefaultLocale: expected a culture name like en-US, got "${locale}"` });
  }
  const texts: readonly (readonly [string, string, number])[] = [
    ["ProviderName", textOf(root, "ProviderName"), LIMITS.shortString],
    ["DisplayName", valueOf(root, "DisplayName"), LIMITS.shortString],
    ["Description", valueOf(root, "Description"), LIMITS.longString],
  ];
  for (const [name, text, limit] of texts) {
    if (text.length >= 1 && text.length <= limit) continue;
    findings.push({ rule: "length", message: `${name}: 1 to ${limit} characters, got ${text.length}` });
  }
  return findings;
}

/** Exactly one Permissions element in the whole document, and the least that Excel.run works with. */
export function checkPermission(root: XmlElement): Finding[] {
  const all = everyElement(root).filter(({ name }) => name === "Permissions");
  if (all.length !== 1) {
    return [{ rule: "permission", message: `Permissions: exactly one element, got ${all.length}` }];
  }
  const text = all[0]?.text ?? "";
  if (text === "ReadWriteDocument") return [];
  return [{ rule: "permission", message: `Permissions: expected ReadWriteDocument, got "${text}"` }];
}

/** Excel and nothing else; no tablet or phone form (custom functions don't run on iPad). */
export function checkHosts(root: XmlElement): Finding[] {
  const names = find(root, "Hosts", "Host").map((host) => host.attributes.get("Name") ?? "");
  if (names.length === 1 && names[0] === "Workbook") return [];
  return [{ rule: "host", message: `Hosts: expected Workbook alone, got ${names.join(", ") || "none"}` }];
}

/** The three requirement sets, each at its version, no fourth and no method: more would shut out hosts that work. */
export function checkRequirements(root: XmlElement): Finding[] {
  const findings: Finding[] = [];
  const add = (message: string): void => void findings.push({ rule: "requirement", message });
  const usual = find(root, "Requirements", "Sets")[0]?.attributes.get("DefaultMinVersion") ?? "1.1";
  const sets = find(root, "Requirements", "Sets", "Set");
  for (const set of sets) {
    const name = set.attributes.get("Name") ?? "";
    const wanted = SETS[name];
    const version = set.attributes.get("MinVersion") ?? usual;
    if (wanted === undefined) add(`requirement set ${name} ${version} is not one of ${Object.keys(SETS).join(", ")}`);
    else if (version !== wanted) add(`requirement set ${name}: expected version ${wanted}, got ${version}`);
  }
  for (const name of Object.keys(SETS)) {
    const count = sets.filter((set) => set.attributes.get("Name") === name).length;
    if (count !== 1) add(`requirement set ${name} must appear once, got ${count}`);
  }
  const methods = everyElement(root).some(({ name }) => name === "Methods");
  if (methods) add("Requirements: no single methods may be demanded");
  if (find(root, "VersionOverrides", "Requirements").length > 0) {
    add("Requirements inside VersionOverrides would replace the outer ones: leave them out");
  }
  return findings;
}

/** The prefix of the functions: legal, and the one that workbooks have stored. */
export function checkNamespace(root: XmlElement, resources: readonly Resource[]): Finding[] {
  const id = find(root, "VersionOverrides", "Hosts", "Host", "AllFormFactors", "ExtensionPoint", "Namespace")[0];
  const value = resources.find((resource) => resource.id === id?.attributes.get("resid"))?.value ?? "";
  const add = (message: string): Finding[] => [{ rule: "namespace", message: `Namespace: ${message}, got "${value}"` }];
  if (value.length > LIMITS.namespace) return add(`at most ${LIMITS.namespace} characters`);
  if (!/^[A-Z][A-Z0-9._]*$/.test(value)) return add("expected capitals, digits, period, underscore after a capital");
  return value === NAMESPACE ? [] : add(`workbooks store "${NAMESPACE}", it can't change`);
}
