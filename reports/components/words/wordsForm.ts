import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { Choice, Choices } from "../choices.ts";
import { element } from "../element.ts";
import { filterNames } from "./wordsChoices.ts";
import type { WordsCorpus } from "./wordsCorpus.ts";

/** Waits for the reader to pause while typing, ms. */
const typingRest = 150;

/** The filter: what to practise as a row of cards, then the rest. Fields stay where they are; only their values change. */
export function wordsForm(choices: Choices, corpus: WordsCorpus): HTMLFormElement {
  const text = interfaceText().words;
  const submit = (event: Event) => event.preventDefault();
  const reset = element(
    "button",
    { type: "button", class: "reset", click: () => clear(choices) },
    text.reset,
  );
  const targets = targetCards(choices, corpus);
  const rest = filterNames.filter((name) => name !== "target").map((name) => fieldOf(choices, name));
  const form = element(
    "form",
    { class: "choices word-filter", "aria-label": text.filter, submit },
    targets.host,
    ...rest.map(({ host }) => host),
    reset,
  );
  const sync = () => {
    targets.sync();
    for (const field of rest) field.sync();
    reset.disabled = isClear(choices);
  };
  choices.onChange(sync);
  sync();
  return form;
}

interface Field {
  readonly host: HTMLElement;
  readonly sync: () => void;
}

const narrowing = (choices: Choices) =>
  choices.list.filter(
    ({ name }) => name !== "target" && name !== "picks" && filterNames.some((own) => own === name),
  );

function isClear(choices: Choices): boolean {
  return narrowing(choices).every(({ name, initial }) => choices.get(name) === initial);
}

/** Takes the narrowing back; target and picks stay. */
function clear(choices: Choices): void {
  choices.set(Object.fromEntries(narrowing(choices).map(({ name, initial }) => [name, initial])));
}

function choiceOf(choices: Choices, name: string): Choice {
  return choices.list.find((choice) => choice.name === name)!;
}

function targetCards(choices: Choices, { candidates }: WordsCorpus): Field {
  const text = interfaceText().words;
  const listed = new Set(candidates.map(({ target }) => target));
  const boxes = new Map<string, HTMLInputElement>();
  const cards = choiceOf(choices, "target").options.map(({ value, label }) => {
    const { example, about } = text.targets[value as keyof typeof text.targets];
    const box = element("input", {
      type: "radio",
      name: "target",
      value,
      autocomplete: "off",
      change: () => choices.set({ target: value, before: "any", after: "any" }),
    });
    boxes.set(value, box);
    return element(
      "label",
      { class: "target-card", title: about },
      box,
      element(
        "span",
        { class: "face" },
        element("strong", {}, label),
        element("span", { lang: "ja" }, example),
      ),
    );
  });
  const host = element(
    "fieldset",
    { class: "choice targets", hidden: listed.size === 0 },
    element("legend", {}, text.target),
    element("div", { class: "target-cards" }, ...cards),
  );
  return {
    host,
    sync: () => {
      for (const [value, box] of boxes) box.checked = value === choices.get("target");
    },
  };
}

function fieldOf(choices: Choices, name: string): Field {
  return choiceOf(choices, name).kind === "text" ? typedField(choices, name) : selectField(choices, name);
}

function typedField(choices: Choices, name: string): Field {
  let wait: ReturnType<typeof setTimeout> | undefined;
  const typed = (event: Event) => {
    clearTimeout(wait);
    const { value } = event.target as HTMLInputElement;
    wait = setTimeout(() => choices.set({ [name]: value }), typingRest);
  };
  const input = element("input", {
    ...{ type: "search", name, lang: "ja", autocomplete: "off", autocapitalize: "none", spellcheck: "false" },
    input: typed,
  });
  const host = element(
    "label",
    { class: "choice" },
    element("span", {}, choiceOf(choices, name).label),
    input,
  );
  return {
    host,
    sync: () => {
      if (document.activeElement !== input) input.value = choices.get(name);
    },
  };
}

function selectField(choices: Choices, name: string): Field {
  const change = (event: Event) => choices.set({ [name]: (event.target as HTMLSelectElement).value });
  const select = element("select", { name, autocomplete: "off", change });
  const host = element(
    "label",
    { class: "choice" },
    element("span", {}, choiceOf(choices, name).label),
    select,
  );
  let drawn = "";
  return {
    host,
    sync: () => {
      const { options } = choiceOf(choices, name);
      const key = options.map(({ value, label }) => `${value} ${label}`).join();
      if (key !== drawn)
        select.replaceChildren(...options.map(({ value, label }) => element("option", { value }, label)));
      drawn = key;
      select.value = choices.get(name);
      host.hidden = options.length < 2;
    },
  };
}
