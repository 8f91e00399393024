import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";
import { type MarkDecision, type MarkedSound, type MarkStore, markDecisions } from "./markStore.ts";

export interface MarkFormOptions {
  readonly store: MarkStore;
  readonly dataset: { readonly id: string; readonly name: string; readonly version: string | null };
  readonly sound: MarkedSound;
  /** Hears of every change. */
  readonly onMark: () => void;
}

/** Where a reader says what they hear; the marks of the dataset can be downloaded or forgotten here too. */
export function markForm(options: MarkFormOptions): HTMLElement {
  const words = interfaceText().listen.marks;
  const place = element("div", { class: "mark-count" });
  const tell = () => place.replaceChildren(...summary(options, tellAll));
  const tellAll = () => {
    tell();
    options.onMark();
  };
  tell();
  return element(
    "section",
    { class: "marks", "aria-labelledby": "marks-title" },
    element("h3", { id: "marks-title" }, words.title),
    element(
      "fieldset",
      { class: "mark-options" },
      element("legend", {}, words.mine),
      ...[...markDecisions, null].map((decision) => option(options, decision, tellAll)),
    ),
    place,
    element("p", { class: "caution" }, ...codeIn(words.caution)),
  );
}

function option(
  { store, sound }: MarkFormOptions,
  decision: MarkDecision | null,
  tell: () => void,
): HTMLElement {
  const words = interfaceText().listen.marks;
  const change = () => {
    store.set(sound, decision);
    tell();
  };
  return element(
    "label",
    { class: "mark-option" },
    element("input", {
      ...{ type: "radio", name: "mark", value: decision ?? "", checked: store.get(sound) === decision },
      ...{ autocomplete: "off", "data-key": `mark-${decision ?? "none"}`, change },
    }),
    element("span", {}, decision === null ? words.none : words.options[decision]),
  );
}

function summary({ store, dataset }: MarkFormOptions, tell: () => void): HTMLElement[] {
  const words = interfaceText().listen.marks;
  const file = `marks-${dataset.id}${dataset.version === null ? "" : `-${dataset.version.replace(/[^\w.-]+/g, "_")}`}.csv`;
  const lines = [
    element("p", { role: "status" }, words.kept(store.size, dataset.name)),
    ...(store.kept ? [] : [element("p", {}, words.notKept)]),
  ];
  if (store.size === 0) return lines;
  const forget = (event: Event) => {
    const button = event.currentTarget as HTMLButtonElement;
    if (button.textContent === words.forgetSure) {
      store.forget();
      tell();
    } else button.textContent = words.forgetSure;
  };
  return [
    ...lines,
    element(
      "p",
      { class: "tools" },
      element(
        "button",
        {
          type: "button",
          class: "tool",
          "data-key": "marks-save",
          click: () => download(file, store.toCsv()),
        },
        words.download,
      ),
      element(
        "button",
        { type: "button", class: "tool", "data-key": "marks-forget", click: forget },
        words.forget,
      ),
    ),
    element("p", { class: "use" }, ...codeIn(words.use(file))),
  ];
}

/** Text in backquotes as code. */
export function codeIn(text: string): (string | HTMLElement)[] {
  return text.split("`").map((part, i) => (i % 2 === 0 ? part : element("code", {}, part)));
}

function download(name: string, csv: string): void {
  const url = URL.createObjectURL(new Blob([csv], { type: "text/csv;charset=utf-8" }));
  element("a", { href: url, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}
