import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { retold } from "../../../src/interface/retold.ts";
import type { VowelSpaceData } from "../../../src/publish/pageData.ts";
import type { FormantTable } from "../../../src/storage/loadReferenceTables.ts";
import { type ChoiceOption, Choices } from "../choices.ts";
import { chosenSet, one, setChoice } from "../chosenSet.ts";
import { mostTellingSet, ofSet, type PageData } from "../corpus.ts";
import { shortWork } from "../publishedNote.ts";

export type VowelPage = PageData<VowelSpaceData>;
export type VowelScale = "hz" | "z";

const tablesOf = ({ data }: VowelPage, japanese: boolean) =>
  data.published.filter(({ language }) => (language === "Japanese") === japanese);

function tableOptions(tables: readonly FormantTable[]): ChoiceOption[] {
  const words = interfaceText().vowelSpace;
  return [
    ...tables.map(({ id, speakers, citation }) => ({
      value: id,
      label: words.table(retold(speakers), shortWork(citation)),
    })),
    { value: "none", label: words.none },
  ];
}

/** Values of women stand first beside higher voices, of men beside lower ones. */
function initialTable(tables: readonly FormantTable[], group: string | undefined): string {
  const wanted = group === "lower voices" ? /\bmen/ : /women/;
  return (tables.find(({ speakers }) => wanted.test(speakers)) ?? tables[0])?.id ?? "none";
}

/** The choices of the page on vowel quality. */
export function vowelChoices(page: VowelPage): Choices {
  const words = interfaceText().vowelSpace;
  const initial = mostTellingSet(
    page,
    page.data.spaces.filter(({ reason }) => reason === null),
  );
  return new Choices(({ set: wanted, group }) => {
    const space = ofSet(page.data.spaces, chosenSet(page, wanted ?? initial));
    const groups = (space?.groups ?? []).map((one) => ({ value: one.group, label: retold(one.group) }));
    const shown = group ?? groups[0]?.value;
    const [japanese, english] = [tablesOf(page, true), tablesOf(page, false)];
    const several = groups.length > 1;
    return [
      setChoice(page, initial),
      one("scale", words.scale, options(words.scales), "hz"),
      one("length", words.length, options(words.lengths), "all"),
      ...(several
        ? [one("group", words.group, [{ value: "all", label: words.allGroups }, ...groups], "all")]
        : []),
      one("japanese", words.japanese, tableOptions(japanese), initialTable(japanese, shown)),
      one("english", words.english, tableOptions(english), initialTable(english, shown)),
    ];
  });
}

function options(names: Readonly<Record<string, string>>): ChoiceOption[] {
  return Object.entries(names).map(([value, label]) => ({ value, label }));
}

/** What the choices stand for. */
export function chosenVowels(page: VowelPage, choices: Choices) {
  const set = chosenSet(page, choices.get("set"));
  const space = ofSet(page.data.spaces, set);
  const group = choices.get("group");
  return {
    space,
    sample: ofSet(page.data.samples, set),
    scale: (choices.get("scale") === "z" ? "z" : "hz") as VowelScale,
    split: choices.get("length") === "split",
    groups: (space?.groups ?? []).filter((one) => group === "" || group === "all" || one.group === group),
    japanese: page.data.published.find(({ id }) => id === choices.get("japanese")) ?? null,
    english: page.data.published.find(({ id }) => id === choices.get("english")) ?? null,
  };
}
