import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { matchPhonesToMorae } from "../../../src/phonology/matchPhones.ts";
import { normalisePhone } from "../../../src/phonology/phones.ts";
import { loadReader } from "../../../src/storage/loadReader.ts";
import { moraDistance } from "../../corpus/phonology/moraErrors.ts";

interface Fixture {
  readonly source: string;
  readonly sentences: readonly { readonly class: string; readonly text: string; readonly phones: string }[];
}

// Stored output of another text front end with another dictionary; source and command stand in the fixture.
const fixture = JSON.parse(
  readFileSync(new URL("fixtures/open-jtalk-readings.json", import.meta.url), "utf8"),
) as Fixture;

/**
 * Differences that were looked at one by one; both readings are in use or ours is right: 日本 ニッポン,
 * 言う is spoken ユー, トゥ is one mora, 走 of a race is ソー. The class "held out" was written after the rules
 * and corrections were settled.
 */
const explained = [
  "ボランティアがトゥシューズを集めた。",
  "今日は日本の市場が休みだ。",
  "何で何を食べたか、何と言うか。",
  "言うことを聞く前に手が動いた。",
  "十五歳の少女が百メートル走で11秒8を記録した。",
];

test("readText(own sentences) agrees with Open JTalk's phones class by class", async () => {
  const read = await loadReader();
  const classes = new Map<string, { sentences: number; equal: number; phones: number; errors: number }>();
  const differing: string[] = [];
  for (const { class: name, text, phones } of fixture.sentences) {
    const labels = phones
      .split(" ")
      .map((label) => normalisePhone(label)!)
      .filter(({ phone }) => phone !== "pause");
    const reading = read(text);
    const equal = reading.unread.length === 0 && matchPhonesToMorae(labels, reading.morae) !== null;
    if (!equal) differing.push(text);
    const counts = classes.get(name) ?? { sentences: 0, equal: 0, phones: 0, errors: 0 };
    counts.sentences += 1;
    counts.equal += equal ? 1 : 0;
    counts.phones += labels.length;
    counts.errors += moraDistance(
      reading.morae.flatMap((mora) => mora.phones),
      labels.map(({ phone }) => phone),
    );
    classes.set(name, counts);
  }
  console.log(`Agreement with ${fixture.source}`);
  for (const [name, { sentences, equal, phones, errors }] of classes)
    console.log(`  ${name}: ${equal} of ${sentences} sentences equal, ${errors} of ${phones} phones differ`);
  expect(differing.filter((text) => !explained.includes(text))).toEqual([]);
  expect(fixture.sentences.length).toBe(122);
});
