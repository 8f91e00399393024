import { decimate } from "./decimate.ts";

/** Nominal frequencies of mains, and how far from them a recording's may lie (grid, resampling), Hz. */
const mainsHz = [50, 60] as const;
const reachHz = 0.6;
const coarseHz = 0.03;
const fineHz = 0.003;
/** 100 ms hold whole periods of both mains, so that their harmonics do not leak into each other. */
const blockSec = 0.1;
/** The quietest share of the blocks is where a hum is looked for; fewer blocks than this tell nothing. */
const quietShare = 0.4;
const fewestBlocks = 5;
/** Hum is treated in stretches of this length: its phase drifts. */
const stretchSec = 6;
const highestHz = 950;
/** Harmonics by which mains is recognised. */
const tellingHarmonics = 6;
/** Share of a line's power that keeps its phase over all quiet blocks, 0 … 1: 1 for hum, about 1 ÷ blocks for noise. */
const humCoherence = 0.7;
const lineCoherence = 0.5;
/** In noise a coherence of c or more among n blocks has the probability (1 − c)^(n − 1); its logarithm must be below these. */
const lineChance = -9;
const humChance = -11;

/** A steady line, a·cos + b·sin of 2π·hz·t with t in s from the stretch's start. */
export interface HumLine {
  readonly hz: number;
  readonly cosine: number;
  readonly sine: number;
}

interface Blocks {
  readonly rateHz: number;
  readonly samples: Float32Array;
  /** First samples of the quiet blocks, and the weight of each (quieter counts more). */
  readonly starts: readonly number[];
  readonly weights: readonly number[];
}

/**
 * Takes off mains hum: lines at 50 or 60 Hz (±0.6) and their multiples below 950 Hz that keep frequency, level and phase
 * through the quietest two fifths of each six seconds. What speech adds changes its phase from sound to sound and is left
 * alone. Returns the same array when no hum is found. Own method, no published source.
 */
export function withoutHum(samples: Float32Array, sampleRateHz: number): Float32Array {
  const stretches = Math.max(1, Math.round(samples.length / (stretchSec * sampleRateHz)));
  let out = samples;
  for (let s = 0; s < stretches; s++) {
    const from = Math.floor((s * samples.length) / stretches);
    const to = Math.floor(((s + 1) * samples.length) / stretches);
    const lines = findHum(samples.subarray(from, to), sampleRateHz);
    if (lines.length === 0) continue;
    if (out === samples) out = samples.slice();
    subtract(out.subarray(from, to), lines, sampleRateHz);
  }
  return out;
}

/** Lines of the stronger of both mains in one stretch; empty when there is no hum. */
export function findHum(samples: Float32Array, sampleRateHz: number): HumLine[] {
  const factor = Math.max(1, Math.floor(sampleRateHz / 2000));
  const blocks = quietBlocks(decimate(samples, factor), sampleRateHz / factor);
  if (blocks === null) return [];
  let best: { readonly baseHz: number; readonly evidence: number } | null = null;
  for (const nominal of mainsHz) {
    const coarse = bestBase(blocks, nominal, reachHz, coarseHz);
    if (best !== null && coarse.evidence <= best.evidence) continue;
    best = bestBase(blocks, coarse.baseHz, coarseHz, fineHz);
  }
  const lines: HumLine[] = [];
  let told = false;
  for (let h = 1; h * best!.baseHz < highestHz; h++) {
    const { coherence, chance, line } = lineAt(blocks, h * best!.baseHz);
    if (chance > lineChance || coherence < lineCoherence) continue;
    if (h <= tellingHarmonics && coherence >= humCoherence && chance <= humChance) told = true;
    lines.push(line);
  }
  return told ? lines : [];
}

function quietBlocks(samples: Float32Array, rateHz: number): Blocks | null {
  const width = Math.round(blockSec * rateHz);
  const count = Math.floor(samples.length / width);
  const energies = Float64Array.from({ length: count }, (_, b) => {
    let sum = 0;
    let squares = 0;
    for (let i = b * width; i < (b + 1) * width; i++) {
      sum += samples[i]!;
      squares += samples[i]! * samples[i]!;
    }
    return squares - (sum * sum) / width;
  });
  const order = Array.from(energies.keys()).sort((a, b) => energies[a]! - energies[b]! || a - b);
  const quiet = order.slice(0, Math.round(quietShare * count)).sort((a, b) => a - b);
  const usual = energies[order[quiet.length >> 1] ?? 0] ?? 0;
  if (quiet.length < fewestBlocks || !(usual > 0)) return null;
  return {
    ...{ rateHz, samples },
    starts: quiet.map((b) => b * width),
    weights: quiet.map((b) => 1 / (energies[b]! + usual)),
  };
}

/** The base frequency whose telling harmonics hold most power that keeps its phase. Blocks are demodulated once, at the middle. */
function bestBase(blocks: Blocks, middleHz: number, reach: number, stepHz: number) {
  const { rateHz, starts, weights } = blocks;
  const parts = Array.from({ length: tellingHarmonics }, (_, h) => demodulate(blocks, (h + 1) * middleHz));
  let baseHz = middleHz;
  let most = -1;
  const steps = Math.round(reach / stepHz);
  for (let s = -steps; s <= steps; s++) {
    let evidence = 0;
    for (const [h, { real, imaginary }] of parts.entries()) {
      let re = 0;
      let im = 0;
      for (let b = 0; b < starts.length; b++) {
        const turn = (-2 * Math.PI * (h + 1) * s * stepHz * starts[b]!) / rateHz;
        const c = Math.cos(turn);
        const d = Math.sin(turn);
        re += weights[b]! * (real[b]! * c - imaginary[b]! * d);
        im += weights[b]! * (real[b]! * d + imaginary[b]! * c);
      }
      evidence += re * re + im * im;
    }
    if (evidence <= most) continue;
    most = evidence;
    baseHz = middleHz + s * stepHz;
  }
  return { baseHz, evidence: most };
}

/** Each quiet block's complex amplitude at `hz`; `power` makes |Σ w·z|² ÷ power the coherence times the sum of weights. */
function demodulate({ rateHz, samples, starts, weights }: Blocks, hz: number) {
  const width = Math.round(blockSec * rateHz);
  const real = new Float64Array(starts.length);
  const imaginary = new Float64Array(starts.length);
  const omega = (2 * Math.PI * hz) / rateHz;
  const stepC = Math.cos(omega);
  const stepS = -Math.sin(omega);
  let power = 0;
  let weight = 0;
  for (const [b, start] of starts.entries()) {
    let c = Math.cos(omega * start);
    let s = -Math.sin(omega * start);
    let re = 0;
    let im = 0;
    for (let i = start; i < start + width; i++) {
      re += samples[i]! * c;
      im += samples[i]! * s;
      const turned = c * stepC - s * stepS;
      s = c * stepS + s * stepC;
      c = turned;
    }
    real[b] = (2 * re) / width;
    imaginary[b] = (2 * im) / width;
    power += weights[b]! * (real[b]! ** 2 + imaginary[b]! ** 2);
    weight += weights[b]!;
  }
  return { real, imaginary, power: power * weight };
}

function lineAt(blocks: Blocks, hz: number) {
  const { real, imaginary, power } = demodulate(blocks, hz);
  const { weights } = blocks;
  const total = weights.reduce((sum, w) => sum + w, 0);
  const re = real.reduce((sum, x, b) => sum + weights[b]! * x, 0);
  const im = imaginary.reduce((sum, x, b) => sum + weights[b]! * x, 0);
  const coherence = power > 0 ? (re * re + im * im) / power : 0;
  const line: HumLine = { hz, cosine: re / total, sine: -im / total };
  const chance = (weights.length - 1) * Math.log(Math.max(1e-12, 1 - coherence));
  return { coherence, chance, line };
}

function subtract(samples: Float32Array, lines: readonly HumLine[], sampleRateHz: number): void {
  for (const { hz, cosine, sine } of lines) {
    const omega = (2 * Math.PI * hz) / sampleRateHz;
    const stepC = Math.cos(omega);
    const stepS = Math.sin(omega);
    let c = 1;
    let s = 0;
    for (let i = 0; i < samples.length; i++) {
      samples[i]! -= cosine * c + sine * s;
      const turned = c * stepC - s * stepS;
      s = c * stepS + s * stepC;
      c = turned;
    }
  }
}
