import { existsSync, readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { kanaToMorae } from "../../../src/phonology/kana.ts";
import { matchPhonesToMorae } from "../../../src/phonology/matchPhones.ts";
import { normalisePhone } from "../../../src/phonology/phones.ts";
import { makeReader, type TextReading } from "../../../src/phonology/reading.ts";
import { wordOfMora } from "../../../src/phonology/words.ts";
import { loadTokenizer } from "../../../src/storage/loadTokenizer.ts";
import { readReadingCorrections } from "../../../src/storage/readLexicon.ts";
import { bestMoraDistance, cause, moraDistance, soundsOf } from "./moraErrors.ts";

const shared = new URL("../../../../shared/data/", import.meta.url);
const present = existsSync(shared);
if (!present) console.log("Shared datasets absent: 3 corpus tests of readings skipped");

let byRule: (text: string) => TextReading;
let corrected: (text: string) => TextReading;
beforeAll(async () => {
  if (!present) return;
  const tokenizer = await loadTokenizer();
  byRule = makeReader(tokenizer);
  corrected = makeReader(tokenizer, { corrections: await readReadingCorrections() });
});

/** The ITA sentences (Unlicense): `ID:text,reading`, the reading written by people. */
const itaSentences = () =>
  readFileSync(new URL("ita-labels/transcript.txt", shared), "utf8")
    .trim()
    .split("\n")
    .map((line) => {
      const [colon, comma] = [line.indexOf(":"), line.lastIndexOf(",")];
      return { id: line.slice(0, colon), text: line.slice(colon + 1, comma), kana: line.slice(comma + 1) };
    });

const percent = (errors: number, of: number) => `${((100 * errors) / of).toFixed(2)} % (${errors} of ${of})`;

test.skipIf(!present)("readText(ITA text) has a mora error rate of at most 1 % before any lexicon", () => {
  const totals = { morae: 0, byRule: 0, corrected: 0, best: 0 };
  const cases = new Map<string, string[]>();
  for (const { id, text, kana } of itaSentences()) {
    const given = soundsOf(kana);
    const reading = corrected(text);
    const distance = (one: TextReading) =>
      moraDistance(
        one.morae.map((mora) => mora.phones.join("")),
        given,
      );
    totals.morae += given.length;
    totals.byRule += distance(byRule(text));
    totals.corrected += distance(reading);
    totals.best += bestMoraDistance(reading, given);
    if (distance(reading) === 0) continue;
    const why = cause(reading, given);
    cases.set(why, [...(cases.get(why) ?? []), `${id} (${distance(reading)}): ${reading.kana} | ${kana}`]);
  }
  console.log(
    [
      `ITA mora errors by dictionary and rules ${percent(totals.byRule, totals.morae)},`,
      `with the project's corrections ${percent(totals.corrected, totals.morae)},`,
      `with the best alternative of each word ${percent(totals.best, totals.morae)}`,
      ...[...cases].flatMap(([why, lines]) => [
        `${why}: ${lines.length} sentences`,
        ...lines.map((line) => `  ${line}`),
      ]),
    ].join("\n"),
  );
  expect(totals.morae).toBe(10156);
  expect(totals.corrected / totals.morae).toBeLessThanOrEqual(0.01);
  expect(totals.byRule / totals.morae).toBeLessThanOrEqual(0.0125);
});

test.skipIf(!present)(
  "wordOfMora(words of ITA text, its own reading) finds the words of nearly all sentences",
  () => {
    const sentences = itaSentences();
    const found = sentences.filter(({ text, kana }) => {
      const { morae } = kanaToMorae(kana);
      return wordOfMora(corrected(text).words, morae)?.length === morae.length;
    });
    console.log(
      `ITA: words of ${found.length} of ${sentences.length} sentences placed in the dataset's reading`,
    );
    expect(found.length / sentences.length).toBeGreaterThan(0.9);
  },
);

test.skipIf(!present)(
  "readText(audiobook text) agrees with the romanised reading of the Kokoro lines",
  () => {
    // Public domain; readings of that dataset were made with a dictionary, not by ear.
    const lines = readFileSync(new URL("audiobook-clips/metadata.csv", shared), "utf8").trim().split("\n");
    let [errors, morae, best] = [0, 0, 0];
    for (const line of lines) {
      const [, text, romanised] = line.split("|") as [string, string, string];
      const labels = romanised
        .split(" ")
        .filter((label) => /[a-zN]/u.test(label))
        .map((label) => normalisePhone(label)!);
      const given = labels.flatMap(({ phone, long }) => (long ? [phone, phone] : [phone]));
      const reading = corrected(text);
      const own = reading.morae.flatMap((mora) => mora.phones);
      morae += given.length;
      errors += moraDistance(own, given);
      const equal = matchPhonesToMorae(labels, reading.morae) !== null;
      best += equal ? 1 : 0;
      if (!equal) console.log(`differs: ${reading.kana} | ${romanised}`);
    }
    console.log(`Kokoro: phone errors ${percent(errors, morae)}, ${best} of ${lines.length} lines equal`);
    expect(errors / morae).toBeLessThan(0.05);
  },
);
