import { runOrder } from "./runOrder.ts";

/** What a thread is told when it starts. */
export interface ThreadData {
  /** Folders below which everything lies that orders name; null for the orders of the very process. */
  readonly roots: readonly string[] | null;
  /** Folder for decoded recordings that will be wanted again, and how many bytes of them. */
  readonly scratch: { readonly folder: string; readonly bytes: number };
}

/** Does orders that the process hands on. */
export function doOrders({ roots, scratch }: ThreadData): (order: string) => Promise<string> {
  return (order) => runOrder(order, { roots, scratch });
}
