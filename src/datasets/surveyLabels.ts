import { decodeText } from "../storage/fileTreeText.ts";
import type { LabelSet } from "./labelSets.ts";
import type { LayoutContext } from "./layouts/layout.ts";
import type { LabelFormat } from "./types.ts";

/** A label set of which every file is known to be text, and what its files mark. */
export interface SurveyedLabelSet extends LabelSet {
  readonly marksDevoicing: boolean;
  readonly marksLength: boolean;
}

const devoiced: Readonly<Record<LabelFormat, RegExp>> = {
  "start-end-phone": /[ \t][AIUEO]:?\s/,
  ctm: /[ \t][AIUEO]:?\s/,
  "full-context": /-[AIUEO]\+/,
};
const long: Readonly<Record<LabelFormat, RegExp>> = {
  "start-end-phone": /[ \t][aiueo]:\s/,
  ctm: /[ \t][aiueo]:\s/,
  "full-context": /-[aiueo]:\+/,
};

/** Goes through every file once. A file that is no text is reported with its utterance and taken out of the set. */
export function surveyLabels(set: LabelSet, { tree, report }: LayoutContext): SurveyedLabelSet {
  const paths = new Map<number, string>();
  let marksDevoicing = false;
  let marksLength = false;
  for (const [index, path] of set.paths) {
    const { text, refused } = decodeText(tree.read(path));
    if (refused !== null) {
      report({ ...refused, excluded: true }, path, null, set.utteranceOf(index));
      continue;
    }
    paths.set(index, path);
    marksDevoicing ||= devoiced[set.format].test(`${text}\n`);
    marksLength ||= long[set.format].test(`${text}\n`);
  }
  return { ...set, paths, marksDevoicing, marksLength };
}
