import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { citableAddress } from "../../../src/publish/cite/citableAddress.ts";
import type { CitedView } from "../../../src/publish/cite/cslItems.ts";
import { pageChoices } from "../choices.ts";
import { pageProvenance } from "./pageProvenance.ts";

/** A picture or answer that a reader can keep. */
export interface Kept {
  readonly id: string;
  readonly finding: string;
  /** How the numbers came about, in words. */
  readonly basis: string;
  /** What was counted, in words; default: what the page's choices say. */
  readonly filter?: string | undefined;
  /** Names of choices of the page that do not change it. */
  readonly unused?: readonly string[] | undefined;
  /** `dataset/labelSet` keys the numbers belong to; default: the chosen one, or all. */
  readonly sets?: readonly string[] | undefined;
}

/** Names of choices that say which dataset is shown, not what is counted in it. */
const setNames = ["set", "with"];

function chosenSets(): string[] {
  const chosen = pageChoices()
    .flatMap((choices) => setNames.map((name) => choices.get(name)))
    .filter((key) => key in pageProvenance().setNames);
  return [...new Set(chosen)];
}

/** What is chosen in the page's main form; a picture that follows another part names its choices itself. */
function filterWords(unused: readonly string[]): string {
  const chosen = pageChoices()
    .flatMap((choices) => choices.words)
    .filter(({ name, part }) => part === undefined && ![...setNames, ...unused].includes(name));
  if (chosen.length === 0) return interfaceText().cite.everything;
  return chosen.map(({ label, value }) => `${label}: ${value}`).join("; ");
}

/** The address of a picture in the view the reader has chosen. */
export function addressOf(id: string): string {
  const address = new URL(location.href);
  address.hash = id;
  return address.href;
}

/** What a citation says about a picture as it is shown now. */
export function citedView({ id, finding, basis, filter, unused = [], sets }: Kept): CitedView {
  const { datasets, setNames } = pageProvenance();
  const keys = sets ?? chosenSets();
  const ids = keys.map((key) => key.split("/", 1)[0]);
  return {
    figure: id,
    finding,
    datasets: keys.length === 0 ? datasets : datasets.filter(({ id }) => ids.includes(id)),
    setName: keys.length === 0 ? null : keys.map((key) => setNames[key] ?? key).join("; "),
    filter: filter ?? filterWords(unused),
    basis,
    address: citableAddress(addressOf(id)),
    seenOn: new Date().toISOString(),
  };
}
