import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";
import { copyText } from "./copyText.ts";

/** Commands of the terminal that print the numbers of a picture, to be copied; null where there are none. */
export function commandLines(
  commands: readonly (string | null)[],
  say: (text: string) => void,
): HTMLElement | null {
  const given = commands.filter((command) => command !== null);
  if (given.length === 0) return null;
  const { figure, cite } = interfaceText();
  const text = given.join("\n");
  const copy = async () => say((await copyText(text)) ? figure.copied : figure.notCopied);
  return element(
    "div",
    { class: "command-lines" },
    element("p", { class: "citation-form" }, figure.terminal),
    element("pre", { tabindex: 0, "aria-label": figure.terminal, translate: "no" }, text),
    element(
      "button",
      { type: "button", class: "tool", "aria-label": `${cite.copy}: ${figure.terminal}`, click: copy },
      cite.copy,
    ),
    element("p", { class: "citation-form" }, figure.terminalNote),
  );
}
