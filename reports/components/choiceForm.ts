import { interfaceText } from "../../src/interface/interfaceText.ts";
import type { Choice, Choices } from "./choices.ts";
import { element } from "./element.ts";

function oneOf(choices: Choices, choice: Choice): HTMLElement {
  const options = choice.options.map(({ value, label }) =>
    element("option", { value, selected: value === choices.get(choice.name) }, label),
  );
  const change = (event: Event) => choices.set({ [choice.name]: (event.target as HTMLSelectElement).value });
  return element(
    "label",
    { class: "choice" },
    element("span", {}, choice.label),
    element("select", { name: choice.name, change, autocomplete: "off" }, ...options),
  );
}

function severalOf(choices: Choices, choice: Choice): HTMLElement {
  const chosen = choices.several(choice.name);
  const boxes = choice.options.map(({ value, label }) => {
    const change = (event: Event) => {
      const on = (event.target as HTMLInputElement).checked;
      const next = choice.options
        .map((option) => option.value)
        .filter((name) => (name === value ? on : chosen.includes(name)));
      choices.set({ [choice.name]: next.join(",") });
    };
    const box = element("input", {
      type: "checkbox",
      name: choice.name,
      value,
      checked: chosen.includes(value),
      autocomplete: "off",
      change,
    });
    return element("label", { class: "chip" }, box, element("span", { class: "ipa" }, label));
  });
  return element(
    "fieldset",
    { class: "choice several" },
    element("legend", {}, choice.label),
    element("div", { class: "chips" }, ...boxes),
  );
}

function typed(choices: Choices, { name, label, kind }: Choice): HTMLElement {
  const change = (event: Event) => choices.set({ [name]: (event.target as HTMLInputElement).value });
  const type = kind === "number" ? { type: "text", inputmode: "decimal" } : { type: "search" };
  return element(
    "label",
    { class: "choice" },
    element("span", {}, label),
    element("input", {
      ...type,
      name,
      value: choices.get(name),
      autocomplete: "off",
      spellcheck: "false",
      change,
    }),
  );
}

/** The control of one choice. */
export function choiceField(choices: Choices, choice: Choice): HTMLElement {
  if (choice.kind === "one") return oneOf(choices, choice);
  return choice.kind === "several" ? severalOf(choices, choice) : typed(choices, choice);
}

/** Which values of the address are not known here; empty and out of sight where all are. */
export function unknownLine({ unknown }: Choices, part?: string): HTMLElement {
  const words = interfaceText().choices;
  const own = unknown.filter((one) => one.part === part);
  const lines = own.map(({ label, value, instead }) => words.unknown(label, value, instead));
  return element(
    "p",
    { class: "unknown-values", role: "status", hidden: lines.length === 0 },
    lines.join(" "),
  );
}

function fill(form: HTMLFormElement, choices: Choices, part: string | undefined): void {
  const focused = document.activeElement as HTMLInputElement | null;
  const held =
    focused !== null && form.contains(focused) ? { name: focused.name, value: focused.value } : null;
  const reset = element(
    "button",
    { type: "button", class: "reset", disabled: choices.isInitial, click: () => choices.reset() },
    interfaceText().controls.reset,
  );
  form.replaceChildren(
    ...choices.list.filter((choice) => choice.part === part).map((choice) => choiceField(choices, choice)),
    reset,
    unknownLine(choices, part),
  );
  if (held === null) return;
  const same = [...form.querySelectorAll<HTMLInputElement>(`[name="${CSS.escape(held.name)}"]`)];
  (same.find((field) => field.type !== "checkbox" || field.value === held.value) ?? reset).focus();
}

/** Controls for all choices of a page, or of one part of it, kept in step with its address. */
export function choiceForm(choices: Choices, label: string, part?: string): HTMLFormElement {
  const submit = (event: Event) => event.preventDefault();
  const form = element("form", { class: "choices", "aria-label": label, submit });
  fill(form, choices, part);
  choices.onChange(() => fill(form, choices, part));
  return form;
}
