import { howToMark } from "../messages/marks.ts";
import { escapeHtml } from "./html.ts";

/** One clip as the page shows it: nothing of what was decided. */
export interface MarkingRow {
  readonly clip: string;
  readonly word: string | null;
  readonly kana: string | null;
  readonly vowel: string;
  readonly before: string;
  readonly after: string;
  /** WAV, 16 bits, one channel, base64. */
  readonly wav: string;
  /** Where the vowel stands in the clip, as shares of its length. */
  readonly from: number;
  readonly to: number;
}

/**
 * A page that stands alone, opened from the disk: plays each clip, draws its waveform, takes a mark by click or key and
 * keeps it in the browser until it is saved as a filled sheet. It asks no other host for anything.
 */
export function markingPage(rows: readonly MarkingRow[], sample: string): string {
  const data = JSON.stringify({ sample, rows }).replaceAll("<", "\\u003c");
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'; media-src data: blob:">
<title>Mark ${rows.length} vowels by ear</title>
<style>
:root { color-scheme: light dark; font: 18px/1.5 system-ui, sans-serif; }
main { max-width: 44rem; margin: 2rem auto; padding: 0 1rem; }
canvas { width: 100%; height: 9rem; display: block; background: color-mix(in srgb, CanvasText 6%, Canvas); }
button { font: inherit; padding: 0.4rem 1rem; margin: 0 0.4rem 0.4rem 0; }
button[aria-pressed="true"] { outline: 3px solid CanvasText; }
#sounds { font-size: 1.6rem; } kbd { border: 1px solid; border-radius: 4px; padding: 0 0.3em; }
</style>
</head>
<body>
<main>
<h1>Is this vowel voiced?</h1>
<p>${escapeHtml(howToMark)} The shaded stretch is where the vowel should be.</p>
<p id="place" aria-live="polite"></p>
<p id="sounds" lang="ja"></p>
<canvas id="wave" width="1400" height="288" role="img" aria-label="Waveform of the clip"></canvas>
<p><button id="play">Play <kbd>space</kbd></button></p>
<p id="marks"><button data-mark="voiced">voiced <kbd>v</kbd></button><button data-mark="devoiced">devoiced <kbd>d</kbd></button><button data-mark="unsure">unsure <kbd>u</kbd></button></p>
<p><button id="back">Back <kbd>←</kbd></button><button id="next">Next <kbd>→</kbd></button><button id="save">Save the sheet</button></p>
</main>
<script type="application/json" id="data">${data}</script>
<script>${script}</script>
</body>
</html>
`;
}

const script = `
const { sample, rows } = JSON.parse(document.getElementById("data").textContent);
const get = (id) => document.getElementById(id);
const store = "marks-" + sample;
let kept = {};
try { kept = JSON.parse(localStorage.getItem(store)) || {}; } catch {}
let at = Math.max(0, rows.findIndex((row) => !kept[row.clip]));
const audio = new Audio();
const listen = () => audio.play().catch(() => {});
const bytesOf = (wav) => Uint8Array.from(atob(wav), (c) => c.charCodeAt(0));
function show() {
  const row = rows[at];
  const done = rows.filter((r) => kept[r.clip]).length;
  get("place").textContent = "Clip " + (at + 1) + " of " + rows.length + ", " + done + " marked";
  get("sounds").textContent = [row.kana, row.word, row.before + " [" + row.vowel + "] " + row.after].filter(Boolean).join("  ·  ");
  audio.src = "data:audio/wav;base64," + row.wav;
  for (const b of document.querySelectorAll("[data-mark]")) b.setAttribute("aria-pressed", String(kept[row.clip] === b.dataset.mark));
  draw(row);
}
function draw(row) {
  const bytes = bytesOf(row.wav);
  const wave = new Int16Array(bytes.buffer, 44, (bytes.length - 44) >> 1);
  const canvas = get("wave"), pen = canvas.getContext("2d"), { width, height } = canvas;
  const peak = wave.reduce((top, x) => Math.max(top, Math.abs(x)), 1);
  pen.clearRect(0, 0, width, height);
  pen.fillStyle = "#8884";
  pen.fillRect(row.from * width, 0, (row.to - row.from) * width, height);
  pen.strokeStyle = getComputedStyle(canvas).color;
  pen.beginPath();
  for (let x = 0; x < width; x++) {
    let low = 0, high = 0;
    for (let i = Math.floor((x * wave.length) / width); i < ((x + 1) * wave.length) / width; i++) { low = Math.min(low, wave[i]); high = Math.max(high, wave[i]); }
    pen.moveTo(x + 0.5, (1 - high / peak) * height / 2);
    pen.lineTo(x + 0.5, (1 - low / peak) * height / 2 + 1);
  }
  pen.stroke();
}
function move(by) { at = Math.min(rows.length - 1, Math.max(0, at + by)); show(); listen(); }
function mark(name) {
  kept[rows[at].clip] = name;
  try { localStorage.setItem(store, JSON.stringify(kept)); } catch {}
  if (at < rows.length - 1) move(1); else show();
}
function save() {
  const field = (x) => '"' + String(x ?? "").replaceAll('"', '""') + '"';
  const names = ["clip", "word", "kana", "vowel", "before", "after"];
  const lines = [[...names, "mark"], ...rows.map((r) => [...names.map((n) => r[n]), kept[r.clip]])];
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob(["\\ufeff", lines.map((l) => l.map(field).join(",")).join("\\r\\n"), "\\r\\n"], { type: "text/csv" }));
  link.download = "sheet.csv";
  link.click();
}
get("play").onclick = () => { audio.currentTime = 0; listen(); };
get("back").onclick = () => move(-1);
get("next").onclick = () => move(1);
get("save").onclick = save;
for (const b of document.querySelectorAll("[data-mark]")) b.onclick = () => mark(b.dataset.mark);
document.onkeydown = (e) => {
  if (e.ctrlKey || e.altKey || e.metaKey) return;
  const act = { " ": () => get("play").click(), v: () => mark("voiced"), d: () => mark("devoiced"), u: () => mark("unsure"), ArrowLeft: () => move(-1), ArrowRight: () => move(1) }[e.key];
  if (act) { e.preventDefault(); act(); }
};
show();
`;
