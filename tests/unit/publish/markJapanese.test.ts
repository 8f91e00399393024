import { expect, test } from "vitest";
import { markJapanese } from "../../../src/publish/markJapanese.ts";

test("markJapanese(text) marks kana and kanji, and escapes the rest", () => {
  expect(markJapanese("as in です, ビール & <b>").markup).toBe(
    'as in <span lang="ja">です</span>, <span lang="ja">ビール</span> &amp; &lt;b&gt;',
  );
  expect(markJapanese("none").markup).toBe("none");
});
