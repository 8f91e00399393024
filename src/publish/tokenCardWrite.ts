import path from "node:path";
import * as v from "valibot";
import { chooseLabelSet } from "../chooseLabelSet.ts";
import { openDataset } from "../datasets/openDataset.ts";
import * as messages from "../messages/card.ts";
import { UserError } from "../messages/userError.ts";
import { writeFileAtomic } from "../storage/atomicFile.ts";
import { openDatabase } from "../storage/duckdb.ts";
import { recordingReader } from "../storage/openRecording.ts";
import type { CardScheme } from "./tokenCardColours.ts";
import { type CardRow, openCardSource } from "./tokenCardSource.ts";
import { tokenCardSvg } from "./tokenCardSvg.ts";
import { tokenCards } from "./tokenCards.ts";
import { tokenCardAlt } from "./tokenCardWords.ts";

export interface CardFileOptions {
  readonly results: string;
  /** Folder of the dataset that was measured: the recording lies there. */
  readonly dataset: string;
  readonly utterance: string;
  readonly labelSet: string | null;
  /** Row of the intervals; or else the phone and which of those in the utterance, from 1. */
  readonly index: number | null;
  readonly phone: string | null;
  readonly nth: number;
  readonly out: string;
  readonly scheme: CardScheme;
}

export interface CardFileRecord {
  /** What the card shows, in words. */
  readonly says: string;
  readonly notes: readonly string[];
}

const formats = ["svg", "png"] as const;

/** Draws the card of one token into an SVG or PNG file. Throws a UserError for what is not in results or dataset. */
export async function writeTokenCard(options: CardFileOptions): Promise<CardFileRecord> {
  const format = v.safeParse(v.picklist(formats), path.extname(options.out).slice(1).toLowerCase());
  if (!format.success) throw new UserError(messages.cardFileUnknown(options.out));
  const connection = await openDatabase(":memory:", 256);
  const dataset = await openDataset(options.dataset).catch((error) => {
    connection.closeSync();
    throw error;
  });
  try {
    const source = await openCardSource(connection, options.results);
    const { id } = dataset.card;
    const utterance = await source.utterance(id, options.utterance);
    if (utterance === null || utterance.sets.size === 0)
      throw new UserError(messages.cardUtteranceUnknown(options.utterance, id, await source.some(id, 5)));
    const labelSet = chooseLabelSet([...utterance.sets.keys()], id, options.labelSet);
    const index = chooseToken(utterance.sets.get(labelSet)!, options);
    const places = new Map(dataset.utterances.map((one) => [one.id, one]));
    const record = recordingReader(dataset.tree);
    const draw = tokenCards(source, async (one) => {
      const place = places.get(one.utterance);
      return place === undefined || place.audio === null ? null : (await record(place)).samples;
    });
    const { card, refused } = await draw(utterance, labelSet, index);
    const svg = tokenCardSvg(card, { scheme: fixed(options.scheme, format.output) });
    await write(options.out, format.output === "svg" ? svg : await rasterise(svg));
    return {
      says: tokenCardAlt(card),
      notes: [
        ...(refused === null ? [] : [messages.cardWithoutRecording(refused)]),
        ...(format.output === "png" ? [messages.cardPngFonts] : []),
      ],
    };
  } finally {
    dataset.tree.close();
    connection.closeSync();
  }
}

/** A raster picture cannot follow its reader's setting: it is light unless asked for. */
function fixed(scheme: CardScheme, format: (typeof formats)[number]): CardScheme {
  return format === "png" && scheme === "auto" ? "light" : scheme;
}

function chooseToken(rows: readonly CardRow[], { utterance, index, phone, nth }: CardFileOptions): number {
  const tokens = rows.filter(({ kind }) => kind !== null);
  const sounds = tokens.map((row) => `${row.index} ${row.phone}`);
  if (index !== null && phone !== null) throw new UserError(messages.cardTokenTwice());
  if (phone !== null) {
    const found = tokens.filter((row) => row.phone === phone)[nth - 1];
    if (found === undefined) throw new UserError(messages.cardPhoneUnknown(utterance, phone, nth, sounds));
    return found.index;
  }
  if (index === null) throw new UserError(messages.cardTokenNeeded(utterance, sounds));
  if (!tokens.some((row) => row.index === index))
    throw new UserError(messages.cardIndexUnknown(utterance, index, sounds));
  return index;
}

/** Three times the size: sharp in print at the width of a column. */
async function rasterise(svg: string): Promise<Uint8Array> {
  const { Resvg } = await import("@resvg/resvg-js");
  return new Resvg(svg, { fitTo: { mode: "zoom", value: 3 }, font: { loadSystemFonts: true } })
    .render()
    .asPng();
}

async function write(file: string, content: string | Uint8Array): Promise<void> {
  try {
    await writeFileAtomic(file, content);
  } catch (error) {
    throw new UserError(
      messages.cardNotWritten(file, (error as NodeJS.ErrnoException).code ?? String(error)),
    );
  }
}
