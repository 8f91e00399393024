/** Wording of what explains devoicing and duration, and of questions that tokens cannot answer. */

import { capital, coefficientInWords, levelInWords, termInWords } from "./terms.ts";

const count = (value: number) => value.toLocaleString("en");
const percent = (share: number) => `${(100 * share).toFixed(0)} %`;

export const missingTokenColumn = (name: string) =>
  `The tokens have no column "${name}". They may come from another version: run the corpus again to write them anew.`;

export const raggedTokenColumn = (name: string, length: number, expected: number) =>
  `The tokens' column "${name}" has ${length} entries where ${expected} were expected. The file may be cut short: run the corpus again to write it anew.`;

export const noDataset = (wanted: string, known: readonly string[]) =>
  `These results hold no dataset "${wanted}". They hold: ${known.join(", ")}.`;

export const tooManyToExplain = (tokens: number, most: number) =>
  `The corpus has ${count(tokens)} vowels and consonants. A run answers these questions at once for up to ${count(most)}; for more, \`morascope explain RESULTS\` takes its time and answers them.`;

/** Why nothing is fitted. */
export const noDevoiceableVowels = () =>
  "There is no short /i/ or /u/ between voiceless sounds here, so there is nothing to explain. Use more recordings.";

export const noMarks = (vowels: number) =>
  `None of the ${count(vowels)} vowels has a devoicing mark. Give the recordings, so that voicing can be measured, or labels that mark it.`;

export const onlyPredictedMarks = (vowels: number) =>
  `The marks of all ${count(vowels)} vowels were written from the text by a rule; a model of them would find the rule, not speech. Give the recordings, so that voicing can be measured.`;

export const noDurations = () =>
  "There is no vowel with a duration here, so there is nothing to explain. Use more recordings.";

export const predictedLeftOut = (vowels: number) =>
  `${count(vowels)} vowels whose mark was written from the text were left out.`;

export const fewerBasesLeftOut = (vowels: number, basis: string, kept: string) =>
  `${count(vowels)} vowels with ${basis} marks were left out: only ${kept} ones are looked at, since they do not err alike.`;

/** Who and what is looked at. */
export const devoiceablePopulation = () =>
  "short /i/ and /u/ after a voiceless consonant and before a voiceless consonant or a pause";

export const vowelPopulation = () => "vowels between two consonants, whatever their length";

export const finalIsBeforePause = () =>
  "A vowel before a pause is always the last of its stretch, so that both are one effect here: followed by a pause.";

export const termUnknown = (term: string, share: number) =>
  `${capital(termInWords(term))} is known for ${percent(share)} of the vowels only and was left out of the model.`;

/** Vowels that neither a person nor a measurement called voiced or devoiced. */
export const undecidedLeftOut = (vowels: number) =>
  `${count(vowels)} more ${vowels === 1 ? "vowel has" : "vowels have"} no devoicing mark, because nothing could be decided, and ${vowels === 1 ? "is" : "are"} in no count.`;

/** Vowels that are looked at although they may be long; `rates` leaves them out unless asked. */
export const mayBeLong = (vowels: number) =>
  `Nothing tells the length of ${count(vowels)} of these vowels: they are counted, though they may be long. \`rates\` counts them with --length all.`;

/** Why a model counts fewer vowels than the answer's heading; the numbers add up. */
export const leftOutOfModels = (
  modelled: number,
  tokens: number,
  leftOut: readonly { readonly term: string | null; readonly tokens: number }[],
) =>
  `Weighed together are ${count(modelled)} of the ${count(tokens)} vowels. Left out: ${leftOut
    .map(({ term, tokens: n }) =>
      term === null
        ? `${count(n)} of a kind without exceptions`
        : `${count(n)} for which ${termInWords(term)} is unknown`,
    )
    .join(", ")}.`;

export const wordsUnknown = () =>
  "Words are unknown here; vowels with the same sounds around them (C1, vowel, C2) are taken as one item instead.";

const oneOutcome = (devoiced: number, tokens: number) =>
  tokens === 1
    ? `its one vowel is ${devoiced === 0 ? "voiced" : "devoiced"}`
    : `${devoiced === 0 ? "none" : "all"} of its ${count(tokens)} vowels are devoiced`;

export const separatedLeftOut = (term: string, level: string, devoiced: number, tokens: number) =>
  `${capital(levelInWords(term, level))}: ${oneOutcome(devoiced, tokens)}, so an odds ratio has no bound. ${tokens === 1 ? "It is" : "They are"} set aside; the effects of the other terms stay what they would be.`;

/** A term each of whose levels has one outcome. */
export const tellsEveryOutcome = (
  term: string,
  levels: readonly { readonly level: string; readonly devoiced: number; readonly tokens: number }[],
) =>
  `${capital(termInWords(term))} alone tells every outcome (${levels.map(({ level, devoiced, tokens }) => `${levelInWords(term, level)}: ${oneOutcome(devoiced, tokens)}`).join("; ")}), so that odds ratios have no bound and nothing is left for other terms to explain. Look at the rates, or use more recordings.`;

export const floorPullsTogether = (share: number) =>
  `${percent(share)} of the vowels stand at the shortest duration the aligner can give. Their true length is unknown, which draws all effects towards none.`;

export const rateIsPartOfDuration = () =>
  "Speech rate counts the vowel's own time too, so that part of its effect is arithmetic.";

export const alignedTimes = () =>
  "Times were placed by an aligner: small effects may be its habit at the edges of some sounds.";

/** How a model's intervals came about. */
export const clusteredBy = (units: readonly string[], firth: boolean) =>
  `one regression${firth ? " with Firth's correction" : ""}; intervals clustered by ${units.join(" and ")}, the widest of them (CR2, t)`;

export const mixedBy = (units: readonly string[], method: string) =>
  `random intercepts for ${units.join(" and ")} (${method}); t intervals that hold where every ${units[0]} shows the same effects`;

export const oneSpeakerItems = (unit: string) =>
  `One speaker: intervals are clustered by ${unit} and speak of this speaker only.`;

export const oneItem = (unit: string) =>
  `All vowels belong to one ${unit}: nothing follows about other ${unit}s.`;

export const onlyOneOfBoth = (unit: string) =>
  `One speaker and one ${unit}: there is nothing to compare, so that no error can be estimated. Use more recordings.`;

export const interceptLeftOut = (unit: string, groups: number) =>
  groups < 2
    ? `There is one ${unit} only, so that variation among ${unit}s cannot be estimated.`
    : `Every vowel has a ${unit} of its own, so that variation among ${unit}s cannot be told from chance.`;

export const noBounds = () =>
  "An effect without bounds rests on so few speakers or words that its error cannot be estimated.";

/** Mixed models average rates over the spread of speakers. */
export const noPointsOf = (speakers: number) =>
  `Percentage points are left out: they average over how much speakers differ, which ${speakers} speakers cannot tell.`;

/** In a table, in place of a number. */
export const tooFewToTell = () => "too few to tell";
export const noExceptions = () => "no exceptions";

/** Terms, as coefficients are named, that together predict some vowels without exception. */
export const separatedWithheld = (coefficients: readonly string[]) =>
  `No effect is given for what takes part in telling some vowels without exception: ${coefficients.map(coefficientInWords).join(", ")}.`;

export const muchWider = (effects: readonly string[]) =>
  `For “${effects.map(coefficientInWords).join("”, “")}” the clustered interval is more than twice as wide as that of the mixed model: speakers or words may differ in the effect itself, which random intercepts do not know of. Go by the wider one.`;

/** `said`: what each model says of the term, in words; `share` of the level's vowels lies in one word or item. */
export const modelsContradict = (
  name: string,
  said: { readonly clustered: string; readonly mixed: string },
  most: { readonly item: string; readonly unit: string; readonly share: number } | null,
) =>
  `${capital(coefficientInWords(name))}: the models contradict each other (clustered ${said.clustered}, mixed ${said.mixed}). ${
    most === null
      ? "Speakers or words seem to differ in the effect itself, or a few of them carry it."
      : `${percent(most.share)} of its vowels stand in one ${most.unit} (${most.item}), so that the effect cannot be told from that ${most.unit}: the mixed model lays it on the ${most.unit}, the other on the term.`
  } Take it as unknown.`;

export const everyNth = (n: number, kept: number, all: number) =>
  `Of ${count(all)} vowels ${count(kept)} are looked at, those of every ${n}${n === 2 ? "nd" : n === 3 ? "rd" : "th"} recording: more would take long and add hardly any certainty.`;

export const frequencyInvalid = (file: string, line: number, found: string) =>
  `${file}, line ${line}: "${found}" is no frequency. Each line must hold a word and how often it occurs per million words, a number of 0 or more, separated by a tab or a comma.`;

export const frequencyEmpty = (file: string) =>
  `${file} holds no word. Each line must hold a word and how often it occurs per million words, separated by a tab or a comma.`;

/** Vowel space. */
export const noFormants = () =>
  "No vowel has measured formants. They need recordings: labels alone do not tell vowel quality.";

export const groupedByPitch = (limitHz: number) =>
  `Speakers are grouped by the pitch of their voice (median F0 below or above ${limitHz} Hz), since formants fall with the length of the vocal tract. The grouping is of voices and says nothing about persons.`;

export const notNormalised = (speakers: number, least: number) =>
  `${count(speakers)} speakers lack ${least} measured vowels of each of the five kinds and have no normalised values.`;

export const formantsMissing = (share: number) =>
  `${percent(share)} of the vowels with a voice have no reliable formants and are left out; high voices and nasal surroundings lose most.`;

export const thinRows = (least: number) =>
  `Rows of fewer than ${least} vowels of a kind say little, however narrow their interval looks.`;

export const formantsOneSpeaker = () =>
  "One speaker: intervals are over the vowels of this speaker, taken as independent, and nothing follows about others.";

/** Consonant colouring. */
export const noFrication = () =>
  "No consonant has a measured spectrum. It needs recordings: labels alone do not tell the colour of a consonant.";

export const noColouringEvidence = () =>
  "No vowel after these consonants has a devoicing mark that is evidence (annotated or measured).";

export const tooFewColoured = (i: number, u: number, least: number) =>
  `${count(i)} before /i/ and ${count(u)} before /u/, where ${least} of each are needed to compare.`;

export const noSpeakerWithBoth = () =>
  "No speaker has the consonant before both vowels, so that nobody can be compared with themselves.";

export const onlyTwoConsonants = () =>
  "Only /k/ and /sh/ stand before both vowels as the same sound; after other consonants there is no pair to compare (Whang J. (2018) JASA 143:1159–1172).";

/** Known error of the devoicing decision. */
export const nothingJudgedTwice = () =>
  "No vowel is both marked by a person and measured. Mark the devoiced vowels of some recordings and give labels and recordings together.";

export const errorOfSynthetic = (dataset: string) =>
  `${dataset} is synthetic speech: this says how the decision does on machine voices whose truth is known, and is no accuracy on recorded speech. Mark some vowels of your own corpus to learn that.`;

export const errorOfThisCorpus = (dataset: string) =>
  `This is how the decision does on ${dataset}, with its voices, recordings and marks; another corpus has an accuracy of its own.`;

export const marksErrToo = () =>
  "The marks are taken as the truth. Where the person erred, the decision is blamed.";

export const tooFewKind = (kind: "devoiced" | "voiced") =>
  `There is no truly ${kind} vowel among them, so half of the question stays open.`;

/** Timing. */
export const noSpread = () =>
  "One speaker: an interval (–) would speak of speakers like these, which takes several; only a devoiced mora has one, over the morae of this speaker.";

export const noTimedWords = () =>
  "Words are unknown, or no speaker has three words of different length, so that no line can be drawn.";

export const noTimedPhrases = () =>
  "No speaker has three stretches between pauses of different length, so that no line can be drawn.";

export const noTwinMorae = () =>
  "No mora occurs both devoiced and voiced with one speaker, with marks that are evidence.";

export const noRhythm = () => "There are no stretches with a duration.";

export const rhythmDependsOnText = () =>
  "Rhythm measures depend on the text that is read: compare the same sentences, and order rather than values (Arvaniti A. (2009) Phonetica 66:46–63).";

export const colouringModels = () =>
  "difference of centres of gravity within speakers; interval clustered by speaker and by word, the widest of them (CR2, t); beside it random intercepts (REML, t)";

export const noSpectrumOf = (consonant: string) =>
  `No /${consonant}/ here has a measured spectrum: too few releases or frications stand out from the background.`;

export const errorMethod = (speakers: number) =>
  speakers < 2
    ? "share judged as marked; Wilson interval over the vowels of one speaker"
    : `share judged as marked; interval clustered by ${speakers} speakers (logit scale, small-sample correction, t), not narrower than Wilson's`;
