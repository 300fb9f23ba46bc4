import { DIST, ensureBuilt } from "../functions/build.mjs";
import { serve } from "./serve";

/** `npm start`: builds what is missing, then serves it from port 3000 on, or from PORT, until it is stopped. */
await ensureBuilt();
const { address } = await serve({ folder: DIST, port: Number(process.env["PORT"] ?? 3000), open: true });
console.log(`Warmback's preview: ${address} (Ctrl+C stops it)`);
