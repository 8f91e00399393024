import { readingNotKana } from "../../messages/datasets.ts";
import { findAudio } from "../findAudio.ts";
import { draft, type Layout, layoutResult } from "./layout.ts";
import { hasMarkedReadings, readMarkedReadings } from "./markedReadings.ts";

/** Label files with a `katakana.yaml` of readings, no transcript needed. */
export const readingsBesideLabels: Layout = {
  name: "readings-beside-labels",
  title: "katakana.yaml with ID: reading lines beside label files",
  recognise(context) {
    const file = hasMarkedReadings(context);
    return file === null ? null : `readings with accent marks in ${file}`;
  },
  read(context) {
    const { readings, source } = readMarkedReadings(context);
    const utterances = [...readings].map(([id, { marked, reading, file, line }]) => {
      if (reading === null) context.report(readingNotKana(marked), file, line, id);
      const accentReading = reading === null ? null : marked;
      return draft({
        id,
        stem: id,
        reading,
        accentReading,
        audio: findAudio(context.index, id, ""),
        file,
        line,
      });
    });
    return layoutResult(utterances, { readingSource: source });
  },
};
