import { expect, test } from "vitest";
import { type CellToken, cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import { durationRatios } from "../../../src/estimates/ratios.ts";
import { cutByLength, devoicedAmongShort, noteOf, nothingSelected } from "../../../src/messages/estimates.ts";
import { UserError } from "../../../src/messages/userError.ts";
import { tQuantile } from "../../../src/statistics/distributions.ts";
import { summarise } from "../../../src/statistics/summary.ts";
import { plainToken, sampleTokens, shuffled } from "./sampleTokens.ts";

const tokens = sampleTokens(9000, 6, 4);
const vowels = { contrast: "vowel-length" } as const;

function split(chosen: readonly CellToken[]) {
  const ms = (length: string) => chosen.filter((t) => t.length === length).map((t) => t.durationMs);
  return { long: ms("long"), short: ms("short"), geminate: ms("geminate"), single: ms("single") };
}

const mean = (values: readonly number[]) => summarise(values).mean;
const logMean = (values: readonly number[]) => mean(values.map(Math.log));
const isConsonant = (phone: string) => ["k", "s", "m", "N", "cl"].includes(phone);

test("durationRatios of vowel length gives means and counts of the tokens with consonants on both sides", () => {
  const { rows } = durationRatios(cellsFromTokens(tokens), { ...vowels, by: ["phone"] });
  expect(rows.map((row) => row.by.phone)).toEqual(["a", "i", "u"]);
  for (const row of rows) {
    const { long, short } = split(
      tokens.filter(
        (t) =>
          t.kind === "vowel" && t.phone === row.by.phone && isConsonant(t.before) && isConsonant(t.after),
      ),
    );
    expect(row).toMatchObject({
      tokens: long.length + short.length,
      speakers: 6,
      words: null,
      basis: "aligned",
    });
    expect(row.long.tokens).toBe(long.length);
    expect(row.arithmetic).toBeCloseTo(mean(long) / mean(short), 10);
    expect(row.long.meanMs).toBeCloseTo(mean(long), 10);
    expect(row.short.geometricMeanMs).toBeCloseTo(Math.exp(logMean(short)), 10);
    expect(row.atFloorShare).toBeCloseTo(short.filter((ms) => ms <= 30).length / short.length, 12);
  }
});

test("durationRatios keeps vowels beside a pause apart", () => {
  const cells = cellsFromTokens(tokens);
  const count = (surroundings: "consonants" | "pause" | "all") =>
    durationRatios(cells, { ...vowels, surroundings }).rows[0]!.tokens;
  const all = tokens.filter((t) => t.kind === "vowel");
  expect(count("all")).toBe(all.length);
  expect(count("pause")).toBe(all.filter((t) => t.before === "pause" || t.after === "pause").length);
  expect(count("consonants")).toBe(all.filter((t) => isConsonant(t.before) && isConsonant(t.after)).length);
});

test("durationRatios of gemination compares each consonant with itself after a vowel", () => {
  const [row] = durationRatios(cellsFromTokens(tokens), { contrast: "gemination", by: ["phone"] }).rows;
  const { geminate, single } = split(
    tokens.filter((t) => t.phone === "k" && t.kind === "consonant" && (t.before === "a" || t.before === "i")),
  );
  expect(row!.by.phone).toBe("k");
  expect(row!.long.tokens).toBe(geminate.length);
  expect(row!.arithmetic).toBeCloseTo(mean(geminate) / mean(single), 10);
});

test("durationRatios of one speaker is the Welch interval of log durations", () => {
  const one = tokens.filter(
    (t) => t.speaker === "s1" && t.phone === "a" && isConsonant(t.before) && isConsonant(t.after),
  );
  const { long, short } = split(one.filter((t) => t.kind === "vowel"));
  const [l, s] = [summarise(long.map(Math.log)), summarise(short.map(Math.log))];
  const [vl, vs] = [l.sd ** 2 / l.n, s.sd ** 2 / s.n];
  const df = (vl + vs) ** 2 / (vl ** 2 / (l.n - 1) + vs ** 2 / (s.n - 1));
  const half = tQuantile(0.975, df) * Math.sqrt(vl + vs);
  const [row] = durationRatios(cellsFromTokens(one), vowels).rows;
  expect(row!.estimate).toBeCloseTo(Math.exp(l.mean - s.mean), 10);
  expect(row!.low).toBeCloseTo(Math.exp(l.mean - s.mean - half), 8);
  expect(row!.high).toBeCloseTo(Math.exp(l.mean - s.mean + half), 8);
  expect(row).toMatchObject({ scope: "one speaker", speakers: 1, equalWeight: null });
});

test("durationRatios pairs within speaker: a slow speaker with mostly long vowels does not raise the ratio", () => {
  const make = (speaker: string, length: string, durationMs: number, count: number) =>
    Array.from({ length: count }, (_, i) => ({
      ...plainToken,
      speaker,
      length,
      durationMs: durationMs + (i % 3),
    }));
  const slow = [...make("slow", "long", 200, 90), ...make("slow", "short", 100, 10)];
  const quick = [...make("quick", "long", 100, 10), ...make("quick", "short", 50, 90)];
  const [row] = durationRatios(cellsFromTokens([...slow, ...quick]), vowels).rows;
  expect(row!.estimate).toBeGreaterThan(1.95);
  expect(row!.estimate).toBeLessThan(2.05);
  expect(row!.arithmetic).toBeGreaterThan(3);
});

test("durationRatios pairs within phone, in every kind of mean", () => {
  const make = (phone: string, length: string, durationMs: number, count: number) =>
    Array.from({ length: count }, (_, i) => ({
      ...plainToken,
      phone,
      length,
      durationMs: durationMs + (i % 3),
    }));
  const mixed = [
    ...[...make("o", "long", 200, 90), ...make("o", "short", 100, 10)],
    ...[...make("i", "long", 100, 10), ...make("i", "short", 50, 90)],
  ];
  const [row] = durationRatios(cellsFromTokens(mixed), vowels).rows;
  for (const ratio of [row!.estimate, row!.arithmetic, row!.median]) {
    expect(ratio).toBeGreaterThan(1.9);
    expect(ratio).toBeLessThan(2.1);
  }
});

test("durationRatios does not change with the order of tokens or the scale of durations", () => {
  const free = tokens.map((t) => ({ ...t, atFloor: false }));
  const plain = durationRatios(cellsFromTokens(free), { ...vowels, by: ["phone"] }).rows;
  const mixed = durationRatios(cellsFromTokens(shuffled(free, 8)), { ...vowels, by: ["phone"] }).rows;
  const scaled = durationRatios(cellsFromTokens(free.map((t) => ({ ...t, durationMs: 3 * t.durationMs }))), {
    ...vowels,
    by: ["phone"],
  }).rows;
  for (const [i, row] of plain.entries()) {
    for (const other of [mixed[i]!, scaled[i]!]) {
      for (const name of ["estimate", "low", "high", "arithmetic", "median"] as const)
        expect(other[name]).toBeCloseTo(row[name]!, 8);
    }
  }
});

test("durationRatios calls the ratio a lower bound where short tokens stand at the floor", () => {
  const [row] = durationRatios(cellsFromTokens(tokens), vowels).rows;
  expect(row).toMatchObject({ bound: "at least" });
  expect(row!.censored).toBeGreaterThan(row!.estimate!);
  const free = durationRatios(cellsFromTokens(tokens.map((t) => ({ ...t, atFloor: false }))), vowels)
    .rows[0]!;
  expect(free).toMatchObject({ bound: null, censored: null, atFloorShare: 0 });
});

test("durationRatios never gives out a median that stands at the floor", () => {
  const at = (length: string, durationMs: number) => ({
    ...plainToken,
    length,
    durationMs,
    atFloor: durationMs <= 30,
  });
  const half = [
    at("short", 30),
    at("short", 30),
    at("short", 50),
    at("short", 60),
    at("long", 90),
    at("long", 110),
  ];
  const [row] = durationRatios(cellsFromTokens(half), vowels).rows;
  expect(row!.median).toBeNull();
  expect(row!.medianReason).not.toBeNull();
  expect(row!.short.medianMs).toBeNull();
  expect(row!.long.medianMs).toBe(100);
  const fewer = durationRatios(cellsFromTokens([...half, at("short", 50)]), vowels).rows[0]!;
  expect(fewer).toMatchObject({ median: 2, medianReason: null });
});

test("durationRatios with floor: drop leaves exactly the tokens at the floor out", () => {
  const dropped = durationRatios(cellsFromTokens(tokens), { ...vowels, by: ["phone"], floor: "drop" }).rows;
  const without = durationRatios(cellsFromTokens(tokens.filter((t) => !t.atFloor)), {
    ...vowels,
    by: ["phone"],
  }).rows;
  for (const [i, row] of dropped.entries()) {
    expect(row.tokens).toBe(without[i]!.tokens);
    expect(row.median).toBe(without[i]!.median);
    expect(row.estimate).toBeCloseTo(without[i]!.estimate!, 8);
    expect(row.low).toBeCloseTo(without[i]!.low!, 8);
  }
});

test("durationRatios never pools datasets or label sets and refuses a cut by length", () => {
  const two = [...tokens, ...tokens.map((t) => ({ ...t, labelSet: "other" }))];
  const { rows } = durationRatios(cellsFromTokens(two), vowels);
  expect(rows.map((row) => row.by)).toEqual([{ labelSet: "full" }, { labelSet: "other" }]);
  expect(() => durationRatios(cellsFromTokens(tokens), { ...vowels, by: ["length"] })).toThrow(
    new UserError(cutByLength()),
  );
});

test("durationRatios counts devoiced ones among the short vowels that it compares, not among others", () => {
  const marked = { devoicedBasis: "annotated", devoiced: true };
  const chosen = [
    ...["long", "short", "short"].map((length) => ({ ...plainToken, phone: "u", length })),
    { ...plainToken, ...marked, phone: "u", length: "short" },
    { ...plainToken, ...marked, phone: "i", length: "short" },
  ];
  const { rows, notes } = durationRatios(cellsFromTokens(chosen), vowels);
  expect(rows[0]!.short.tokens).toBe(3);
  expect(notes).toContain(devoicedAmongShort(1, 3));
});

test("durationRatios says of which label set its notes speak, where there are several", () => {
  const chosen = tokens.slice(0, 3000);
  const notes = (of: readonly CellToken[]) => durationRatios(cellsFromTokens(of), vowels).notes;
  const others = chosen.slice(0, 1500).map((t) => ({ ...t, labelSet: "other" }));
  const alone = [notes(chosen), notes(others)];
  expect(alone.flat().length).toBeGreaterThan(1);
  expect(notes([...chosen, ...others])).toEqual([
    ...alone[0]!.map((note) => noteOf("d1", "full", note)),
    ...alone[1]!.map((note) => noteOf("d1", "other", note)),
  ]);
});

test("durationRatios says what it cannot estimate instead of giving a number", () => {
  const nothing = durationRatios(cellsFromTokens(tokens), { ...vowels, filter: { speaker: "nobody" } });
  expect(nothing).toEqual({ rows: [], notes: [nothingSelected("vowel")] });
  const equal = ["short", "short", "long", "long"].map((length) => ({ ...plainToken, length }));
  expect(durationRatios(cellsFromTokens(equal), vowels).rows[0]).toMatchObject({
    estimate: null,
    safe: false,
  });
  const onesided = durationRatios(cellsFromTokens([plainToken, plainToken]), vowels);
  expect(onesided.rows).toEqual([]);
  expect(onesided.notes).toHaveLength(1);
  const apart = [
    { ...plainToken, speaker: "a", length: "long" },
    { ...plainToken, speaker: "b", length: "short" },
  ];
  expect(durationRatios(cellsFromTokens(apart), vowels).rows[0]).toMatchObject({
    estimate: null,
    speakers: 0,
  });
});
