import { deltas } from "../signals/deltas.ts";
import {
  addToMoments,
  createMoments,
  type Moments,
  type Normalisation,
  normalisationFrom,
  normalise,
} from "../signals/normalise.ts";
import { quantile } from "../signals/quantile.ts";
import { column, type Features, staticDims } from "./features.ts";

/** Columns of the features that the models hear; the energies are taken relative to the utterance's loud frames. */
const heard = [
  0,
  1,
  2,
  3,
  4,
  5,
  6,
  7,
  8,
  9,
  10,
  11,
  column.energy,
  column.low,
  column.high,
  column.periodicity,
];
const energies: readonly number[] = [column.energy, column.low, column.high];
const dims = heard.length;
/** Statics, slopes and bends. */
export const observationDims = 3 * dims;

function statics(features: Features): Float32Array {
  const { frames, values } = features;
  const out = new Float32Array(frames * dims);
  const track = new Float32Array(frames);
  heard.forEach((from, d) => {
    for (let t = 0; t < frames; t++) track[t] = values[t * staticDims + from]!;
    const offset = energies.includes(from) ? quantile(track, 0.95) : 0;
    for (let t = 0; t < frames; t++) out[t * dims + d] = track[t]! - offset;
  });
  return out;
}

/** Starts the sums of a speaker; add every recording, then call `normalisationFrom` (signals). */
export function createSpeakerMoments(): Moments {
  return createMoments(dims);
}

export function addToSpeaker(moments: Moments, features: Features): void {
  addToMoments(moments, statics(features));
}

/** Mean and scale over all given recordings of one speaker. */
export function speakerNormalisation(recordings: Iterable<Features>): Normalisation {
  const moments = createSpeakerMoments();
  for (const features of recordings) addToSpeaker(moments, features);
  return normalisationFrom(moments);
}

/**
 * What the acoustic model hears: the normalised features with their first and second slopes over ±1 frame
 * (frames × `observationDims`). Wider slopes blur boundaries.
 */
export function observe(features: Features, normalisation: Normalisation): Float32Array {
  const level = statics(features);
  normalise(level, normalisation, level);
  const slope = deltas(level, dims, 1);
  const bend = deltas(slope, dims, 1);
  const out = new Float32Array(features.frames * observationDims);
  for (let t = 0; t < features.frames; t++) {
    const row = t * observationDims;
    for (let d = 0; d < dims; d++) {
      out[row + d] = level[t * dims + d]!;
      out[row + dims + d] = slope[t * dims + d]!;
      out[row + 2 * dims + d] = bend[t * dims + d]!;
    }
  }
  return out;
}
