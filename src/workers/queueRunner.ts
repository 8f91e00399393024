import { setTimeout as sleep } from "node:timers/promises";
import { Queue, QueueEvents } from "bullmq";
import { noWorker, queueAway, queueBack, workersSeen, workStalled } from "../messages/queue.ts";
import type { OrderRunner } from "./orderRunner.ts";
import { queueConnection, withoutPassword } from "./queueAddress.ts";

export interface QueueRunnerOptions {
  readonly url: string;
  /** Name of the queue: only workers that know it take part. */
  readonly name: string;
  /** Orders in hand at once, over all machines. */
  readonly inHand: number;
  /** Times that an order is tried before it counts as failed. */
  readonly attempts: number;
  /** Wait before the second try, in ms; doubled for each further one. */
  readonly backoffMs: number;
  /** Told of what a person should know: no worker, a worker that died, a server that is away. */
  readonly onNote: (note: string) => void;
  /** How a worker is started, for the note that there is none. */
  readonly workerCommand: string;
  /** Says that the run is to stop, for which `reason`: only what a worker is doing is then waited for. */
  readonly interrupt?: { readonly signal: AbortSignal | undefined; readonly reason: () => Error };
}

interface Waiting {
  readonly order: string;
  readonly resolve: (answer: string) => void;
  readonly reject: (error: Error) => void;
}

/** Time between looks at orders whose end may have been missed, and before the first note that nobody works, in ms. */
const lookEveryMs = 2000;
const patienceMs = 6000;
/** Time that a server is given to answer when the run is to end, in ms. */
const farewellMs = 2000;

/**
 * Has orders done by workers on a Redis queue. Orders that a restarted server forgot are handed in again; an answer that
 * was missed is looked up. Rejects for an order that failed on every try.
 */
export function queueRunner(options: QueueRunnerOptions): OrderRunner {
  const { url, name, inHand, attempts, backoffMs, onNote, workerCommand, interrupt } = options;
  const queue = new Queue<{ order: string }, string>(name, { connection: queueConnection(url) });
  const events = new QueueEvents(name, { connection: queueConnection(url) });
  const waiting = new Map<string, Waiting>();
  const notes = createNotes(url, onNote, workerCommand);
  const run = `${Date.now().toString(36)}-${process.pid}`;
  let count = 0;
  queue.on("error", notes.away);
  events.on("error", notes.away);
  events.on("stalled", () => onNote(workStalled()));
  events.on("completed", ({ jobId, returnvalue }) => settle(jobId, { done: String(returnvalue) }));
  events.on("failed", ({ jobId, failedReason }) => settle(jobId, { failed: failedReason }));

  function settle(id: string, end: { done: string } | { failed: string }): void {
    const found = waiting.get(id);
    waiting.delete(id);
    if ("done" in end) found?.resolve(end.done);
    else found?.reject(new Error(end.failed));
  }

  function handIn(id: string, order: string): Promise<unknown> {
    return queue.add(
      "order",
      { order },
      {
        jobId: id,
        attempts,
        backoff: { type: "exponential", delay: backoffMs },
        removeOnComplete: { age: 3600 },
        removeOnFail: { age: 86_400 },
      },
    );
  }

  const isInterrupted = () => interrupt?.signal?.aborted === true;

  function drop(id: string): void {
    waiting.get(id)?.reject(interrupt!.reason());
    waiting.delete(id);
  }

  /** Takes back what no worker has begun; what a server that is away knows is not waited for. */
  async function takeBack(): Promise<void> {
    const left = [...waiting.keys()];
    await Promise.all(
      left.map(async (id) => {
        const isWorkedOn = await within(
          farewellMs,
          queue.remove(id).then((removed) => removed === 0),
        );
        if (isWorkedOn !== true) drop(id);
      }),
    );
  }
  interrupt?.signal?.addEventListener("abort", () => void takeBack(), { once: true });

  async function look(): Promise<void> {
    const ids = [...waiting.keys()];
    if (stopLooking || ids.length === 0) return;
    const workers = (await queue.getWorkers()).length;
    for (const id of ids) {
      const job = await queue.getJob(id);
      const entry = waiting.get(id);
      if (entry === undefined) continue;
      if (job === undefined) {
        if (isInterrupted()) drop(id);
        else await handIn(id, entry.order);
      } else {
        const done = await job.isCompleted();
        if (!done && !(await job.isFailed())) continue;
        const ended = await queue.getJob(id); // what was read before the end does not hold it
        if (ended === undefined) continue;
        settle(id, done ? { done: String(ended.returnvalue) } : { failed: ended.failedReason });
      }
    }
    notes.workers(workers); // what was handed in meanwhile shows that the server takes it
  }

  let stopLooking = false;
  const keepLooking = async () => {
    while (!stopLooking) {
      await sleep(lookEveryMs, undefined, { ref: false });
      await look().catch(notes.away);
    }
  };
  void keepLooking();

  return {
    inHand,
    run: async (order) => {
      if (isInterrupted()) throw interrupt!.reason();
      const id = `${run}-${count++}`;
      return new Promise<string>((resolve, reject) => {
        waiting.set(id, { order, resolve, reject });
        handIn(id, order).catch(notes.away); // a server that is full or away gets it with the next look
      });
    },
    close: async () => {
      stopLooking = true;
      const left = [...waiting.keys()];
      waiting.clear();
      await within(farewellMs, Promise.allSettled(left.map((id) => queue.remove(id))));
      const closed = await within(farewellMs, Promise.allSettled([events.close(), queue.close()]));
      if (closed === null) for (const one of [events, queue]) void one.disconnect().catch(() => {}); // else it asks for ever
    },
  };
}

/** What a promise gives, or null when it fails or takes longer. */
function within<T>(ms: number, promise: Promise<T>): Promise<T | null> {
  return Promise.race([promise.catch(() => null), sleep(ms, null, { ref: false })]);
}

function createNotes(url: string, onNote: (note: string) => void, workerCommand: string) {
  const address = withoutPassword(url);
  const startedAt = Date.now();
  let isAway = false;
  let known = -1;
  return {
    away: (error: Error) => {
      if (!isAway) onNote(queueAway(address, error.message));
      isAway = true;
    },
    workers: (count: number) => {
      if (isAway) onNote(queueBack(address));
      isAway = false;
      if (count === known || (count === 0 && known === -1 && Date.now() - startedAt < patienceMs)) return;
      onNote(count === 0 ? noWorker(workerCommand) : workersSeen(count));
      known = count;
    },
  };
}
