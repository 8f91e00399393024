import { Writable } from "node:stream";
import { describe, expect, test } from "vitest";
import { progressLine, timeLeft } from "../../../src/cli/progress.ts";

describe("timeLeft(done, total, elapsedSec)", () => {
  test.each([
    [0, 100, 5, "time left unknown yet"],
    [50, 100, 30, "30 s left"],
    [10, 100, 20, "3 min 0 s left"],
    [1, 1000, 60, "16 h 39 min left"],
    [100, 100, 12.2, "done in 13 s"],
    [0, 0, 0.2, "done in 1 s"],
  ])("%i of %i after %f s: %s", (done, total, elapsedSec, words) => {
    expect(timeLeft(done, total, elapsedSec)).toBe(words);
  });
});

test("progressLine(…).note writes no character that would steer a terminal", () => {
  let written = "";
  const stream = new Writable({
    write(chunk, _, done) {
      written += chunk;
      done();
    },
  });
  progressLine(stream).note("worker \u001b[2Jx is away");
  expect(written).toBe("worker �[2Jx is away\n");
});
