/** One fault of a manifest or of the build that it names. */
export interface Finding {
  readonly rule:
    | "well-formed"
    | "structure"
    | "resource"
    | "length"
    | "identity"
    | "permission"
    | "host"
    | "requirement"
    | "runtime"
    | "url"
    | "icon"
    | "namespace"
    | "functions";
  /** Names the element or the file, the rule and what was found. */
  readonly message: string;
  /** Line in the manifest, from 1, where there is one. */
  readonly line?: number;
}

/** The built add-in as the checker sees it; paths are relative to the build's root. */
export interface Build {
  has(path: string): boolean;
  /** Bytes; asked for existing files only. */
  size(path: string): number;
  /** Pixels; undefined when the file isn't a PNG. Asked for existing files only. */
  png(path: string): { readonly width: number; readonly height: number } | undefined;
  /** The parsed functions.json. */
  readonly functions: unknown;
}
