import type { MatchLimits } from "../alignment/judgeMatches.ts";
import type { MatchScore } from "../alignment/matchScore.ts";
import { stretchDoesNotMatch, textDoesNotMatch, tooLittleSpeech } from "./alignment.ts";
import type { Wording } from "./labels.ts";

const listen =
  "Listen to it with its text. Correct the transcript or the file's name, or leave the line out.";

export function recordingTooShortFor(): Wording {
  return {
    rule: "recording-too-short-for-text",
    message: "The recording is too short for what its text says.",
    wayOut: listen,
  };
}

/** A recording of hours with a text of a word. */
export function recordingTooLongFor(durationSec: number, morae: number): Wording {
  return {
    rule: "recording-too-long-for-text",
    message: `The recording lasts ${Math.round(durationSec)} s, far too long for the ${morae} morae of its text.`,
    wayOut: listen,
  };
}

/** The recording and its text seem to be of two utterances, or part of them is. */
export function textDiffers(
  kind: "text" | "stretch",
  { gapDeviation, worstDeviation }: { gapDeviation: number; worstDeviation: number },
  limits: MatchLimits,
  worst: MatchScore["worst"],
): Wording {
  return {
    rule: kind === "text" ? "recording-not-of-text" : "recording-not-of-text-in-part",
    message:
      kind === "text"
        ? textDoesNotMatch(gapDeviation, limits.text)
        : stretchDoesNotMatch(worst.startMs, worst.endMs, worstDeviation, limits.stretch),
    wayOut: listen,
  };
}

/** The recording and its labels seem to be of two utterances. `match`: share of comparisons, 0 to 1. */
export function labelsDiffer(labelSet: string, match: number, limit: number): Wording {
  const percent = (share: number) => `${Math.floor(share * 1000) / 10} %`;
  return {
    rule: "recording-not-of-labels",
    message: `The recording does not sound like its labels (${labelSet}): where these have a, e or o it is louder than where they have a pause or a voiceless consonant in only ${percent(match)} of comparisons, even with all labels moved by up to 30 ms, and ${percent(limit)} is the limit.`,
    wayOut:
      "Listen to it with its text. Check whether recordings or label files were exchanged, or leave the line out.",
  };
}

/** A dataset with so little speech that its boundaries are less sure. */
export function littleToLearnFrom(foundSec: number, wantedSec: number, seeded: boolean): Wording {
  return {
    rule: "little-speech-to-learn-from",
    message: tooLittleSpeech(
      foundSec,
      wantedSec,
      seeded
        ? "The sounds were taken from the project’s own synthetic voices and fitted to what there is."
        : "The sounds were learnt from what there is.",
    ),
    wayOut:
      "Add recordings of the same kind. Until then look at each boundary's confidence, and cite no duration from so little.",
  };
}

/** Too few recordings to tell one that does not fit its text from the others. */
export function matchNotJudged(recordings: number, needed: number): Wording {
  const found = recordings === 1 ? "is only 1" : `are only ${recordings}`;
  return {
    rule: "match-not-judged",
    message: `Whether each recording is of its text could not be checked: they are compared with each other, which takes at least ${needed} recordings, and there ${found}.`,
    wayOut:
      "Listen to each recording with its text, since exchanged files would go unnoticed, or add recordings of the same kind.",
  };
}

/** What a dataset's card says of boundaries that were found here. */
export function alignmentNote(spokenMs: number, seeded: boolean, calibratedOn: number | null): string {
  const minutes = (spokenMs / 60_000).toFixed(1);
  const learnt = seeded
    ? `Boundaries were placed by this project's aligner, which fitted the sounds of its own synthetic voices to these recordings (${minutes} minutes: too few to learn from alone).`
    : `Boundaries were placed by this project's aligner, which learnt the sounds from these recordings themselves (${minutes} minutes).`;
  if (calibratedOn === null) return learnt;
  return `${learnt} Their usual distance from ${calibratedOn.toLocaleString("en")} boundaries placed by hand was taken off.`;
}
