import { join } from "node:path";
import { expect, test } from "vitest";
import { frequencyEmpty, frequencyInvalid } from "../../../src/messages/explain.ts";
import { UserError } from "../../../src/messages/userError.ts";
import { readWordFrequency } from "../../../src/storage/readWordFrequency.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

const listed = (text: string) => join(tempFolder({ "list.tsv": text }), "list.tsv");

test("readWordFrequency reads tabs and commas, headings, comments and words that stand twice", () => {
  const read = (text: string) => [...readWordFrequency(listed(text))];
  expect(read("word\tper million\n# a comment\n猫\t12.5\n犬\t3\n猫\t2.5\n")).toEqual([
    ["猫", 15],
    ["犬", 3],
  ]);
  expect(read("\ufeff猫,0\r\n犬,1e3\r\n")).toEqual([
    ["猫", 0],
    ["犬", 1000],
  ]);
});

test("readWordFrequency refuses lines without a number, and empty lists, naming the line", () => {
  for (const [text, line, found] of [
    ["猫\t1\n犬\tmany\n", 2, "犬 many"],
    ["猫\t1\n\n犬\n", 3, "犬"],
    ["猫\t-1\n", 1, "猫 -1"],
  ] as const) {
    const path = listed(text);
    expect(() => readWordFrequency(path)).toThrow(new UserError(frequencyInvalid(path, line, found)));
  }
  const empty = listed("word\tfrequency\n");
  expect(() => readWordFrequency(empty)).toThrow(new UserError(frequencyEmpty(empty)));
});
