import { bases } from "../../src/basis.ts";
import { differenceBetween } from "../../src/estimates/differenceBetween.ts";
import { mainBasisFilter } from "../../src/estimates/mainBasisFilter.ts";
import { devoicingRates, type RateOptions } from "../../src/estimates/rates.ts";
import type { VowelWords } from "../../src/estimates/samples/vowelWords.ts";
import { formatAmount, formatCount, joinWords } from "../../src/findings/format.ts";
import { mainBasis } from "../../src/findings/sentences/mainBasis.ts";
import {
  compareRates,
  type NamedRate,
  rateBasis,
  ruleCount,
  type Subject,
} from "../../src/findings/sentences/rates.ts";
import { soundName } from "../../src/findings/soundNames.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { ratesCommand } from "../../src/publish/terminalCommand.ts";
import { bySet, ofEachSet, setComparison, withoutSet } from "./bySet.ts";
import type { Choices } from "./choices.ts";
import { chosenSet } from "./chosenSet.ts";
import type { Corpus } from "./corpus.ts";
import { ByWord } from "./devoicing/byWord.ts";
import { correctedPercent, rateOptions } from "./devoicing/corrected.ts";
import { errorRemarks } from "./devoicing/errorRemarks.ts";
import { comparisons, devoicingFilter } from "./devoicingChoices.ts";
import { figure } from "./figure.ts";
import { intervalPlot } from "./intervalPlot.ts";
import { live } from "./live.ts";
import { numbersTable } from "./numbersTable.ts";
import { percentAxis, rateColumns } from "./rateColumns.ts";
import { valueName } from "./valueName.ts";

/** The vowels in the choice as a subject: `the vowels i and ɯ (u)`. */
function subjectOf(choices: Choices): Subject {
  const vowels = choices.several("vowel").map((vowel) => soundName(vowel));
  const plural = vowels.length > 1;
  return { words: interfaceText().sentences.rates.subject(joinWords(vowels), plural), plural };
}

const percentRow = ({ name, row }: NamedRate) => ({
  name,
  estimate: row.estimate === null ? null : 100 * row.estimate,
  low: row.low === null ? null : 100 * row.low,
  high: row.high === null ? null : 100 * row.high,
  remark:
    row.estimate === null
      ? interfaceText().sentences.rates.rule(formatCount(row.devoiced), formatCount(row.tokens))
      : formatAmount(row.tokens, "vowel"),
  second: correctedPercent(row),
});

/** Rates side by side by what the reader compares. */
export function rateFigure(corpus: Corpus, choices: Choices, vowels: VowelWords | null = null): HTMLElement {
  const byWord = new ByWord(vowels);
  const rates = (asked: RateOptions) => byWord.rates(devoicingRates(corpus.cells, asked), asked);
  return live(choices, (widthPx) => {
    const by = choices.get("by") as (typeof comparisons)[number]["value"] | typeof bySet;
    const options = rateOptions(corpus);
    const filter = devoicingFilter(corpus, choices);
    const { dataset, labelSet } = chosenSet(corpus, choices.get("set"));
    const apart = mainBasisFilter(corpus.cells, dataset, labelSet);
    const together = by === bySet ? null : rates({ ...options, filter, by: [by] });
    const rows: NamedRate[] =
      by === bySet
        ? ofEachSet(
            corpus,
            { ...filter, devoicedBasis: bases },
            (cut) => mainBasis(rates({ ...options, filter: cut }).rows).main,
          )
        : together!.rows.map((row) => ({ name: valueName(by, row.by[by] ?? null), row }));
    const notes = together?.notes ?? [];
    const finding = compareRates(rows, subjectOf(choices), (a, b, level) =>
      by === bySet ? null : differenceBetween(corpus.cells, { filter, by: [by], level }, a, b),
    );
    const label = [...comparisons, ...setComparison(corpus)].find(({ value }) => value === by)!.label;
    const shown = rows.some(({ row }) => row.estimate !== null);
    const corrected = rows.some(({ row }) => row.corrected !== null);
    const withWords = rows.some(({ row }) => row.crossed !== null);
    const byRule = rows
      .filter(({ row }) => row.scope === "rule")
      .map(({ name, row }) => ruleCount(name, row));
    return figure({
      id: "devoicing-rates",
      ...(by === bySet ? { sets: corpus.sets.map(({ key }) => key) } : {}),
      question: interfaceText().sentences.rates.question(label),
      finding: rows.length === 0 ? (notes[0] ?? finding) : finding,
      picture: shown
        ? intervalPlot(rows.map(percentRow), { ...percentAxis, widthPx, alternative: finding })
        : null,
      basis: rateBasis(rows),
      remarks: [
        ...byWord.remarks(rows),
        ...errorRemarks(corpus.error, rows, corrected),
        ...(apart.others > 0
          ? [interfaceText().listen.corrections.leftOut(apart.others, joinWords(apart.bases))]
          : []),
        ...(shown ? [] : byRule),
        ...(rows.length === 0 ? notes.slice(1) : notes),
      ],
      commands: [
        by === bySet
          ? ratesCommand(withoutSet(filter), [], corpus.level)
          : ratesCommand(filter, [by], corpus.level),
      ],
      numbers:
        rows.length === 0
          ? null
          : numbersTable("devoicing-rates", rows, rateColumns(label, corrected, withWords)),
    });
  });
}
