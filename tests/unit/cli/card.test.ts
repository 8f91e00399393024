import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { decode } from "fast-png";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { registerCard } from "../../../src/cli/card.ts";
import * as messages from "../../../src/messages/card.ts";
import { runPipeline } from "../../../src/runPipeline.ts";
import { readColumns } from "../../../src/storage/readColumns.ts";
import { demoSubset } from "../../helpers/demoSubset.ts";
import { runCommand } from "../../helpers/runCommand.ts";
import { runOptions } from "../../helpers/runOptions.ts";

const root = mkdtempSync(join(tmpdir(), "card-"));
const results = join(root, "results");
const subset = demoSubset({ speakers: ["demo-01"], labels: true });
const cut = subset.ids[1]!;
let dataset: string;
let tokens: Record<string, unknown[]>;

const card = (...args: readonly string[]) =>
  runCommand(registerCard, "card", results, "--dataset", dataset, ...args);
const file = (name: string) => join(root, name);
const svgOf = (name: string) => readFileSync(file(name), "utf8");

/** Rows of the tokens, those of the spoilt recording left out. */
function vowels(devoiced: boolean): { utterance: string; index: string; phone: string }[] {
  return tokens.utterance!.flatMap((utterance, i) =>
    utterance !== cut && tokens.devoicedHeard![i] === devoiced
      ? [{ utterance: String(utterance), index: String(tokens.index![i]), phone: String(tokens.phone![i]) }]
      : [],
  );
}

beforeAll(async () => {
  dataset = await subset.write({
    audio: new Map([[cut, "cut"]]),
  });
  await runPipeline(runOptions([dataset], results));
  tokens = await readColumns(join(results, "tokens.parquet"));
}, 120_000);
afterAll(() => rmSync(root, { recursive: true }));

describe("morascope card", () => {
  test("draws a devoiced vowel with the run's decision, its surroundings and the recording", async () => {
    const { utterance, index } = vowels(true)[0]!;
    const { out } = await card("--utterance", utterance, "--index", index, "--out", file("a.svg"));
    expect(out).toMatch(/a\.svg: .+ between .+: devoiced, /);
    const svg = svgOf("a.svg");
    expect(svg).toMatch(/<image class="behind" href="data:image\/png;base64,/);
    expect(svg).toMatch(/class="ribbon" d="M[\d.]+ [\d.]+L/);
    expect(svg).toContain("C2’s onset");
    expect(svg.length).toBeLessThan(40_000);
  });

  test("the ribbon agrees with the run's decisions: thin on devoiced vowels, thick on voiced ones", async () => {
    const thickness = async ({ utterance, index }: { utterance: string; index: string }) => {
      await card("--utterance", utterance, "--index", index, "--out", file("b.svg"));
      const svg = svgOf("b.svg");
      const own = /class="own" x="([\d.]+)" y="\d+" width="([\d.]+)"/.exec(svg)!;
      const [from, to] = [Number(own[1]), Number(own[1]) + Number(own[2])];
      const points = /class="ribbon" d="M([^"]+)z"/
        .exec(svg)![1]!
        .split("L")
        .map((point) => point.split(" ").map(Number));
      const half = points.slice(0, points.length / 2).filter(([x]) => x! >= from && x! <= to);
      return Math.max(...half.map(([, y]) => 150 - y!)) / 14;
    };
    const sure = (devoiced: boolean) =>
      vowels(devoiced).filter(({ utterance, index }) => {
        const i = tokens.utterance!.findIndex(
          (id, at) => id === utterance && String(tokens.index![at]) === index,
        );
        return Math.abs((tokens.devoicedProbability![i] as number) - 0.5) > 0.49;
      });
    expect(sure(true).length).toBeGreaterThanOrEqual(3);
    for (const token of sure(true).slice(0, 3)) expect(await thickness(token)).toBeLessThan(0.5);
    for (const token of sure(false).slice(0, 3)) expect(await thickness(token)).toBeGreaterThan(0.9);
  }, 60_000);

  test("--phone and --nth find the same sound as --index; the same call gives the same bytes", async () => {
    const { utterance, index, phone } = vowels(false)[0]!;
    const same = tokens.index!.filter(
      (_, i) => tokens.utterance![i] === utterance && tokens.phone![i] === phone,
    );
    const nth = String(same.map(String).indexOf(index) + 1);
    await card("--utterance", utterance, "--index", index, "--out", file("c.svg"));
    await card("--utterance", utterance, "--phone", phone, "--nth", nth, "--out", file("d.svg"));
    expect(svgOf("d.svg")).toBe(svgOf("c.svg"));
  });

  test("writes a PNG three times the size, with paper and ink of the scheme", async () => {
    const { utterance, index } = vowels(true)[0]!;
    const png = async (scheme: string) => {
      await card("--utterance", utterance, "--index", index, "--scheme", scheme, "--out", file("e.png"));
      return decode(readFileSync(file("e.png")));
    };
    const [light, dark] = [await png("auto"), await png("dark")];
    expect([light.width, light.height]).toEqual([1080, 714]);
    const paper = (image: typeof light) => [
      ...image.data.slice(4 * (1080 * 30 + 8), 4 * (1080 * 30 + 8) + 3),
    ];
    expect(paper(light)).toEqual([0xff, 0xfe, 0xfb]);
    expect(paper(dark)).toEqual([0x20, 0x23, 0x29]);
  });

  test("a recording that cannot be read leaves the label's word, no picture of sound, and a note why", async () => {
    const last = tokens.index!.filter((_index, i) => tokens.utterance![i] === cut).at(-1);
    const { err } = await card("--utterance", cut, "--index", String(last), "--out", file("f.svg"));
    const svg = svgOf("f.svg");
    expect(svg).toContain("by the label");
    expect(svg).toContain("No recording behind this card");
    expect(svg).not.toMatch(/NaN|undefined|<image/);
    expect(err).toContain("no spectrogram and no voice ribbon");
  });

  test("says what there is when it cannot be found", async () => {
    const out = ["--out", file("g.svg")];
    const { utterance } = vowels(true)[0]!;
    await expect(card("--utterance", "nobody", "--index", "1", ...out)).rejects.toThrow(
      messages.cardUtteranceUnknown("nobody", "demo-subset", [...subset.ids].sort().slice(0, 5)),
    );
    await expect(card("--utterance", utterance, ...out)).rejects.toThrow(/Say which sound .* It has \d+ /);
    await expect(card("--utterance", utterance, "--index", "0", ...out)).rejects.toThrow(
      "no vowel or consonant",
    );
    await expect(card("--utterance", utterance, "--phone", "u", "--nth", "99", ...out)).rejects.toThrow(
      'has no 99. "u"',
    );
    await expect(card("--utterance", utterance, "--phone", "u", "--index", "1", ...out)).rejects.toThrow(
      messages.cardTokenTwice(),
    );
    await expect(card("--utterance", utterance, "--index", "1", "--out", "x.pdf")).rejects.toThrow(
      messages.cardFileUnknown("x.pdf"),
    );
    expect(existsSync(file("g.svg"))).toBe(false);
  });
});
