import type { english } from "./english/index.ts";
import type { Translation } from "./translation.ts";

/** The pages in Japanese. */
export const japanese: Translation<typeof english> = {
  navigation: {
    label: "ページ",
    skip: "本文へ移動",
    all: "ページ一覧",
    groups: {
      start: "概要",
      sounds: "録音から分かること",
      lessons: "授業のために",
      sources: "数値の根拠",
      own: "追加したページ",
    },
  },
};
