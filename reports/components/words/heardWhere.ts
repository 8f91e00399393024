import { localServer } from "../listen/listenCorpus.ts";

/** Address of an utterance's recording; null where it cannot be heard. */
export type AddressOf = (clip: { readonly dataset: string; readonly utterance: string }) => string | null;

/**
 * Where recordings are heard: `audio` names those of the site by `dataset/utterance`; a reader whose own machine serves
 * the page hears all of its datasets. `href`: address of any of the page's files, which tells where the site begins.
 */
export function heardWhere(audio: Readonly<Record<string, string>>, href: string): AddressOf {
  const home = href.replace(/_file\/.*$/, "");
  const own = new Set(localServer()?.datasets);
  return ({ dataset, utterance }) => {
    if (own.has(dataset)) return `${home}local/clip.wav?${new URLSearchParams({ dataset, utterance })}`;
    const address = audio[`${dataset}/${utterance}`];
    return address === undefined ? null : `${home}${address}`;
  };
}
