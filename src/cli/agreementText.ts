import Table from "cli-table3";
import type { AgreementReport } from "../compareWithLabels.ts";
import type { BoundaryAgreement } from "../estimates/agreement/agreement.ts";
import type { DevoicingShares } from "../estimates/agreement/devoicingAgreement.ts";
import * as messages from "../messages/agreement.ts";
import { agreementCsvColumns } from "../messages/csvColumns.ts";
import { toCsv } from "../storage/writeCsv.ts";

const percent = (share: number | null) => (share === null ? "–" : `${(100 * share).toFixed(1)} %`);
const ms = (value: number | null) => (value === null ? "–" : `${value.toFixed(1)} ms`);
const plain = (value: number | null) => (value === null ? "–" : value.toFixed(2));

/** Places where sounds differ that are shown; all are in `agreement.json`. */
const shownDifferences = 10;

/** The comparison for people: figures by class, what they may be called, and what is in none of them. */
export function agreementText(report: AgreementReport): string {
  const { dataset, labelSet, reference, boundaries, devoicing } = report;
  const parts = [
    `${dataset}, label set ${labelSet}, against ${reference.name}, label set ${reference.labelSet}: ${report.utterances.compared} recordings.`,
    ...(boundaries.sameTimes
      ? [messages.sameTimes()]
      : [
          `${messages.boundariesAgainst(boundaries.basis, reference.timesStated)}\n${boundaryTable(boundaries)}`,
          pausesLine(report),
        ]),
    devoicing.n === 0
      ? messages.marksAgainst(null)
      : `${messages.marksAgainst(devoicing.basis, reference.marksStated)}\n${devoicingTable(devoicing)}`,
    ...(boundaries.sameTimes
      ? []
      : [
          `Duration ratios over the same sounds\n${ratioTable(report)}`,
          [messages.anchorsIntro, ...messages.anchors.map(anchorLine)].join("\n"),
        ]),
  ];
  return `${parts.join("\n\n")}\n`;
}

/** What a reader must know beside the figures; for standard error. */
export function agreementNotes(report: AgreementReport, format: "text" | "json" | "csv"): string[] {
  const { reference, withoutLabels, withoutResults, unreadable, utterances, differences, phones } = report;
  const same = report.boundaries.sameTimes;
  const shown = differences.slice(0, shownDifferences).map(({ utterance, atMs, own, reference: theirs }) => {
    const at = (atMs / 1000).toFixed(2);
    return `  ${utterance} at ${at} s: ${own === "" ? "nothing" : own}, labels ${theirs === "" ? "nothing" : theirs}`;
  });
  const more = differences.length > shownDifferences ? ["  … all are in agreement.json"] : [];
  const differ = messages.phonesDiffer(differences.length, phones.same, phones.reference);
  const listed = (sentence: string, ids: readonly string[]) =>
    `${sentence} (${ids.slice(0, 5).join(", ")}${ids.length > 5 ? ", …" : ""})`;
  return [
    ...(reference.synthetic ? [messages.syntheticReference(reference.name)] : []),
    ...(reference.marksBasis === null && heardClasses(report) && !(same && format === "text")
      ? [messages.classesByHearing()]
      : []),
    ...(same && format !== "text" ? [messages.sameTimes()] : []),
    ...(withoutLabels.length > 0
      ? [listed(messages.withoutLabels(withoutLabels.length), withoutLabels)]
      : []),
    ...(withoutResults.length > 0
      ? [listed(messages.withoutResults(withoutResults.length), withoutResults)]
      : []),
    ...(unreadable.length > 0
      ? [
          `${messages.unreadableLabels(unreadable.length)} ${unreadable[0]!.file}, line ${unreadable[0]!.line}: ${unreadable[0]!.message}`,
        ]
      : []),
    ...(utterances.differ.length > 0
      ? [listed(messages.otherTexts(utterances.differ.length), utterances.differ)]
      : []),
    ...(differences.length > 0 ? [[differ, ...shown, ...more].join("\n")] : []),
  ];
}

function heardClasses({ boundaries }: AgreementReport): boolean {
  return "into a devoiced vowel" in boundaries.byClass || "out of a devoiced vowel" in boundaries.byClass;
}

/** One row a class of boundary, `all` first. */
export function agreementCsv({ boundaries }: AgreementReport): string {
  const { byClass, basis, sameTimes } = boundaries;
  const rows = [["all", boundaries] as const, ...Object.entries(byClass)];
  return toCsv(
    Object.keys(agreementCsvColumns),
    rows.map(([name, summary]) => ({ class: name, ...summary, sameTimes, basis })),
  );
}

function boundaryTable(boundaries: AgreementReport["boundaries"]): string {
  const table = grid(["boundary", "n", "median", "mean", "bias", "≤ 10 ms", "≤ 20 ms", "≤ 50 ms"]);
  const row = (name: string, of: BoundaryAgreement) => [
    name,
    String(of.n),
    ...[of.medianMs, of.meanMs, of.biasMs].map(ms),
    ...[of.within10, of.within20, of.within50].map(percent),
  ];
  table.push(row("all", boundaries));
  for (const [name, summary] of Object.entries(boundaries.byClass)) table.push(row(name, summary));
  return `${table.toString()}\nMedian and mean are of the absolute differences; bias is the median signed one, positive where the results are later.`;
}

function pausesLine({ pauses }: AgreementReport): string {
  return `Pauses inside the speech: ${pauses.both} on both sides, ${pauses.onlyOwn} only in the results, ${pauses.onlyReference} only in the labels.`;
}

function devoicingTable(devoicing: AgreementReport["devoicing"]): string {
  const share = devoicing.basis === "annotated" ? "accuracy" : "same";
  const table = grid(["vowels", "n", "devoiced: labels", "results", share, "F1", "kappa"]);
  const { expected, elsewhere, aeo } = devoicing.byPlace;
  const rows: readonly (readonly [string, DevoicingShares])[] = [
    ["/i, u/", devoicing],
    ["  between voiceless sounds or before a pause", expected],
    ["  elsewhere", elsewhere],
    ["/a, e, o/", aeo],
  ];
  for (const [name, of] of rows)
    table.push([
      ...[name, String(of.n), String(of.referenceDevoiced), String(of.ownDevoiced)],
      ...[percent(of.accuracy), percent(of.f1), plain(of.kappa)],
    ]);
  return table.toString();
}

function ratioTable({ ratio }: AgreementReport): string {
  const table = grid(["ratio", "results", "labels", "error", "long or doubled", "short or single"]);
  const rows = [
    ["long ÷ short vowels, between consonants", ratio],
    ["doubled ÷ single consonants", ratio.gemination],
  ] as const;
  for (const [name, { own, reference, errorPercent, long, short }] of rows)
    table.push([
      ...[name, plain(own), plain(reference)],
      errorPercent === null ? "–" : `${errorPercent > 0 ? "+" : ""}${errorPercent.toFixed(1)} %`,
      ...[String(long), String(short)],
    ]);
  return table.toString();
}

function grid(head: string[]): Table.Table {
  const colAligns = head.map((_, i) => (i === 0 ? ("left" as const) : ("right" as const)));
  return new Table({ head, colAligns, style: { head: [], border: [], compact: true } });
}

function anchorLine({ what, value, source }: AgreementReport["anchors"][number]): string {
  return `  ${value}  ${what}. ${source}.`;
}
