/** What one build depends on besides its sources. */
export interface BuildSettings {
  /** Where it is written. */
  readonly folder: string;
  /** The host that help addresses lead to, without a closing slash. */
  readonly host: string;
  /** Names the build in its scripts: they compare it when they meet. */
  readonly build: string;
}
