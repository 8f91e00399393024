import type { HeardIndex } from "./heardIndex.ts";

export interface WithoutFragments {
  readonly heard: HeardIndex;
  /** Spellings that were left out, in the order in which they were first met. */
  readonly fragments: readonly string[];
}

const hiragana = /^[ぁ-ゖー]+$/u;

/**
 * Leaves out what was heard under a spelling in hiragana that nobody knows. In texts all in kana the analyser has to
 * guess where words end; what it cannot find in its dictionary is often a piece of a word with particles (ぷです of
 * こっぷです). Other scripts are kept: names and loanwords that no dictionary holds are words all the same.
 */
export function withoutFragments(heard: HeardIndex, isKnown: (surface: string) => boolean): WithoutFragments {
  const fragments = new Set<string>();
  for (const { surface } of heard.values())
    if (hiragana.test(surface) && !fragments.has(surface) && !isKnown(surface)) fragments.add(surface);
  if (fragments.size === 0) return { heard, fragments: [] };
  return {
    heard: new Map([...heard].filter(([, { surface }]) => !fragments.has(surface))),
    fragments: [...fragments],
  };
}
