/** Ids of hidden items: equal as long as the workbook is. */
import type { NameEntry } from "../book/facts";
import { nameKey } from "../formula/resolve";

export const pivotId = (path: string): string => `pivot:${path}`;
export const commentsId = (sheet: string): string => `comments:${sheet}`;
export const sheetId = (sheet: string): string => `sheet:${sheet}`;
export const nameId = (entry: Pick<NameEntry, "name" | "sheet">): string => `name:${nameKey(entry)}`;
export const propertyId = (id: string): string => `property:${id}`;
