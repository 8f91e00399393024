import { describe, expect, test } from "vitest";
import { makePhoneGraph, type PhoneGraph } from "../../../src/alignment/graph.ts";

/** Every way through a graph, upper case where devoiced. */
function ways({ nodes, entries }: PhoneGraph): string[] {
  const found: string[] = [];
  const walk = (at: number, said: readonly string[]) => {
    const { phone, variant, next, last } = nodes[at]!;
    const now = [...said, variant === "devoiced" ? phone.toUpperCase() : phone];
    if (last) found.push(now.join(" "));
    for (const to of next) walk(to, now);
  };
  for (const entry of entries) walk(entry, []);
  return found.sort();
}
const edgePauses = false;

describe("makePhoneGraph", () => {
  test("lets /i/ and /u/ between voiceless consonants be spoken without voice, and no other vowel", () => {
    const parts = [{ phone: "k" }, { phone: "u" }, { phone: "t" }, { phone: "a" }] as const;
    expect(ways(makePhoneGraph(parts, { edgePauses }))).toEqual(["k U t a", "k u t a"]);
    expect(ways(makePhoneGraph(parts, { edgePauses, devoicing: "never" }))).toEqual(["k u t a"]);
  });
  test("lets a final /u/ be devoiced, but none before a voiced sound unless `wide`", () => {
    expect(ways(makePhoneGraph([{ phone: "s" }, { phone: "u" }], { edgePauses }))).toEqual(["s U", "s u"]);
    const suna = [{ phone: "s" }, { phone: "u" }, { phone: "n" }] as const;
    expect(ways(makePhoneGraph(suna, { edgePauses }))).toEqual(["s u n"]);
    expect(ways(makePhoneGraph(suna, { edgePauses, devoicing: "wide" }))).toEqual(["s U n", "s u n"]);
  });
  test("never devoices a long vowel or one after a voiced consonant", () => {
    const parts = [{ phone: "k" }, { phone: "u", long: true }, { phone: "z" }, { phone: "u" }] as const;
    expect(ways(makePhoneGraph([...parts, { phone: "k" }], { edgePauses }))).toEqual(["k u z u k"]);
  });
  test("may begin and end with a pause, and skips an optional one", () => {
    const parts = [{ phone: "a" }, { phone: "pause", optional: true }, { phone: "o" }] as const;
    expect(ways(makePhoneGraph(parts))).toHaveLength(8);
    expect(ways(makePhoneGraph(parts, { edgePauses }))).toEqual(["a o", "a pause o"]);
  });
  test("offers each reading of a choice as a whole, devoicing within its own surroundings", () => {
    const graph = makePhoneGraph(
      [{ phone: "a" }, { choices: [[{ phone: "s" }, { phone: "u" }], [{ phone: "n" }]] }, { phone: "t" }],
      { edgePauses },
    );
    expect(ways(graph)).toEqual(["a n t", "a s U t", "a s u t"]);
    expect(graph.nodes.map(({ source }) => source)).toEqual([0, 1, 2, 2, 3, 4]);
  });
  test("points every arc forward", () => {
    const graph = makePhoneGraph([{ phone: "k" }, { phone: "i" }, { phone: "sh" }, { phone: "i" }]);
    graph.nodes.forEach(({ next }, at) => {
      for (const to of next) expect(to).toBeGreaterThan(at);
    });
  });
});
