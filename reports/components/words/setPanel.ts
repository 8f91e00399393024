import { chooseSet } from "../../../src/findings/words/chooseSet.ts";
import type { OpenCandidate } from "../../../src/findings/words/openListing.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";
import type { Picks } from "./picks.ts";

const [fewest, usual, most] = [1, 12, 60];

/** Chooses a set that covers all environments from what the filter leaves: the same code, and seed, as the terminal's. */
export function setPanel(picks: Picks, shown: () => readonly OpenCandidate[]): HTMLElement {
  const text = interfaceText().words;
  const number = (name: string, value: number, min: number, max: number) =>
    element("input", { type: "number", name, value, min, max, step: 1, autocomplete: "off" });
  const size = number("size", usual, fewest, most);
  const seed = number("seed", 1, 1, 9999);
  const status = element("p", { class: "set-status", role: "status" });
  let last: readonly string[] = [];
  const choose = (step: number) => {
    const within = (input: HTMLInputElement, least: number, greatest: number) =>
      Math.min(greatest, Math.max(least, Math.round(Number(input.value)) || least));
    seed.value = String(within(seed, 1, 9999) + step);
    size.value = String(within(size, fewest, most));
    const { chosen, uncovered } = chooseSet(shown(), {
      ...{ size: Number(size.value), seed: Number(seed.value) },
      ...{ minSpeakers: 0, heardOnly: false, listOnly: false, heldOutShare: 0 },
    });
    const ids = chosen.map(({ id }) => id);
    picks.replace(step > 0 ? last : [], ids);
    last = ids;
    status.textContent = `${text.pickCount(ids.length)}. ${text.uncovered(uncovered.length)}`;
  };
  const submit = (event: Event) => {
    event.preventDefault();
    choose(0);
  };
  // On narrow screens the list must not lie far below.
  const roomy = matchMedia("(min-width: 64rem)").matches;
  const form = element(
    "form",
    { "aria-label": text.setHeading, submit },
    element("p", {}, text.setAbout),
    element(
      "div",
      { class: "set-fields" },
      element("label", { class: "choice" }, element("span", {}, text.size), size),
      element("label", { class: "choice" }, element("span", {}, text.seed), seed),
      element("button", { type: "submit", class: "tool strong" }, text.choose),
      element("button", { type: "button", class: "tool", click: () => choose(1) }, text.another),
    ),
    status,
  );
  return element(
    "details",
    { class: "set-panel", open: roomy },
    element("summary", {}, element("h2", {}, text.setHeading)),
    form,
  );
}
