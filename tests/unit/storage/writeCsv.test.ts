import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";
import { toCsv } from "../../../src/storage/writeCsv.ts";

describe("toCsv(columns, rows)", () => {
  test("is read back by a CSV parser as it was, quotes, commas and line ends included", () => {
    const rows = [
      { a: 'say "はい", twice', b: "two\nlines" },
      { a: "", b: "<b>bold</b>" },
    ];
    expect(parse(toCsv(["a", "b"], rows), { columns: true })).toEqual(rows);
  });

  test.each(["=1+1", "+1", "-1", "@cmd"])("keeps a spreadsheet from running %j as a formula", (text) => {
    const [row] = parse(toCsv(["a"], [{ a: text }]), { columns: true }) as { a: string }[];
    expect(row!.a).toBe(`'${text}`);
  });
});
