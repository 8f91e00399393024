import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { seededRandom } from "../../src/statistics/seededRandom.ts";
import { hears, startCommand } from "../helpers/commandLine.ts";
import { writeDemoPart } from "../helpers/demoPart.ts";
import { type MeasuredRows, measuredRows } from "../helpers/measuredRows.ts";
import { keptFolder } from "../helpers/tempFolder.ts";

const dataset = keptFolder();
const small = { shardSize: 3 };
const share = ["--shard", "1/1", "--shard-size", "3", "--workers", "2"];
let undisturbed: MeasuredRows;
/** Results of the undisturbed run, parts included; copied before it is spoilt. */
const whole = keptFolder();

beforeAll(async () => {
  writeDemoPart(dataset, { speakers: ["demo-01", "demo-03"], each: 8, labels: false });
  await new Promise((resolve) => setTimeout(resolve, 2100)); // files this new would be read again in any case
  undisturbed = await measuredRows(dataset, whole, small);
});

function copyOfWhole(): string {
  const folder = keptFolder();
  cpSync(whole, folder, { recursive: true });
  return folder;
}

function partsIn(folder: string): string[] {
  return readdirSync(join(folder, ".cache"), { recursive: true, encoding: "utf8" })
    .filter((file) => /[0-9a-f]{64}$/.test(file))
    .sort();
}

describe("a run that is disturbed", () => {
  test("measures every utterance when it is not", () => {
    expect(undisturbed.utterances.length).toBe(16);
    expect(undisturbed.tables.length).toBeGreaterThan(100_000);
  });

  test("killed at four random moments and started again each time, it gives the same tables", async () => {
    const out = keptFolder();
    const random = seededRandom(20261125);
    for (let kill = 0; kill < 4; kill++) {
      const running = startCommand("run", dataset, "-o", out, ...share);
      const before = kill === 0 ? /Listening/ : /Reading/;
      await hears(running, before);
      await new Promise((resolve) => setTimeout(resolve, 2500 * random.uniform()));
      running.child.kill("SIGKILL");
      await running.ended;
    }
    expect((await measuredRows(dataset, out, small)).tables).toBe(undisturbed.tables);
  });

  test("started again after Ctrl-C, it goes on where it was; it says so and ends with 130", async () => {
    const out = keptFolder();
    const running = startCommand("run", dataset, "-o", out, ...share);
    await hears(running, /Listening/);
    running.child.kill("SIGINT");
    expect(await running.ended).toBe(130);
    expect(running.said()).toMatch(/run the same command again to go on/);
    const resumed = await measuredRows(dataset, out, small);
    expect(resumed.tables).toBe(undisturbed.tables);
  });

  test("with nothing changed, it makes no part again", async () => {
    const again = await measuredRows(dataset, copyOfWhole(), small);
    expect(again.tables).toBe(undisturbed.tables);
    expect(again.made).toBe(0);
  });

  test("with one recording changed, it listens to its shard alone, and gives what a new run gives", async () => {
    const changed = keptFolder();
    cpSync(dataset, changed, { recursive: true, preserveTimestamps: true });
    const audio = join(changed, "audio/demo-03");
    cpSync(join(audio, "demo-03-004.flac"), join(audio, "demo-03-003.flac"));
    const out = copyOfWhole();
    const before = partsIn(out);
    const heard: string[] = [];
    const rows = await measuredRows(changed, out, small, (runner) => ({
      ...runner,
      run: async (order) => {
        const answer = await runner.run(order);
        if (order.includes('"kind":"hear"')) heard.push(JSON.parse(answer).done);
        return answer;
      },
    }));
    expect(heard.filter((key) => !before.some((file) => file.endsWith(key))).length).toBe(1);
    expect(rows.tables).not.toBe(undisturbed.tables);
    expect(rows.tables).toBe((await measuredRows(changed, keptFolder(), small)).tables);
  });

  test("with damaged parts, it notices each and makes it anew", async () => {
    const random = seededRandom(7);
    const out = copyOfWhole();
    const spoil = (file: string, turn: number) => {
      const path = join(out, ".cache", file);
      const bytes = readFileSync(path);
      if (turn % 3 === 0) bytes[random.below(bytes.length)]! ^= 1;
      writeFileSync(path, turn % 3 === 1 ? bytes.subarray(0, bytes.length >> 1) : bytes);
      if (turn % 3 === 2) rmSync(path);
    };
    for (const [turn, file] of partsIn(out).entries()) if (random.uniform() < 0.4) spoil(file, turn);
    const repaired = await measuredRows(dataset, out, small);
    expect(repaired.tables).toBe(undisturbed.tables);
    expect(repaired.made).toBeGreaterThan(0);
  });

  test.each([2, 4])("gives the same tables with %i workers", async (workers) => {
    const rows = await measuredRows(dataset, keptFolder(), { workers, shardSize: 5 });
    expect(rows.tables).toBe(undisturbed.tables);
  });

  test("done in shares at the same time, it gives the same tables, and nothing is left to do", async () => {
    const out = keptFolder();
    const shares = ["1/2", "2/2"].map((part) =>
      startCommand("run", dataset, "-o", out, "--shard", part, "--shard-size", "3", "--workers", "1"),
    );
    expect(await Promise.all(shares.map(({ ended }) => ended))).toEqual([0, 0]);
    expect((await measuredRows(dataset, out, small)).tables).toBe(undisturbed.tables);
  });

  test("with a shard that fails every time, sets it aside with the reason and measures the rest", async () => {
    const rows = await measuredRows(dataset, keptFolder(), small, (runner) => ({
      ...runner,
      run: (order) =>
        order.includes('"kind":"hear"') && order.includes("demo-01-003")
          ? Promise.reject(new Error("the decoder ran out of memory"))
          : runner.run(order),
    }));
    const failed = rows.problems.filter(({ rule }) => rule === "work-failed");
    expect(failed.length).toBeGreaterThan(0);
    expect(failed.map(({ utterance }) => utterance)).toContain("demo-01-003");
    expect(rows.utterances.length).toBe(16 - failed.length);
  });
});
