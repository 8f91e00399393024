import { expect, test } from "vitest";
import { date, defaultDate } from "../../../src/cli/runNumbers.ts";
import { epochInvalid } from "../../../src/messages/run.ts";
import { UserError } from "../../../src/messages/userError.ts";

test.each([
  ["2026-11-25", "2026-11-25T00:00:00.000Z"],
  ["2028-02-29", "2028-02-29T00:00:00.000Z"],
  ["2026-11-25T09:00Z", "2026-11-25T09:00:00.000Z"],
  ["2026-11-25T09:00:00.5Z", "2026-11-25T09:00:00.500Z"],
  ["2026-11-25T09:00:00+09:00", "2026-11-25T00:00:00.000Z"],
])("date(%s) is the time %s, which the report can read", (text, time) => expect(date(text)).toBe(time));

test.each([
  ...["yesterday", "2026-13-01", "2026", "", "=1+1", "25.11.2026", "2026-11-25T09:00"],
  ...["2026-02-30", "2026-06-31", "2025-02-29", "2026-02-30T09:00:00Z", "2026-00-10", "2026-01-32"],
])("date(%s) is refused", (text) => expect(() => date(text)).toThrow(/like 2026-11-25/));

test("defaultDate(seconds since 1970) is that time, and without any the time now", () => {
  expect(defaultDate("86400")).toBe("1970-01-02T00:00:00.000Z");
  expect(Math.abs(Date.parse(defaultDate(undefined)) - Date.now())).toBeLessThan(10_000);
  expect(Math.abs(Date.parse(defaultDate("")) - Date.now())).toBeLessThan(10_000);
});

test.each(["abc", "-1", "1e3", "99999999999999999"])("defaultDate(%s) says what is wrong with it", (text) =>
  expect(() => defaultDate(text)).toThrow(new UserError(epochInvalid(text))),
);
