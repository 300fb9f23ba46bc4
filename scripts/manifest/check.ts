import { baseOf, checkAddresses, checkIcons, type Purpose } from "./check/files";
import type { Build, Finding } from "./check/finding";
import { checkFunctions } from "./check/functions";
import { checkHosts, checkIdentity, checkNamespace, checkPermission, checkRequirements } from "./check/identity";
import { checkResources, resourcesOf } from "./check/resources";
import { checkRuntime } from "./check/runtime";
import { checkStructure } from "./check/structure";
import { parseXml } from "./xml";

export type { Build, Finding } from "./check/finding";
export type { Purpose } from "./check/files";

/**
 * Checks a manifest and the build that it names, without a network. An empty list means that no fault was found;
 * Microsoft's own validator runs online and knows more (store rules, for one).
 * @param purpose production and not yet a release, unless said otherwise.
 */
export function checkManifest(
  xml: string,
  build: Build,
  purpose: Purpose = { variant: "production", release: false },
): Finding[] {
  const parsed = parseXml(xml);
  if ("fault" in parsed) return [{ rule: "well-formed", message: `not well-formed XML: ${parsed.fault}` }];
  const { root } = parsed;
  const { findings, references } = checkStructure(root);
  const resources = resourcesOf(root);
  return [
    ...findings,
    ...checkResources(resources, references),
    ...checkIdentity(root),
    ...checkPermission(root),
    ...checkHosts(root),
    ...checkRequirements(root),
    ...checkRuntime(root, resources),
    ...checkNamespace(root, resources),
    ...checkAddresses(root, resources, build, purpose),
    ...checkIcons(root, resources, build),
    ...checkFunctions(build, purpose.variant === "production" ? baseOf(root) : ""),
  ];
}
