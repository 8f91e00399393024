import { decode } from "fast-png";
import { describe, expect, test } from "vitest";
import { languages } from "../../../src/interface/languages.ts";
import { tokenCardImage } from "../../../src/publish/tokenCardImage.ts";
import { tokenCardSvg } from "../../../src/publish/tokenCardSvg.ts";
import { sampleCard } from "./sampleCard.ts";

const count = (svg: string, pattern: RegExp) => [...svg.matchAll(pattern)].length;
/** The row of morae, without the key that explains its shapes. */
const row = (svg: string) => svg.slice(0, svg.indexOf("<g "));

describe("tokenCardSvg", () => {
  test("tells voiced, devoiced and unknown vowels and consonants apart by shape", () => {
    const svg = row(tokenCardSvg(sampleCard()));
    expect(count(svg, /class="voiced"/g)).toBe(1);
    expect(count(svg, /class="devoiced"[^>]*fill="url\(#hatched\)"[^>]*stroke-dasharray/g)).toBe(1);
    expect(count(svg, /class="consonant"/g)).toBe(2);
    const { morae } = sampleCard();
    const unknown = morae.map((mora) => ({
      ...mora,
      parts: mora.parts.map((part) => ({ ...part, voicing: part.voicing && ("unknown" as const) })),
    }));
    const blank = row(tokenCardSvg(sampleCard({}, { morae: unknown })));
    expect(count(blank, /class="unknown"/g)).toBe(2);
    expect(count(blank, /class="(?:de)?voiced"/g)).toBe(0);
  });

  test("draws morae and bracket in proportion to time", () => {
    const svg = tokenCardSvg(sampleCard());
    const chips = [...svg.matchAll(/class="chip" x="([\d.]+)" y="\d+" width="([\d.]+)"/g)];
    const pxPerMs = 344 / 500;
    expect(chips.map(([, , width]) => Number(width) + 1)).toEqual([
      expect.closeTo(160 * pxPerMs, 1),
      expect.closeTo(260 * pxPerMs, 1),
    ]);
    const bracket = /class="bracket" x1="([\d.]+)" x2="([\d.]+)" y1="190"/.exec(svg)!;
    expect(Number(bracket[2]) - Number(bracket[1])).toBeCloseTo(290 * pxPerMs, 0);
  });

  test("the ribbon is as thick as voice is likely", () => {
    const path = /class="ribbon" d="M([^"]+)z"/.exec(tokenCardSvg(sampleCard()))![1]!;
    const points = path.split("L").map((point) => point.split(" ").map(Number));
    const thickness = points.slice(0, 100).map(([, y], i) => points[199 - i]![1]! - y!);
    expect(thickness[10]).toBeCloseTo(28, 1);
    expect(thickness[80]).toBeLessThan(2);
  });

  test("shows markup in texts and leaves out what XML forbids", () => {
    const svg = tokenCardSvg(sampleCard({ word: '<b>&"\u0001' }, { utterance: "<script>" }));
    expect(svg).not.toContain("<b>");
    expect(svg).not.toContain("\u0001");
    expect(svg).toContain("&lt;b&gt;&amp;&quot;");
  });

  test("leaves out what is missing and says so", () => {
    const svg = tokenCardSvg(
      sampleCard(
        { decision: null, durationErrorMs: null, voicedMs: null, word: null, measureReason: "no-audio" },
        { spectrum: null, voice: null, stretch: null },
      ),
    );
    expect(svg).toContain("No recording behind this card");
    expect(svg).toContain("voicing unknown: there is no recording");
    expect(svg).not.toMatch(/<image|class="bracket"|NaN|null|undefined/);
  });

  test("follows the reader's colours unless they are fixed, and is the same each time", () => {
    expect(tokenCardSvg(sampleCard())).toContain("@media (prefers-color-scheme: dark)");
    expect(tokenCardSvg(sampleCard(), { scheme: "dark" })).not.toContain("@media");
    expect(tokenCardSvg(sampleCard())).toBe(tokenCardSvg(sampleCard()));
  });

  test("holds the words of further languages once more, and nothing else twice", () => {
    const one = tokenCardSvg(sampleCard());
    const both = tokenCardSvg(sampleCard(), { languages: languages.slice(1) });
    const japanese = /<g id="ja" lang="ja"[^>]*>(.*?)<\/g>/.exec(both)![1]!;
    expect(japanese).toMatch(/無声化 \d+%/);
    expect(japanese.replace(/<text[^>]*lang="ja"[^>]*>[^<]*/g, "")).not.toMatch(/>[^<]*[a-z]{4}/);
    expect(both).toContain("#ja:target~.words{display:none}");
    for (const shape of [/<image/g, /class="chip"/g, /class="bracket"/g, /class="ribbon"/g])
      expect(count(both, shape)).toBe(count(one, shape));
    expect(both.length - one.length).toBeLessThan(2000);
  });

  test("keeps every text within the card's width, however long", () => {
    const svg = tokenCardSvg(sampleCard({ word: "長い言葉".repeat(20), phone: "u" }));
    expect(svg).toContain("長い言葉長…");
  });
});

describe("tokenCardImage", () => {
  const pixels = (levels: readonly number[]) =>
    decode(
      Buffer.from(
        tokenCardImage({ columns: 2, rows: 2, levelsDb: Float32Array.from(levels) })!.split(",")[1]!,
        "base64",
      ),
    );

  test("puts low frequencies at the bottom; the loudest is opaque, 50 dB below nothing", () => {
    const image = pixels([-10, -60, -35, -120]);
    expect([image.width, image.height, image.channels]).toEqual([2, 2, 2]);
    expect([...image.data].filter((_, i) => i % 2 === 1)).toEqual([128, 0, 255, 0]);
  });

  test("is null for a silent stretch", () => {
    const levelsDb = new Float32Array(4).fill(-120);
    expect(tokenCardImage({ columns: 2, rows: 2, levelsDb })).toBeNull();
  });
});
