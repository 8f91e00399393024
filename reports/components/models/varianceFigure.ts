import type { VarianceShare } from "../../../src/estimates/explain/explanation.ts";
import { roundPercent } from "../../../src/findings/format.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { explainCommand } from "../../../src/publish/terminalCommand.ts";
import type { Choices } from "../choices.ts";
import { chosenSet } from "../chosenSet.ts";
import { figure } from "../figure.ts";
import { live } from "../live.ts";
import { numbersTable } from "../numbersTable.ts";
import { chosenModels, type ModelPage } from "./modelChoices.ts";
import { countsOf } from "./modelCounts.ts";
import { variancePlot } from "./variancePlot.ts";

/** How much of what the terms leave lies between speakers, between words and in the single vowel. */
export function varianceFigure(page: ModelPage, choices: Choices): HTMLElement {
  const id = "model-variance";
  return live(choices, (widthPx) => {
    const { whatMatters, figures } = interfaceText();
    const { variance: words } = whatMatters;
    const { explanation, outcome } = chosenModels(page, choices);
    const { question } = words;
    const mixed = explanation?.models.find(({ kind }) => kind === "mixed");
    if (explanation === null || mixed === undefined || mixed.variance.length === 0) {
      const reason = mixed?.reason ?? explanation?.reason ?? page.data.reason;
      const finding = reason === null ? words.none : figures.cannotTell(reason);
      return figure({ id, question, finding, picture: null, numbers: null });
    }
    const parts = mixed.variance.map(({ of, groups, share }) =>
      groups === null ? words.single(roundPercent(share)) : words.between(roundPercent(share), groups, of),
    );
    const finding = words.finding(parts);
    const name = ({ of }: VarianceShare) => words.names[of] ?? of;
    return figure({
      id,
      question,
      finding,
      picture: variancePlot(
        mixed.variance.map((part) => ({ name: name(part), share: part.share })),
        { widthPx, alternative: finding },
      ),
      basis: { counts: countsOf(explanation), method: `${mixed.method}.`, warnings: mixed.warnings },
      remarks: [words.remark],
      commands: [explainCommand(outcome, chosenSet(page, choices.get("set")).dataset, page.level)],
      numbers: numbersTable(id, mixed.variance, [
        { name: words.columns.of, value: name },
        { name: words.columns.groups, value: ({ groups }) => groups },
        {
          name: words.columns.sd,
          value: (part) => part.standardDeviation,
          show: (part) => part.standardDeviation.toFixed(3),
        },
        { name: words.columns.share, value: (part) => part.share, show: (part) => roundPercent(part.share) },
      ]),
    });
  });
}
