import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { parseDatasetFile } from "../../../src/datasets/datasetFile.ts";
import { kanaToMorae } from "../../../src/phonology/kana.ts";
import { phoneTable } from "../../../src/phonology/phones.ts";
import {
  demoFolder,
  groupBy,
  listFiles,
  readLabels,
  readStreamInfo,
  readTranscript,
  readTruth,
  sizeOf,
} from "./demoFiles.ts";

const lines = readTranscript();
const truth = readTruth();
const labels = new Map(lines.map((line) => [line.id, readLabels(line)]));
const pauses = ["sil", "pau"];
/** Upper-case I and U are the devoiced vowels; every other name stands as it is. */
const plain = (phone: string) => (/^[IU]$/.test(phone) ? phone.toLowerCase() : phone);
/** Problems are gathered over all files, so that a failure names every file concerned. */
const problemsOf = (check: (line: (typeof lines)[number]) => string | null) =>
  lines.flatMap((line) => {
    const problem = check(line);
    return problem === null ? [] : [`${line.id}: ${problem}`];
  });

describe("the demo as a whole", () => {
  test("dataset.json is a dataset file, synthetic, with a notice and all credits", () => {
    const card = parseDatasetFile(readFileSync(join(demoFolder, "dataset.json"), "utf8"), "dataset.json");
    expect(card.synthetic).toBe(true);
    expect(card.notice).toMatch(/synthetic.*no evidence about Japanese/);
    expect(card.attribution?.join(" ")).toMatch(/Mei.*CC BY 3\.0.*tohoku-f01.*CC BY 4\.0/);
    expect(card.redistribution?.kind).toBe("all");
  });

  test("it holds at least 150 different sentences read by at least 6 speakers, in at most 12 MB", () => {
    expect(new Set(lines.map(({ text }) => text)).size).toBeGreaterThanOrEqual(150);
    expect(new Set(lines.map(({ speaker }) => speaker)).size).toBeGreaterThanOrEqual(6);
    const files = [
      ...listFiles("audio"),
      ...listFiles("labels"),
      "transcript.tsv",
      "truth.tsv",
      "dataset.json",
    ];
    expect(files.reduce((sum, file) => sum + sizeOf(file), 0)).toBeLessThanOrEqual(12e6);
  });

  test("ids are unique, and audio, labels and truth are there for every line and for nothing else", () => {
    const ids = lines.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(listFiles("audio").sort()).toEqual(lines.map(({ audio }) => audio).sort());
    const labelFiles = lines.map(({ speaker, id }) => `labels/${speaker}/${id}.lab`);
    expect(listFiles("labels").sort()).toEqual(labelFiles.sort());
    expect([...truth.keys()].sort()).toEqual(ids.sort());
  });

  test("a core of sentences is read by every speaker", () => {
    const readers = groupBy(lines, ({ text }) => text);
    const speakers = new Set(lines.map(({ speaker }) => speaker)).size;
    const core = [...readers.values()].filter((readings) => readings.length === speakers);
    expect(core.length).toBeGreaterThanOrEqual(12);
  });
});

describe("every recording", () => {
  test("is 16 kHz, mono, 16 bit and as long as its labels, within one 5 ms frame", () => {
    const problems = problemsOf(({ id, audio }) => {
      const { sampleRateHz, channels, bitsPerSample, samples } = readStreamInfo(audio);
      if (sampleRateHz !== 16_000 || channels !== 1 || bitsPerSample !== 16) return "another audio format";
      const difference = samples / sampleRateHz - labels.get(id)!.at(-1)!.endSec;
      return Math.abs(difference) > 0.005 ? `labels end ${difference} s off` : null;
    });
    expect(problems).toEqual([]);
  });

  test("has labels without gap or overlap on the 5 ms grid, from silence to silence, of known phones", () => {
    const problems = problemsOf(({ id }) => {
      const rows = labels.get(id)!;
      let endSec = 0;
      for (const row of rows) {
        if (row.startSec !== endSec || !(row.endSec > row.startSec)) return `broken at ${row.startSec} s`;
        if (Math.round(row.endSec * 1000) % 5 !== 0) return `${row.endSec} s is off the grid`;
        if (!pauses.includes(row.phone) && !(plain(row.phone) in phoneTable)) return `phone ${row.phone}`;
        endSec = row.endSec;
      }
      return rows[0]!.phone === "sil" && rows.at(-1)!.phone === "sil" ? null : "no silence at an end";
    });
    expect(problems).toEqual([]);
  });

  test("has the phones that its reading asks for", () => {
    const problems = problemsOf(({ id, reading }) => {
      const { morae, unknown } = kanaToMorae(reading);
      if (unknown.length > 0) return `not kana: ${unknown[0]!.text}`;
      const read = morae.flatMap(({ phones }) => phones).join(" ");
      const spoken = labels.get(id)!.map(({ phone }) => plain(phone));
      const labelled = spoken.filter((phone) => !pauses.includes(phone)).join(" ");
      return read === labelled ? null : `read ${read}, labelled ${labelled}`;
    });
    expect(problems).toEqual([]);
  });

  test("has an accent reading that is its reading with marks", () => {
    const problems = problemsOf(({ reading, accentReading }) => {
      const bare = accentReading.replaceAll(/[[\]#]/g, "").replaceAll("_", "、");
      return bare === reading ? null : `${accentReading} against ${reading}`;
    });
    expect(problems).toEqual([]);
  });

  test("has the same phones and times in labels and truth", () => {
    const problems = problemsOf(({ id }) => {
      const asLabels = truth.get(id)!.map(({ phone, startMs, endMs }) => `${startMs} ${endMs} ${phone}`);
      const found = labels.get(id)!.map(({ phone, startSec, endSec }) => {
        return `${Math.round(startSec * 1000)} ${Math.round(endSec * 1000)} ${phone}`;
      });
      return asLabels.join() === found.join() ? null : "differs";
    });
    expect(problems).toEqual([]);
  });
});
