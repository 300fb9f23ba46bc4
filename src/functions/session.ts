/** The one log of this session's calls. */
import { callLog } from "../workbook/log";

export const LOG = callLog();
