import { exampleText, exampleValue } from "../findings/rules/exampleText.ts";
import { interfaceText } from "../interface/interfaceText.ts";
import type { Clip } from "./clips.ts";
import { type Html, html } from "./html.ts";
import { markJapanese } from "./markJapanese.ts";
import type { ShownVerdict } from "./readVerdicts.ts";
import { clipKey } from "./ruleClips.ts";

type Examples = NonNullable<ShownVerdict["examples"]>;

function soundHtml(
  sound: Examples["clearest"][number],
  { dataset, labelSet }: ShownVerdict,
  by: Examples["by"],
  clipOf: ReadonlyMap<string, Clip>,
): Html {
  const text = exampleText(sound);
  const value = exampleValue(sound, by);
  const clip = clipOf.get(clipKey({ dataset, labelSet, ...sound }));
  const told = [value, sound.speaker, sound.utterance].filter((part) => part !== null).join(", ");
  const heard = clip
    ? html`<audio controls preload="none" src="./${clip.file}" aria-label="${text}, ${sound.speaker}"></audio><details class="card-of"><summary>${interfaceText().ruleExamples.card}</summary><img class="token-card" src="./${clip.card.file}" alt="${interfaceText().examples.card(clip.card.alt) ?? clip.card.alt}" width="360" height="238" loading="lazy"></details>`
    : null;
  return html`<li><span class="what">${markJapanese(text)}</span><span class="told">${told}</span>${heard}</li>`;
}

/** The clearest and the most contrary sounds of a verdict, folded away, each to hear as far as a clip is published. */
export function ruleExamplesHtml(verdict: ShownVerdict, clips: readonly Clip[]): Html | null {
  const { examples } = verdict;
  if (examples === null || examples === undefined) return null;
  const words = interfaceText().ruleExamples;
  const { clearest, mostContrary, by } = examples;
  if (clearest.length + mostContrary.length === 0) return html`<p class="no-parts">${words.none}</p>`;
  const clipOf = new Map(clips.map((clip) => [clipKey(clip), clip]));
  const all = [...clearest, ...mostContrary];
  const heard = all.filter((sound) => clipOf.has(clipKey({ ...verdict, ...sound }))).length;
  const list = (name: string, sounds: Examples["clearest"]) =>
    sounds.length === 0
      ? null
      : html`<h4>${name}</h4><ul>${sounds.map((sound) => soundHtml(sound, verdict, by, clipOf))}</ul>`;
  return html`<details class="clips rule-examples"><summary>${words.summary(clearest.length, mostContrary.length)}</summary><p class="no-parts">${words.chosen(by)}${heard < all.length ? ` ${words.notAllHeard}` : ""}</p>${list(words.clearest, clearest)}${list(words.mostContrary, mostContrary)}</details>`;
}
