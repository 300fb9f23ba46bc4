import { addressText } from "../../workbook/reader/reference";
import type { Difference, OpeningReport } from "../file/openingReport";

/** What can't be read of a workbook and what differs in it, as lines for people. */

/** Cells of one kind that a line names. */
const MOST_NAMED = 24;

function named(addresses: readonly string[]): string {
  const rest = addresses.length - MOST_NAMED;
  return addresses.slice(0, MOST_NAMED).join(", ") + (rest > 0 ? ` and ${rest} more` : "");
}

const differs = ({ address, stored, now }: Difference): string =>
  Array.isArray(stored) || Array.isArray(now)
    ? `${address} (a table)`
    : `${address} (file ${JSON.stringify(stored)}, here ${JSON.stringify(now)})`;

export function reportLines({ unread, differing, changing, settings }: OpeningReport): readonly string[] {
  return [
    ...unread.map(
      ({ why, cells }) =>
        `can't be read here: ${why}; stored results: ${named(cells.map((cell) => addressText(cell)))}`,
    ),
    ...(differing.length === 0
      ? []
      : [
          `${differing.length} ${differing.length === 1 ? "cell differs" : "cells differ"} from what the file last showed: ${named(differing.map(differs))}`,
        ]),
    ...(changing.length === 0
      ? []
      : [`at every calculation another value, which isn't compared: ${named(changing.map(({ address }) => address))}`]),
    ...settings,
  ];
}
