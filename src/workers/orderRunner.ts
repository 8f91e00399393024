/** Does orders, wherever: in this process, in threads, or on other machines. An order and its answer are text. */
export interface OrderRunner {
  /** Orders that are worth having in hand at once. */
  readonly inHand: number;
  run(order: string): Promise<string>;
  close(): Promise<void>;
}

/** Does orders one after the other in this process. */
export function ownProcess(work: (order: string) => Promise<string>): OrderRunner {
  return { inHand: 1, run: work, close: async () => {} };
}
