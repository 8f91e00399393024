import type { Reading } from "../reading.ts";

/** What tokens say about a contrast: the number part of a reading, or why they cannot. */
export type TokenAnswer =
  | (Pick<
      Reading,
      "basis" | "estimate" | "interval" | "tokens" | "speakers" | "sides" | "method" | "warnings"
    > & {
      readonly detail: string | null;
      /** Why there is no estimate although there are tokens; null when there is one. */
      readonly reason: string | null;
    })
  | { readonly unreadable: string };
