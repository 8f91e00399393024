import { type Basis, isEvidence } from "../../../src/basis.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { listenMeasure } from "../../../src/publish/listenColumns.ts";
import { flagAt, type ListenTable, labelAt, numberAt } from "../../../src/publish/readListen.ts";
import { element } from "../element.ts";
import { devoicedAt } from "./tokenMorae.ts";

/** Where a value lies on its scale: 0 surely voiced, 0.5 the boundary, 1 surely devoiced. */
const ofLogOdds = (logOdds: number) => Math.min(1, Math.max(0, 0.5 - logOdds / 16));
const ofIsland = (ms: number) => (ms <= 20 ? 1 - ms / 40 : Math.max(0, 0.5 - (ms - 20) / 160));

function needle(name: string, value: string, at: number, doubtful = false): HTMLElement {
  const side = at > 0.5 ? "devoiced" : "voiced";
  return element(
    "li",
    {},
    element("span", { class: "needle-name" }, name),
    element(
      "span",
      { class: "scale-line", "aria-hidden": "true" },
      doubtful && element("span", { class: "doubtful" }),
      element("span", { class: `needle ${side}`, style: `left:${(100 * at).toFixed(1)}%` }),
    ),
    element("span", { class: "needle-value" }, value),
  );
}

function needles(logOdds: number, islandMs: number, probability: number): HTMLElement {
  const words = interfaceText().listen.why;
  return element(
    "div",
    { class: "needles" },
    element(
      "p",
      { class: "sides", "aria-hidden": "true" },
      element("span", {}, words.sides.voiced),
      element("span", {}, words.sides.devoiced),
    ),
    element(
      "ul",
      {},
      needle(words.classifier, words.classifierValue(logOdds), ofLogOdds(logOdds)),
      needle(words.island, words.islandValue(islandMs), ofIsland(islandMs)),
      needle(words.combined, words.combinedValue(probability), probability, true),
    ),
  );
}

const ofConsonants = [
  ...(["closureMs", "closurePartMs", "releasePartMs", "fricationMs", "fricationCentreHz"] as const),
] as const;

/** What was measured of a consonant's parts. */
function parts(table: ListenTable, row: number): HTMLElement | null {
  const found = ofConsonants.flatMap((name) => {
    const value = numberAt(table, name, row);
    const { unit, about } = listenMeasure(name);
    return value === null ? [] : [{ about, value: `${Math.round(value).toLocaleString("en")}\u00a0${unit}` }];
  });
  if (found.length === 0) return null;
  const items = found.map(({ about, value }) =>
    element("div", {}, element("dt", {}, about), element("dd", {}, value)),
  );
  return element("dl", { class: "parts-measured" }, ...items);
}

/** Why a vowel was called what it was called, and how near to the boundary it was. */
export function why(table: ListenTable, row: number): HTMLElement {
  const words = interfaceText().listen.why;
  const devoiced = devoicedAt(table, row);
  const basis = labelAt(table, "devoicedBasis", row) as Basis | null;
  const probability = numberAt(table, "devoicedProbability", row);
  const logOdds = numberAt(table, "voicingLogOdds", row);
  const islandMs = numberAt(table, "islandMs", row);
  const consonant = labelAt(table, "kind", row) === "consonant";
  const lines: string[] = [];
  if (consonant) lines.push(words.consonant);
  else if (devoiced === null) {
    const reason = labelAt(table, "measureReason", row) ?? "";
    lines.push(
      basis !== null && !isEvidence(basis)
        ? words.predicted
        : ((words.reasons as Record<string, string>)[reason] ?? words.none),
    );
  }
  const heard = flagAt(table, "devoicedHeard", row);
  if (basis === "annotated" && devoiced !== null) {
    lines.push(words.annotated(devoiced));
    if (heard !== null) lines.push(words.heard(heard));
  }
  if (heard !== null && probability !== null) {
    const [one, two] = [flagAt(table, "devoicedByClassifier", row), flagAt(table, "devoicedByIsland", row)];
    lines.push(one === two ? words.agree(one === true) : words.disagree, words.together(probability));
    if (probability > 0.2 && probability < 0.8) lines.push(words.doubtful);
  }
  return element(
    "section",
    { class: "why", "aria-labelledby": "why-title" },
    element("h3", { id: "why-title" }, consonant ? interfaceText().listen.question : words.title(devoiced)),
    probability === null || logOdds === null || islandMs === null
      ? null
      : needles(logOdds, islandMs, probability),
    consonant && parts(table, row),
    ...lines.map((line) => element("p", {}, line)),
  );
}
