import { setImmediate } from "node:timers/promises";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";

let collect: (() => void) | null = null;

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
}
