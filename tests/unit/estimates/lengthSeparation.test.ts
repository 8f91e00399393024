import { expect, test } from "vitest";
import { cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import { lengthSeparation } from "../../../src/estimates/lengthSeparation.ts";
import { summarise } from "../../../src/statistics/summary.ts";
import { plainToken, sampleTokens } from "./sampleTokens.ts";

const tokens = sampleTokens(4000, 4, 14);
const consonants = ["k", "s", "m", "N", "cl"];

test("lengthSeparation is the mean over speakers of the pairs that are in order", () => {
  const rows = lengthSeparation(cellsFromTokens(tokens), { contrast: "vowel-length" });
  expect(rows.map((row) => row.by.phone)).toEqual(["a", "i", "u"]);
  const chosen = tokens.filter(
    (t) =>
      t.kind === "vowel" && t.phone === "a" && consonants.includes(t.before) && consonants.includes(t.after),
  );
  const areas = ["s1", "s2", "s3", "s4"].map((speaker) => {
    const ms = (length: string) =>
      chosen.filter((t) => t.speaker === speaker && t.length === length).map((t) => t.durationMs);
    let wins = 0;
    for (const long of ms("long"))
      for (const short of ms("short")) wins += long > short ? 1 : long === short ? 0.5 : 0;
    return wins / (ms("long").length * ms("short").length);
  });
  const [row] = rows;
  expect(row!.estimate).toBeCloseTo(summarise(areas).mean, 12);
  expect(row).toMatchObject({ tokens: chosen.length, speakers: 4, words: null });
  expect(row!.low).toBeLessThan(row!.estimate);
  const { cut, balancedAccuracy } = row!.best;
  const right = (length: string, test: (ms: number) => boolean) => {
    const own = chosen.filter((t) => t.length === length);
    return own.filter((t) => test(t.durationMs)).length / own.length;
  };
  expect(balancedAccuracy).toBeCloseTo(
    (right("long", (ms) => ms >= cut) + right("short", (ms) => ms < cut)) / 2,
    12,
  );
});

test("lengthSeparation of sounds quite apart is perfect, and of nothing is no row", () => {
  const make = (length: string, durationMs: number) => ({ ...plainToken, length, durationMs });
  const apart = [make("short", 40), make("short", 50), make("long", 100), make("long", 120)];
  const [row] = lengthSeparation(cellsFromTokens(apart), { contrast: "vowel-length" });
  expect(row).toMatchObject({ estimate: 1, high: 1, pooled: 1, speakers: 1 });
  // Two pairs in order, exactly: 0.025 to the power of one half.
  expect(row!.low).toBeCloseTo(Math.sqrt(0.025), 10);
  expect(row!.best).toMatchObject({ cut: 75, balancedAccuracy: 1 });
  expect(lengthSeparation(cellsFromTokens([plainToken]), { contrast: "vowel-length" })).toEqual([]);
});
