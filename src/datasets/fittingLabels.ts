import { labelLongerThanAudio } from "../messages/labels.ts";
import { lastEndMs } from "./labelText.ts";
import type { LayoutContext } from "./layouts/layout.ts";
import type { LabelFile } from "./types.ts";

/** Aligners end their last frame after the last sample; a label may reach that far beyond its recording. */
const toleranceMs = 50;
/** The length of an MP3 is reckoned from its size: a coder adds up to two frames of silence. */
const inexactToleranceMs = 200;

/** The labels that end within their recording of `durationSec`; the others are reported and left out. */
export function fittingLabels(
  labels: readonly LabelFile[],
  { durationSec, exact }: { readonly durationSec: number; readonly exact: boolean },
  utterance: string,
  { tree, report }: LayoutContext,
): readonly LabelFile[] {
  const audioEndMs = durationSec * 1000;
  return labels.filter(({ path, format }) => {
    const endMs = lastEndMs(tree.readText(path), format);
    if (endMs <= audioEndMs + (exact ? toleranceMs : inexactToleranceMs)) return true;
    report({ ...labelLongerThanAudio(endMs, audioEndMs), excluded: true }, path, null, utterance);
    return false;
  });
}
