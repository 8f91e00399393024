import { preEmphasise } from "../../../src/signals/preEmphasis.ts";
import { spectrogram } from "../../../src/signals/spectrogram.ts";
import { measuredRateHz } from "./player.ts";

/** Levels this far below the loudest are left blank. */
const shownDb = 52;
/** Levels below this are a recording's silence, however loud beside the rest. */
const quietDb = -100;
const rows = 112;
const windowMs = 9;
const mostColumns = 900;

/**
 * Draws 0 to 8 kHz of a stretch into a canvas, in the canvas's own text colour: the louder, the less of the paper shines
 * through. High frequencies are lifted by up to 6 dB an octave, so that frication shows beside vowels.
 */
export function drawSpectrogram(
  canvas: HTMLCanvasElement,
  samples: Float32Array,
  fromMs: number,
  toMs: number,
): void {
  const columns = Math.max(
    1,
    Math.min(mostColumns, Math.round(canvas.clientWidth * devicePixelRatio) || 300),
  );
  const levels = spectrogram(preEmphasise(samples), {
    ...{ sampleRateHz: measuredRateHz, fromMs, toMs, columns, rows, windowMs },
    toHz: measuredRateHz / 2,
  });
  const loudest = levels.reduce((most, level) => Math.max(most, level), Number.NEGATIVE_INFINITY);
  canvas.width = columns;
  canvas.height = rows;
  const pen = canvas.getContext("2d");
  if (pen === null || loudest <= quietDb) return;
  const [red, green, blue] = colourOf(canvas);
  const image = pen.createImageData(columns, rows);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const level = levels[(rows - 1 - row) * columns + column]!;
      const share = Math.max(0, (level - loudest + shownDb) / shownDb);
      image.data.set([red, green, blue, Math.round(255 * share ** 1.35)], 4 * (row * columns + column));
    }
  }
  pen.putImageData(image, 0, 0);
  canvas.dataset.drawn = "yes";
}

function colourOf(canvas: HTMLCanvasElement): readonly [number, number, number] {
  const [red = 128, green = 128, blue = 128] = (getComputedStyle(canvas).color.match(/[\d.]+/g) ?? []).map(
    Number,
  );
  return [red, green, blue];
}
