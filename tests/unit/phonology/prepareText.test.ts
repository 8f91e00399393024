import { expect, test } from "vitest";
import { prepareText } from "../../../src/phonology/prepareText.ts";

test("prepareText(text) writes Latin and digits full width and joins half-width kana", () => {
  expect(prepareText("CD3枚のｶﾞﾑ!").text).toBe("ＣＤ３枚のガム！");
});

test("prepareText(text).indexOf leads back to the original, also where letters join or grow", () => {
  const { text, indexOf } = prepareText("ｶﾞ㍑a");
  expect(text).toBe("ガリットルａ");
  expect(indexOf).toEqual([0, 2, 2, 2, 2, 3, 4]);
});
