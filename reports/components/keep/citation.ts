import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { bibtex } from "../../../src/publish/cite/bibtex.ts";
import { citationText } from "../../../src/publish/cite/citationText.ts";
import { cslJson, viewItems } from "../../../src/publish/cite/cslItems.ts";
import { element } from "../element.ts";
import { citedView, type Kept } from "./citedView.ts";
import { copyText } from "./copyText.ts";
import { pageProvenance } from "./pageProvenance.ts";
import { saveFile } from "./saveFile.ts";

interface Form {
  readonly name: string;
  readonly content: string;
  /** File ending where the form is a kind of file. */
  readonly ending?: string;
  readonly type?: string;
}

function formsOf(kept: Kept): Form[] {
  const { text, bibtex: bibtexName, csl } = interfaceText().cite;
  const provenance = pageProvenance();
  const view = citedView(kept);
  const items = viewItems(provenance, view);
  return [
    { name: text, content: citationText(provenance, view) },
    { name: bibtexName, content: bibtex(items), ending: "bib", type: "text/plain;charset=utf-8" },
    { name: csl, content: cslJson(items), ending: "json", type: "application/json" },
  ];
}

function formElement(
  { id }: Kept,
  { name, content, ending, type = "" }: Form,
  say: (text: string) => void,
): HTMLElement {
  const { figure, cite } = interfaceText();
  const copy = async () => say((await copyText(content)) ? figure.copied : figure.notCopied);
  const save = () => {
    saveFile(`${id}.${ending}`, new Blob([content], { type }));
    say(figure.saved(`${id}.${ending}`));
  };
  return element(
    "div",
    { class: "citation" },
    element("p", { class: "citation-form" }, name),
    element("pre", { tabindex: 0, "aria-label": name }, content),
    element(
      "button",
      { type: "button", class: "tool", "aria-label": `${cite.copy}: ${name}`, click: copy },
      cite.copy,
    ),
    ending !== undefined &&
      element("button", { type: "button", class: "tool", click: save }, cite.save(`.${ending}`)),
  );
}

/** How to cite a picture, folded away; written when it is unfolded, so that it says what is shown then. */
export function citation(kept: Kept, say: (text: string) => void): HTMLElement {
  const place = element("div", { class: "citations" });
  const toggle = (event: Event) => {
    if ((event.target as HTMLDetailsElement).open)
      place.replaceChildren(...formsOf(kept).map((form) => formElement(kept, form, say)));
  };
  return element(
    "details",
    { class: "cite-figure", toggle },
    element("summary", { "data-key": `${kept.id}-cite` }, interfaceText().figure.cite),
    place,
  );
}
