/** The one log of this session's calls. */
import { sessionLog } from "../workbook/callLog";

export const LOG = sessionLog();
