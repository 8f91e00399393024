import type { DevoicingEvidence } from "./devoicingEvidence.ts";
import type { DevoicingDecision } from "./devoicingProbability.ts";
import type { VoicingFrames } from "./voicingFrames.ts";
import type { VowelStretch } from "./vowelStretch.ts";

const voicedMs = 10;
const colourDb = 6;
const aboveFloorDb = 10;

/**
 * Whether anything of the vowel remains: it is voiced; or 10 ms of voice are found; or, whispered, the middle band
 * (F2, F3) gains 6 dB on the high band from the middle of C1 to the vowel while it stands 10 dB above the background.
 * A rule of this project's; "no trace" corresponds to what is called deletion (Nielsen, in Japanese over 95 % of
 * devoiced tokens in single environments).
 */
export function vowelTrace(
  frames: VoicingFrames,
  stretch: VowelStretch,
  evidence: DevoicingEvidence,
  decision: DevoicingDecision,
  floorDb: readonly [number, number, number],
): boolean {
  if (!decision.devoiced || evidence.voicedMs >= voicedMs) return true;
  if (stretch.c1From === null || stretch.vowelTo - stretch.vowelFrom < 2) return false;
  const middle = Math.floor((Math.max(stretch.from, stretch.c1From) + stretch.vowelFrom) / 2);
  const late = Math.floor((stretch.vowelFrom + stretch.vowelTo) / 2);
  const colour = (t: number) => frames.midDb[t]! - frames.highDb[t]!;
  if (middle >= late || late >= frames.frames) return false;
  return colour(late) - colour(middle) >= colourDb && frames.midDb[late]! >= floorDb[1] + aboveFloorDb;
}
