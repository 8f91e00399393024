import type { OpenCandidate } from "../../../src/findings/words/openListing.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";
import { saveFile } from "../keep/saveFile.ts";
import { pickFormats, picksFile } from "./savePicks.ts";
import type { WordsCorpus } from "./wordsCorpus.ts";

/** Saves all that the filter leaves, shown or not. */
export function saveList(corpus: WordsCorpus, shown: () => readonly OpenCandidate[]): HTMLElement {
  const text = interfaceText().words;
  const buttons = pickFormats.map((format) =>
    element(
      "button",
      {
        ...{ type: "button", class: "tool", "data-key": `save-list-${format}` },
        click: () =>
          saveFile(
            `drill-words-${shown()[0]!.target}.${format.toLowerCase()}`,
            picksFile(format, shown(), corpus),
          ),
      },
      format,
    ),
  );
  return element("div", { class: "picks-tools list-tools" }, element("span", {}, text.saveList), ...buttons);
}

/** The button below a list that shows its best first, and all on a click. */
export class MoreButton {
  readonly host: HTMLButtonElement;
  #all = false;

  constructor(redraw: (all: boolean) => void) {
    const click = () => {
      this.#all = !this.#all;
      redraw(this.#all);
    };
    this.host = element("button", { type: "button", class: "tool strong show-all", click });
  }

  get all(): boolean {
    return this.#all;
  }

  /** Another list begins with its best. */
  reset(): void {
    this.#all = false;
  }

  /** Says what a click does; out of sight where there is no more than the best. */
  follow(total: number, best: number): void {
    const text = interfaceText().words;
    this.host.hidden = total <= best;
    this.host.textContent = this.#all ? text.bestOnly(best) : text.showAll(total);
  }
}
