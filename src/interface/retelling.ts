/** How a sentence of the results is told in another language: what it looks like in English, and the other wording. */
export interface Retelling {
  readonly pattern: RegExp;
  /** `values`: what the pattern's groups hold. */
  readonly tell: (...values: string[]) => string;
}

type Texts<Values extends readonly unknown[]> = { readonly [K in keyof Values]: string };

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
const mark = (place: number) => `\u0002${place}\u0003`;

/**
 * The retelling of what `english` says with any values. The pattern is made by calling it with marks in their place, so
 * that a change of the English wording cannot leave this behind; `english` may do nothing with its values but put them
 * into its text. `tell` gets them as they stand in the sentence.
 */
export function retelling<Values extends readonly unknown[]>(
  english: (...values: Values) => string,
  tell: (...values: Texts<Values>) => string,
): Retelling {
  const marks = Array.from({ length: english.length }, (_, place) => mark(place));
  const seen = new Set<string>();
  const pattern = escaped(english(...(marks as unknown as Values))).replace(
    /\u0002(\d+)\u0003/g,
    (_, place) => {
      if (seen.has(place)) return `\\k<v${place}>`;
      seen.add(place);
      return `(?<v${place}>.+?)`;
    },
  );
  return {
    pattern: new RegExp(`^${pattern}$`, "su"),
    tell: (...groups) => {
      const order = [...seen].map(Number);
      const values = marks.map((_, place) => groups[order.indexOf(place)] ?? "");
      return tell(...(values as unknown as Texts<Values>));
    },
  };
}

/** A retelling by a pattern, for what chooses between wordings or formats its values. */
export function retellingOf(pattern: RegExp, tell: (...values: string[]) => string): Retelling {
  return { pattern: new RegExp(`^${pattern.source}$`, "su"), tell };
}

/** A retelling of a sentence that is always the same. */
export function retellingExactly(english: string, told: string): Retelling {
  return retellingOf(new RegExp(escaped(english)), () => told);
}

/** The sentence as the first retelling that knows it tells it; null where none does. */
export function retoldBy(retellings: readonly Retelling[], sentence: string): string | null {
  for (const { pattern, tell } of retellings) {
    const found = pattern.exec(sentence);
    if (found !== null) return tell(...found.slice(1).map((group) => group ?? ""));
  }
  return null;
}
