import { type Colouring, colouredConsonants } from "../../../src/estimates/colouring.ts";
import type { ColouringSide } from "../../../src/estimates/samples/colouringSample.ts";
import { soundOption } from "../../../src/findings/soundNames.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { ColouringData } from "../../../src/publish/pageData.ts";
import { Choices } from "../choices.ts";
import { chosenSet, one, setChoice } from "../chosenSet.ts";
import { mostTellingSet, ofSet, type PageData } from "../corpus.ts";

export type ColouringPage = PageData<ColouringData>;

/** The choices of the page on consonants before devoiced vowels. */
export function colouringChoices(page: ColouringPage): Choices {
  const words = interfaceText().colouring;
  const { colourings } = page.data;
  const told = colourings.filter(({ difference }) => difference !== null);
  const initial = mostTellingSet(page, told);
  const consonants = colouredConsonants.map((value) => ({ value, label: soundOption(value) }));
  return new Choices(() => [
    setChoice(page, initial),
    one("consonant", words.consonant, consonants, told[0]?.consonant ?? colouredConsonants[0]),
  ]);
}

/** What is known of the chosen consonant; the answers are missing where the results hold none. */
export function chosenColouring(page: ColouringPage, choices: Choices) {
  const set = chosenSet(page, choices.get("set"));
  const consonant = choices.get("consonant") as Colouring["consonant"];
  const answer = (vowel: Colouring["vowel"]): Colouring | null =>
    page.data.colourings.find(
      (one) =>
        one.dataset === set.dataset &&
        one.labelSet === set.labelSet &&
        one.consonant === consonant &&
        one.vowel === vowel,
    ) ?? null;
  const sides = (ofSet(page.data.samples, set)?.sides ?? []).filter((side) => side.consonant === consonant);
  const side = (vowel: Colouring["vowel"], before: "i" | "u"): ColouringSide | null =>
    sides.find((one) => one.vowel === vowel && one.before === before) ?? null;
  return { set, consonant, answer, side };
}
