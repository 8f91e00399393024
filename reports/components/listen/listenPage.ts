import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { findTokens } from "../../../src/publish/listenSearch.ts";
import type { Choices } from "../choices.ts";
import type { CorpusSet } from "../corpus.ts";
import { element } from "../element.ts";
import { listenChoices, listenQuery, setOf } from "./listenChoices.ts";
import { type ListenCorpus, type ListenFiles, loadListen, rowOfKey, tokenKey } from "./listenCorpus.ts";
import { listenForm } from "./listenForm.ts";
import { codeIn } from "./markForm.ts";
import { MarkStore } from "./markStore.ts";
import { listedAtOnce, tokenList } from "./tokenList.ts";
import { soundOf, type TokenView, tokenView } from "./tokenView.ts";

/** The page of single sounds: a form, the sound that is chosen on a card, and the list of what matches. */
export async function listenPage(files: ListenFiles): Promise<HTMLElement> {
  const corpus = await loadListen(files);
  const words = interfaceText().listen;
  if (corpus.table.size === 0) return element("p", {}, ...codeIn(words.empty));
  const choices = listenChoices(corpus);
  const card = element("div", { class: "listen-card" });
  const list = element("div", { class: "listen-list" });
  const about = element("div", { class: "listen-about" });
  const page = new ListenPage(corpus, choices, card, list, about);
  page.start();
  return element(
    "div",
    { class: "listen" },
    listenForm(choices),
    about,
    element("div", { class: "listen-columns" }, card, list),
  );
}

class ListenPage {
  readonly #corpus: ListenCorpus;
  readonly #choices: Choices;
  readonly #card: HTMLElement;
  readonly #list: HTMLElement;
  readonly #about: HTMLElement;
  readonly #stores = new Map<string, MarkStore>();
  #rows: Int32Array = new Int32Array();
  #asked = "";
  #shown = listedAtOnce;
  #view: TokenView | null = null;

  constructor(
    corpus: ListenCorpus,
    choices: Choices,
    card: HTMLElement,
    list: HTMLElement,
    about: HTMLElement,
  ) {
    this.#corpus = corpus;
    this.#choices = choices;
    this.#card = card;
    this.#list = list;
    this.#about = about;
  }

  start(): void {
    let scope = this.#choices.get("scope");
    this.#choices.onChange(() => {
      if (this.#choices.get("scope") !== scope) location.reload();
      scope = this.#choices.get("scope");
      this.#draw();
    });
    let drawnWidth = 0;
    new ResizeObserver(() => {
      const width = Math.floor(this.#card.clientWidth);
      if (width === 0 || width === drawnWidth) return;
      drawnWidth = width;
      this.#draw();
    }).observe(this.#card);
    matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => this.#view?.redraw());
  }

  #storeOf({ card }: CorpusSet): MarkStore {
    const store = this.#stores.get(card.id) ?? new MarkStore(card.id, card.version);
    this.#stores.set(card.id, store);
    return store;
  }

  #draw(): void {
    const set = setOf(this.#corpus, this.#choices);
    if (set === null) return;
    this.#search(set);
    const row = this.#chosen(set);
    this.#drawList(set, row);
    this.#drawCard(set, row);
    this.#about.replaceChildren(...this.#howMuch(set));
  }

  /** Searches only when something other than the chosen sound has changed. */
  #search(set: CorpusSet): void {
    const { list } = this.#choices;
    const asked = JSON.stringify(list.map(({ name }) => (name === "token" ? "" : this.#choices.get(name))));
    if (asked === this.#asked) return;
    this.#asked = asked;
    this.#shown = listedAtOnce;
    const store = this.#storeOf(set);
    const isMarked = (row: number) => store.get(soundOf(this.#corpus, row)) !== null;
    this.#rows = findTokens(
      this.#corpus.table,
      this.#corpus.utterances,
      listenQuery(this.#choices, set, isMarked),
    );
  }

  #chosen(set: CorpusSet): number | null {
    const named = rowOfKey(this.#corpus, set, this.#choices.get("token"));
    return named ?? this.#rows[0] ?? null;
  }

  #choose(row: number): void {
    this.#choices.set({ token: tokenKey(this.#corpus, row) });
  }

  #drawList(set: CorpusSet, chosen: number | null): void {
    const store = this.#storeOf(set);
    keepFocus(this.#list, () =>
      tokenList({
        ...{ corpus: this.#corpus, rows: this.#rows, chosen },
        shown: Math.min(this.#shown, this.#rows.length),
        isMarked: (row) => store.size > 0 && store.get(soundOf(this.#corpus, row)) !== null,
        onChoose: (row) => {
          this.#choose(row);
          if (this.#card.getBoundingClientRect().top < 0) this.#card.scrollIntoView({ block: "start" });
        },
        onMore: () => {
          this.#shown += listedAtOnce;
          this.#drawList(set, chosen);
        },
      }),
    );
  }

  #drawCard(set: CorpusSet, row: number | null): void {
    this.#view?.close();
    this.#view = null;
    if (row === null) {
      this.#card.replaceChildren();
      return;
    }
    const words = interfaceText().listen;
    const at = this.#rows.indexOf(row);
    const step = (by: number) => {
      const next = at < 0 ? undefined : this.#rows[at + by];
      return next === undefined ? null : () => this.#choose(next);
    };
    keepFocus(this.#card, () => {
      this.#view = tokenView({
        ...{ corpus: this.#corpus, set, row, widthPx: this.#card.clientWidth, store: this.#storeOf(set) },
        position: at < 0 ? words.outside : words.place(at + 1, this.#rows.length),
        onMark: () => this.#drawList(set, row),
        ...{ onPrevious: step(-1), onNext: step(1) },
      });
      return this.#view.node;
    });
    this.#view!.redraw();
  }

  #howMuch({ dataset, card }: CorpusSet): HTMLElement[] {
    const words = interfaceText().listen;
    const { datasets, local } = this.#corpus;
    const found = datasets.find(({ id }) => id === dataset);
    if (found === undefined) return [];
    const { shown, tokens } = found;
    const plays = local?.datasets.includes(dataset) === true;
    const lines = [
      shown === tokens ? words.allHere(card.name, tokens) : words.someHere(card.name, shown, tokens),
    ];
    if (plays) lines.push(words.playsAll);
    else if (found.silent !== null) lines.push(found.silent);
    return lines.map((line) => element("p", {}, ...codeIn(line)));
  }
}

/** Fills a place anew; what had the focus in it, and what was unfolded, stays so. */
function keepFocus(host: HTMLElement, make: () => HTMLElement): void {
  const focused = document.activeElement;
  const key = focused !== null && host.contains(focused) ? focused.getAttribute("data-key") : null;
  const open = new Set([...host.querySelectorAll("details[open]")].map(({ className }) => className));
  host.replaceChildren(make());
  for (const details of host.querySelectorAll("details")) details.open = open.has(details.className);
  if (key !== null) host.querySelector<HTMLElement>(`[data-key="${CSS.escape(key)}"]`)?.focus();
}
