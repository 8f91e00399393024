import { runOrder } from "./runOrder.ts";

/** What a thread is told when it starts. */
export interface ThreadData {
  /** Folder for decoded recordings that will be wanted again, and how many bytes of them. */
  readonly scratch: { readonly folder: string; readonly bytes: number };
}

/** Does the orders of the very process that the thread belongs to. */
export function doOrders({ scratch }: ThreadData): (order: string) => Promise<string> {
  return (order) => runOrder(order, { roots: null, scratch });
}
