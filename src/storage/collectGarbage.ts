import { setImmediate } from "node:timers/promises";
import { getHeapStatistics, setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";

/** Growth since the last collection from which there is another between pieces of work: by a fifth, and by this much. */
const growth = 1.2;
const leastBytes = 40e6;

let collect: (() => void) | null = null;
let limitBytes = 0;

/**
 * Has what a finished stage left collected at once, in some 50 ms: by itself, the heap first grows to several times what
 * is needed, and the next stage's memory comes on top of it.
 */
export async function collectGarbage(): Promise<void> {
  await setImmediate(); // what is closed is let go of in the next turn only
  if (collect === null) {
    setFlagsFromString("--expose-gc");
    collect = runInNewContext("gc") as () => void;
  }
  collect();
  limitBytes = growth * getHeapStatistics().used_heap_size + leastBytes;
}

/** The same, but only when the heap has grown by a good part since the last time: called between pieces of work, it keeps memory flat. */
export async function collectWhenGrown(): Promise<void> {
  if (getHeapStatistics().used_heap_size >= limitBytes) await collectGarbage();
}
