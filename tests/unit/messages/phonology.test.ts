import { expect, test } from "vitest";
import {
  lexiconLineUnreadable,
  lexiconReadingNotKana,
  textWithoutReading,
} from "../../../src/messages/phonology.ts";

test("textWithoutReading(stretches) names every stretch and both ways out", () => {
  const { message, wayOut } = textWithoutReading(["iPhone", "仔"]);
  expect(message).toContain('"iPhone", "仔"');
  expect(wayOut).toMatch(/lexicon/u);
  expect(wayOut).toMatch(/the utterance its reading/u);
});

test("lexicon messages start with file and line and end with what to do", () => {
  expect(lexiconLineUnreadable("my.tsv", 3)).toMatch(/^my\.tsv, line 3: .*tab/u);
  expect(lexiconReadingNotKana("my.tsv", 3, "abc")).toMatch(/^my\.tsv, line 3: .*"abc".*katakana/u);
});
