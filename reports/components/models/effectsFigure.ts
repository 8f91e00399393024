import type { Effect, Explanation, Model } from "../../../src/estimates/explain/explanation.ts";
import { formatMs, formatPercent, formatRatio } from "../../../src/findings/format.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { retold } from "../../../src/interface/retold.ts";
import { separatedLeftOut } from "../../../src/messages/explain.ts";
import { explainCommand } from "../../../src/publish/terminalCommand.ts";
import type { Choices } from "../choices.ts";
import { chosenSet } from "../chosenSet.ts";
import { figure } from "../figure.ts";
import { live } from "../live.ts";
import { numbersTable } from "../numbersTable.ts";
import { effectColumns } from "./effectColumns.ts";
import { type EffectRow, effectPlot } from "./effectPlot.ts";
import { againstWhat, effectName, signedPoints } from "./effectWords.ts";
import { chosenModels, type ModelPage } from "./modelChoices.ts";
import { countsOf } from "./modelCounts.ts";

/** Effects to name in a sentence. */
const named = 3;
const least = 0.05;

const shownValue = (effect: Effect, asRatio: boolean) => (asRatio ? effect.ratio : effect.percentagePoints);

function rowsOf(models: readonly Model[], asRatio: boolean): EffectRow[] {
  const keys = new Map<string, Effect>();
  for (const { effects } of models) for (const effect of effects) keys.set(effectName(effect), effect);
  const of = (kind: Model["kind"], name: string) => {
    const found = models
      .find((model) => model.kind === kind)
      ?.effects.find((one) => effectName(one) === name);
    return found === undefined ? null : shownValue(found, asRatio);
  };
  const words = interfaceText().whatMatters.effects;
  return [...keys].map(([name, effect]) => ({
    name,
    remark: (effect.withheld ?? null) === null ? words.tokens(effect.tokens) : words.tooFew(effect.tokens),
    withheld: (effect.withheld ?? null) !== null,
    clustered: of("clustered", name),
    mixed: of("mixed", name),
  }));
}

/** The surest effects of the model whose intervals allow for most: the clustered one, else the mixed one. */
function findingOf({ models, outcome, level }: Explanation, asRatio: boolean): string {
  const { effects: words } = interfaceText().whatMatters;
  const { interval } = interfaceText().figures;
  const model = models.find(({ effects }) => effects.length > 0);
  const sure = (model?.effects ?? [])
    .filter(({ ratio, pAdjusted }) => ratio !== null && pAdjusted !== null && pAdjusted < least)
    .sort((a, b) => Math.abs(Math.log(b.ratio!.estimate)) - Math.abs(Math.log(a.ratio!.estimate)))
    .slice(0, named);
  if (sure.length === 0) return words.none;
  const parts = sure.map((effect) => {
    const value = shownValue(effect, asRatio)!;
    const text = (bound: number | null) =>
      bound === null ? null : asRatio ? formatRatio(bound) : signedPoints(bound);
    const bounds = interval(level, text(value.low), text(value.high));
    const tell = asRatio ? words.times : words.points;
    return tell(effectName(effect), againstWhat(effect), text(value.estimate)!, bounds);
  });
  return words.finding[outcome](parts);
}

function modelRemarks(models: readonly Model[]): string[] {
  const { effects: words } = interfaceText().whatMatters;
  return models.map(({ kind, status, reason }) =>
    status === "ok"
      ? words.converged(words.models[kind])
      : words.failed[status](words.models[kind], retold(reason ?? "")),
  );
}

/** What each term does while the others stay the same, by both models. */
export function effectsFigure(page: ModelPage, choices: Choices): HTMLElement {
  const id = "model-effects";
  return live(choices, (widthPx) => {
    const { whatMatters, figures } = interfaceText();
    const { effects: words } = whatMatters;
    const { explanation, outcome, asRatio } = chosenModels(page, choices);
    const question = words.question[outcome];
    const rows = explanation === null ? [] : rowsOf(explanation.models, asRatio);
    if (explanation === null || rows.length === 0) {
      const reason = explanation?.reason ?? page.data.reason;
      const finding = reason === null ? figures.noAnswers : figures.cannotTell(reason);
      const remarks = explanation === null ? [] : modelRemarks(explanation.models);
      return figure({ id, question, finding, picture: null, remarks, numbers: null });
    }
    const { average, models, separated } = explanation;
    const finding = findingOf(explanation, asRatio);
    const ofSeparated = separated.map((one) =>
      separatedLeftOut(one.term, one.level, one.devoiced, one.tokens),
    );
    const thin = rows.filter((row) => row.withheld).map(({ name }) => name);
    const all = models.flatMap((model) => model.effects.map((effect) => ({ model: model.kind, effect })));
    return figure({
      id,
      question,
      finding,
      picture: effectPlot(rows, {
        ...{ widthPx, ratios: asRatio, alternative: finding },
        label: outcome === "duration" ? words.axis.duration : words.axis[asRatio ? "ratio" : "points"],
      }),
      basis: {
        counts: countsOf(explanation),
        method: words.method(
          models.map(({ kind, method }) => `${words.models[kind]}: ${retold(`${method}.`)}`),
        ),
        warnings: [
          ...(average === null
            ? []
            : [words.average[outcome](outcome === "devoicing" ? formatPercent(average) : formatMs(average))]),
          ...modelRemarks(models),
          ...(thin.length === 0 ? [] : [words.thin(thin)]),
          ...separated.map((one) =>
            words.separated(effectName({ ...one, unit: null }), one.devoiced, one.tokens),
          ),
        ],
      },
      remarks: [words.remark, ...explanation.warnings.filter((text) => !ofSeparated.includes(text))],
      commands: [explainCommand(outcome, chosenSet(page, choices.get("set")).dataset, page.level)],
      numbers: numbersTable(id, all, effectColumns(outcome)),
    });
  });
}
