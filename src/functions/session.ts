/** The one log of this session's calls. */
import { callLog } from "../workbook/callLog";

export const LOG = callLog();
