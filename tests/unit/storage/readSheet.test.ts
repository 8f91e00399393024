import { expect, test } from "vitest";
import { sheetColumnMissing } from "../../../src/messages/marks.ts";
import { readSheet } from "../../../src/storage/readSheet.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

const unreadable = () => "unreadable";

test("readSheet(file, needed) refuses a long table under a strange heading at once, in a sentence that can be read", () => {
  const headings = Array.from({ length: 2000 }, (_, i) => `h${i}`);
  const table = `${headings.join("\t")}\n${"0\t1\t \n".repeat(2000)}`;
  const file = `${tempFolder({ "sheet.csv": table })}/sheet.csv`;
  const before = process.cpuUsage();
  expect(() => readSheet(file, ["clip"], unreadable)).toThrow(sheetColumnMissing(file, "clip", headings));
  const { user, system } = process.cpuUsage(before);
  expect((user + system) / 1000).toBeLessThan(500);
  expect(sheetColumnMissing(file, "clip", headings).length).toBeLessThan(400);
});
