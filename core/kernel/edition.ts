/** The edition that sheets and hand-over records print. A changed result needs a new number and a line in the change log. */
export const VERSION = "0.1.0";

export const EDITION = `Warmback ${VERSION}`;
