/**
 * `npm run bench -- wavToTokens FOLDER`: how many times faster than the speech itself a run goes from WAV and text to
 * tokens (aligned without labels, then measured), by processor time of one process. FOLDER holds WAV in the demo's layout.
 */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { runPipeline } from "../../src/runPipeline.ts";
import { readKnownSpeech } from "../helpers/knownSpeech.ts";
import { runOptions } from "../helpers/runOptions.ts";
import { printSpeed } from "./measures/speed.ts";

const source = process.argv[2];
const speech = source === undefined ? null : await readKnownSpeech(source);
if (!speech) throw new Error("name a folder of WAV with transcript.tsv and truth.tsv");
const seconds = speech.reduce((sum, u) => sum + u.samples.length / 16_000, 0);
printSpeed(speech);

const scratch = mkdtempSync(join(tmpdir(), "morascope-bench-"));
try {
  const dataset = join(scratch, "unlabelled");
  for (const part of ["audio", "transcript.tsv"])
    cpSync(join(source!, part), join(dataset, part), { recursive: true });
  const card = JSON.parse(readFileSync(join(source!, "dataset.json"), "utf8"));
  delete card.labelSets;
  writeFileSync(join(dataset, "dataset.json"), JSON.stringify(card));
  const now = () => {
    const { user, system } = process.cpuUsage();
    return (user + system) / 1e6;
  };
  const spent = new Map<string, number>();
  let task = "Opening";
  let since = now();
  const next = (name: string) => {
    spent.set(task, (spent.get(task) ?? 0) + now() - since);
    task = name;
    since = now();
  };
  const { counts } = await runPipeline(
    runOptions([dataset], join(scratch, "out"), {
      onProgress: (progress) => {
        if (progress.task !== task) next(progress.task);
      },
    }),
  );
  next("");
  const total = [...spent.values()].reduce((sum, x) => sum + x, 0);
  process.stdout.write(
    `${(seconds / 60).toFixed(1)} min of WAV → ${counts.tokens} tokens, cells and estimates: ${Math.round(seconds / total)}× real time\n`,
  );
  const between = /^(Listening|Aligning|Learning voices|Measuring)/;
  const alone = [...spent].reduce((sum, [name, sec]) => (between.test(name) ? sum + sec : sum), 0);
  process.stdout.write(
    `of these, listening, aligning and measuring: ${Math.round(seconds / alone)}× real time (wanted: 100)\n`,
  );
  for (const [name, sec] of [...spent].sort((a, b) => b[1] - a[1]))
    process.stdout.write(`  ${name}: ${sec.toFixed(1)} s, ${Math.round(seconds / sec)}×\n`);
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
