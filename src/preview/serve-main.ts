import { resolve } from "node:path";

import { serve } from "./serve";

/** Serves the build in dist/ from port 3000 on, or the port in PORT, until it is stopped. */
const folder = resolve(import.meta.dirname, "../../dist");
const { address } = await serve({ folder, port: Number(process.env["PORT"] ?? 3000), open: true });
console.log(`Warmback's preview: ${address} (Ctrl+C stops it)`);
