import type { DatasetFile } from "./datasetFile.ts";
import type { DraftUtterance } from "./layouts/layout.ts";

/** Letters of an id in which a speaker is looked for: a pattern takes time with the power of its repetitions. */
const longestId = 200;

/** Who speaks an utterance: the rule of dataset.json, else what the layout found, else the one name given. */
export function speakerRule(
  file: DatasetFile | null,
  single: string,
): (draft: DraftUtterance, labelPath: string | null) => string {
  const rule = file?.speaker;
  if (rule === undefined) return ({ speaker }) => speaker ?? single;
  if (rule.from === "one") return () => rule.name ?? single;
  if (rule.from === "id") {
    const pattern = new RegExp(rule.pattern);
    return ({ id, speaker }) => pattern.exec(id.slice(0, longestId))?.[1] ?? speaker ?? single;
  }
  return ({ audio, speaker, file: list }, labelPath) => {
    const folders = (audio ?? labelPath ?? list).split("/").slice(0, -1);
    return folders[rule.depth - 1] ?? speaker ?? single;
  };
}
