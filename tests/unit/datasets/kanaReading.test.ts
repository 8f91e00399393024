import { expect, test } from "vitest";
import { kanaReading, withoutAccent } from "../../../src/datasets/kanaReading.ts";

test.each([
  ["おおきいぬいぐるみ", "オオキイヌイグルミ"],
  ["エッウソデショ。", "エッウソデショ"],
  ["か\u3099っこう、です！", "ガッコウ、デス"],
  ["マタ トージノ", "マタ トージノ"],
  ["ヴァイオリン・ソナタ", "ヴァイオリン、ソナタ"],
])("kanaReading(%s) is %s", (text, reading) => {
  expect(kanaReading(text)).toBe(reading);
});

test.each(["漢字", "abc", "カ1", "", "。", "カ<b>"])("kanaReading(%j) is none", (text) => {
  expect(kanaReading(text)).toBeNull();
});

test("withoutAccent takes the marks out and leaves the places where a phrase may pause", () => {
  expect(withoutAccent("^ミ[ズヲ#マ[レ]ーシア_ナ[ラ]ナイ?$")).toBe("ミズヲ マレーシア、ナラナイ");
});
