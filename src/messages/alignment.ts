/** The model file is damaged, of another version, or something else. */
export function modelUnreadable(file: string, reason: string): string {
  return `${file} is no acoustic model that this version can read (${reason}). Delete it: it is made anew from the speech.`;
}

/** Why an utterance was set aside: the text as a whole. */
export function textDoesNotMatch(deviation: number, limit: number): string {
  return `The recording does not sound like its text: it fits ${deviation.toFixed(1)} deviations worse than the middle of the dataset, and ${limit} is the limit. Check whether audio and transcript were exchanged.`;
}

/** Why an utterance was set aside: one stretch of it. */
export function stretchDoesNotMatch(
  startMs: number,
  endMs: number,
  deviation: number,
  limit: number,
): string {
  const seconds = (ms: number) => (ms / 1000).toFixed(2);
  return `From ${seconds(startMs)} to ${seconds(endMs)} s the recording does not sound like its text (${deviation.toFixed(1)} deviations, limit ${limit}). Listen there: a word may be missing, added or read differently.`;
}

/** A corpus with too little speech to learn from. */
export function tooLittleSpeech(foundSec: number, neededSec: number, instead: string): string {
  return `There are ${Math.round(foundSec)} s of speech with a text; learning how its sounds sound takes about ${Math.round(neededSec)} s. ${instead}`;
}
