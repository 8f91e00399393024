import { rmSync } from "node:fs";
import { mkdtemp } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { explainDevoicing } from "../../src/estimates/explain/explainDevoicing.ts";
import { explainDuration } from "../../src/estimates/explain/explainDuration.ts";
import { explainTiming } from "../../src/estimates/explain/explainTiming.ts";
import type { TokenTable } from "../../src/estimates/tokenTable.ts";
import { noMarks, onlyPredictedMarks } from "../../src/messages/explain.ts";
import { runPipeline } from "../../src/runPipeline.ts";
import { loadTokens } from "../../src/storage/loadTokens.ts";
import { runOptions } from "../helpers/runOptions.ts";
import { describeWithData } from "../helpers/sharedData.ts";

describeWithData("JVS labels of 50 speakers, explained", ["jvs-labels-001-050"], ([folder]) => {
  let out: string;
  let table: TokenTable;
  beforeAll(async () => {
    out = await mkdtemp(join(tmpdir(), "morascope-jvs-"));
    await runPipeline(runOptions([folder!], out));
    table = await loadTokens(out);
  });
  afterAll(() => rmSync(out, { recursive: true, force: true }));

  test("marks by rule and missing marks give no model of devoicing", () => {
    const got = explainDevoicing(table);
    expect(got.map(({ reason }) => reason)).toEqual([onlyPredictedMarks(9823), noMarks(9823)]);
  });

  // Read words: long by short vowels 2 to 3 (often quoted from Han 1962, Hirata 2004 and others; from memory).
  // Vowels before geminates are longer (Han M. S. (1994) JASA 96:73–82: +11 %; Kawahara in Kingston et al. (2009) J. Phon.
  // 37:297–320, Table 1: +45 to +50 %). /a/ lasts longer than /i/ and /u/.
  test("the model of duration finds the published directions and sizes", () => {
    for (const explanation of explainDuration(table)) {
      expect(explanation).toMatchObject({ speakers: 50, basis: "aligned", reason: null });
      for (const { status, effects } of explanation.models) {
        expect(status).toBe("ok");
        const ratio = (term: string, level: string) =>
          effects.find((effect) => effect.term === term && effect.level === level)!.ratio!;
        expect(ratio("length", "long").low!).toBeGreaterThan(2);
        expect(ratio("length", "long").high!).toBeLessThan(3);
        expect(ratio("after", "geminate").low!).toBeGreaterThan(1.11);
        expect(ratio("after", "geminate").high!).toBeLessThan(1.5);
        for (const vowel of ["i", "u"]) expect(ratio("vowel", vowel).high!).toBeLessThan(1);
      }
    }
  });

  // Ramus F. et al. (1999) Cognition 73:265–292: %V of Japanese 53.1, of English 40.1 (from memory).
  test("the vowels' share of the time is that of Japanese rather than of English", () => {
    for (const { rhythm } of explainTiming(table)) {
      const { estimate, speakers } = rhythm.found!.vowelPercent!;
      expect(speakers).toBe(50);
      expect(Math.abs(estimate - 53.1)).toBeLessThan(Math.abs(estimate - 40.1) / 2);
    }
  });
});
