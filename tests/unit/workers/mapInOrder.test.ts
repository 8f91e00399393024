import { describe, expect, test } from "vitest";
import { mapInOrder } from "../../../src/workers/mapInOrder.ts";

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

async function all<R>(results: AsyncIterable<R>): Promise<R[]> {
  const list: R[] = [];
  for await (const one of results) list.push(one);
  return list;
}

describe("mapInOrder(items, inHand, work)", () => {
  test("gives results in the order of the items, whichever is done first", async () => {
    const work = async (n: number) => {
      await pause(20 - 2 * n);
      return n * n;
    };
    expect(await all(mapInOrder([0, 1, 2, 3, 4, 5], 4, work))).toEqual([0, 1, 4, 9, 16, 25]);
  });

  test("draws an item only when there is room, and keeps no more than that waiting for a slow one", async () => {
    let drawn = 0;
    let most = 0;
    let taken = 0;
    function* items(): Generator<number> {
      for (let i = 0; i < 40; i++) {
        drawn++;
        most = Math.max(most, drawn - taken);
        yield i;
      }
    }
    const slowFirst = async (i: number) => {
      await pause(i === 0 ? 50 : 0);
      return i;
    };
    for await (const _ of mapInOrder(items(), 3, slowFirst)) {
      taken++;
      await pause(1);
    }
    expect(taken).toBe(40);
    expect(most).toBeLessThanOrEqual(4);
  });

  test("waits for what is in hand before it passes a failure on, and begins nothing more", async () => {
    const begun: number[] = [];
    const ended: number[] = [];
    const work = async (n: number) => {
      begun.push(n);
      await pause(5 * n);
      ended.push(n);
      if (n === 1) throw new Error("one fails");
      return n;
    };
    await expect(all(mapInOrder([0, 1, 2, 3, 4, 5, 6], 3, work))).rejects.toThrow("one fails");
    expect(ended.sort()).toEqual(begun.sort());
    expect(begun.length).toBeLessThan(7);
  });

  test("begins nothing after stop gives a reason, and passes that on", async () => {
    let reason: Error | null = null;
    const begun: number[] = [];
    const work = async (n: number) => {
      begun.push(n);
      if (n === 2) reason = new Error("stopped");
      return n;
    };
    await expect(all(mapInOrder([0, 1, 2, 3, 4], 1, work, () => reason))).rejects.toThrow("stopped");
    expect(begun).toEqual([0, 1, 2]);
  });
});
