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

/** What a dataset's card says of boundaries that were found here. */
export function alignmentNote(spokenMs: number, seeded: boolean, calibratedOn: number | null): string {
  const minutes = (spokenMs / 60_000).toFixed(1);
  const learnt = seeded
    ? `Boundaries were placed by this project's aligner, which fitted the sounds of its own synthetic voices to these recordings (${minutes} minutes: too few to learn from alone).`
    : `Boundaries were placed by this project's aligner, which learnt the sounds from these recordings themselves (${minutes} minutes).`;
  if (calibratedOn === null) return learnt;
  return `${learnt} Their usual distance from ${calibratedOn.toLocaleString("en")} boundaries placed by hand was taken off.`;
}
