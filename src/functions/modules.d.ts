/** Modules without types of their own. */
declare module "*/preview/webpack.mjs" {
  import type { Configuration } from "webpack";
  const configurations: readonly Configuration[];
  export default configurations;
}
