import { english } from "./english/index.ts";

/** The wording of the pages in one language. */
export type InterfaceText = typeof english;

let chosen: InterfaceText = english;

/** The wording in the language of the page that is being shown or built. */
export function interfaceText(): InterfaceText {
  return chosen;
}

/** Sets the language of what is shown or built from now on. */
export function useInterfaceText(text: InterfaceText): void {
  chosen = text;
}
