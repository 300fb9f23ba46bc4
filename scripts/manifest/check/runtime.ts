import { find, type XmlElement } from "../xml";
import type { Finding } from "./finding";
import type { Resource } from "./resources";

/** Elements that must all name one page, or Excel starts a second runtime with a second copy of everything. */
function sharingElements(host: XmlElement): (readonly [string, XmlElement | undefined])[] {
  const command = find(host, "DesktopFormFactor", "ExtensionPoint", "OfficeTab", "Group", "Control", "Action");
  const panes = command.filter((action) => action.attributes.get("xsi:type") === "ShowTaskpane");
  const functionFile = find(host, "DesktopFormFactor", "FunctionFile")[0];
  return [
    ["the runtime", find(host, "Runtimes", "Runtime")[0]],
    ["the custom functions' Page", find(host, "AllFormFactors", "ExtensionPoint", "Page", "SourceLocation")[0]],
    ...panes.map((action) => ["the pane's command", find(action, "SourceLocation")[0]] as const),
    ...(functionFile ? [["the FunctionFile", functionFile] as const] : []),
  ];
}

/** One long-lived runtime, whose page is the pane, the functions' page and the page without add-in commands alike. */
export function checkRuntime(root: XmlElement, resources: readonly Resource[]): Finding[] {
  const findings: Finding[] = [];
  const add = (message: string, line?: number): void =>
    void findings.push({ rule: "runtime", message, ...(line === undefined ? {} : { line }) });
  const hosts = find(root, "VersionOverrides", "Hosts", "Host");
  for (const host of hosts) {
    const [first, ...others] = sharingElements(host);
    const runtime = first?.[1];
    const page = runtime?.attributes.get("resid") ?? "";
    const lifetime = runtime?.attributes.get("lifetime") ?? "none";
    if (lifetime !== "long") add(`Runtime: a shared runtime has lifetime "long", got "${lifetime}"`, runtime?.line);
    for (const [what, element] of others) {
      const resid = element?.attributes.get("resid") ?? "";
      if (resid !== page) add(`${what} names "${resid}", the runtime names "${page}": not shared`, element?.line);
    }
    const url = resources.find(({ id }) => id === page)?.value ?? "";
    const outer = find(root, "DefaultSettings", "SourceLocation")[0]?.attributes.get("DefaultValue") ?? "";
    if (url !== outer) add(`DefaultSettings opens "${outer}", the runtime's page is "${url}"`);
  }
  const opens = hosts.flatMap(sharingElements).some(([what]) => what === "the pane's command");
  if (!opens) add("no ribbon command opens the pane");
  return findings;
}
