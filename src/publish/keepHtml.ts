import { type Html, html } from "./html.ts";

/** What a reader can take away of an answer that stands in the page as it is built. */
export interface KeptAnswer {
  /** Stable from build to build; the page has an element of this id. */
  readonly id: string;
  /** `dataset/labelSet` key. */
  readonly set: string;
  readonly header: readonly string[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

/** Attributes by which the page's script adds the means to keep an answer; its words are taken from the page itself. */
export function keepAttributes({ id, set, header, rows }: KeptAnswer): Html {
  return html` data-keep="${id}" data-keep-set="${set}" data-keep-numbers="${JSON.stringify({ header, rows })}"`;
}
