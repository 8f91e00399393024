import { describe, expect, test } from "vitest";
import { combineSentences } from "../../../data/demo/make/combine.ts";
import { degrade } from "../../../data/demo/make/degrade.ts";
import { devoicingProbability } from "../../../data/demo/make/devoicing.ts";
import { formatLabels, parseLabel } from "../../../data/demo/make/label.ts";
import { randomFor } from "../../../data/demo/make/random.ts";
import { formatAccentReading, formatReading, splitMorae } from "../../../data/demo/make/reading.ts";
import { readSentences, shareOut } from "../../../data/demo/make/sentences.ts";
import { speakAsPlanned } from "../../../data/demo/make/speakAsPlanned.ts";
import { speakers } from "../../../data/demo/make/speakers.ts";
import { parseTrace } from "../../../data/demo/make/synthesise.ts";

const context =
  "/A:-2+2+3/B:xx-xx_xx/C:02_xx+xx/D:13+xx_xx/E:xx_xx!xx_xx-xx/F:4_3#0_xx@1_2|1_8/G:3_3%0_xx_1/H:xx_xx/I:2-8@1+3&1-7|1+33/J:3_13/K:3+7-33";

describe("labels", () => {
  test("parseLabel gives phone, length, mora and accent of a full-context label", () => {
    const label = parseLabel(`500000 1250000 sil^k-i+t=a${context}`);
    expect(label).toMatchObject({ phone: "i", durationMs: 75, context, nucleus: 3 });
    const next = parseLabel(`1250000 1500000 k^i-t+a=o${context.replace("-2+2+3", "-1+3+2")}`);
    expect(next.phrase).toBe(label.phrase);
    expect(next.mora).not.toBe(label.mora);
  });

  test("parseLabel refuses a line that is no full-context label", () => {
    expect(() => parseLabel("0.000 0.100 a")).toThrow(/no full-context label/);
  });

  test("formatLabels writes running times and the names of the neighbours after all decisions", () => {
    const phones = ["sil", "k", "I", "t", "a"].map((phone) => ({ phone, context: "/A:x", durationMs: 50 }));
    expect(formatLabels(phones).split("\n")[2]).toBe("1000000 1500000 sil^k-I+t=a/A:x");
  });

  test("parseTrace counts frames and the share of them with voice", () => {
    const state = (length: number, flag: string) =>
      `  State[ 2]\n    Length       ->        ${length}(frames)\n    Stream[ 1]\n      MSD flag   ->     ${flag}\n`;
    const trace = `[Global]\nHMM[ 1]\n${state(3, "TRUE")}${state(1, "FALSE")}HMM[ 2]\n${state(2, "FALSE")}`;
    expect(parseTrace(trace)).toEqual([
      { frames: 4, voicedShare: 0.75 },
      { frames: 2, voicedShare: 0 },
    ]);
  });
});

describe("readings", () => {
  test("splitMorae keeps small kana with their mora and ー apart", () => {
    expect(splitMorae("キョーイッシュ")).toEqual(["キョ", "ー", "イ", "ッ", "シュ"]);
  });

  test("formatAccentReading marks rise, fall, phrases and pauses", () => {
    const phrase = (kana: string, name: string, nucleus: number) =>
      splitMorae(kana).map((mora) => ({ kana: mora, phones: [], phrase: name, nucleus }));
    const morae = [...phrase("オカシオ", "1", 2), ...phrase("アメ", "2", 1), null, ...phrase("ハナ", "3", 2)];
    expect(formatAccentReading(morae)).toBe("オ[カ]シオ#ア]メ_ハ[ナ");
    expect(formatReading(morae)).toBe("オカシオアメ、ハナ");
  });
});

describe("decisions", () => {
  const place = { vowel: "i", before: "k", after: "t", onNucleus: false, previousDevoiced: false } as const;

  test("devoicingProbability is 0 after anything but a voiceless consonant", () => {
    for (const before of ["g", "a", "cl", "sil", undefined]) {
      expect(devoicingProbability({ ...place, before }, speakers[0]!)).toBe(0);
    }
  });

  test("devoicingProbability falls on the nucleus and with a reader who devoices less", () => {
    const usual = devoicingProbability(place, speakers[0]!);
    expect(devoicingProbability({ ...place, onNucleus: true }, speakers[0]!)).toBeLessThan(usual);
    const rarely = { ...speakers[0]!, devoicing: speakers[0]!.devoicing - 1 };
    expect(devoicingProbability(place, rarely)).toBeLessThan(usual);
  });

  const planned = (devoiced: boolean, mayDevoice: boolean) => ({
    phone: devoiced ? "U" : "u",
    context: "",
    durationMs: 50,
    ruleDevoiced: false,
    devoiced,
    mayDevoice,
  });

  test("speakAsPlanned turns a decision round that the voice does not follow", () => {
    const result = speakAsPlanned("x", {
      plan: (corrections) => [planned(corrections.get(0) ?? true, true)],
      speak: () => [{ frames: 10, voicedShare: 1 }],
    });
    expect(result.planned[0]!.phone).toBe("u");
  });

  test("speakAsPlanned gives more voice to a vowel that may not be devoiced", () => {
    const result = speakAsPlanned("x", {
      plan: () => [planned(false, false)],
      speak: (_, threshold) => [{ frames: 10, voicedShare: threshold < 0.25 ? 0.8 : 0.2 }],
    });
    expect(result.traces[0]!.voicedShare).toBe(0.8);
  });

  test("speakAsPlanned gives up with a way out when voice and plan never agree", () => {
    const never = { plan: () => [planned(false, true)], speak: () => [{ frames: 10, voicedShare: 0 }] };
    expect(() => speakAsPlanned("demo-01-001", never)).toThrow(/demo-01-001.*Change its sentence/);
  });
});

describe("sentences", () => {
  test("shareOut has every sentence read, the core by every reader and each other one once", () => {
    const sentences = readSentences();
    const tasks = shareOut(sentences, speakers);
    for (const { group, text } of sentences) {
      const readers = tasks.filter((task) => task.text === text).length;
      expect(readers, text).toBe(group === "core" ? speakers.length : 1);
    }
    expect(new Set(tasks.map(({ id }) => id)).size).toBe(tasks.length);
  });

  test("combineSentences gives as many different sentences as asked for, the same for one seed", () => {
    const sentences = combineSentences(300, randomFor("a"));
    expect(new Set(sentences).size).toBe(300);
    expect(combineSentences(300, randomFor("a"))).toEqual(sentences);
    expect(combineSentences(300, randomFor("b"))).not.toEqual(sentences);
  });
});

describe("degrade", () => {
  const tone = Float64Array.from(
    { length: 16_000 },
    (_, i) => 8000 * Math.sin((2 * Math.PI * 300 * i) / 16_000),
  );
  const energy = (samples: Float64Array) => samples.reduce((sum, value) => sum + value * value, 0);

  test("degrade adds noise at the wanted ratio to the sound in the room", () => {
    const quiet = degrade(tone, { snrDb: 300, rt60Sec: 0.3 }, randomFor("n"));
    const noisy = degrade(tone, { snrDb: 20, rt60Sec: 0.3 }, randomFor("n"));
    const noise = noisy.map((value, index) => value - quiet[index]!);
    expect(10 * Math.log10(energy(quiet) / energy(noise))).toBeCloseTo(20, 6);
  });

  test("degrade answers a click with a tail that falls by 60 dB in the reverberation time", () => {
    const click = new Float64Array(16_000);
    click[0] = 1e6;
    const room = degrade(click, { snrDb: 300, rt60Sec: 0.5 }, randomFor("n"));
    const level = (fromSec: number) =>
      10 * Math.log10(energy(room.slice(fromSec * 16_000, (fromSec + 0.1) * 16_000)));
    expect(Math.abs(level(0.05) - level(0.3) - 30)).toBeLessThan(1.5);
    expect(room[0]).toBeCloseTo(1e6, 3);
    expect(10 * Math.log10(1e12 / energy(room.slice(1)))).toBeCloseTo(6, 6);
  });
});
