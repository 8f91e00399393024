import type { Problem } from "../datasets/types.ts";
import { interfaceText } from "../interface/interfaceText.ts";
import { type Html, html } from "./html.ts";
import type { Run } from "./readResults.ts";

/** A page stays readable; the whole list is in the file beside it. */
const shown = 200;

const words = () => interfaceText().datasets.problems;

function place(problem: Problem): string {
  return problem.line === null ? problem.file : words().line(problem.file, problem.line);
}

function row(problem: Problem): Html {
  return html`<tr><td>${problem.dataset}</td><td>${problem.utterance ?? "–"}</td><td>${place(problem)}</td><td lang="en">${problem.message}</td><td lang="en">${problem.wayOut}</td><td>${problem.excluded ? words().leftOut : words().kept}</td></tr>`;
}

function summary(run: Run, listed: number): string {
  const { total, excluded } = run.problems;
  const { none, found, first } = words();
  return total === 0 ? none : `${found(total, excluded)}${listed < total ? first(listed) : ""}`;
}

/** Recordings left out and other remarks, the left-out ones first. */
export function problemsHtml(run: Run, problems: readonly Problem[]): Html {
  const { title, columns, download } = words();
  const sorted = [...problems].sort((a, b) => Number(b.excluded) - Number(a.excluded)).slice(0, shown);
  const table =
    sorted.length === 0
      ? null
      : html`<div class="scroll" role="region" aria-labelledby="left-out" tabindex="0"><table><thead><tr>${columns.map((name) => html`<th scope="col">${name}</th>`)}</tr></thead><tbody>${sorted.map(row)}</tbody></table></div><p><a href="./data/problems.csv" download>${download}</a></p>`;
  return html`<section class="card" aria-labelledby="left-out"><h2 id="left-out">${title}</h2><p>${summary(run, sorted.length)}</p>${table}</section>`;
}
