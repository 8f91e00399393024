import { describe, expect, test } from "vitest";
import { makePhoneGraph } from "../../../src/alignment/graph.ts";
import { readingParts } from "../../../src/alignment/readingParts.ts";
import { kanaToMorae } from "../../../src/phonology/kana.ts";

const morae = (kana: string) => kanaToMorae(kana).morae;
const kanaOf = (spoken: readonly { kana: string }[]) => spoken.map(({ kana }) => kana).join("");

describe("readingParts(morae, choices)", () => {
  const reading = morae("キョーワ、イク");
  const choice = { moraStart: 0, moraEnd: 2, others: [morae("コンニチ")] };

  test("is one stretch where nothing is left open", () => {
    const { parts, resolve } = readingParts(reading, []);
    expect(parts.map((part) => ("phone" in part ? part.phone : "choice"))).toEqual([
      "ky",
      "o",
      "w",
      "a",
      "pause",
      "i",
      "k",
      "u",
    ]);
    expect(kanaOf(resolve([0, 1, 2, 3, 5, 6, 7]).morae)).toBe("キョーワイク");
  });

  test("offers every reading of a word, and knows which one a path took", () => {
    const { parts, resolve } = readingParts(reading, [choice]);
    expect("choices" in parts[0]! && parts[0].choices).toHaveLength(2);
    const first = resolve([-1, 0, 1, 9, 10]);
    expect(kanaOf(first.morae)).toBe("キョーワイク");
    expect(first.partAt(9)).toMatchObject({ phone: "w", mora: 2 });
    const second = resolve([-1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(kanaOf(second.morae)).toBe("コンニチワイク");
    expect(second.partAt(9)).toMatchObject({ phone: "w", mora: 4 });
    expect(second.partAt(1)).toMatchObject({ phone: "o", morae: 2 });
  });

  test("counts its parts as the graph counts them", () => {
    const { parts } = readingParts(reading, [choice]);
    const { nodes } = makePhoneGraph(parts, { edgePauses: false });
    const { resolve } = readingParts(reading, [choice]);
    const { partAt } = resolve([]);
    for (const { phone, long, source } of nodes) expect(partAt(source)).toMatchObject({ phone, long });
  });

  test("keeps the pause after a word with a choice", () => {
    const { parts } = readingParts(morae("キョー、イク"), [choice]);
    const options = (parts[0] as { choices: { phone: string; optional?: boolean }[][] }).choices;
    for (const option of options) expect(option.at(-1)).toMatchObject({ phone: "pause", optional: true });
  });
});
