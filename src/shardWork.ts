import type { OnProgress } from "./progress.ts";
import type { Orders } from "./shards/performOrder.ts";
import { mapInOrder } from "./workers/mapInOrder.ts";

/** What the stages of one dataset have in common when they go through its shards. */
export class ShardWork {
  readonly orders: Orders;
  /** Where members of archives are laid out. */
  readonly unpacked: string;
  readonly seed: number;
  readonly #onProgress: OnProgress;
  readonly #stop: () => Error | null;

  constructor(
    orders: Orders,
    options: { unpacked: string; seed: number; onProgress: OnProgress; stop: () => Error | null },
  ) {
    this.orders = orders;
    this.unpacked = options.unpacked;
    this.seed = options.seed;
    this.#onProgress = options.onProgress;
    this.#stop = options.stop;
  }

  /**
   * Does a piece of work for every item, as many at once as there are workers for, and yields the results in order.
   * Progress counts the utterances (or whatever `unit` says) of what was yielded.
   */
  async *map<T, R extends object>(
    task: string,
    total: number,
    items: Iterable<T> | AsyncIterable<T>,
    work: (item: T) => Promise<R>,
    unit = "utterances",
  ): AsyncGenerator<R> {
    let done = 0;
    this.#onProgress({ task, done, total, unit });
    for await (const result of mapInOrder(items, this.orders.inHand, work, this.#stop)) {
      yield result;
      done += "utterances" in result ? Number(result.utterances) : 1;
      this.#onProgress({ task, done, total, unit });
      await new Promise(setImmediate);
    }
  }
}
