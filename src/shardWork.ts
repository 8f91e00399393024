import type { OnProgress } from "./progress.ts";
import { DoneElsewhere, type Orders } from "./shards/performOrder.ts";
import { collectWhenGrown } from "./storage/collectGarbage.ts";
import { mapInOrder } from "./workers/mapInOrder.ts";

/** One of so many shares of a run, counted from 1. */
export interface Share {
  readonly part: number;
  readonly of: number;
}

/** What the stages of one dataset have in common when they go through its shards. */
export class ShardWork {
  readonly orders: Orders;
  /** Where members of archives are laid out. */
  readonly unpacked: string;
  readonly seed: number;
  readonly #onProgress: OnProgress;
  readonly #stop: () => Error | null;
  readonly #share: Share | null;

  constructor(
    orders: Orders,
    options: {
      unpacked: string;
      seed: number;
      onProgress: OnProgress;
      stop: () => Error | null;
      share: Share | null;
    },
  ) {
    this.orders = orders;
    this.unpacked = options.unpacked;
    this.seed = options.seed;
    this.#onProgress = options.onProgress;
    this.#stop = options.stop;
    this.#share = options.share;
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
    const all = this.#share === null ? items : await listOf(items);
    if (this.#share !== null) await this.#doShare(this.#share, all as readonly T[], work);
    for await (const result of mapInOrder(all, this.orders.inHand, work, this.#stop)) {
      yield result;
      done += "utterances" in result ? Number(result.utterances) : 1;
      this.#onProgress({ task, done, total, unit });
      await new Promise(setImmediate);
      await collectWhenGrown();
    }
  }

  /** Does the own share of the items first, then what nobody is doing of the others. */
  async #doShare<T, R>(
    { part, of }: Share,
    items: readonly T[],
    work: (item: T) => Promise<R>,
  ): Promise<void> {
    const turn = (i: number) => (((i - (part - 1)) % of) + of) % of;
    const inTurn = items.map((item, i) => ({ item, turn: turn(i) })).sort((a, b) => a.turn - b.turn);
    this.orders.impatient = true;
    try {
      const attempt = async ({ item }: { item: T }) => {
        await work(item).catch((error: unknown) => {
          if (!(error instanceof DoneElsewhere)) throw error;
        });
      };
      for await (const _ of mapInOrder(inTurn, this.orders.inHand, attempt, this.#stop));
    } finally {
      this.orders.impatient = false;
    }
  }
}

async function listOf<T>(items: Iterable<T> | AsyncIterable<T>): Promise<T[]> {
  const list: T[] = [];
  for await (const item of items) list.push(item);
  return list;
}
