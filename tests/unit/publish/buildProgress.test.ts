import { expect, test } from "vitest";
import type { Progress } from "../../../src/progress.ts";
import { buildProgress } from "../../../src/publish/buildProgress.ts";

function shares(clips: boolean, say: (tell: ReturnType<typeof buildProgress>) => void): number[] {
  const told: Progress[] = [];
  say(buildProgress((progress) => told.push(progress), { clips }));
  return told.map(({ share }) => share!);
}

test("buildProgress goes from nothing to all, by the time parts take, within a part too", () => {
  const [start, load, half, render, end] = shares(true, (tell) => {
    tell("read");
    tell("load");
    tell("load", 0.5);
    tell("render");
    tell("done");
  });
  expect([start, end]).toEqual([0, 1]);
  expect(half! - load!).toBeCloseTo(6.2 / 16.9 / 2, 6);
  expect(render).toBeGreaterThan(half!);
});

test("buildProgress never goes back, and gives clips no time where there are none to cut", () => {
  const [bundle, behind] = shares(true, (tell) => {
    tell("bundle");
    tell("load", 0.9);
  });
  expect(bundle).toBeCloseTo(11.7 / 16.9, 6);
  expect(behind).toBe(bundle);
  const [clips, prepare] = shares(false, (tell) => {
    tell("clips");
    tell("prepare");
  });
  expect(prepare).toBe(clips);
});
