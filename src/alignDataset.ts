import { seedHelps } from "./alignment/adaptModel.ts";
import type { Alignment } from "./alignment/alignUtterance.ts";
import type { ReferencePhone } from "./alignment/boundaryErrors.ts";
import { type BoundaryCalibration, calibrateBoundaries } from "./alignment/calibrateBoundaries.ts";
import { defaultMatchLimits, judgeMatches } from "./alignment/judgeMatches.ts";
import type { MatchScore } from "./alignment/matchScore.ts";
import type { DatasetCard, LabelSetCard, Problem } from "./datasets/types.ts";
import type { HeardDataset, HeardShard } from "./hearDataset.ts";
import { type Listened, learnModel } from "./learnModel.ts";
import {
  alignmentNote,
  littleToLearnFrom,
  matchNotJudged,
  recordingTooShortFor,
  textDiffers,
} from "./messages/hearing.ts";
import { codeOf } from "./shards/codeOf.ts";
import type { Fitting, OrderOf } from "./shards/orders.ts";
import { type AlignPart, requirePart } from "./shards/parts.ts";
import { recordingProblem, setAside } from "./shards/shardRows.ts";
import { alignedSetCard } from "./shards/timedSets.ts";
import type { ShardWork } from "./shardWork.ts";
import { type Normalisation, normalisationFrom } from "./signals/normalise.ts";
import { contentKey } from "./storage/contentCache.ts";
import { toTaggedJson } from "./storage/taggedJson.ts";

export { alignedSetId } from "./shards/timedSets.ts";

/** A shard's alignments, and which of them count. */
export interface AlignedShard {
  readonly align: string;
  readonly fitting: Fitting;
}

export interface AlignedDataset {
  /** The label set that the aligner made; null when there was nothing to align. */
  readonly labelSet: LabelSetCard | null;
  /** By index of the shard; none for one without anything to align. */
  readonly shards: ReadonlyMap<number, AlignedShard>;
  readonly problems: readonly Problem[];
}

/** An utterance that was aligned. */
interface Match {
  readonly shard: HeardShard;
  readonly place: number;
  readonly score: MatchScore;
}

/**
 * Finds the boundaries of utterances that have a recording and a reading but no labels: learns how the sounds of this
 * very dataset sound, aligns every utterance, and sets aside those whose recording does not fit their text.
 * Utterances labelled by hand help to learn, and tell how far our boundaries lie from where people put them.
 */
export async function alignDataset(
  card: DatasetCard,
  { shards, moments }: HeardDataset,
  work: ShardWork,
): Promise<AlignedDataset> {
  const { id } = card;
  const listened = shards.flatMap(listenedIn);
  const toAlign = new Set(listened.map(({ shard }) => shard.index));
  const problems: Problem[] = [];
  if (listened.length === 0) return { labelSet: null, shards: new Map(), problems };
  const normalisations = new Map([...moments].map(([speaker, sums]) => [speaker, normalisationFrom(sums)]));
  const spokenMs = listened.reduce((sum, { durationMs }) => sum + durationMs, 0);
  if (spokenMs < littleSpeechMs) problems.push(littleSpeech(card, spokenMs));
  const model = await learnModel(id, listened, normalisations, work);

  const keys = new Map<number, string>();
  const matches: Match[] = [];
  for await (const { shard, order, part, failed } of work.map(
    `Aligning ${id}`,
    listened.length,
    shards.filter(({ index }) => toAlign.has(index)),
    async (shard) => {
      const order = alignOrder(shard, model, normalisations, work);
      const done = await work.orders.attempt(() => work.orders.part<AlignPart>(order));
      return { shard, order, ...done, utterances: order.at.length };
    },
  )) {
    if (part === null) {
      problems.push(...setAside(shard, "Aligning", failed));
      continue;
    }
    keys.set(shard.index, order.key);
    for (const [place, alignment] of part) {
      if (alignment === null)
        problems.push(recordingProblem(shard.utterances.value[place]!, recordingTooShortFor(), true));
      else matches.push({ shard, place, score: alignment.match });
    }
  }
  if (matches.length > 0 && matches.length < leastToJudge) problems.push(notJudged(card, matches.length));
  const fitting = withoutMismatches(matches, problems);
  const calibration = calibrate(fitting, keys, work);
  const used = fitting.filter(({ shard, place }) => !shard.byHand.value.has(place));
  const aligned = new Map<number, number[]>();
  for (const { shard, place } of used) aligned.set(shard.index, [...(aligned.get(shard.index) ?? []), place]);
  return {
    labelSet: alignedSetCard(
      used.length,
      shards.some(({ accentsPredicted }) => accentsPredicted) ? "predicted" : null,
      alignmentNote(spokenMs, seedHelps(spokenMs), calibration?.boundaries ?? null),
    ),
    shards: new Map(
      [...aligned].map(([shard, places]) => [
        shard,
        { align: keys.get(shard)!, fitting: { aligned: places, calibration } },
      ]),
    ),
    problems,
  };
}

function listenedIn(shard: HeardShard): Listened[] {
  const recordings = shard.recordings.value;
  return shard.utterances.value.flatMap(({ speaker }, place) => {
    const durationMs = shard.durationsMs[place]!;
    const wanted = recordings[place]?.features === true && durationMs !== null;
    return wanted ? [{ shard, place, speaker, durationMs }] : [];
  });
}

function alignOrder(
  shard: HeardShard,
  model: string,
  normalisations: ReadonlyMap<string, Normalisation>,
  { orders }: ShardWork,
): OrderOf<"align"> {
  const listened = listenedIn(shard);
  const at = listened.map(({ place }) => place);
  const speakers = [...new Set(listened.map(({ speaker }) => speaker))];
  const own = speakers.map((speaker): OrderOf<"align">["normalisations"][number] => {
    const { mean, scale } = normalisations.get(speaker)!;
    return [speaker, { mean: Float64Array.from(mean), scale: Float64Array.from(scale) }];
  });
  const { hear, digest } = shard;
  return {
    kind: "align",
    cache: orders.cache.folder,
    key: contentKey("align", codeOf("align"), model, hear, digest, JSON.stringify(at), toTaggedJson(own)),
    hear,
    read: shard.key,
    model,
    at,
    normalisations: own,
  };
}

/** Among fewer recordings than this the middle and its spread are too unsure to call one an outlier. */
const leastToJudge = 12;

/** The utterances whose recording fits their text; each other is listed with its worst stretch. */
function withoutMismatches(matches: readonly Match[], problems: Problem[]): readonly Match[] {
  if (matches.length < leastToJudge) return matches;
  const verdicts = judgeMatches(matches.map(({ score }) => score));
  return matches.filter(({ shard, place, score }, i) => {
    const { mismatch, gapDeviation, worstDeviation } = verdicts[i]!;
    if (mismatch === null) return true;
    const deviations = { gapDeviation, worstDeviation };
    const wording = textDiffers(mismatch, deviations, defaultMatchLimits, score.worst);
    problems.push(recordingProblem(shard.utterances.value[place]!, wording, true));
    return false;
  });
}

function notJudged({ id }: DatasetCard, recordings: number): Problem {
  const wording = matchNotJudged(recordings, leastToJudge);
  return { dataset: id, utterance: null, file: "", line: null, ...wording, excluded: false };
}

/** Less speech than this teaches the sounds less well: boundaries within 20 ms fall from 93 to below 92 % on reference speech. */
const littleSpeechMs = 120_000;

function littleSpeech({ id }: DatasetCard, spokenMs: number): Problem {
  const wording = littleToLearnFrom(spokenMs / 1000, littleSpeechMs / 1000, seedHelps(spokenMs));
  return { dataset: id, utterance: null, file: "", line: null, ...wording, excluded: false };
}

/** Fewer hand-placed boundaries than this say too little of where people put them: about half a minute of speech. */
const leastBoundaries = 200;

/** Offsets of our boundaries from those that people placed; null when there are too few of them. */
function calibrate(
  matches: readonly Match[],
  keys: ReadonlyMap<number, string>,
  { orders }: ShardWork,
): BoundaryCalibration | null {
  const pairs: { alignment: Alignment; labels: readonly ReferencePhone[] }[] = [];
  let shardInHand: HeardShard | null = null;
  let part: AlignPart = new Map();
  for (const { shard, place } of matches) {
    const labels = shard.byHand.value.get(place);
    if (labels === undefined) continue;
    if (shardInHand !== shard) part = requirePart<AlignPart>(orders.cache, keys.get(shard.index)!);
    shardInHand = shard;
    pairs.push({ alignment: part.get(place)!, labels });
  }
  if (pairs.length === 0) return null;
  const calibration = calibrateBoundaries(pairs);
  return calibration.boundaries < leastBoundaries ? null : calibration;
}
