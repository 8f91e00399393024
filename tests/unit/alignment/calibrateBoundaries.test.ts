import { describe, expect, test } from "vitest";
import type { AlignedPhone, Alignment } from "../../../src/alignment/alignUtterance.ts";
import type { ReferencePhone } from "../../../src/alignment/boundaryErrors.ts";
import { applyCalibration, calibrateBoundaries } from "../../../src/alignment/calibrateBoundaries.ts";
import type { Phone } from "../../../src/phonology/phones.ts";

const said: readonly Phone[] = ["pause", "k", "a", "t", "a", "pause"];
/** Inner starts in ms; the recording lasts 600 ms. */
function phones(starts: readonly number[]): ReferencePhone[] {
  const times = [0, ...starts, 600];
  return said.map((phone, i) => ({ phone, devoiced: false, startMs: times[i]!, endMs: times[i + 1]! }));
}
function alignment(starts: readonly number[]): Alignment {
  return {
    phones: phones(starts).map(
      ({ devoiced: _, ...times }, source): AlignedPhone => ({
        ...times,
        long: false,
        variant: "plain",
        source,
        confidence: 1,
        atFloor: false,
      }),
    ),
    match: { gap: 0, worst: { startMs: 0, endMs: 300, gap: 0 } },
  };
}
const truth = [100, 180, 260, 340, 450];
/** Stops start 30 ms late, vowels 10 ms early, the pause 20 ms late. */
const late = [130, 170, 290, 330, 470];

describe("calibrateBoundaries", () => {
  const labelled = Array.from({ length: 200 }, () => ({ alignment: alignment(late), labels: phones(truth) }));
  const calibration = calibrateBoundaries(labelled);
  test("counts its boundaries and takes constant offsets back by kind of sound", () => {
    expect(calibration.boundaries).toBe(1000);
    const { phones: moved } = applyCalibration(alignment(late), calibration);
    moved.slice(1).forEach(({ startMs }, i) => {
      expect(Math.abs(startMs - truth[i]!)).toBeLessThan(0.5);
    });
    expect(moved.map(({ endMs }) => endMs)).toEqual([...moved.slice(1).map(({ startMs }) => startMs), 600]);
  });
  test("keeps the order where phones are shorter than the offsets", () => {
    const { phones: moved } = applyCalibration(alignment([12, 14, 20, 25, 30]), calibration);
    for (const { startMs, endMs } of moved) expect(endMs - startMs).toBeGreaterThanOrEqual(5 - 1e-9);
  });
  test("draws what it saw but once towards its kind's and the overall median, each worth five boundaries", () => {
    const one = calibrateBoundaries([{ alignment: alignment(late), labels: phones(truth) }]);
    // Errors 30, −10, 30, −10, 20: median 20; stops (2 × 30 + 5 × 20) / 7; a stop after a pause (30 + 5 × that) / 6.
    expect(one.offsetsMs[">"]).toBe(20);
    expect(one.offsetsMs[">voiceless stop"]).toBeCloseTo(160 / 7, 12);
    expect(one.offsetsMs["pause>voiceless stop"]).toBeCloseTo((30 + 800 / 7) / 6, 12);
  });
  test("of nothing changes nothing", () => {
    expect(applyCalibration(alignment(late), calibrateBoundaries([])).phones).toEqual(alignment(late).phones);
  });
});
