import { readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { beforeAll, describe, expect, test } from "vitest";
import { type RunRecord, runPipeline } from "../../src/runPipeline.ts";
import { readColumns } from "../../src/storage/readColumns.ts";
import { demoSubset } from "../helpers/demoSubset.ts";
import { runOptions } from "../helpers/runOptions.ts";
import { keptFolder } from "../helpers/tempFolder.ts";

interface ProblemRow {
  readonly utterance: string;
  readonly rule: string;
  readonly message: string;
  readonly excluded: string;
}

async function run(folder: string) {
  const out = keptFolder();
  const record = await runPipeline(runOptions([folder], out));
  const problems = parse(readFileSync(join(out, "problems.csv"), "utf8"), { columns: true }) as ProblemRow[];
  return { record, problems, tokens: await readColumns(join(out, "tokens.parquet")) };
}

/** One demo speaker with labels; two recordings are exchanged, and one label reaches beyond its recording. */
describe("a run with labels that are not of their recordings", () => {
  let record: RunRecord;
  let problems: ProblemRow[];
  let tokens: Record<string, unknown[]>;
  const subset = demoSubset({ speakers: ["demo-01"], labels: true });
  const [first, second, long] = [subset.ids[2]!, subset.ids[9]!, subset.ids[12]!];

  beforeAll(async () => {
    const folder = await subset.write();
    const lines = readFileSync(join(folder, "transcript.tsv"), "utf8").split("\n");
    const audio = (id: string) =>
      join(folder, lines.find((line) => line.startsWith(`${id}\t`))!.split("\t")[2]!);
    const aside = join(folder, "aside");
    renameSync(audio(first), aside);
    renameSync(audio(second), audio(first));
    renameSync(aside, audio(second));
    const label = join(folder, "labels", "demo-01", `${long}.lab`);
    const text = readFileSync(label, "utf8").trimEnd();
    const end = Number(text.split("\n").at(-1)!.split(/\s+/)[1]);
    writeFileSync(label, `${text}\n${end} ${end + 1} sil\n`);
    ({ record, problems, tokens } = await run(folder));
  });

  test("lists the exchanged recordings and the label that is too long, and nothing else, as left out", () => {
    const left = problems.filter(({ excluded }) => excluded === "true");
    expect(new Set(left.map(({ utterance }) => utterance))).toEqual(new Set([first, second, long]));
    expect(left.find(({ utterance }) => utterance === long)!.rule).toBe("label-longer-than-audio");
    expect(left.some(({ rule }) => rule === "recording-not-of-labels")).toBe(true);
    expect(record.problems.excluded).toBe(3);
  });

  test("measures all others by their own labels, and aligns none of those left out", () => {
    const measured = new Set(tokens.utterance);
    for (const id of [first, second, long]) expect(measured.has(id)).toBe(false);
    expect(measured.size).toBe(subset.ids.length - 3);
    expect(new Set(tokens.labelSet)).toEqual(new Set(["labels"]));
    expect(record.datasets[0]!.labelSets.map(({ id }) => id)).toEqual(["labels"]);
  });
});

describe("a run over a handful of recordings without labels", () => {
  test("says that it could not check whether they are of their texts, and leaves none out", async () => {
    const subset = demoSubset({ speakers: ["demo-01"], labels: false });
    const folder = await subset.write();
    const file = join(folder, "transcript.tsv");
    writeFileSync(file, `${readFileSync(file, "utf8").split("\n").slice(0, 5).join("\n")}\n`);
    const { problems, tokens } = await run(folder);
    const note = problems.filter(({ rule }) => rule === "match-not-judged");
    expect(note).toHaveLength(1);
    expect(note[0]).toMatchObject({ utterance: "", excluded: "false" });
    expect(note[0]!.message).toContain("at least 12 recordings, and there are only 4.");
    expect(new Set(tokens.utterance).size).toBe(4);
  });
});
