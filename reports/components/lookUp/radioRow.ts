import type { Choices } from "../choices.ts";
import { element } from "../element.ts";

/** The options of one choice side by side. */
export function radioRow(choices: Choices, name: string): HTMLElement {
  const choice = choices.list.find((one) => one.name === name)!;
  const boxes = choice.options.map(({ value, label }) =>
    element(
      "label",
      { class: "chip wide" },
      element("input", {
        ...{ type: "radio", name, value, checked: value === choices.get(name), autocomplete: "off" },
        ...{ "data-key": `${name}-${value}`, change: () => choices.set({ [name]: value }) },
      }),
      element("span", {}, label),
    ),
  );
  return element(
    "fieldset",
    { class: "choice radio-row" },
    element("legend", {}, choice.label),
    element("div", { class: "chips" }, ...boxes),
  );
}
