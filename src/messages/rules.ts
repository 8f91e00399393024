// What can be wrong with a rule of thumb that someone wrote, and why a rule cannot be judged.

const list = (lines: readonly string[]) => lines.map((line) => `\n  ${line}`).join("");

export function ownNeedsRules(): string {
  return "--own judges your rules alone, but none are given. Name their files with --rules, e.g. --rules mine.json --own.";
}

export function ruleFileMissing(file: string): string {
  return `There is no rule file ${file}. Give the path of a JSON file with one rule or a list of rules.`;
}

export function ruleFileNotJson(file: string, line: number, reason: string): string {
  return `${file}, line ${line}: this is not JSON (${reason}). Check commas, quotes and brackets there.`;
}

export function ruleFileEmpty(file: string): string {
  return `${file} holds no rule. It must be one rule {…} or a list of rules [{…}, {…}].`;
}

export function ruleInvalid(file: string, rule: string, faults: readonly string[]): string {
  return `${file}: the rule ${rule} cannot be read:${list(faults)}`;
}

export function ruleTwice(id: string, first: string, second: string): string {
  return first === second
    ? `${first}: two rules have the id "${id}". Give one of them another id.`
    : `${second}: the id "${id}" is already taken by a rule in ${first}. Give one of them another id.`;
}

export function unknownField(place: string): string {
  return `${place} is not a field that is read; check its spelling.`;
}

export function missingField(place: string, example: string | null): string {
  return example === null ? `${place} is missing.` : `${place} is missing; write for example ${example}.`;
}

export function wrongValue(place: string, value: string, wanted: string): string {
  return `${place} is ${value}; it must be ${wanted}.`;
}

/** `reason` names the phone or class and the choices. */
export function badPhone(place: string, reason: string): string {
  return `${place}: ${reason.replaceAll("\n", "\n  ")}`;
}

export function reversedRange(from: number, to: number): string {
  return `holds.from (${from}) must be below holds.to (${to}).`;
}

export function outsidePossible(
  place: string,
  value: number,
  scale: "share" | "difference" | "ratio" | "semitones" | "hertz",
): string {
  const wanted = {
    share: "a share from 0 to 1 (95 % is 0.95)",
    difference: "a difference of shares from -1 to 1 (5 points are 0.05)",
    ratio: "a ratio above 0 (1 means equal)",
    semitones: "a number of semitones",
    hertz: "a number of Hz",
  };
  return `${place} is ${value}; it must be ${wanted[scale]}.`;
}

export const alwaysHolds = () =>
  "holds takes in every possible value, so that nothing could speak against the rule; narrow it.";

export const neverHolds = () =>
  "holds takes in no possible value, so that nothing could bear the rule out; check its numbers.";

export function negligibleTooFar(value: number): string {
  return `holds.negligible is ${value}: with it every possible value would be too small to matter; make it smaller.`;
}

export const sameCuts = () =>
  "contrast.first and contrast.second describe the same sounds; they must differ in at least one field.";

export function exceptionTellsCuts(column: string, place: string): string {
  return `${place} names "${column}", which tells the first cut from the second; leave it out.`;
}

export const noVowels = (place: string) =>
  `${place} leaves no vowels, and only vowels can be devoiced; ask for vowels.`;

/** Why a corpus cannot speak about a rule. */
export function needsColumns(columns: readonly { readonly name: string; readonly is: string }[]): string {
  return `it needs ${columns.map(({ is, name }) => `${is} (${name})`).join(" and ")}, by which rules cannot be judged yet`;
}

/** Of rules that only single vowels and consonants can judge. */
export function tokensNotAtHand(): string {
  return "it takes the single vowels and consonants, and only their counts are at hand; judge the whole results folder with `morascope rules`";
}

export function noExceptionsByTokens(kind: string): string {
  return `exceptions cannot be looked for with a contrast of kind "${kind}"; leave them out. Speakers are looked at anyway.`;
}

export function vowelTwice(vowel: string): string {
  return `contrast names "${vowel}" twice; name each once.`;
}

export function noFormantsMeasured(): string {
  return "no vowel has measured formants, which need recordings";
}

export function noVoicesKnown(): string {
  return "the pitch of no speaker with measured vowels is known, and the limit depends on it";
}

export function noSpeakerWithAllVowels(least: number): string {
  return `no speaker has ${least} measured vowels of each kind`;
}

export function noLongAndShort(least: number): string {
  return `no vowel has ${least} long ones with measured formants, of speakers who said both long and short ones`;
}

export function vowelsLeftOut(vowels: readonly string[], least: number): string {
  return `Left out for fewer than ${least} long ones: ${vowels.map((vowel) => `/${vowel}/`).join(", ")}.`;
}

export function largestOfMany(count: number): string {
  return `largest of ${count} shifts (F1 and F2 of each vowel), each speaker compared with itself; the lower end allows for looking at all of them`;
}

export function leastOfMany(count: number, of: string): string {
  return `smallest of ${count} ${of}; the upper end allows for looking at all of them`;
}

export function formantByLimit(speakers: number): string {
  return speakers > 1
    ? "mean over speakers, each counting the same, of how far a mean formant lies above the limit; t interval"
    : "how far the mean formant lies above the limit; t interval over this speaker's vowels, taken as independent";
}

export function noWordsTimed(unit: "word" | "phrase"): string {
  return unit === "word"
    ? "its words are unknown, or no speaker has enough of them of different length"
    : "no speaker has enough stretches between pauses of different length";
}

export function shareByMorae(speakers: number): string {
  return speakers > 1
    ? "mean over speakers, each counting the same, of the variance that a straight line explains; t interval"
    : "variance that a straight line explains; interval by Fisher's z over this speaker's words, taken as independent";
}

export function sameMoraMethod(speakers: number): string {
  return speakers > 1
    ? "ratio of geometric means, each mora compared with itself within a speaker; interval clustered by speaker"
    : "ratio of geometric means, each mora compared with itself; interval over this speaker's morae, taken as independent";
}

export function noTwins(): string {
  return "no mora occurs both devoiced and voiced with one speaker, with marks that are evidence";
}

export function noMarkedMorae(): string {
  return "no mora has both a time and a devoicing mark";
}

export function vowelsAtFloor(share: number): string {
  return `${(100 * share).toFixed(0)} % of the devoiced vowels stand at the shortest duration the aligner can give; their morae may have been shorter, and the ratio smaller.`;
}

export function consonantUnheard(consonant: string, reason: string): string {
  return `/${consonant}/ is left out. ${reason}`;
}

export function noConsonantHeard(consonants: readonly string[]): string {
  return `no centre of gravity of ${consonants.map((name) => `/${name}/`).join(" and ")} before both vowels could be compared`;
}

export function onlyEveryNthRecording(n: number, kept: number, all: number): string {
  return `Judged by every ${n}${n === 2 ? "nd" : n === 3 ? "rd" : "th"} recording: ${kept.toLocaleString("en")} of ${all.toLocaleString("en")} vowels and consonants.`;
}

export function valueUnknown(column: string): string {
  const what: Readonly<Record<string, string>> = {
    accented: "which morae carry the accent",
    length: "which sounds are long and which short",
    devoiceableNeighbour: "which neighbouring vowels could be devoiced",
  };
  return `its labels do not say ${what[column] ?? `the ${column} of its sounds`}`;
}

export const noMarks = () =>
  "its labels do not say which vowels are devoiced; measure devoicing from the recordings, or use labels that mark it";

export const marksByRule = () =>
  "its devoicing marks were written from the text by a rule; they show what that rule expects, not what was said";

export const noRatio = () =>
  "no speaker has sounds of both kinds to compare, or their durations do not vary, so that no interval can be given";

/** Examples beside a verdict. */
export function noSingleExample(): string {
  return "this rule speaks of many sounds together; no single one shows it";
}

export function nothingToShow(): string {
  return "no sound of this kind is marked or measured well enough to be shown";
}

/** About devoicing decided by a measurement that is not always right. */
export function decisionByChance(): string {
  return "the devoicing decision is not surely better than chance, so that no rate can be worked back from it";
}

export function correctedMethod(method: string): string {
  return `${method}; corrected for how often the devoicing decision is wrong (Rogan and Gladen), which widens the interval`;
}

export function decisionUncorrected(): string {
  return "How often the devoicing decision is wrong is not known here, so the rate is not corrected for it; a rate near the rule's limit may fall on the wrong side.";
}

export function decisionShrinksDifferences(): string {
  return "Wrong devoicing decisions make differences look smaller than they are; the direction holds as long as they are as frequent on both sides.";
}

export function boundariesUnsure(): string {
  return "its boundaries were placed by an aligner, which is least sure at just this kind of edge; boundaries set by a person are wanted";
}

/** Mind for durations of an aligner that cannot go below a floor. */
export function floorOpens(usable: "lower" | "upper"): string {
  return `Some of these sounds stand at the shortest duration the aligner can give and may have been shorter. The interval is therefore open on one side, and only its ${usable} end speaks for or against the rule; there, sounds at that shortest duration are taken to have lasted at least a third of it.`;
}
