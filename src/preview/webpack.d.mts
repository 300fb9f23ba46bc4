import type { Configuration } from "webpack";

declare const configurations: readonly Configuration[];
export default configurations;
