import { capital } from "../../../src/findings/format.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { labelAt } from "../../../src/publish/readListen.ts";
import type { CorpusSet } from "../corpus.ts";
import { element } from "../element.ts";
import { figure } from "../figure.ts";
import { clipAddress, type ListenCorpus } from "./listenCorpus.ts";
import { markForm } from "./markForm.ts";
import type { MarkedSound, MarkStore } from "./markStore.ts";
import { measuresTable } from "./measuresTable.ts";
import { type PlayBar, playBar } from "./playBar.ts";
import type { HeardRecording } from "./player.ts";
import {
  decisionInWords,
  durationInWords,
  edgesInWords,
  madeBy,
  placeInWords,
  saidInWords,
} from "./soundWords.ts";
import { drawSpectrogram } from "./spectrogramCanvas.ts";
import { strip } from "./strip.ts";
import { stripDrawing } from "./stripDrawing.ts";
import { tokenMorae } from "./tokenMorae.ts";
import { why } from "./why.ts";

export interface TokenViewOptions {
  readonly corpus: ListenCorpus;
  readonly set: CorpusSet;
  readonly row: number;
  /** Where it stands among what matches; null where it does not. */
  readonly position: string;
  readonly widthPx: number;
  readonly store: MarkStore;
  readonly onMark: () => void;
  /** To the sound before or after; null at an end. */
  readonly onPrevious: (() => void) | null;
  readonly onNext: (() => void) | null;
}

export interface TokenView {
  readonly node: HTMLElement;
  /** Draws the spectrogram again, for another colour scheme. */
  readonly redraw: () => void;
  readonly close: () => void;
}

/** Narrow screens show few morae, wide ones a phrase. */
const moraeFor = (widthPx: number) => (widthPx < 480 ? 3 : widthPx < 800 ? 5 : 8);

/** A row as the reader's marks name it. */
export function soundOf({ table, utterances }: ListenCorpus, row: number): MarkedSound {
  return {
    utterance: utterances[table.counts.place[row]!]!.utterance,
    phone: labelAt(table, "phone", row)!,
    startMs: table.numbers.startMs[row]!,
    endMs: table.numbers.endMs[row]!,
  };
}

/** One sound on one card: its row of morae over the spectrogram, what plays it, why it was called so, and the marks. */
export function tokenView(options: TokenViewOptions): TokenView {
  const { corpus, set, row, widthPx } = options;
  const words = interfaceText().listen;
  const { table, utterances, datasets } = corpus;
  const place = table.counts.place[row]!;
  const address = clipAddress(corpus, place);
  const morae = tokenMorae(corpus, row, moraeFor(widthPx));
  const kana = morae.map((mora) => mora.kana).join("");
  const said = saidInWords(table, row);
  let bar: PlayBar | null = null;
  const drawn = strip(morae, {
    alternative: address === null ? words.stripSilent(kana, said) : words.strip(kana, said),
    onMora: address === null ? null : (mora) => bar?.loop(mora),
  });
  let recording: HeardRecording | null = null;
  const redraw = () => {
    if (recording !== null)
      drawSpectrogram(drawn.canvas, recording.measured, drawn.stretch.fromMs, drawn.stretch.toMs);
  };
  bar = playBar({
    ...{ address, strip: drawn },
    silent: datasets.find(({ id }) => id === set.dataset)?.silent ?? null,
    onRecording: (found) => {
      recording = found;
      redraw();
    },
  });
  const vowel = labelAt(table, "kind", row) === "vowel";
  const body = element(
    "div",
    { class: "sound" },
    drawn.node,
    key(),
    bar.node,
    sentence(utterances[place]!.text, labelAt(table, "word", row)),
    element(
      "div",
      { class: "sound-words" },
      why(table, row),
      vowel &&
        markForm({
          store: options.store,
          dataset: set.card,
          sound: soundOf(corpus, row),
          onMark: options.onMark,
        }),
    ),
  );
  const { utterance, speaker } = utterances[place]!;
  const node = figure({
    id: "listen-sound",
    question: options.position,
    finding: vowel
      ? `${capital(decisionInWords(table, row, madeBy(set, corpus.corrected)))}: ${placeInWords(table, row)}`
      : `${durationInWords(table, row)}: ${placeInWords(table, row)}`,
    picture: body,
    basis: {
      counts: `${durationInWords(table, row)}, ${edgesInWords(table, row, set)}. ${set.name}, ${speaker}, ${utterance}.`,
      method: null,
      warnings: [],
    },
    remarks: [words.withoutSound],
    numbers: measuresTable(table, row),
    drawing: () => stripDrawing(morae, drawn),
    ...{ filter: `${utterance}, ${placeInWords(table, row)}`, sets: [set.key] },
  });
  node.classList.add("sound-card");
  node.querySelector("figcaption")?.prepend(steps(options));
  return { node, redraw, close: () => bar.close() };
}

function steps({ onPrevious, onNext }: TokenViewOptions): HTMLElement {
  const words = interfaceText().listen;
  const step = (key: string, text: string, go: (() => void) | null) =>
    element(
      "button",
      { type: "button", class: "tool", "data-key": key, disabled: go === null, click: () => go?.() },
      text,
    );
  return element(
    "div",
    { class: "steps" },
    step("previous", `‹ ${words.previous}`, onPrevious),
    step("next", `${words.next} ›`, onNext),
  );
}

function key(): HTMLElement {
  const words = interfaceText().listen.key;
  const item = (kind: keyof typeof words) =>
    element("li", {}, element("span", { class: `foot ${kind}`, "aria-hidden": "true" }), words[kind]);
  return element(
    "ul",
    { class: "strip-key" },
    item("voiced"),
    item("devoiced"),
    item("unknown"),
    item("consonant"),
  );
}

/** The text of the utterance with the sound's word marked where it first stands. */
function sentence(text: string | null, word: string | null): HTMLElement | null {
  if (text === null) return null;
  const at = word === null ? -1 : text.indexOf(word);
  const parts =
    at < 0 ? [text] : [text.slice(0, at), element("mark", {}, word), text.slice(at + word!.length)];
  return element("p", { class: "sentence", lang: "ja" }, ...parts);
}
