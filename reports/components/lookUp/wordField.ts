import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { Choices } from "../choices.ts";
import { element } from "../element.ts";

/** Waits for the reader to pause while typing, ms. */
const typingRest = 200;

/** Where the word is typed, with a few to try. */
export function wordField(choices: Choices): HTMLFormElement {
  const text = interfaceText().lookUp;
  let wait: ReturnType<typeof setTimeout> | undefined;
  const take = () => {
    clearTimeout(wait);
    if (input.value.trim() !== choices.get("word")) choices.set({ word: input.value });
  };
  const input = element("input", {
    ...{ type: "search", name: "word", lang: "ja", placeholder: text.placeholder, autocomplete: "off" },
    ...{ autocapitalize: "none", spellcheck: "false", maxlength: 60 },
    input: (event) => {
      clearTimeout(wait);
      // While a word is still being composed its letters are not yet what is meant.
      if (!(event as InputEvent).isComposing) wait = setTimeout(take, typingRest);
    },
    compositionend: () => {
      wait = setTimeout(take, typingRest);
    },
  });
  const submit = (event: Event) => {
    event.preventDefault();
    take();
  };
  const examples = text.exampleWords.map((word) =>
    element(
      "button",
      { type: "button", class: "example", lang: "ja", click: () => choices.set({ word, accent: "unknown" }) },
      word,
    ),
  );
  choices.onChange(() => {
    if (document.activeElement !== input) input.value = choices.get("word");
  });
  input.value = choices.get("word");
  return element(
    "form",
    { class: "word-field", submit },
    element("label", { class: "choice" }, element("span", {}, text.label), input),
    element("p", { class: "examples" }, `${text.examples}: `, ...examples),
  );
}
