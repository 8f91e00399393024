/**
 * Runs `work` on every item, at most `inHand` at a time, and yields the results in the order of the items. Items are
 * drawn only when there is room, and none waits behind more than `inHand` results, so that memory stays flat. When one
 * fails, or `stop` says so, no further item is begun; those in hand are waited for.
 */
export async function* mapInOrder<T, R>(
  items: Iterable<T> | AsyncIterable<T>,
  inHand: number,
  work: (item: T) => Promise<R>,
  stop: () => Error | null = () => null,
): AsyncGenerator<R> {
  const running: Promise<R>[] = [];
  const source = Symbol.asyncIterator in items ? items[Symbol.asyncIterator]() : items[Symbol.iterator]();
  let more = true;
  try {
    while (more || running.length > 0) {
      while (more && running.length < inHand) {
        throwIf(stop());
        const next = await source.next();
        if (next.done === true) more = false;
        else running.push(quiet(work(next.value)));
      }
      if (running.length > 0) {
        yield await running[0]!;
        running.shift();
      }
    }
  } finally {
    await Promise.allSettled(running);
    await source.return?.();
  }
}

/** Its failure is met when its turn comes; until then it is no unhandled one. */
function quiet<R>(promise: Promise<R>): Promise<R> {
  promise.catch(() => {});
  return promise;
}

function throwIf(error: Error | null): void {
  if (error !== null) throw error;
}
