import type { RhythmOfSpeakers } from "../../../src/estimates/explain/explainTiming.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { rhythmDependsOnText } from "../../../src/messages/explain.ts";
import { explainCommand } from "../../../src/publish/terminalCommand.ts";
import type { Choices } from "../choices.ts";
import { chosenSet } from "../chosenSet.ts";
import { element } from "../element.ts";
import { figure } from "../figure.ts";
import { live } from "../live.ts";
import { numbersTable } from "../numbersTable.ts";
import { publishedNote, shortWork } from "../publishedNote.ts";
import { rhythmStrip } from "./rhythmStrip.ts";
import { chosenTiming, type TimingPage } from "./timingChoices.ts";

const shown = ["vowelPercent", "deltaConsonantMs", "vowelNpvi"] as const;
type Measure = (typeof shown)[number];

function partOf(rhythm: RhythmOfSpeakers, measure: Measure, level: number): string[] {
  const { rhythm: words } = interfaceText().timing;
  const mean = rhythm[measure];
  if (mean === null) return [];
  const value = mean.estimate.toFixed(1);
  const { name } = words.measures[measure];
  if (mean.low === null || mean.high === null) return [`${name} ${value}`];
  const interval = interfaceText().figures.interval(level, mean.low.toFixed(1), mean.high.toFixed(1));
  return [words.part(name, value, interval)];
}

function strip(
  page: TimingPage,
  rhythm: RhythmOfSpeakers,
  measure: Measure,
  widthPx: number,
): HTMLElement | null {
  const { rhythm: words } = interfaceText().timing;
  const mean = rhythm[measure];
  if (mean === null) return null;
  const { name, axis, plain } = words.measures[measure];
  const dots = rhythm.perSpeaker.flatMap((own) => {
    const value = own[measure];
    return value === null ? [] : [{ speaker: own.speaker, value }];
  });
  const published = page.data.published.flatMap(({ language, citation, values }) =>
    values
      .filter((one) => one.name === measure)
      .map(({ value }) => ({ name: words.published(language, shortWork(citation)), value })),
  );
  const alternative = `${name}: ${mean.estimate.toFixed(1)}`;
  return element(
    "section",
    { class: "strip" },
    element("h3", {}, name),
    element("p", { class: "plain" }, plain),
    rhythmStrip(dots, { widthPx, label: axis, mean, published, alternative }),
  );
}

/** Rhythm measures by speaker, each with what it means. */
export function rhythmFigure(page: TimingPage, choices: Choices): HTMLElement {
  const id = "timing-rhythm";
  return live(choices, (widthPx) => {
    const { timing: words, figures } = interfaceText();
    const { rhythm: own } = words;
    const chosen = chosenTiming(page, choices);
    const question = own.question;
    const rhythm = chosen?.timing.rhythm.found ?? null;
    const strips =
      rhythm === null ? [] : shown.flatMap((measure) => strip(page, rhythm, measure, widthPx) ?? []);
    if (chosen === null || rhythm === null || strips.length === 0) {
      const reason = chosen?.timing.rhythm.reason;
      const finding = reason == null ? figures.noAnswers : figures.cannotTell(reason);
      return figure({ id, question, finding, picture: null, numbers: null });
    }
    const { level, speakers, basis } = chosen.timing;
    const parts = shown.flatMap((measure) => partOf(rhythm, measure, level));
    type Row = (typeof rhythm.perSpeaker)[number];
    const value = (name: string, pick: (row: Row) => number | null) => ({
      name,
      value: pick,
      show: (row: Row) => pick(row)?.toFixed(1) ?? "–",
    });
    return figure({
      id,
      question,
      finding: speakers === 1 ? own.alone(parts) : own.finding(parts),
      picture: element("div", { class: "strips" }, ...strips),
      basis: {
        counts: basis === null ? "" : own.counts(figures.speakers(speakers), figures.times[basis]),
        method: own.method,
        warnings: [rhythmDependsOnText()],
      },
      remarks: [own.remark],
      note: publishedNote(
        page.data.published.map((work) => ({ ...work, marks: work.values.map(({ mark }) => mark) })),
      ),
      commands: [explainCommand("timing", chosenSet(page, choices.get("set")).dataset, page.level, "json")],
      numbers: numbersTable(id, rhythm.perSpeaker, [
        { name: own.columns.speaker, value: (row) => row.speaker },
        value(own.measures.vowelPercent.name, (row) => row.vowelPercent),
        value(own.measures.deltaConsonantMs.name, (row) => row.deltaConsonantMs),
        value(own.measures.vowelNpvi.name, (row) => row.vowelNpvi),
        value(own.columns.vowel, (row) => row.deltaVowelMs),
        value(own.columns.raw, (row) => row.consonantRpviMs),
      ]),
    });
  });
}
