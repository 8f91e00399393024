import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { choiceField, unknownLine } from "../choiceForm.ts";
import type { Choices } from "../choices.ts";
import { element } from "../element.ts";
import { foldedChoices, openChoices } from "./listenChoices.ts";

/** The choices of the page: the usual ones in the open, the rest folded away; unfolded where one of them is set. */
export function listenForm(choices: Choices): HTMLFormElement {
  const words = interfaceText().listen;
  const submit = (event: Event) => {
    event.preventDefault();
    (document.activeElement as HTMLElement | null)?.blur();
  };
  const form = element("form", { class: "choices listen-form", "aria-label": words.form, submit });
  let unfolded = false;
  const fields = (names: readonly string[]) =>
    choices.list
      .filter(({ name }) => names.includes(name))
      .filter(({ name, options }) => name !== "set" || options.length > 1)
      .map((choice) => choiceField(choices, choice));
  const isSet = () =>
    choices.list.some(
      ({ name, initial }) =>
        (foldedChoices as readonly string[]).includes(name) && choices.get(name) !== initial,
    );
  const fill = () => {
    const focused = document.activeElement;
    const name = focused !== null && form.contains(focused) ? focused.getAttribute("name") : null;
    const toggle = (event: Event) => {
      unfolded = (event.target as HTMLDetailsElement).open;
    };
    form.replaceChildren(
      ...fields(openChoices),
      element(
        "button",
        {
          type: "button",
          class: "reset",
          name: "reset",
          disabled: choices.isInitial,
          click: () => choices.reset(),
        },
        words.reset,
      ),
      element(
        "details",
        { class: "more-choices", open: unfolded || isSet(), toggle },
        element("summary", {}, words.more),
        element("div", { class: "more-fields" }, ...fields(foldedChoices)),
      ),
      unknownLine(choices),
    );
    if (name !== null) form.querySelector<HTMLElement>(`[name="${CSS.escape(name)}"]`)?.focus();
  };
  fill();
  choices.onChange(fill);
  return form;
}
