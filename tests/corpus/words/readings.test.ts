import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { soundOf } from "../../../src/findings/words/sound.ts";
import { transcribe } from "../../../src/findings/words/transcribe.ts";
import { readAccent } from "../../../src/phonology/accent.ts";
import { readWordList } from "../../../src/storage/readWordList.ts";
import { describeWithData } from "../../helpers/sharedData.ts";

/** JSUT BASIC5000 (CC BY-SA 4.0): katakana.yaml and phoneme.yaml, both annotated by people. */
describeWithData("JSUT readings", ["jsut-labels"], ([folder]) => {
  const read = (file: string) =>
    new Map(
      readFileSync(join(folder!, file), "utf8")
        .trim()
        .split("\n")
        .map((line) => [line.slice(0, line.indexOf(":")), line.slice(line.indexOf(":") + 1).trim()] as const),
    );

  test("have as many morae by soundOf as their phones have vowels, ん and っ, in 4,999 of 4,999", () => {
    const phonemes = read("phoneme.yaml");
    let compared = 0;
    const differ: string[] = [];
    for (const [id, marked] of read("katakana.yaml")) {
      const phones = phonemes.get(id)?.split("-");
      if (phones === undefined || id === "BASIC5000_5000") continue;
      const morae = phones.filter((phone) => /^(?:[aiueoAIUEON]|cl)$/u.test(phone)).length;
      compared++;
      if (soundOf(readAccent(marked).kana)?.length !== morae) differ.push(id);
    }
    expect(compared).toBe(4999);
    expect(differ).toEqual([]);
  });
});

/** A lexicon of 124,137 accents (CC BY-SA 4.0); see the README of the shared data. */
describeWithData("the accent lexicon's readings", ["pitch-accent"], ([folder]) => {
  test("are all read but a handful, each told with its line (less than 0.1 % is the promise)", () => {
    const path = join(folder!, "accents.txt");
    const lines = readFileSync(path, "utf8").trim().split("\n").length;
    const { words, problems } = readWordList(path);
    const unread = words.filter(({ reading }) => soundOf(reading) === null);
    const severe = problems.filter(({ severe }) => severe);
    const noReading = severe.filter(({ message }) => !message.includes("kept with its accent unknown"));
    const twice = problems.filter(({ message }) => message.includes("with the same reading"));
    console.log(
      `${lines} lines, ${words.length} words; passed over: ${noReading.length}, written twice: ${twice.length}\n${severe.map(({ message }) => message.slice(path.length)).join("\n")}`,
    );
    expect(unread).toEqual([]);
    expect(lines).toBe(124_137);
    expect(words.length + noReading.length + twice.length).toBe(lines);
    expect(noReading.length / lines).toBeLessThan(0.001);
  });

  test("give romanisation and IPA without anything left over", () => {
    const odd = readWordList(join(folder!, "accents.txt")).words.filter(({ reading }) => {
      const { romaji, ipa } = transcribe(soundOf(reading)!);
      return !/^[a-zāīūēō' ]+$/u.test(romaji) || !/^[a-zɯɡɕʑɲçɸɾɴʔʲʷː]+$/u.test(ipa);
    });
    expect(odd.map(({ reading }) => reading)).toEqual([]);
  });
});
