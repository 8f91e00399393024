import { expect, test } from "vitest";
import { readNumeral } from "../../../src/phonology/readNumeral.ts";

test.each([
  ["1,234", "センニヒャクサンジューヨン"],
  ["3.14", "サンテンイチヨン"],
  ["3,000億", "サンゼンオク"],
  ["1.5億", "イッテンゴオク"],
  ["7:30", "シチジサンジュップン"],
  ["10:00", "ジュージ"],
  ["03-1234", "ゼロサンノイチニーサンヨン"],
  ["二三", "ニサン"],
  ["七八", "シチハチ"],
  ["三二", "サンジューニ"],
])("readNumeral(%s) is %s", (text, expected) => {
  expect(readNumeral(text).readings[0]).toBe(expected);
});

test.each(["1/2", "1,2", "25:00", "1.2.3"])("readNumeral(%s) has no reading: it is not guessed", (text) => {
  expect(readNumeral(text)).toEqual({ readings: [], digits: null });
});
