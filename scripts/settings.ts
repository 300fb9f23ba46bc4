/** What one build depends on besides its sources. */
export interface BuildSettings {
  /** The folder that it is written to. */
  readonly folder: string;
  /** The host of the help addresses, without a trailing slash. */
  readonly host: string;
  /** The build's hash in its scripts: the panel compares it. */
  readonly build: string;
}
