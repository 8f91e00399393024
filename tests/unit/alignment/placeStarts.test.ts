import { describe, expect, test } from "vitest";
import type { Span } from "../../../src/alignment/decode.ts";
import { fineSteps, staticDims } from "../../../src/alignment/features.ts";
import type { GraphNode } from "../../../src/alignment/graph.ts";
import { makePhoneGraph } from "../../../src/alignment/graph.ts";
import type { AcousticModel } from "../../../src/alignment/model.ts";
import { placeStarts } from "../../../src/alignment/placeStarts.ts";
import { sharpenEdge } from "../../../src/alignment/sharpenEdge.ts";
import type { Phone } from "../../../src/phonology/phones.ts";

/** 100 frames of one level, another from quarter `onset` on. */
function step(onset: number, before: number, after: number) {
  const values = new Float32Array(100 * staticDims);
  for (let q = 0; q < 100 * fineSteps; q++)
    values[Math.floor(q / fineSteps) * staticDims + 16 + (q % fineSteps)] = q < onset ? before : after;
  return { frames: 100, values, durationMs: 1000 };
}
const flat = step(400, 0, 0);
const model = { closureFrames: new Map([["k", 5]]) } as unknown as AcousticModel;

function spansOf(...parts: [Phone, "plain" | "devoiced", number, number, number?][]): [GraphNode[], Span[]] {
  const nodes = parts.map(([phone, variant], source) => ({
    ...makePhoneGraph([{ phone }], { edgePauses: false }).nodes[0]!,
    variant,
    source,
  }));
  const spans = parts.map(([, , start, end, firstStateEnd = end], node) => ({
    node,
    start,
    end,
    firstStateEnd,
    startSpread: 0,
    endSpread: 0,
    pathFrames: end - start,
    floorFrames: 2,
  }));
  return [nodes, spans];
}

describe("placeStarts", () => {
  test("starts a closure after a pause its usual length before the burst, and leaves the pause 5 ms", () => {
    expect(
      placeStarts(model, flat, ...spansOf(["pause", "plain", 0, 20], ["k", "plain", 20, 24, 22])),
    ).toEqual([0, 17]);
    expect(placeStarts(model, flat, ...spansOf(["pause", "plain", 0, 2], ["k", "plain", 2, 6, 4]))).toEqual([
      0, 0.5,
    ]);
  });
  test("leaves a devoiced vowel its two frames before such a closure", () => {
    const [, , start] = placeStarts(
      model,
      flat,
      ...spansOf(["t", "plain", 0, 10], ["u", "devoiced", 10, 14], ["k", "plain", 14, 18, 16]),
    );
    expect(start).toBe(12);
  });
  test("keeps a closure after a voiced vowel where it was heard", () => {
    expect(placeStarts(model, flat, ...spansOf(["a", "plain", 0, 20], ["k", "plain", 20, 24, 22]))).toEqual([
      0, 20,
    ]);
  });
  test("leaves a devoiced vowel after frication at most the last 40 ms of it", () => {
    expect(placeStarts(model, flat, ...spansOf(["s", "plain", 0, 8], ["u", "devoiced", 8, 20]))).toEqual([
      0, 16,
    ]);
    expect(placeStarts(model, flat, ...spansOf(["s", "plain", 0, 8], ["u", "devoiced", 8, 11]))).toEqual([
      0, 8,
    ]);
  });
  test("starts a vowel 3 ms later after an obstruent", () => {
    expect(placeStarts(model, flat, ...spansOf(["s", "plain", 0, 8], ["a", "plain", 8, 20]))).toEqual([
      0, 8.3,
    ]);
  });
});

describe("sharpenEdge", () => {
  test("finds where energy passes the middle of its step, to a quarter of a frame", () => {
    expect(sharpenEdge(step(200, 0, 8), 48.5, 20, 20)).toBeCloseTo(50, 1);
    expect(sharpenEdge(step(203, 8, 0), 51.5, 20, 20)).toBeCloseTo(50.75, 1);
  });
  test("leaves an edge where the step is below 10 dB, too far, or the sides too short to judge", () => {
    expect(sharpenEdge(step(200, 0, 2), 48.5, 20, 20)).toBe(48.5);
    expect(sharpenEdge(step(200, 0, 8), 46, 20, 20)).toBe(46);
    expect(sharpenEdge(step(200, 0, 8), 48.5, 1, 20)).toBe(48.5);
  });
});
