import type { Mora } from "../phonology/kana.ts";
import type { ReadingChoice } from "../phonology/readUtterance.ts";
import type { GraphPart } from "./graph.ts";
import { type MoraPart, moraeToParts } from "./moraeToParts.ts";

/** A stretch of an utterance: one way to read it, or several of which one was spoken. */
interface Stretch {
  readonly options: readonly (readonly Mora[])[];
}

/** The parts of an utterance's graph, and what they stand for once it is known which of them were spoken. */
export interface ReadingParts {
  readonly parts: readonly GraphPart[];
  /** `sources`: parts on the aligned path (`AlignedPhone.source`), in order; −1 stands for an edge pause. */
  readonly resolve: (sources: readonly number[]) => SpokenReading;
}

export interface SpokenReading {
  /** Morae of the readings that were spoken. */
  readonly morae: readonly Mora[];
  /** The part of a source on the path, its mora counted through the whole utterance. */
  readonly partAt: (source: number) => MoraPart;
}

/** Parts of an utterance's graph with a choice wherever the dictionary knows another reading of a word. */
export function readingParts(morae: readonly Mora[], choices: readonly ReadingChoice[]): ReadingParts {
  const stretches = stretchesOf(morae, choices);
  const last = stretches.length - 1;
  const partsOf = stretches.map(({ options }, i) =>
    options.map((option) => withBreak(option, i < last && mayPauseAfter(options))),
  );
  const parts = partsOf.flatMap((options): GraphPart[] =>
    options.length === 1 ? options[0]! : [{ choices: options }],
  );
  const flat = partsOf.flatMap((options, stretch) =>
    options.flatMap((option, choice) => option.map((part) => ({ part, stretch, choice }))),
  );
  return {
    parts,
    resolve: (sources) => {
      const chosen = new Map<number, number>();
      for (const source of sources) if (source >= 0) chosen.set(flat[source]!.stretch, flat[source]!.choice);
      const spoken = stretches.map(({ options }, stretch) => options[chosen.get(stretch) ?? 0]!);
      const starts = [0];
      for (const option of spoken) starts.push(starts.at(-1)! + option.length);
      return {
        morae: spoken.flat(),
        partAt: (source) => {
          const { part, stretch } = flat[source]!;
          return part.mora < 0 ? part : { ...part, mora: part.mora + starts[stretch]! };
        },
      };
    },
  };
}

function stretchesOf(morae: readonly Mora[], choices: readonly ReadingChoice[]): Stretch[] {
  const stretches: Stretch[] = [];
  let at = 0;
  for (const { moraStart, moraEnd, others } of choices) {
    if (moraStart > at) stretches.push({ options: [morae.slice(at, moraStart)] });
    stretches.push({ options: [morae.slice(moraStart, moraEnd), ...others] });
    at = moraEnd;
  }
  if (at < morae.length) stretches.push({ options: [morae.slice(at)] });
  return stretches;
}

/** Whether a pause may follow a stretch; its first reading knows, the others are the word alone. */
function mayPauseAfter(options: Stretch["options"]): boolean {
  return options[0]!.at(-1)?.breakAfter === true;
}

function withBreak(morae: readonly Mora[], mayPause: boolean): (MoraPart & GraphPart)[] {
  const parts = moraeToParts(morae);
  if (mayPause) parts.push({ phone: "pause", long: false, optional: true, mora: -1, morae: 0 });
  return parts;
}
