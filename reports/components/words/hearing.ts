import type { Clip } from "../../../src/findings/words/describe.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";
import { fetchRecording, type HeardRecording, Player } from "../listen/player.ts";
import type { AddressOf } from "./heardWhere.ts";

/** Speech around a word is kept short, so that the word is heard alone. */
const marginMs = 40;

/** One voice at a time; recordings are fetched when they are first heard. */
export class Hearing {
  readonly #addressOf: AddressOf;
  readonly #recordings = new Map<string, Promise<HeardRecording>>();
  #button: HTMLButtonElement | null = null;
  readonly #player = new Player((playing) => {
    if (playing === null) this.#release();
  });

  constructor(addressOf: AddressOf) {
    this.#addressOf = addressOf;
  }

  /**
   * A button that plays one clip; `mark`: whether the vowel in question is whispered in it. Null where the recording
   * cannot be heard.
   */
  button(clip: Omit<Clip, "devoiced">, name: string, mark: boolean | null, key: string): HTMLElement | null {
    const address = this.#addressOf(clip);
    if (address === null) return null;
    const text = interfaceText().words;
    const kind = mark === null ? "unknown" : mark ? "devoiced" : "voiced";
    const said = text.playAs[kind];
    const label = `${text.play(name, clip.speaker)}${said === "" ? "" : `, ${said}`}`;
    const button = element(
      "button",
      { type: "button", class: `hear ${kind}`, "aria-label": label, title: label, "data-key": key },
      element("span", { "aria-hidden": "true" }, "▶"),
      element("span", { class: "mark", "aria-hidden": "true" }),
    );
    button.addEventListener("click", () => this.#toggle(button, clip, address));
    return button;
  }

  async #toggle(button: HTMLButtonElement, clip: Omit<Clip, "devoiced">, address: string): Promise<void> {
    const own = this.#button === button;
    this.#player.stop();
    this.#release();
    if (own) return;
    this.#button = button;
    button.classList.add("playing");
    try {
      const recording = await this.#recordingOf(address);
      if (this.#button !== button) return;
      this.#player.recording = recording;
      this.#button = button;
      button.classList.add("playing");
      await this.#player.play({
        fromMs: Math.max(0, clip.startMs - marginMs),
        toMs: clip.endMs + marginMs,
        loop: false,
      });
    } catch {
      this.#release();
      button.disabled = true;
      button.title = interfaceText().words.cannotPlay;
    }
  }

  #recordingOf(address: string): Promise<HeardRecording> {
    const known = this.#recordings.get(address);
    if (known !== undefined) return known;
    const loaded = fetchRecording(address);
    this.#recordings.set(address, loaded);
    return loaded;
  }

  #release(): void {
    this.#button?.classList.remove("playing");
    this.#button = null;
  }
}
