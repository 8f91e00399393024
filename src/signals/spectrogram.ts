import { createRealFft } from "./fft.ts";
import { makeWindow } from "./window.ts";

export interface SpectrogramOptions {
  readonly sampleRateHz: number;
  /** Stretch that is shown, ms from the first sample; what lies outside the samples is silence. */
  readonly fromMs: number;
  readonly toMs: number;
  /** Columns over that stretch, at even steps, and rows from 0 Hz to `toHz`, each as wide as the next. */
  readonly columns: number;
  readonly rows: number;
  /** At most half the sample rate. */
  readonly toHz: number;
  /** Length of the Hann window. 12 ms shows single resonances and bursts, not single harmonics. */
  readonly windowMs: number;
}

/** Level at which digital silence is shown, dB. */
export const silenceDb = -120;

/**
 * Levels in dB, `rows` × `columns` one row after the other, the lowest frequencies first. A full-scale sine reads
 * 0 dB where its frequency is a bin's (within 0.4 dB elsewhere); silence reads −120. Each row takes the highest of its
 * bins, so that nothing narrow is lost. Samples that are not finite count as 0. Throws RangeError for an empty stretch,
 * no rows or columns, or a `toHz` beyond half the sample rate.
 */
export function spectrogram(samples: Float32Array, options: SpectrogramOptions): Float32Array {
  const { sampleRateHz, fromMs, toMs, columns, rows, toHz, windowMs } = options;
  if (!(toMs > fromMs)) throw new RangeError(`the stretch ${fromMs} to ${toMs} ms is empty`);
  if (!(columns >= 1 && rows >= 1)) throw new RangeError(`${columns} columns × ${rows} rows show nothing`);
  if (!(toHz > 0 && toHz <= sampleRateHz / 2))
    throw new RangeError(`toHz=${toHz} must lie between 0 and half the sample rate (${sampleRateHz / 2} Hz)`);
  const window = makeWindow("hann", Math.max(2, Math.round((windowMs * sampleRateHz) / 1000)));
  const fft = createRealFft(2 ** Math.ceil(Math.log2(Math.max(4, 2 * window.length))));
  const sinePeak = (window.reduce((sum, w) => sum + w, 0) / 2) ** 2;
  const binsPerRow = (toHz / sampleRateHz) * (fft.size / rows);
  const levels = new Float32Array(rows * columns);
  for (let column = 0; column < columns; column++) {
    const centreMs = fromMs + ((column + 0.5) * (toMs - fromMs)) / columns;
    const start = Math.round((centreMs * sampleRateHz) / 1000 - window.length / 2);
    for (let i = 0; i < window.length; i++) {
      const sample = samples[start + i] ?? 0;
      fft.input[i] = Number.isFinite(sample) ? sample * window[i]! : 0;
    }
    const power = fft.power();
    for (let row = 0; row < rows; row++) {
      const first = Math.floor(row * binsPerRow);
      const last = Math.max(first, Math.min(fft.size / 2, Math.ceil((row + 1) * binsPerRow) - 1));
      let highest = 0;
      for (let k = first; k <= last; k++) highest = Math.max(highest, power[k]!);
      levels[row * columns + column] = Math.max(silenceDb, 10 * Math.log10(highest / sinePeak));
    }
  }
  return levels;
}
