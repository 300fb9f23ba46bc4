/** `npm start`: builds if needed, then serves the build on port 3000 or the next free one, or on PORT, until it is stopped. */
import { ensureBuilt } from "./ensureBuilt.mjs";
import { serve } from "./serve";

const folder = await ensureBuilt();
const { address } = await serve({ folder, port: Number(process.env["PORT"] ?? 3000), open: true });
console.log(`Warmback's preview: ${address} (Ctrl+C stops it)`);
