import { setTimeout as sleep } from "node:timers/promises";
import { lastingFault, machineRefused } from "../messages/machine.ts";
import { learningFailed, partsKeepBreaking } from "../messages/shards.ts";
import { UserError } from "../messages/userError.ts";
import type { Claims } from "../storage/claims.ts";
import { ContentCache } from "../storage/contentCache.ts";
import type { OrderRunner } from "../workers/orderRunner.ts";
import type { HearAnswer } from "./hearShard.ts";
import { type Order, type OrderOf, writeOrder } from "./orders.ts";
import { DamagedPart, requirePart } from "./parts.ts";
import type { OrderAnswer } from "./runOrder.ts";

/** An order that could not be done, for a reason that others need not meet. A full disk and its like end the run instead. */
export class OrderFailed extends Error {}

/** Another share is at this work. */
export class DoneElsewhere extends Error {}

/** Time between looks at work that another share is doing, in ms. */
const waitMs = 300;

/** Keeps account of the parts of one run, and has those made that are not there. */
export class Orders {
  readonly cache: ContentCache;
  readonly #runner: OrderRunner;
  readonly #claims: Claims | null;
  readonly #used = new Set<string>();
  #made = 0;

  /** Whether work that another share is doing is skipped for now, or waited for. */
  impatient = false;

  /** `claims`: with whom the work is shared, when several programs work into the same folder. */
  constructor(cacheFolder: string, runner: OrderRunner, claims: Claims | null = null) {
    this.#claims = claims;
    this.cache = new ContentCache(cacheFolder);
    this.#runner = runner;
  }

  get inHand(): number {
    return this.#runner.inHand;
  }

  /** Has the prune at the end of the run take a part. */
  forget(key: string): void {
    this.#used.delete(key);
  }

  /** Parts that had to be made, so far. */
  get made(): number {
    return this.#made;
  }

  isUsed = (key: string): boolean => this.#used.has(key);

  /** Has the prune at the end of the run spare a part. */
  use(key: string): string {
    this.#used.add(key);
    return key;
  }

  /** The part of an order, made where it is missing or damaged. */
  async part<T>(order: Exclude<Order, { kind: "hear" }>): Promise<T> {
    const kept = this.cache.get<T>(this.use(order.key));
    if (kept !== null) return kept;
    await this.#perform(order);
    return requirePart<T>(this.cache, order.key);
  }

  /** The part of an order without which nothing goes on. */
  async must<T>(order: Exclude<Order, { kind: "hear" }>, what: string): Promise<T> {
    const { part, failed } = await this.attempt(() => this.part<T>(order));
    if (part === null) throw new UserError(learningFailed(what, failed), 1);
    return part;
  }

  /** What `work` gives, or why an order of it failed. */
  async attempt<T>(
    work: () => Promise<T>,
  ): Promise<{ part: T; failed: "" } | { part: null; failed: string }> {
    try {
      return { part: await work(), failed: "" };
    } catch (error) {
      if (!(error instanceof OrderFailed)) throw error;
      return { part: null, failed: error.message };
    }
  }

  /** Has an order done whose part nobody wants to see yet. */
  async ensure(order: Exclude<Order, { kind: "hear" }>): Promise<void> {
    if (!this.cache.has(this.use(order.key))) await this.#perform(order);
  }

  /** Has a shard heard, unless another share did; `name`: key under which the answer is found then. */
  async hear(order: OrderOf<"hear">, name: string): Promise<HearAnswer> {
    const answer = await this.#unlessDone(name, () => this.#send(order));
    if (answer === null) return requirePart<HearAnswer>(this.cache, name);
    return { key: answer.done, hashes: answer.hashes! };
  }

  async #perform(order: Exclude<Order, { kind: "hear" }>): Promise<void> {
    await this.#unlessDone(order.key, () => this.#send(order));
  }

  /** Does `work` unless another share has done it; null then. */
  async #unlessDone<T>(name: string, work: () => Promise<T>): Promise<T | null> {
    if (this.#claims === null) return work();
    while (!this.#claims.take(name)) {
      if (this.cache.has(name)) return null;
      if (this.impatient) throw new DoneElsewhere();
      await sleep(waitMs);
    }
    try {
      return this.cache.has(name) ? null : await work();
    } finally {
      this.#claims.release(name);
    }
  }

  /** Removes what this run neither used nor made. */
  prune(): void {
    this.cache.prune(this.isUsed);
  }

  async #send(order: Order): Promise<Extract<OrderAnswer, { done: string }>> {
    const text = await this.#runner.run(writeOrder(order)).catch((error: Error) => {
      if (error instanceof UserError) throw error;
      const lasting = lastingFault(error);
      throw lasting === null ? new OrderFailed(error.message) : new UserError(lasting, machineRefused);
    });
    const answer = JSON.parse(text) as OrderAnswer;
    if ("refused" in answer) throw new UserError(answer.refused, 1);
    if ("damaged" in answer) throw new DamagedPart(answer.damaged);
    this.#made++;
    return answer;
  }
}

/** Times that one part may turn out to be damaged. */
const mostDamages = 3;

/**
 * Does `work`, and does it again when a part turns out to be damaged: the part is gone then, whoever needs it has it
 * made anew, and everything else is still there.
 */
export async function withRepairs<T>(work: () => Promise<T>): Promise<T> {
  const damages = new Map<string, number>();
  for (;;) {
    try {
      return await work();
    } catch (error) {
      if (!(error instanceof DamagedPart)) throw error;
      const times = (damages.get(error.key) ?? 0) + 1;
      if (times >= mostDamages) throw new UserError(partsKeepBreaking(times), 1);
      damages.set(error.key, times);
    }
  }
}
