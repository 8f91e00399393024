import type { DrillItem, DrillWord } from "./describe.ts";
import type { Target } from "./targets.ts";

/** What of an item tables and handouts show. */
export type ShownItem = Omit<DrillItem, "parts">;

/** Sets to show: the drill words of the terminal, or what a reader picked. */
export interface ShownSets {
  readonly sets: readonly {
    readonly target: Target;
    readonly title: string;
    readonly items: readonly (ShownItem & { readonly heldOut: boolean })[];
  }[];
}

/** Where the words come from; each row says it, so that it stays true when it is copied elsewhere. */
export interface WordsOrigin {
  /** Dataset whose evidence counts; null where none does. */
  readonly dataset: string | null;
  /** How the datasets want to be cited, with licence. */
  readonly citations: readonly string[];
  /** Sentences that must stand with the results, such as that the voices are synthetic. */
  readonly notices: readonly string[];
}

/** Columns of the table that spreadsheets get. */
export const wordRowColumns = [
  ...["target", "number", "use", "score", "words", "kana", "romaji", "ipa", "gloss", "level", "accents"],
  ...["environment", "before", "after", "speakersHeard", "tokensHeard", "evidence", "neighbour", "clips"],
  ...["dataset", "sources", "notices"],
] as const;

export type WordRow = Readonly<Record<(typeof wordRowColumns)[number], string | number>>;

/** One row a word, pair or triplet of the sets; the words of a pair stand in one field, parted by a slash. */
export function wordRows({ sets }: ShownSets, { dataset, citations, notices }: WordsOrigin): WordRow[] {
  const origin = { dataset: dataset ?? "", sources: citations.join(" "), notices: notices.join(" ") };
  return sets.flatMap(({ target, items }) =>
    items.map((item, at) => {
      const each = (text: (word: DrillWord) => string) => item.words.map(text).join(" / ");
      return {
        target,
        number: at + 1,
        use: item.heldOut ? "test" : "practice",
        score: Number(item.score.toFixed(3)),
        words: each(({ surface }) => surface),
        kana: each(({ kana }) => kana),
        romaji: each(({ romaji }) => romaji),
        ipa: each(({ ipa }) => ipa),
        gloss: item.words.some(({ gloss }) => gloss !== null) ? each(({ gloss }) => gloss ?? "–") : "",
        level: item.words.some(({ level }) => level !== null) ? each(({ level }) => level ?? "–") : "",
        accents: each(accentText),
        environment: item.environment,
        before: item.c1,
        after: item.c2,
        speakersHeard: item.heardSpeakers,
        tokensHeard: Math.min(...item.words.map(({ tokens }) => tokens)),
        evidence: item.evidence,
        neighbour: item.neighbour === null ? "" : neighbourName(item.neighbour),
        clips: item.words.flatMap(({ clips }) => clips.map(clipName)).join(" "),
        ...origin,
      };
    }),
  );
}

/** Spelling, kana and IPA of a neighbour; a word in kana once. */
export function neighbourName({ surface, kana, ipa }: DrillWord): string {
  return `${surface === kana ? "" : `${surface} `}${kana} [${ipa}]`;
}

export function accentText({ accents }: Pick<DrillWord, "accents">): string {
  return accents === null ? "unknown" : accents.join(" or ");
}

function clipName({ dataset, utterance, startMs, endMs }: DrillWord["clips"][number]): string {
  return `${dataset}/${utterance}@${Math.round(startMs)}-${Math.round(endMs)}`;
}
