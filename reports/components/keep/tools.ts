import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { sourceLine } from "../../../src/publish/cite/citationText.ts";
import { element } from "../element.ts";
import { addressOf, citedView, type Kept } from "./citedView.ts";
import { copyText } from "./copyText.ts";
import { type Numbers, numbersCsv } from "./keptNumbers.ts";
import { pageProvenance } from "./pageProvenance.ts";
import { pngOf } from "./pngOf.ts";
import { saveFile } from "./saveFile.ts";
import { standaloneSvg } from "./standaloneSvg.ts";

export interface KeptFigure extends Kept {
  readonly question: string;
  readonly picture: Element | null;
  /** Stands in for a picture that is no drawing itself, e.g. a table. */
  readonly drawing?: (() => Element) | undefined;
  readonly numbers: (() => Numbers) | null;
}

type Say = (text: string) => void;

function drawn(kept: KeptFigure) {
  const caption = {
    finding: kept.finding,
    description: [kept.question, kept.basis].filter(Boolean).join(" "),
    source: sourceLine(pageProvenance(), citedView(kept)),
  };
  return standaloneSvg(kept.picture!, caption, kept.drawing?.() ?? null);
}

function save(name: string, content: Blob, say: Say): void {
  saveFile(name, content);
  say(interfaceText().figure.saved(name));
}

async function savePicture(kept: KeptFigure, kind: "svg" | "png", say: Say): Promise<void> {
  const words = interfaceText().figure;
  const picture = drawn(kept);
  const content =
    picture === null || kind === "svg"
      ? picture && new Blob([picture.svg], { type: "image/svg+xml" })
      : await pngOf(picture);
  if (content === null) say(words.notDrawn);
  else save(`${kept.id}.${kind}`, content, say);
}

function saveNumbers(kept: KeptFigure, say: Say): void {
  const csv = numbersCsv(kept.numbers!(), kept);
  save(`${kept.id}.csv`, new Blob(["\ufeff", csv], { type: "text/csv;charset=utf-8" }), say);
}

/** True for what can be saved as a drawing. */
export function isDrawing({ picture, drawing }: KeptFigure): boolean {
  return picture !== null && (drawing !== undefined || picture.matches("svg, canvas, :has(svg, canvas)"));
}

/** Buttons to keep a figure and pass it on, as far as it has numbers and a drawing; `say` tells how it went. */
export function tools(kept: KeptFigure, say: Say): HTMLElement {
  const words = interfaceText().figure;
  const button = (key: string, text: string, click: () => void) =>
    element("button", { type: "button", class: "tool", "data-key": `${kept.id}-${key}`, click }, text);
  const copy = async (text: string, done: string) => say((await copyText(text)) ? done : words.notCopied);
  const { numbers } = kept;
  const link = element(
    "a",
    {
      class: "tool",
      href: `#${kept.id}`,
      "data-key": `${kept.id}-link`,
      click: () => void copy(addressOf(kept.id), words.linkCopied),
    },
    words.copyLink,
  );
  return element(
    "div",
    { class: "tools", role: "group", "aria-label": words.keep(kept.finding) },
    numbers && button("copy", words.copyNumbers, () => void copy(numbersCsv(numbers(), kept), words.copied)),
    numbers && button("csv", words.saveNumbers, () => saveNumbers(kept, say)),
    isDrawing(kept) && button("svg", words.saveSvg, () => void savePicture(kept, "svg", say)),
    isDrawing(kept) && button("png", words.savePng, () => void savePicture(kept, "png", say)),
    link,
  );
}
