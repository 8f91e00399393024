import type { DrillWord } from "./describe.ts";
import type { DrillSet, DrillWords } from "./drillWords.ts";
import { accentText, neighbourName } from "./wordRows.ts";

export interface HandoutOptions {
  readonly paper: "A4" | "Letter";
  /** How the corpus wants to be cited, with licence; one entry a dataset. */
  readonly citations: readonly string[];
  /** Sentences that must stand with the results: what is invented, what is unknown. */
  readonly notices: readonly string[];
  readonly software: { readonly name: string; readonly version: string };
}

const marks: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};
const escaped = (text: string) => text.replace(/[&<>"']/gu, (mark) => marks[mark]!);
const lines = (tag: string, texts: readonly string[]) =>
  texts.map((text) => `<${tag}>${escaped(text)}</${tag}>`).join("\n");

const style = (paper: string) => `
@page { size: ${paper}; margin: 16mm; }
body { font: 11pt/1.45 "Noto Sans CJK JP", "Hiragino Sans", "Yu Gothic", Meiryo, sans-serif; max-width: 180mm; margin: 0 auto; padding: 8mm; color: #1c1c1c; background: #fff; }
h1 { font-size: 16pt; margin: 0 0 4mm; } h2 { font-size: 12.5pt; margin: 8mm 0 2mm; break-after: avoid; }
table { border-collapse: collapse; width: 100%; } thead { display: table-header-group; }
th { text-align: left; font-weight: 600; border-bottom: 1.2pt solid #1c1c1c; padding: 1mm 2mm; }
td { vertical-align: top; padding: 1.2mm 2mm; border-top: .5pt solid #999; } tr { break-inside: avoid; } tbody { break-inside: avoid; }
tbody tr + tr td { border-top: 0; } .kana { font-size: 14pt; } .evidence { font-size: 8.5pt; color: #444; padding-top: 0; } .test { font-size: 9pt; border: .5pt solid #444; padding: 0 1mm; }
footer, .notice { font-size: 9pt; } .notice { border-left: 2pt solid #1c1c1c; padding-left: 3mm; }
@media print { body { padding: 0; max-width: none; } }`;

/**
 * A sheet to print: each word in kana with romanisation, IPA, meaning if known, and the evidence below; citations at the
 * end. One file without scripts or anything from elsewhere; all text is escaped.
 */
export function handout(words: DrillWords, { paper, citations, notices, software }: HandoutOptions): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>Drill words</title>
<style>${style(paper)}
</style>
</head>
<body>
<h1>Drill words</h1>
${notices.map((text) => `<p class="notice">${escaped(text)}</p>`).join("\n")}
${words.sets
  .filter(({ items }) => items.length > 0)
  .map(setSection)
  .join("\n")}
<footer>
<h2>How to read this sheet</h2>
<p>A ring below a vowel (i̥, ɯ̥) marks the likelier pronunciation as devoiced: spoken without voice. ː marks a long vowel or a doubled consonant. “Test” marks words to keep out of practice, so that they can show what was learnt.</p>
${words.speakers.heldOut.length > 0 ? `<p>Voices to keep for the test: ${escaped(words.speakers.heldOut.join(", "))}.</p>` : ""}
<h2>Sources</h2>
${lines("p", citations)}
<p>${escaped(`${software.name} ${software.version}; seed ${words.options.seed}`)}</p>
</footer>
</body>
</html>
`;
}

function setSection({ title, items }: DrillSet): string {
  const rows = items.map((item, at) => {
    const spoken = item.words.map(wordCells).map((cells, i) => {
      const head =
        i === 0 ? `<td>${at + 1}${item.heldOut ? ' <span class="test">test</span>' : ""}</td>` : "<td></td>";
      return `<tr>${head}${cells}</tr>`;
    });
    return `<tbody>\n${spoken.join("\n")}\n<tr><td></td><td class="evidence" colspan="5">${escaped(item.evidence + neighbourText(item.neighbour))}</td></tr>\n</tbody>`;
  });
  return `<section>
<h2>${escaped(title[0]!.toUpperCase() + title.slice(1))}</h2>
<table>
<thead><tr><th>No.</th><th>Word</th><th>Romanised</th><th>IPA</th><th>Accent</th><th>Meaning</th></tr></thead>
${rows.join("\n")}
</table>
</section>`;
}

/** The neighbour in which the vowel keeps its voice. */
function neighbourText(word: DrillWord | null): string {
  return word === null ? "" : `. Voiced in the near neighbour ${neighbourName(word)}`;
}

function wordCells(word: DrillWord): string {
  const { surface, kana, romaji, ipa, gloss } = word;
  const written = surface === kana ? "" : ` ${escaped(surface)}`;
  return [
    `<td lang="ja"><span class="kana">${escaped(kana)}</span>${written}</td>`,
    `<td>${escaped(romaji)}</td>`,
    `<td>[${escaped(ipa)}]</td>`,
    `<td>${escaped(accentText(word))}</td>`,
    `<td>${escaped(gloss ?? "")}</td>`,
  ].join("");
}
