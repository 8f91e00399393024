import { mkdirSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { scanLabels } from "../../src/datasets/labelText.ts";
import { measureGrid } from "../../src/datasets/measureGrid.ts";
import { type OpenDataset, openDataset } from "../../src/datasets/openDataset.ts";
import { agreement, vowelsOfLabels, vowelsOfReading } from "../../src/datasets/vowelAgreement.ts";
import { readAudio } from "../../src/storage/readAudio.ts";
import { resampleTo } from "../../src/storage/resample.ts";
import { describeWithData } from "../helpers/sharedData.ts";

// Expected counts: the note that comes with the copies (utterances, speakers, licences, grids) and a count of files.

/** Durations in ms of all intervals that are no silence, and how many of them. */
function durationsOf({ utterances, tree }: OpenDataset, labelSet: string): number[] {
  return utterances.flatMap(({ labels }) =>
    labels
      .filter((label) => label.labelSet === labelSet)
      .flatMap(({ path, format }) => scanLabels(tree.readText(path), format))
      .filter(({ label }) => !/^(sil|pau|sp)/.test(label))
      .map(({ startMs, endMs }) => endMs - startMs),
  );
}

function opened(folder: () => string): () => OpenDataset {
  let dataset: OpenDataset;
  beforeAll(async () => {
    dataset = await openDataset(folder());
    return () => dataset.tree.close();
  });
  return () => dataset;
}

describeWithData("JSUT labels", ["jsut-labels"], ([folder]) => {
  const dataset = opened(() => folder!);

  test("openDataset reads 4,999 utterances with accent readings from the archive and reports the one without labels", () => {
    const { card, utterances, problems } = dataset();
    expect(card).toMatchObject({
      id: "jsut",
      layout: "readings-beside-labels",
      utterances: 4999,
      speakers: 1,
      audioHours: null,
    });
    expect(card.readings.utterances).toBe(4999);
    expect(
      utterances.every(({ labels, accentReading }) => labels.length === 1 && accentReading !== null),
    ).toBe(true);
    expect(card.labelSets).toHaveLength(1);
    expect(card.labelSets[0]).toMatchObject({
      format: "full-context",
      timeBasis: "aligned",
      timeGridMs: 10,
      timeFloorMs: 30,
      devoicingBasis: null,
      lengthFrom: "reading",
      accentBasis: "annotated",
    });
    expect(problems.map(({ rule, utterance }) => [rule, utterance])).toEqual([
      ["line-without-labels", "BASIC5000_5000"],
    ]);
    expect(card.licence.name).toContain("CC BY-SA 4.0");
    expect(card.redistribution).toMatchObject({ kind: "excerpt", utterances: 100 });
  });

  test("measureGrid finds the 10 ms grid and 30 ms floor that are stated", () => {
    expect(measureGrid(durationsOf(dataset(), "labels"))).toEqual({ gridMs: 10, floorMs: 30 });
  });
});

describeWithData("JVS labels", ["jvs-labels-001-050"], ([folder]) => {
  const dataset = opened(() => folder!);

  test("openDataset reads 50 speakers and 4,986 files in each of two label sets that are never mixed", () => {
    const { card, utterances, problems } = dataset();
    expect(card).toMatchObject({ id: "jvs", layout: "numbered-readings", utterances: 4986, speakers: 50 });
    expect(
      card.labelSets.map(({ id, utterances: n, devoicingBasis, lengthFrom, timeGridMs, timeFloorMs }) => [
        id,
        n,
        devoicingBasis,
        lengthFrom,
        timeGridMs,
        timeFloorMs,
      ]),
    ).toEqual([
      ["labels-devoicing-by-rule", 4986, "predicted", "reading", 10, 30],
      ["labels-long-marked", 4986, null, "label", 10, 30],
    ]);
    expect(
      utterances.every(
        ({ labels, speaker, id }) =>
          labels.length === 2 &&
          labels.every(({ path }) => path.includes(`/${speaker}/`)) &&
          id.startsWith(`${speaker}/`),
      ),
    ).toBe(true);
    expect(problems).toEqual([]);
    expect(card.redistribution.kind).toBe("none");
  });

  test("openDataset gives line n of the readings to number n: vowels of label and reading agree", () => {
    const { utterances, tree } = dataset();
    const means = utterances
      .filter((_, index) => index % 50 === 0)
      .map(({ reading, labels }) => {
        const { path, format } = labels[0]!;
        return agreement(
          vowelsOfReading(reading!),
          vowelsOfLabels(scanLabels(tree.readText(path), format).map(({ label }) => label)),
        );
      });
    expect(Math.min(...means)).toBeGreaterThan(0.9);
  });

  test("measureGrid finds the 10 ms grid and 30 ms floor that are stated, in both sets", () => {
    for (const id of ["labels-devoicing-by-rule", "labels-long-marked"])
      expect(measureGrid(durationsOf(dataset(), id))).toEqual({ gridMs: 10, floorMs: 30 });
  });
});

describeWithData("ITA labels", ["ita-labels"], ([folder]) => {
  const dataset = opened(() => folder!);

  test("openDataset maps all 424 label files of other names to their lines, by number and checked by vowels", () => {
    const { card, utterances, problems } = dataset();
    expect(card).toMatchObject({ id: "ita-labels", layout: "text-reading-list", utterances: 424 });
    expect(utterances.map(({ labels }) => labels.length)).toEqual(new Array(424).fill(1));
    for (const { id, labels } of utterances) {
      const number = id.slice(-3);
      expect(labels[0]!.path).toBe(
        id.startsWith("EMOTION")
          ? `labels/emotion/emoNormal${number}.lab`
          : `labels/recitation/recitation${number}.lab`,
      );
    }
    expect(problems.map(({ rule, excluded }) => [rule, excluded])).toEqual([
      ["label-names-mapped", false],
      ["label-names-mapped", false],
    ]);
    expect(card.labelSets[0]).toMatchObject({
      timeGridMs: 5,
      devoicingBasis: "annotated",
      timeBasis: "aligned",
    });
  });

  test("measureGrid finds the 5 ms grid that is stated and the 15 ms floor we state", () => {
    expect(measureGrid(durationsOf(dataset(), "labels"))).toEqual({ gridMs: 5, floorMs: 15 });
  });
});

describeWithData("read sentences", ["read-sentences"], ([folder]) => {
  const dataset = opened(() => folder!);

  test("openDataset reads 70 recordings with kana text and labels, 156 s in all", () => {
    const { card, utterances, problems } = dataset();
    expect(card).toMatchObject({
      id: "read-sentences",
      layout: "file-per-sentence",
      utterances: 70,
      speakers: 1,
      readings: { utterances: 70 },
    });
    expect(card.audioHours! * 3600).toBeGreaterThan(155.5);
    expect(card.audioHours! * 3600).toBeLessThan(156.5);
    expect(utterances.every(({ audio, labels }) => audio !== null && labels.length === 1)).toBe(true);
    expect(problems).toEqual([]);
  });

  test("readAudio and resampleTo give every recording at 16 kHz, as long as its header says", async () => {
    const { utterances, tree } = dataset();
    for (const { audio } of utterances.slice(0, 10)) {
      const { samples, sampleRateHz, durationSec, warnings } = await readAudio(tree.read(audio!), audio!);
      const resampled = await resampleTo(samples, sampleRateHz);
      expect(Math.abs(resampled.length / 16000 - durationSec)).toBeLessThan(1 / 16000);
      expect(warnings).toEqual([]);
    }
  });
});

describeWithData("vowel sequences", ["vowel-sequences"], ([folder]) => {
  const dataset = opened(() => folder!);

  test("openDataset reads 60 recordings with labels and no text, on no grid", () => {
    const { card, utterances, problems } = dataset();
    expect(card).toMatchObject({ id: "vowel-sequences", utterances: 60, readings: { utterances: 0 } });
    expect(card.labelSets[0]).toMatchObject({ timeBasis: "annotated", timeGridMs: null, timeFloorMs: null });
    expect(utterances.every(({ text, labels }) => text === null && labels.length === 1)).toBe(true);
    expect(problems).toEqual([]);
    expect(measureGrid(durationsOf(dataset(), "labels"))).toEqual({ gridMs: null, floorMs: null });
  });

  test("readAudio averages the two channels", async () => {
    const { audio } = dataset().utterances[0]!;
    expect((await readAudio(dataset().tree.read(audio!), audio!)).channelRule).toBe("average of 2 channels");
  });
});

describeWithData("audiobook clips", ["audiobook-clips"], ([folder]) => {
  test("openDataset reads 5 clips with romanised readings as katakana", async () => {
    const { card, utterances, problems } = await openDataset(folder!);
    expect(card).toMatchObject({
      id: "kokoro-speech",
      layout: "pipe-list",
      utterances: 5,
      readings: { utterances: 5 },
    });
    expect(utterances[3]!.reading).toBe("キモノモキカエズニマタヒバチノマエエスワッタ");
    expect(problems).toEqual([]);
  });
});

describeWithData("JVS labels beside recordings", ["jvs-labels-001-050"], ([folder]) => {
  test("openDataset of a folder with nothing but a link to the archive refuses the link", async () => {
    const { tempFolder } = await import("../helpers/tempFolder.ts");
    const outside = tempFolder();
    mkdirSync(join(outside, "x"));
    symlinkSync(join(folder!, "labels.tar.xz"), join(outside, "x/labels.tar.xz"));
    await expect(openDataset(outside)).rejects.toThrow("not recognised");
  });
});
