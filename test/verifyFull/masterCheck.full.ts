/** Every way to break every input of every starter sheet, and every row of an input deleted. */
import { checkMasters } from "../sheets/masterChecks";

checkMasters({ ways: 1, rows: 1 });
