/** `npm start`: builds what is missing, then serves it from port 3000 on, or from PORT, until it is stopped. */
import { ensureBuilt } from "./ensureBuilt.mjs";
import { serve } from "./serve";

const folder = await ensureBuilt();
const { address } = await serve({ folder, port: Number(process.env["PORT"] ?? 3000), open: true });
console.log(`Warmback's preview: ${address} (Ctrl+C stops it)`);
