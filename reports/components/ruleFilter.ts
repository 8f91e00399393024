import type { Verdict } from "../../src/findings/rules/verdict.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { choiceForm } from "./choiceForm.ts";
import { type ChoiceOption, Choices } from "./choices.ts";
import { any, one } from "./chosenSet.ts";
import { element } from "./element.ts";

/** An answer stands for one verdict by one or, where none can judge, several label sets. */
const setsOf = (answer: HTMLElement) => answer.dataset.set!.split(" ");

function options(values: readonly string[], label: (value: string) => string): ChoiceOption[] {
  const counts = new Map<string, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [any, ...[...counts].map(([value, count]) => ({ value, label: `${label(value)} (${count})` }))];
}

/**
 * Lets the reader keep only the rules with one verdict or by one label set; the choice stands in the address. The page
 * is whole without it: what is not chosen is hidden. Empty where the page holds no verdict.
 */
export function ruleFilter(): HTMLElement {
  const {
    rules: words,
    verdicts: { names: verdictNames },
  } = interfaceText();
  const rules = [...document.querySelectorAll<HTMLElement>(".rule")];
  const answers = rules.flatMap((rule) => [...rule.querySelectorAll<HTMLElement>(".answer")]);
  if (answers.length === 0) return element("div", { hidden: true });
  const judged = [...document.querySelectorAll<HTMLElement>(".rules > .rule")];
  const verdicts = options(
    answers.flatMap((answer) => setsOf(answer).map(() => answer.dataset.verdict!)),
    (verdict) => verdictNames[verdict.replaceAll("-", " ") as Verdict],
  );
  const { names = "{}" } = document.querySelector<HTMLElement>(".rules")!.dataset;
  const nameOf: Readonly<Record<string, string>> = JSON.parse(names);
  const sets = options(answers.flatMap(setsOf), (key) => nameOf[key] ?? key);
  const choices = new Choices(() => [
    one("verdict", words.verdict, verdicts, any.value),
    ...(sets.length > 2 ? [one("set", interfaceText().controls.set, sets, any.value)] : []),
  ]);
  const status = element("p", { class: "filter-status", role: "status" });
  const apply = () => {
    const [verdict, set] = [choices.get("verdict"), choices.get("set") || any.value];
    for (const answer of answers) {
      const right = verdict === any.value || answer.dataset.verdict === verdict;
      answer.hidden = !right || !(set === any.value || setsOf(answer).includes(set));
    }
    for (const rule of rules)
      rule.hidden = [...rule.querySelectorAll<HTMLElement>(".answer")].every(isHidden);
    for (const silent of document.querySelectorAll<HTMLElement>(".silent")) {
      silent.hidden = [...silent.querySelectorAll<HTMLElement>(".rule")].every(isHidden);
      if (verdict === "not-measurable") silent.querySelector("details")!.open = true;
    }
    inOrder(judged);
    const shown = rules.filter((rule) => !rule.hidden).length;
    status.textContent = choices.isInitial ? "" : words.shown(shown, rules.length);
  };
  choices.onChange(apply);
  apply();
  const tally = (event: Event) => {
    event.preventDefault();
    choices.set({
      verdict: new URL((event.currentTarget as HTMLAnchorElement).href).searchParams.get("verdict")!,
    });
  };
  for (const link of document.querySelectorAll(".verdict-key .tally")) link.addEventListener("click", tally);
  openNamed();
  addEventListener("hashchange", openNamed);
  return element("div", {}, choiceForm(choices, words.filter), status);
}

const isHidden = (element: HTMLElement) => element.hidden;

/** Places the rules by what their shown answers say, as the whole page does by all answers. */
function inOrder(rules: readonly HTMLElement[]): void {
  const rank = (rule: HTMLElement) =>
    Math.min(
      ...[...rule.querySelectorAll<HTMLElement>(".answer:not([hidden])")].map(({ dataset }) =>
        Number(dataset.rank),
      ),
    );
  const ranked = rules.map((rule) => ({ rule, rank: rank(rule) })).sort((a, b) => a.rank - b.rank);
  rules[0]?.parentElement?.append(...ranked.map(({ rule }) => rule));
}

/** A rule that an address names is unfolded, so that it can be seen. */
function openNamed(): void {
  const named = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  const folded = named?.closest(".silent details");
  if (!named || !folded) return;
  (folded as HTMLDetailsElement).open = true;
  named.scrollIntoView();
}
