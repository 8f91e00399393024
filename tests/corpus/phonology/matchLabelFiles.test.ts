import { existsSync, readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { kanaToMorae } from "../../../src/phonology/kana.ts";
import { type LabelPhone, matchPhonesToMorae } from "../../../src/phonology/matchPhones.ts";
import { normalisePhone } from "../../../src/phonology/phones.ts";

const shared = new URL("../../../../shared/data/", import.meta.url);
const present = existsSync(shared);
if (!present) console.log("Shared datasets absent: 2 corpus tests of label files skipped");

const labelPhones = (path: string): LabelPhone[] =>
  readFileSync(new URL(path, shared), "utf8")
    .trim()
    .split("\n")
    .map((line) => normalisePhone(line.trim().split(/\s+/u)[2]!)!)
    .filter(({ phone }) => phone !== "pause");

test.skipIf(!present)(
  "matchPhonesToMorae(ITA labels, reading) leaves three label files, each for a reason",
  () => {
    const readings = readFileSync(new URL("ita-labels/transcript.txt", shared), "utf8").trim().split("\n");
    const differing: string[] = [];
    let files = 0;
    for (const [folder, prefix] of [
      ["emotion", "EMOTION"],
      ["recitation", "RECITATION"],
    ] as const) {
      const ofFolder = readings.filter((line) => line.startsWith(prefix));
      for (const name of readdirSync(new URL(`ita-labels/labels/${folder}`, shared))) {
        const line = ofFolder[Number(/\d+/u.exec(name)![0]) - 1]!;
        const { morae } = kanaToMorae(line.slice(line.lastIndexOf(",") + 1));
        files += 1;
        if (!matchPhonesToMorae(labelPhones(`ita-labels/labels/${folder}/${name}`), morae))
          differing.push(name);
      }
    }
    console.log(`ITA: ${files - differing.length} of ${files} label files spell their reading`);
    // ベートーヴェン labelled with v for ベ; ンートネ labelled with a long ネ; ウェイク labelled with a long エ.
    expect(differing.sort()).toEqual(["emoNormal005.lab", "emoNormal091.lab", "recitation064.lab"]);
    expect(files).toBe(424);
  },
);

test.skipIf(!present)("matchPhonesToMorae(read-sentences labels, kana) is equal for every sentence", () => {
  const names = readdirSync(new URL("read-sentences/", shared)).filter((name) =>
    /^\d+_\d+\.lab$/u.test(name),
  );
  const equal = names.filter((name) => {
    const kana = readFileSync(new URL(`read-sentences/${name.replace(".lab", ".txt")}`, shared), "utf8");
    return matchPhonesToMorae(labelPhones(`read-sentences/${name}`), kanaToMorae(kana.trim()).morae) !== null;
  });
  console.log(`read-sentences: ${equal.length} of ${names.length} sentences equal`);
  expect(equal).toEqual(names);
  expect(names).toHaveLength(70);
});
