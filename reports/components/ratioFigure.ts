import type { Contrast } from "../../src/estimates/lengthContrast.ts";
import { compareRatios, isFirm, type NamedRatio, ratioBasis } from "../../src/findings/sentences/ratios.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import type { ReferenceBand } from "../../src/publish/referenceBands.ts";
import { ratiosCommand } from "../../src/publish/terminalCommand.ts";
import { bySet, ofEachSet, setComparison, withoutSet } from "./bySet.ts";
import type { Choices } from "./choices.ts";
import type { Corpus } from "./corpus.ts";
import { figure } from "./figure.ts";
import { intervalPlot } from "./intervalPlot.ts";
import { lengthComparisons } from "./lengthChoices.ts";
import { lengthOptions, lengthRatios } from "./lengthRatios.ts";
import { live } from "./live.ts";
import { numbersTable } from "./numbersTable.ts";
import { ratioAxis, ratioColumns, soundOrder } from "./ratioColumns.ts";
import { bandNote } from "./referenceNote.ts";
import { valueName } from "./valueName.ts";

/** The axis starts at 1, where long and short would last the same, and always shows the published values. */
function domainOf(values: readonly (number | null)[], band: ReferenceBand | undefined): [number, number] {
  const known = values.filter((value): value is number => value !== null);
  const low = Math.min(1, ...known);
  const high = Math.max(band?.high ?? 2, ...known);
  return [Math.floor(low * 4) / 4, Math.min(8, Math.ceil(high * 4) / 4)];
}

function ratioRow({ name, row }: NamedRatio) {
  const { estimate, low, high } = row;
  const remark = interfaceText().length.tokens(row.long.tokens, row.short.tokens);
  return { name, estimate, low, high, remark, atLeast: row.bound !== null, thin: !isFirm(row) };
}

/** Ratios side by side, with the published values behind: by what the reader compares. */
export function ratioFigure(corpus: Corpus, choices: Choices, contrast: Contrast): HTMLElement {
  const question = () => interfaceText().sentences.ratios.question[contrast];
  return ratiosBy(corpus, choices, contrast, { id: `${contrast}-ratios`, question, by: null });
}

/** The same by the place between pauses, whatever the reader compares. */
export function positionFigure(corpus: Corpus, choices: Choices, contrast: Contrast): HTMLElement {
  const question = () => interfaceText().length.positions[contrast];
  return ratiosBy(corpus, choices, contrast, { id: `${contrast}-positions`, question, by: "position" });
}

type Comparison = (typeof lengthComparisons)[number]["value"] | typeof bySet;

function ratiosBy(
  corpus: Corpus,
  choices: Choices,
  contrast: Contrast,
  asked: { readonly id: string; readonly question: () => string; readonly by: Comparison | null },
): HTMLElement {
  const { id } = asked;
  const quoted = corpus.bands.find((one) => one.contrast === contrast);
  const band = quoted?.mark === "memory" ? undefined : quoted;
  return live(choices, (widthPx) => {
    const by = asked.by ?? (choices.get("by") as Comparison);
    const question = asked.question();
    const options = lengthOptions(corpus, choices, contrast);
    const together = by === bySet ? null : lengthRatios(corpus, options, [by]);
    const found =
      together === null || by === bySet
        ? ofEachSet(
            corpus,
            options.filter ?? {},
            (filter) => lengthRatios(corpus, { ...options, filter }, []).rows,
          )
        : together.rows.map((row) => ({ name: valueName(by, row.by[by] ?? null), row }));
    const rows = found.map(({ row }) => row);
    const notes = together?.notes ?? [];
    const named = found
      .filter(({ row }) => row.estimate !== null)
      .sort((a, b) =>
        by === "phone" ? soundOrder.indexOf(a.row.by.phone!) - soundOrder.indexOf(b.row.by.phone!) : 0,
      );
    if (named.length === 0) {
      const reason = rows[0]?.warnings[0] ?? notes[0] ?? interfaceText().sentences.nothing;
      return figure({
        id,
        question,
        finding: reason,
        picture: null,
        remarks: notes.slice(1),
        numbers: null,
      });
    }
    const finding = compareRatios(named);
    const firm = named.filter(({ row }) => isFirm(row));
    const domain = domainOf(
      (firm.length > 0 ? firm : named).flatMap(({ row }) => [row.low, row.high]),
      band,
    );
    const picture = intervalPlot(named.map(ratioRow), {
      ...ratioAxis,
      widthPx,
      domain,
      alternative: finding,
      band: band ?? null,
    });
    const label = [...lengthComparisons, ...setComparison(corpus)].find(({ value }) => value === by)!.label;
    return figure({
      id,
      ...(by === bySet ? { sets: corpus.sets.map(({ key }) => key) } : {}),
      question,
      finding,
      picture,
      basis: ratioBasis(named),
      remarks: notes,
      note: quoted === undefined ? null : bandNote(quoted),
      commands: [
        by === bySet
          ? ratiosCommand({ ...options, filter: withoutSet(options.filter ?? {}) }, [])
          : ratiosCommand(options, [by]),
      ],
      numbers: numbersTable(id, named, ratioColumns(label)),
    });
  });
}
