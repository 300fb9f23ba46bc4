import { helpPage, PAGES } from "../manifest";
import type { Build, Finding } from "./finding";

/**
 * Limits of the functions' metadata. Sources: Microsoft Learn, "Custom functions naming and localization" and
 * "Manually create JSON metadata for custom functions" (names, types); the unified manifest's schema for custom
 * functions (64 and 128 characters), which the file must satisfy too; 1 MB is what desktop Excel was seen to accept.
 */
export const METADATA_LIMITS = { idLeast: 3, id: 64, description: 128, parameter: 64, bytes: 1_000_000 } as const;

const TYPES = ["any", "boolean", "number", "string"];
const DIMENSIONS = ["scalar", "matrix"];
/** Options that recalculate at will, tie a call to its address, or keep it open: none is used here. */
const BARRED_OPTIONS = ["volatile", "stream", "cancelable", "requiresAddress", "requiresParameterAddresses"];
/** `A1` to `XFD1048576` and `R1C1`: Excel reads them as cells. */
const CELL = /^([A-Z]{1,3}\d{1,7}|R\d*C\d*)$/;

type Fields = Readonly<Record<string, unknown>>;
const isFields = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
const textOf = (value: unknown): string => (typeof value === "string" ? value : "");

function textFault(what: string, value: unknown, limit: number): string[] {
  const text = textOf(value);
  if (text.trim() === "") return [`${what} is missing or empty`];
  return text.length > limit ? [`${what} has at most ${limit} characters, got ${text.length}`] : [];
}

function idFaults(id: string): string[] {
  const { idLeast, id: most } = METADATA_LIMITS;
  if (id.length < idLeast || id.length > most) return [`id has ${idLeast} to ${most} characters, got ${id.length}`];
  if (!/^[A-Z][A-Z0-9.]*$/.test(id)) return ["id: capitals, digits and periods after a capital only"];
  return CELL.test(id) ? ["id is also a cell's address"] : [];
}

function parameterFaults(parameter: unknown, place: number, enums: ReadonlySet<string>): string[] {
  const what = `parameter ${place + 1}`;
  if (!isFields(parameter)) return [`${what} is not an object`];
  const name = textOf(parameter["name"]);
  const faults: string[] = [];
  if (!/^[A-Za-z][A-Za-z0-9_]*$/.test(name)) faults.push(`${what}: name must be a plain identifier, got "${name}"`);
  if (name.length > METADATA_LIMITS.parameter) {
    faults.push(`${what}: name has at most ${METADATA_LIMITS.parameter} characters, got ${name.length}`);
  }
  faults.push(...textFault(`${what} (${name}): description`, parameter["description"], METADATA_LIMITS.description));
  const type = parameter["type"] ?? "any";
  if (!TYPES.includes(textOf(type))) faults.push(`${what} (${name}): type is one of ${TYPES.join(", ")}`);
  const shape = parameter["dimensionality"] ?? "scalar";
  if (!DIMENSIONS.includes(textOf(shape))) faults.push(`${what} (${name}): dimensionality is scalar or matrix`);
  const choice = parameter["customEnumId"];
  if (choice !== undefined && !enums.has(textOf(choice))) {
    faults.push(`${what} (${name}): there is no custom enum "${String(choice)}"`);
  }
  return faults;
}

/** An optional argument can only be left out when all after it can be. */
function orderFaults(parameters: readonly unknown[]): string[] {
  const optional = parameters.map((parameter) => isFields(parameter) && parameter["optional"] === true);
  const firstOptional = optional.indexOf(true);
  const late = firstOptional < 0 ? -1 : optional.indexOf(false, firstOptional);
  return late < 0 ? [] : [`parameter ${late + 1} is required but follows an optional one`];
}

function repeats(values: readonly string[]): string[] {
  return [...new Set(values.filter((value, place) => values.indexOf(value) !== place))];
}

function helpFaults(id: string, url: string, build: Build, base: string): string[] {
  const page = helpPage(id);
  if (!url.startsWith("https://") || !url.endsWith(`/${page}`))
    return [`helpUrl must lead to https://…/${page}, got "${url}"`];
  if (!url.startsWith(base)) return [`helpUrl is outside the add-in's own ${base}, got "${url}"`];
  return build.has(page) ? [] : [`helpUrl: the build has no ${page}`];
}

function functionFaults(entry: Fields, enums: ReadonlySet<string>, build: Build, base: string): string[] {
  const id = textOf(entry["id"]);
  const parameters = listOf(entry["parameters"]);
  const names = parameters.map((parameter) => (isFields(parameter) ? textOf(parameter["name"]) : ""));
  const options = isFields(entry["options"]) ? entry["options"] : {};
  const faults = [
    ...idFaults(id),
    ...(textOf(entry["name"]) === id ? [] : [`name must equal the id, got "${textOf(entry["name"])}"`]),
    ...textFault("description", entry["description"], METADATA_LIMITS.description),
    ...parameters.flatMap((parameter, place) => parameterFaults(parameter, place, enums)),
    ...repeats(names).map((name) => `parameter name "${name}" is given twice`),
    ...orderFaults(parameters),
    ...BARRED_OPTIONS.filter((option) => options[option] === true).map((option) => `option ${option} is not allowed`),
  ];
  if (!isFields(entry["result"])) faults.push("result is missing");
  return [...faults, ...helpFaults(id, textOf(entry["helpUrl"]), build, base)];
}

/**
 * functions.json against Microsoft's published rules, and against what Excel does with names: dots become underscores in files.
 * @param base beginning of every help address; "" when any https host will do (both manifests share one functions.json).
 */
export function checkFunctions(build: Build, base: string): Finding[] {
  const finding = (message: string): Finding => ({ rule: "functions", message: `${PAGES.metadata}: ${message}` });
  const metadata = build.functions;
  if (!isFields(metadata) || !Array.isArray(metadata["functions"])) return [finding("has no list of functions")];
  const findings: Finding[] = [];
  const bytes = build.has(PAGES.metadata) ? build.size(PAGES.metadata) : 0;
  if (bytes >= METADATA_LIMITS.bytes)
    findings.push(finding(`must stay under ${METADATA_LIMITS.bytes} bytes, got ${bytes}`));
  for (const option of ["allowErrorForDataTypeAny", "allowCustomDataForDataTypeAny"]) {
    if (metadata[option] !== undefined) findings.push(finding(`${option} must stay unset: cells pass plain values`));
  }
  const entries = listOf(metadata["functions"]).filter(isFields);
  if (entries.length === 0) findings.push(finding("lists no function"));
  const enums = listOf(metadata["enums"]).map((entry) => (isFields(entry) ? textOf(entry["id"]) : ""));
  findings.push(...repeats(enums).map((id) => finding(`custom enum "${id}" is given twice`)));
  for (const entry of entries) {
    const faults = functionFaults(entry, new Set(enums), build, base);
    findings.push(...faults.map((fault) => finding(`${textOf(entry["id"]) || "a function without id"}: ${fault}`)));
  }
  const stored = entries.map((entry) => textOf(entry["id"]).toUpperCase().replaceAll(".", "_"));
  findings.push(...repeats(stored).map((name) => finding(`two functions are stored as ${name}`)));
  return findings;
}
