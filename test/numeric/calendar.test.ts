import { expect, test } from "vitest";
import {
  DAYS,
  FIRST_DAY,
  firstHourOf,
  HOURS_OF_DAY,
  HOURS_OF_YEAR,
  hoursOf,
  MONTH_OF_HOUR,
  MONTHS,
  WEEKDAYS,
} from "../../core/numeric/calendar";

test("the hours of the months make the year", () => {
  expect(MONTHS.map((_, month) => hoursOf(month)).reduce((a, b) => a + b)).toBe(HOURS_OF_YEAR);
  expect(MONTH_OF_HOUR.length).toBe(HOURS_OF_YEAR);
  MONTHS.forEach((_, month) => {
    expect(MONTH_OF_HOUR[firstHourOf(month)]).toBe(month);
    expect(MONTH_OF_HOUR[firstHourOf(month) + hoursOf(month) - 1]).toBe(month);
  });
});

test("months and days are those of a year that is no leap year", () => {
  // The day numbers of the first of each month, counted from 1, as every table of them has it.
  expect(FIRST_DAY.map((day) => day + 1)).toEqual([1, 32, 60, 91, 121, 152, 182, 213, 244, 274, 305, 335]);
  expect(DAYS).toHaveLength(12);
  expect([MONTHS.length, WEEKDAYS.length, HOURS_OF_DAY]).toEqual([12, 7, 24]);
  expect(firstHourOf(1)).toBe(744);
});
