import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { retold } from "../../../src/interface/retold.ts";
import { element } from "../element.ts";
import { figure } from "../figure.ts";
import { numbersTable } from "../numbersTable.ts";
import { publishedNote, shortWork } from "../publishedNote.ts";
import type { VowelPage } from "./vowelChoices.ts";

/** Every published table that the chart can show, with its source. */
export function publishedFigure(page: VowelPage): HTMLElement {
  const id = "vowel-published";
  const { vowelSpace: words, figures } = interfaceText();
  const { columns } = words.sources;
  const rows = page.data.published.flatMap(({ vowels, ...work }) =>
    vowels.map((vowel) => ({
      ...vowel,
      table: `${retold(work.language)}, ${words.table(retold(work.speakers), shortWork(work.citation))}`,
      source: work.citation,
    })),
  );
  const note = publishedNote(
    page.data.published.map((table) => ({ ...table, marks: table.vowels.map(({ mark }) => mark) })),
  );
  if (note !== null) note.setAttribute("open", "");
  const made = figure({
    id,
    question: words.sources.question,
    finding: words.sources.finding,
    picture: note,
    numbers: numbersTable(id, rows, [
      { name: columns.table, value: (row) => row.table },
      { name: columns.vowel, value: (row) => row.vowel },
      { name: "F1 (Hz)", value: (row) => row.f1Hz },
      { name: "F2 (Hz)", value: (row) => row.f2Hz },
      { name: "F3 (Hz)", value: (row) => row.f3Hz },
      { name: columns.seen, value: (row) => figures.seen[row.mark] },
      { name: columns.source, value: (row) => row.source, lang: "en" },
    ]),
  });
  return element("div", {}, made);
}
