import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { retold } from "../../../src/interface/retold.ts";
import { explainCommand } from "../../../src/publish/terminalCommand.ts";
import type { FormantTable } from "../../../src/storage/loadReferenceTables.ts";
import type { Choices } from "../choices.ts";
import { chosenSet } from "../chosenSet.ts";
import { element } from "../element.ts";
import { figure } from "../figure.ts";
import { live } from "../live.ts";
import { numbersTable } from "../numbersTable.ts";
import { publishedNote, shortWork } from "../publishedNote.ts";
import { chartDomain } from "./chartDomain.ts";
import { type ChartMarks, chartMarks, valuesIn } from "./chartMarks.ts";
import { chartFinding } from "./chartWords.ts";
import { vowelChart } from "./vowelChart.ts";
import { chosenVowels, type VowelPage } from "./vowelChoices.ts";

const gap = 28;

function publishedMarks(tables: readonly (FormantTable | null)[]): ChartMarks {
  const means = tables.flatMap((table, group) =>
    (table?.vowels ?? []).map(({ vowel, f1Hz, f2Hz }) => ({
      ...{ group, letter: group === 0 && vowel === "u" ? "ɯ" : vowel, long: false, f1: f1Hz, f2: f2Hz },
    })),
  );
  return { means, outlines: [], points: [] };
}

function panel(title: string, chart: Node): HTMLElement {
  return element("section", { class: "panel" }, element("h3", {}, title), chart);
}

/** The vowels on F1 and F2, published ones on the same axes beside. */
export function chartFigure(page: VowelPage, choices: Choices): HTMLElement {
  const id = "vowel-chart";
  return live(choices, (widthPx) => {
    const { vowelSpace: words, figures } = interfaceText();
    const { chart } = words;
    const { space, sample, scale, split, groups, japanese, english } = chosenVowels(page, choices);
    const { question } = chart;
    if (space === undefined || groups.length === 0) {
      const finding = space?.reason == null ? figures.noAnswers : figures.cannotTell(space.reason);
      return figure({ id, question, finding, picture: null, numbers: null });
    }
    const beside = scale === "hz" && (japanese !== null || english !== null);
    const wide = beside && widthPx >= 760;
    const own = wide ? Math.floor((widthPx - gap) / 2) : widthPx;
    const marks = chartMarks(groups, sample, scale, split, own < 520 ? 30 : 80);
    const finding = groups.map((group) => chartFinding(space, group, scale)).join(" ");
    if (marks.means.length === 0)
      return figure({ id, question, finding: chart.noZ, picture: null, numbers: null });
    const tables = [japanese, english].filter((table) => table !== null);
    const step = scale === "hz" ? { f1: 100, f2: 250 } : { f1: 0.5, f2: 0.5 };
    const options = {
      ...{ widthPx: own, labels: chart.axes[scale] },
      domain: chartDomain(marks, beside ? tables : [], step),
    };
    const joined = split ? [] : groups.map((_, group) => group);
    const ours = vowelChart(marks, { ...options, alternative: finding, joined });
    const theirs = () => {
      const published = publishedMarks([japanese, english]);
      const alternative = published.means
        .map(({ letter, f1, f2 }) => chart.spoken(letter, String(f1), String(f2)))
        .join("; ");
      return vowelChart(published, { ...options, alternative, joined: [0] });
    };
    const rows = groups.flatMap(({ group, vowels }) =>
      vowels.flatMap((centroid) => {
        const values = valuesIn(scale, centroid);
        return values === null ? [] : [{ group, centroid, ...values }];
      }),
    );
    type Row = (typeof rows)[number];
    const digits = scale === "hz" ? 0 : 2;
    const number = (name: string, value: (row: Row) => number | null) => ({
      name,
      value,
      show: (row: Row) => value(row)?.toFixed(digits) ?? "–",
    });
    const formant = (key: "f1" | "f2", name: string) => [
      number(name, (row) => row[key].estimate),
      number(`${name} ${chart.columns.low}`, (row) => row[key].low),
      number(`${name} ${chart.columns.high}`, (row) => row[key].high),
      number(`${name} ${chart.columns.within}`, (row) => row[key].withinSpeakers),
    ];
    const all = groups.flatMap(({ vowels }) => vowels.filter(({ length }) => length === "all"));
    const tokens = all.reduce((sum, vowel) => sum + vowel.tokens, 0);
    const speakers = groups.reduce((sum, group) => sum + group.speakers, 0);
    const name = (table: FormantTable | null) =>
      table === null ? words.none : words.table(retold(table.speakers), shortWork(table.citation));
    return figure({
      id,
      question,
      finding,
      picture: beside
        ? element(
            "div",
            { class: wide ? "panels" : "panels stacked" },
            panel(chart.corpus, ours),
            panel(chart.published, theirs()),
          )
        : ours,
      basis: {
        counts: chart.counts(tokens, figures.speakers(speakers)),
        method: space.method,
        warnings: [...new Set([...groups.flatMap(({ warnings }) => warnings), ...space.warnings])],
      },
      remarks: [
        chart.remark,
        ...(split ? [chart.split] : []),
        ...(groups.length > 1 ? [chart.groups(groups.map(({ group }) => retold(group)))] : []),
        ...(beside ? [chart.publishedRemark(name(japanese), name(english))] : []),
        ...(scale === "z" ? [chart.onlyHz] : []),
      ],
      note: beside
        ? publishedNote(tables.map((table) => ({ ...table, marks: table.vowels.map(({ mark }) => mark) })))
        : null,
      commands: [explainCommand("vowel-space", chosenSet(page, choices.get("set")).dataset, page.level)],
      numbers: numbersTable(id, rows, [
        { name: chart.columns.vowel, value: (row) => row.centroid.vowel },
        { name: chart.columns.length, value: (row) => row.centroid.length },
        { name: chart.columns.group, value: (row) => retold(row.group) },
        ...formant("f1", `F1 (${scale === "hz" ? "Hz" : "z"})`),
        ...formant("f2", `F2 (${scale === "hz" ? "Hz" : "z"})`),
        { name: chart.columns.n, value: (row) => row.centroid.tokens },
        { name: chart.columns.speakers, value: (row) => row.centroid.speakers },
      ]),
    });
  });
}
