import { ipaOf } from "../../../src/findings/soundNames.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { CardMora, CardPart } from "../../../src/publish/tokenCard.ts";
import { element } from "../element.ts";
import { voicingOf } from "./tokenMorae.ts";

export interface Stretch {
  readonly fromMs: number;
  readonly toMs: number;
}

/** Shown before the first and after the last mora. */
const marginMs = 30;

export function stretchAround(morae: readonly CardMora[]): Stretch {
  return { fromMs: Math.max(0, morae[0]!.startMs - marginMs), toMs: morae.at(-1)!.endMs + marginMs };
}

export const place = ({ fromMs, toMs }: Stretch, startMs: number, endMs: number): string =>
  `left:${((100 * (startMs - fromMs)) / (toMs - fromMs)).toFixed(2)}%;width:${((100 * (endMs - startMs)) / (toMs - fromMs)).toFixed(2)}%`;

function foot(part: CardPart, mora: CardMora): HTMLElement {
  const kind = part.voicing ?? "consonant";
  const style = place({ fromMs: mora.startMs, toMs: mora.endMs }, part.startMs, part.endMs);
  return element("span", { class: `foot ${kind}${part.own ? " own" : ""}`, style });
}

function sound(part: CardPart, mora: CardMora): HTMLElement {
  const style = place({ fromMs: mora.startMs, toMs: mora.endMs }, part.startMs, part.endMs);
  return element("span", { class: "part ipa", style }, ipaOf(part.phone));
}

/** For the eye; whoever listens hears a name in words. */
const drawn = { "aria-hidden": "true" } as const;

/** Kana above, and below each of its sounds as wide as it lasted. */
export function moraInside(mora: CardMora, withSounds: boolean): HTMLElement[] {
  return [
    element(
      "span",
      { ...(mora.inKana ? { class: "kana", lang: "ja" } : { class: "kana ipa" }), ...drawn },
      mora.kana,
    ),
    element("span", { class: "feet", ...drawn }, ...mora.parts.map((part) => foot(part, mora))),
    ...(withSounds
      ? [element("span", { class: "parts-ipa", ...drawn }, ...mora.parts.map((part) => sound(part, mora)))]
      : []),
  ];
}

/** A row of morae in proportion to time that cannot be touched, for a list. */
export function smallStrip(morae: readonly CardMora[]): HTMLElement {
  const stretch = { fromMs: morae[0]!.startMs, toMs: morae.at(-1)!.endMs };
  const cells = morae.map((mora) =>
    element(
      "span",
      { class: "mora", style: place(stretch, mora.startMs, mora.endMs) },
      ...moraInside(mora, false),
    ),
  );
  return element("span", { class: "strip small", "aria-hidden": "true" }, ...cells);
}

export interface Strip {
  readonly node: HTMLElement;
  readonly canvas: HTMLCanvasElement;
  readonly stretch: Stretch;
  /** Shows where it plays; null for nowhere. */
  readonly at: (ms: number | null) => void;
  /** Shows which mora is looped; null for none. */
  readonly looped: (mora: CardMora | null) => void;
}

/**
 * The row of morae over its spectrogram. Each mora is a button; arrow keys lead from one to the next. The canvas is left
 * to whoever has the recording.
 */
export function strip(
  morae: readonly CardMora[],
  {
    alternative,
    onMora,
  }: { readonly alternative: string; readonly onMora: ((mora: CardMora) => void) | null },
): Strip {
  const words = interfaceText().listen;
  const stretch = stretchAround(morae);
  const own = morae.flatMap(({ parts }) => parts.filter((part) => part.own));
  const current = morae.findIndex(({ parts }) => parts.some((part) => part.own));
  const canvas = element("canvas", { class: "spectrum", role: "img", "aria-label": alternative });
  const buttons = morae.map((mora, i) => {
    const name = words.mora(mora.kana, nameOf(mora), Math.round(mora.endMs - mora.startMs));
    return element(
      "button",
      {
        ...{
          type: "button",
          class: "mora",
          style: place(stretch, mora.startMs, mora.endMs),
        },
        ...{ "aria-pressed": "false", tabindex: i === current ? 0 : -1, disabled: onMora === null },
        ...{ "data-key": `mora-${i}`, click: () => onMora?.(mora) },
      },
      ...moraInside(mora, true),
      element("span", { class: "spoken" }, name),
    );
  });
  const head = element("span", { class: "playhead", hidden: true });
  const row = element(
    "div",
    { class: "morae", role: "toolbar", "aria-label": words.morae, keydown: rove(buttons) },
    ...buttons,
  );
  const ownPlace = place(stretch, own[0]!.startMs, own.at(-1)!.endMs);
  const scale = element(
    "span",
    {
      class: "scale",
      style: place(stretch, stretch.fromMs, stretch.fromMs + 100).replace(/left:[^;]*;/, ""),
    },
    element("span", {}, words.hundredMs),
  );
  const node = element(
    "div",
    { class: "strip" },
    element(
      "div",
      { class: "sound-picture" },
      canvas,
      element("span", { class: "own-band", style: ownPlace }),
      element("span", { class: "hz top", "aria-hidden": "true" }, "8 kHz"),
      element("span", { class: "hz bottom", "aria-hidden": "true" }, "0"),
      head,
    ),
    row,
    scale,
  );
  return {
    ...{ node, canvas, stretch },
    at: (ms) => {
      head.hidden = ms === null;
      if (ms !== null)
        head.style.left = `${(100 * (ms - stretch.fromMs)) / (stretch.toMs - stretch.fromMs)}%`;
    },
    looped: (wanted) => {
      for (const [i, button] of buttons.entries())
        button.setAttribute("aria-pressed", String(morae[i] === wanted));
    },
  };
}

function nameOf(mora: CardMora): string {
  const words = interfaceText().listen;
  const voicing = voicingOf(mora);
  return voicing === "" ? "" : words[voicing];
}

/** One of the buttons can be reached by tab; arrows, Home and End lead to the others. */
function rove(buttons: readonly HTMLButtonElement[]): (event: Event) => void {
  return (event) => {
    const { key } = event as KeyboardEvent;
    const at = buttons.indexOf(document.activeElement as HTMLButtonElement);
    const next = { ArrowLeft: at - 1, ArrowRight: at + 1, Home: 0, End: buttons.length - 1 }[key];
    const button = next === undefined ? undefined : buttons[next];
    if (button === undefined) return;
    event.preventDefault();
    for (const one of buttons) one.tabIndex = one === button ? 0 : -1;
    button.focus();
  };
}
