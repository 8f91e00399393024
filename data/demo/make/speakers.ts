/** One invented reader: a synthetic voice with a vocal tract, pitch, rate and habits of its own. */
export interface Speaker {
  readonly id: string;
  /** Voice file without its ending, see `voices.ts`. */
  readonly voice: string;
  /** All-pass constant at 48 kHz; 0.55 is the voice as recorded, higher sounds like a longer vocal tract. */
  readonly allPass: number;
  /** Semitones added to the voice's pitch. */
  readonly pitchShiftSemitones: number;
  /** Speech rate, 1 as the voice was trained. */
  readonly rate: number;
  /** Added to the log-odds of every devoicing decision: below 0 whispers less, above 0 more. */
  readonly devoicing: number;
  /** Added again when the word or phrase ends there. */
  readonly devoicingAtPause: number;
  /** Added again when the vowel before was devoiced. */
  readonly devoicingInARow: number;
  /** Factor on the second half of a long vowel. */
  readonly longVowel: number;
  /** Factor on the closure of a geminate. */
  readonly geminate: number;
}

/** Eight invented readers. Every number is made up: none comes from a study or from a person. */
export const speakers: readonly Speaker[] = [
  reader("demo-01", "mei", 0.55, 0, 1.0, [0.6, 0.2, -0.8], 1.15, 1.05),
  reader("demo-02", "mei", 0.585, -5, 0.94, [-0.5, 0.6, -1.6], 1.3, 1.25),
  reader("demo-03", "tohoku-neutral", 0.55, 0, 1.02, [1.2, -0.5, -0.2], 1.05, 1.0),
  reader("demo-04", "tohoku-neutral", 0.6, -7, 1.1, [1.6, 0.4, 0.1], 0.95, 0.95),
  reader("demo-05", "tohoku-happy", 0.545, 1, 1.12, [0.1, -1.1, -1.0], 1.0, 1.1),
  reader("demo-06", "tohoku-sad", 0.57, -2, 0.92, [-1.4, -0.3, -1.9], 1.25, 1.3),
  reader("demo-07", "tohoku-angry", 0.565, -3, 1.06, [0.9, 0.9, -0.5], 1.1, 0.9),
  reader("demo-08", "mei", 0.525, 2, 1.15, [0.3, 0.1, -1.2], 0.9, 1.15),
];

function reader(
  id: string,
  voice: string,
  allPass: number,
  pitchShiftSemitones: number,
  rate: number,
  [devoicing, devoicingAtPause, devoicingInARow]: readonly [number, number, number],
  longVowel: number,
  geminate: number,
): Speaker {
  const habits = { devoicing, devoicingAtPause, devoicingInARow, longVowel, geminate };
  return { id, voice, allPass, pitchShiftSemitones, rate, ...habits };
}
