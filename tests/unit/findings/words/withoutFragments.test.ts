import { expect, test } from "vitest";
import type { TimesHeard } from "../../../../src/findings/words/heardIndex.ts";
import { withoutFragments } from "../../../../src/findings/words/withoutFragments.ts";

const times = (surface: string): TimesHeard => ({
  ...{ surface, sound: surface, tokens: 1, voices: new Set(["s"]), firsts: [], marks: new Map() },
});
const heard = new Map(
  ["です", "ぷです", "ペットボトル", "菊", "まみたん"].map((surface) => [surface, times(surface)]),
);

test("withoutFragments leaves out what no dictionary holds in hiragana, and says what", () => {
  const known = new Set(["です", "菊"]);
  const got = withoutFragments(heard, (surface) => known.has(surface));
  expect([...got.heard.keys()]).toEqual(["です", "ペットボトル", "菊"]);
  expect(got.fragments).toEqual(["ぷです", "まみたん"]);
});

test("withoutFragments of known words gives the same words", () => {
  expect(withoutFragments(heard, () => true)).toEqual({ heard, fragments: [] });
});
