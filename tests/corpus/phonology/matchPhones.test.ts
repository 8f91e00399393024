import { existsSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { phonesDifferFromReading } from "../../../src/messages/phonology.ts";
import { readAccent } from "../../../src/phonology/accent.ts";
import { firstDifference, matchPhonesToMorae } from "../../../src/phonology/matchPhones.ts";
import { normalisePhone, type Phone } from "../../../src/phonology/phones.ts";

// JSUT BASIC5000 labels, CC BY-SA 4.0: readings and phones written by people, independently of this project.
const folder = new URL("../../../../shared/data/jsut-labels/", import.meta.url);
const present = existsSync(folder);
if (!present) console.log("JSUT labels absent: 1 corpus test skipped");

const read = (name: string) =>
  new Map(
    readFileSync(new URL(name, folder), "utf8")
      .trim()
      .split("\n")
      .map((line): [string, string] => [line.slice(0, line.indexOf(":")), line.slice(line.indexOf(":") + 2)]),
  );

const phonesOf = (line: string): Phone[] =>
  line
    .split("-")
    .filter((symbol) => !/^[[\]^$?#_]$/u.test(symbol))
    .map((symbol) => normalisePhone(symbol)?.phone ?? "pause");

test.skipIf(!present)(
  "matchPhonesToMorae(phoneme.yaml, katakana.yaml) is equal for every JSUT sentence",
  () => {
    const phonemes = read("phoneme.yaml");
    const readings = read("katakana.yaml");
    const differing: string[] = [];
    for (const [id, marked] of readings) {
      const phones = phonesOf(phonemes.get(id)!);
      const { morae } = readAccent(marked);
      if (matchPhonesToMorae(phones, morae)) continue;
      const { index, expected, found, mora } = firstDifference(phones, morae)!;
      const kana = mora === null ? null : morae[mora]!.kana;
      differing.push(`${id}: ${phonesDifferFromReading(index + 1, expected, found, kana)}`);
    }
    console.log(`JSUT: ${readings.size - differing.length} of ${readings.size} sentences equal`);
    expect(differing).toEqual([]);
    // The published label set has 4,999 files; the reading file has one sentence more.
    expect(readings.size).toBe(5000);
  },
);
