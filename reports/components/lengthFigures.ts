import type { Contrast } from "../../src/estimates/lengthContrast.ts";
import type { RatioRow } from "../../src/estimates/ratios.ts";
import { formatCount, formatMs, formatRatio } from "../../src/findings/format.ts";
import {
  compareRatios,
  durationsSentence,
  isFirm,
  ratioBasis,
  speakerRatiosSentence,
} from "../../src/findings/sentences/ratios.ts";
import { soundName } from "../../src/findings/soundNames.ts";
import { phones } from "../../src/phonology/phones.ts";
import type { ReferenceBand } from "../../src/publish/referenceBands.ts";
import type { Choices } from "./choices.ts";
import { chosenSet } from "./chosenSet.ts";
import type { Corpus } from "./corpus.ts";
import { distributionPlot } from "./distributionPlot.ts";
import { distributionsOf } from "./distributions.ts";
import { figure } from "./figure.ts";
import { intervalPlot } from "./intervalPlot.ts";
import { lengthComparisons } from "./lengthChoices.ts";
import { lengthOptions, lengthRatios } from "./lengthRatios.ts";
import { live } from "./live.ts";
import { type NumbersColumn, numbersTable } from "./numbersTable.ts";
import { bandNote } from "./referenceNote.ts";
import { speakerPlot } from "./speakerPlot.ts";

type Named = { readonly name: string; readonly row: RatioRow };

const question = {
  "vowel-length": "How much longer does a long vowel last?",
  gemination: "How much longer does a doubled consonant last?",
} as const;
const sideNames = {
  "vowel-length": { short: "short", long: "long" },
  gemination: { short: "single", long: "doubled" },
} as const;

function ratioColumns(first: string): NumbersColumn<Named>[] {
  const ratio = (name: string, pick: (row: RatioRow) => number | null) => ({
    name,
    value: ({ row }: Named) => pick(row),
    show: ({ row }: Named) => (pick(row) === null ? "–" : formatRatio(pick(row)!)),
  });
  const ms = (name: string, pick: (row: RatioRow) => number) => ({
    name,
    value: ({ row }: Named) => pick(row),
    show: ({ row }: Named) => formatMs(pick(row)),
  });
  return [
    { name: first, value: ({ name }) => name },
    ratio("ratio (geometric means)", (row) => row.estimate),
    ratio("low", (row) => row.low),
    ratio("high", (row) => row.high),
    { name: "bound", value: ({ row }) => row.bound ?? "" },
    ratio("ratio of means", (row) => row.arithmetic),
    ratio("ratio of medians", (row) => row.median),
    ms("long, geometric mean (ms)", (row) => row.long.geometricMeanMs),
    ms("short, geometric mean (ms)", (row) => row.short.geometricMeanMs),
    { name: "long tokens", value: ({ row }) => row.long.tokens },
    { name: "short tokens", value: ({ row }) => row.short.tokens },
    { name: "speakers", value: ({ row }) => row.speakers },
    { name: "basis", value: ({ row }) => row.basis },
    { name: "method", value: ({ row }) => row.method },
  ];
}

function nameOf(by: string, value: string | null): string {
  if (value === null) return "unknown";
  if (by === "phone" || by === "before" || by === "after") return soundName(value);
  if (by === "accented") return value === "true" ? "accented" : "not accented";
  return value;
}

const order = ["i", "e", "a", "o", "u", ...phones.filter((phone) => !"aiueo".includes(phone))];

/** The axis starts at 1, where long and short would last the same, and always shows the published values. */
function domainOf(values: readonly (number | null)[], band: ReferenceBand | undefined): [number, number] {
  const known = values.filter((value): value is number => value !== null);
  const low = Math.min(1, ...known);
  const high = Math.max(band?.high ?? 2, ...known);
  return [Math.floor(low * 4) / 4, Math.min(8, Math.ceil(high * 4) / 4)];
}

/** For speakers, whose spread is the point: no wider than they need. */
function closeDomain(values: readonly number[]): [number, number] {
  return [Math.floor(Math.min(...values) * 4) / 4, Math.ceil(Math.max(...values) * 4) / 4];
}

const ratioAxis = { label: "times as long", format: (value: number) => formatRatio(value) };

function ratioRow({ name, row }: Named) {
  const { estimate, low, high } = row;
  const remark = `${formatCount(row.long.tokens)} : ${formatCount(row.short.tokens)} tokens`;
  return { name, estimate, low, high, remark, atLeast: row.bound !== null, thin: !isFirm(row) };
}

/** Ratios side by side, with the published values behind. */
export function ratioFigure(corpus: Corpus, choices: Choices, contrast: Contrast): HTMLElement {
  const id = `${contrast}-ratios`;
  const band = corpus.bands.find((one) => one.contrast === contrast);
  return live(choices, (widthPx) => {
    const by = choices.get("by") as (typeof lengthComparisons)[number]["value"];
    const { rows, notes } = lengthRatios(corpus, lengthOptions(corpus, choices, contrast), [by]);
    const named = rows
      .filter((row) => row.estimate !== null)
      .sort((a, b) => (by === "phone" ? order.indexOf(a.by.phone!) - order.indexOf(b.by.phone!) : 0))
      .map((row) => ({ name: nameOf(by, row.by[by] ?? null), row }));
    if (named.length === 0) {
      const reason = rows[0]?.warnings[0] ?? notes[0] ?? "Nothing in this corpus matches the choice.";
      return figure({
        id,
        question: question[contrast],
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
    const label = lengthComparisons.find(({ value }) => value === by)!.label;
    return figure({
      id,
      question: question[contrast],
      finding,
      picture,
      basis: ratioBasis(named),
      remarks: notes,
      note: band === undefined ? null : bandNote(band),
      numbers: numbersTable(id, named, ratioColumns(label)),
    });
  });
}

/** How the durations of short and long spread, sound by sound. */
export function distributionFigure(corpus: Corpus, choices: Choices, contrast: Contrast): HTMLElement {
  const id = `${contrast}-durations`;
  return live(choices, (widthPx) => {
    const { labels } = chosenSet(corpus, choices.get("set"));
    const options = lengthOptions(corpus, choices, contrast);
    const found = distributionsOf(corpus.cells, options, order, 8);
    const overall = lengthRatios(corpus, options, []).rows[0];
    const asked = "How do the durations spread?";
    if (found.length === 0 || overall === undefined) {
      const finding =
        "No sound here occurs often enough both short and long to show how its durations spread.";
      return figure({ id, question: asked, finding, picture: null, numbers: null });
    }
    const finding = durationsSentence(overall);
    const floor =
      labels.timeFloorMs === null
        ? []
        : [
            `Dotted line: ${labels.timeFloorMs} ms, the shortest duration the aligner can give. A sound that stands there lasted at most that long.`,
          ];
    const picture = distributionPlot(found, {
      widthPx,
      sides: sideNames[contrast],
      floorMs: labels.timeFloorMs,
      alternative: finding,
    });
    const bins = found.flatMap(({ name, side, histogram }) =>
      Array.from(histogram, (tokens, ms) => ({ name, side: sideNames[contrast][side], ms, tokens })).filter(
        ({ tokens }) => tokens > 0,
      ),
    );
    return figure({
      id,
      question: asked,
      finding,
      picture,
      remarks: [
        "Share of the tokens in steps of 10 ms, each curve for itself; the longest hundredth stands in the last step.",
        ...floor,
      ],
      numbers: numbersTable(id, bins, [
        { name: "sound", value: (bin) => bin.name },
        { name: "side", value: (bin) => bin.side },
        { name: "duration (ms)", value: (bin) => bin.ms },
        { name: "tokens", value: (bin) => bin.tokens },
      ]),
    });
  });
}

/** Each speaker's own ratio, long and short compared within the speaker. */
export function speakerRatioFigure(corpus: Corpus, choices: Choices, contrast: Contrast): HTMLElement {
  const id = `${contrast}-speakers`;
  return live(choices, (widthPx) => {
    const options = lengthOptions(corpus, choices, contrast);
    const overall = lengthRatios(corpus, options, []).rows[0];
    const { rows } = lengthRatios(corpus, options, ["speaker"]);
    const named = rows
      .filter((row) => row.estimate !== null)
      .map((row) => ({ name: String(row.by.speaker), row }));
    const asked = "How much do speakers differ?";
    if (overall?.estimate == null || named.length < 2) {
      const finding =
        "There are not two speakers with both long and short sounds in this cut, so nothing can be said about how speakers differ.";
      return figure({ id, question: asked, finding, picture: null, numbers: null });
    }
    const ratios = named.map(({ row }) => row.estimate!).sort((a, b) => a - b);
    const finding = speakerRatiosSentence(ratios, overall);
    const dots = named.map(({ name, row }) => ({
      speaker: name,
      value: row.estimate!,
      tokens: row.long.tokens,
    }));
    const domain = closeDomain([...ratios, overall.low!, overall.high!]);
    const band = { estimate: overall.estimate, low: overall.low!, high: overall.high! };
    return figure({
      id,
      question: asked,
      finding,
      picture: speakerPlot(dots, { ...ratioAxis, widthPx, domain, overall: band, alternative: finding }),
      remarks: [
        "Each dot is a speaker, compared with no one else; larger dots rest on more long sounds. The band is the interval over all of them.",
      ],
      numbers: numbersTable(id, named, ratioColumns("speaker")),
    });
  });
}
