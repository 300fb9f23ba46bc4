import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { pngSize } from "../../scripts/manifest/build";
import type { Build } from "../../scripts/manifest/check";
import { ICON_SIZES, iconPath } from "../../scripts/manifest/icons";
import { helpPage, manifestXml, PAGES, VARIANTS, type Variant } from "../../scripts/manifest/manifest";

interface Parameter {
  name: string;
  description: string;
  type: string;
  dimensionality?: string;
  optional?: boolean;
  customEnumId?: string;
}

export interface Metadata {
  functions: {
    id: string;
    name: string;
    description: string;
    helpUrl: string;
    parameters: Parameter[];
    result: object;
    options?: Record<string, boolean>;
  }[];
  enums?: { id: string; type: string; values: { name: string; stringValue: string }[] }[];
  allowErrorForDataTypeAny?: boolean;
}

/** Legal metadata of two functions, fresh at every call. */
export function sampleMetadata(): Metadata {
  const help = (id: string): string => `${VARIANTS.production.host}/${helpPage(id)}`;
  const units = { name: "units", description: "US or SI", type: "string", optional: true, customEnumId: "UNITS" };
  return {
    functions: [
      {
        id: "PIPE.HEADLOSS",
        name: "PIPE.HEADLOSS",
        description: "Friction head lost in a straight run of PVC pipe.",
        helpUrl: help("PIPE.HEADLOSS"),
        parameters: [
          { name: "flow", description: "gpm (SI: m³/h): water flow", type: "any" },
          { name: "run", description: "ft (SI: m): straight run", type: "any" },
          units,
        ],
        result: {},
      },
      {
        id: "POOL.LOSSES",
        name: "POOL.LOSSES",
        description: "Heat that a pool loses, by kind of loss.",
        helpUrl: help("POOL.LOSSES"),
        parameters: [
          { name: "inputs", description: "label, value, unit", type: "any", dimensionality: "matrix" },
          units,
        ],
        result: { dimensionality: "matrix" },
      },
    ],
    enums: [{ id: "UNITS", type: "string", values: [{ name: "US", stringValue: "US" }] }],
  };
}

const iconFile = (size: number): Buffer =>
  readFileSync(fileURLToPath(new URL(`../../manifest/icons/icon-${size}.png`, import.meta.url)));

export interface SampleParts {
  readonly without?: readonly string[];
  readonly metadata?: unknown;
  readonly bytes?: number;
  /** Icons whose file holds the picture of another size (0: no picture). */
  readonly swapped?: Readonly<Record<string, number>>;
}

/** A build with every file that the manifest names, less what the test takes away. Icons are the real ones. */
export function sampleBuild({
  without = [],
  metadata = sampleMetadata(),
  bytes = 40_000,
  swapped = {},
}: SampleParts = {}): Build {
  const icons = new Map<string, number>(ICON_SIZES.map((size) => [iconPath(size), size]));
  const help = sampleMetadata().functions.map(({ id }) => helpPage(id));
  const files = new Set([...Object.values(PAGES), ...icons.keys(), ...help].filter((path) => !without.includes(path)));
  return {
    has: (path) => files.has(path),
    size: () => bytes,
    png: (path) => {
      const size = swapped[path] ?? icons.get(path) ?? 0;
      return pngSize(size === 0 ? Buffer.from("<svg/>") : iconFile(size));
    },
    functions: metadata,
  };
}

export const sampleXml = (variant: Variant = "production"): string => manifestXml({ variant, packageVersion: "0.1.0" });
