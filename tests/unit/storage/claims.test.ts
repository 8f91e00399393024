import { rmSync } from "node:fs";
import { expect, test, vi } from "vitest";
import { Claims } from "../../../src/storage/claims.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

test("Claims: work is one's own until it is released", () => {
  const folder = tempFolder();
  const [one, other] = [new Claims(folder), new Claims(folder)];
  expect([one.take("a"), other.take("a"), other.take("b")]).toEqual([true, false, true]);
  one.release("a");
  expect(other.take("a")).toBe(true);
  other.close();
  expect([one.take("a"), one.take("b")]).toEqual([true, true]);
  one.close();
});

test("Claims: what is renewed stays claimed; what is not is taken over after half a minute", () => {
  vi.useFakeTimers();
  try {
    const folder = tempFolder();
    const [living, waiting] = [new Claims(folder), new Claims(folder)];
    living.take("a");
    for (let minute = 0; minute < 10; minute++) {
      expect(waiting.take("a")).toBe(false);
      vi.advanceTimersByTime(60_000);
    }
    vi.clearAllTimers(); // killed: it renews nothing any more
    expect(waiting.take("a")).toBe(false);
    vi.advanceTimersByTime(29_000);
    expect(waiting.take("a")).toBe(false);
    vi.advanceTimersByTime(2_000);
    expect(waiting.take("a")).toBe(true);
  } finally {
    vi.useRealTimers();
  }
});

test("Claims: a folder that cannot be written to for a while ends no run", () => {
  vi.useFakeTimers();
  try {
    const folder = tempFolder();
    const claims = new Claims(folder);
    claims.take("a");
    rmSync(folder, { recursive: true });
    expect(() => vi.advanceTimersByTime(6000)).not.toThrow();
    claims.close();
  } finally {
    vi.useRealTimers();
  }
});
