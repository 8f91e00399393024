import { expect, test } from "vitest";
import { openFolder } from "../openFolder.ts";

const long = "0.0000\t0.1000\tsilB\n0.1000\t0.2000\to:\n";
const ruled = "0.0000 0.1000 sil\n0.1000 0.1500 o\n0.1500 0.2000 U\n";

test("numbered-readings: folder is the speaker, line n the reading, two kinds of labels stay two sets", async () => {
  const files: Record<string, string> = { "kana.txt": "オーキナ カブ\nウミ\n" };
  for (const speaker of ["s1", "s2", "s3"])
    for (const number of ["001", "002"]) {
      files[`long/${speaker}/V_${number}.lab`] = long;
      if (speaker !== "s3") files[`ruled/${speaker}/V_${number}.lab`] = ruled;
    }
  const { card, utterances, problems } = await openFolder(files);
  expect(card).toMatchObject({ layout: "numbered-readings", speakers: 3, utterances: 6 });
  expect(
    card.labelSets.map(({ id, utterances: n, devoicingBasis, lengthFrom }) => [
      id,
      n,
      devoicingBasis,
      lengthFrom,
    ]),
  ).toEqual([
    ["long", 6, null, "label"],
    ["ruled", 4, "predicted", "reading"],
  ]);
  expect(utterances.find(({ id }) => id === "s2/V_001")).toMatchObject({
    speaker: "s2",
    reading: "オーキナ カブ",
    file: "kana.txt",
    line: 1,
    labels: [
      { labelSet: "long", path: "long/s2/V_001.lab" },
      { labelSet: "ruled", path: "ruled/s2/V_001.lab" },
    ],
  });
  expect(problems).toEqual([]);
});
