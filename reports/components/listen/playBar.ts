import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { CardMora } from "../../../src/publish/tokenCard.ts";
import { element } from "../element.ts";
import { fetchRecording, type HeardRecording, Player, speeds } from "./player.ts";
import type { Strip } from "./strip.ts";

export interface PlayBarOptions {
  /** Where the recording lies; null where it cannot be heard. */
  readonly address: string | null;
  /** Why it cannot be heard. */
  readonly silent: string | null;
  readonly strip: Strip;
  /** Hears of the recording once it is there. */
  readonly onRecording: (recording: HeardRecording) => void;
}

export interface PlayBar {
  readonly node: HTMLElement;
  /** Plays a mora over and over, or stops it. */
  readonly loop: (mora: CardMora) => void;
  readonly close: () => void;
}

const fetched = new Map<string, Promise<HeardRecording>>();
const keptRecordings = 12;
let speed: number = speeds[0];

/** Recordings of sounds looked at lately are kept, since neighbours in the list often share one. */
function recordingAt(address: string): Promise<HeardRecording> {
  const known = fetched.get(address) ?? fetchRecording(address);
  fetched.delete(address);
  fetched.set(address, known);
  if (fetched.size > keptRecordings) fetched.delete(fetched.keys().next().value!);
  known.catch(() => fetched.delete(address));
  return known;
}

/** Buttons to play what is drawn or the whole recording, the speed, and what is being heard. */
export function playBar({ address, silent, strip, onRecording }: PlayBarOptions): PlayBar {
  const words = interfaceText().listen;
  const status = element("p", { class: "play-status", role: "status" });
  const say = (text: string) => status.replaceChildren(text);
  if (address === null) {
    say(silent ?? words.silentHere);
    return { node: element("div", { class: "play-bar" }, status), loop: () => {}, close: () => {} };
  }
  let recording: HeardRecording | null = null;
  let looped: CardMora | null = null;
  const player = new Player((playing, atMs) => {
    strip.at(atMs);
    if (playing === null) {
      looped = null;
      strip.looped(null);
      say(recording === null ? "" : words.loopHint);
    }
    play.replaceChildren(playing === null || playing.loop ? words.play : words.stop);
  });
  const start = async (fromMs: number, toMs: number, loop: boolean) => {
    try {
      await player.play({ fromMs, toMs, loop });
    } catch (error) {
      player.stop();
      say(words.cannotPlay(error instanceof Error ? error.message : String(error)));
    }
  };
  const toggle = () => {
    if (player.playing !== null && !player.playing.loop) return player.stop();
    void start(strip.stretch.fromMs, strip.stretch.toMs, false);
  };
  const whole = () => {
    if (recording !== null) void start(0, (1000 * recording.samples.length) / recording.sampleRateHz, false);
  };
  const play = element(
    "button",
    { type: "button", class: "tool play", disabled: true, "data-key": "play", click: toggle },
    words.play,
  );
  const playWhole = element(
    "button",
    { type: "button", class: "tool", disabled: true, "data-key": "play-whole", click: whole },
    words.playWhole,
  );
  say(words.fetching);
  recordingAt(address).then(
    (found) => {
      recording = found;
      player.recording = found;
      player.speed = speed;
      play.disabled = false;
      playWhole.disabled = false;
      say(words.loopHint);
      onRecording(found);
    },
    (error) => say(words.cannotPlay(error instanceof Error ? error.message : String(error))),
  );
  const node = element(
    "div",
    { class: "play-bar" },
    play,
    playWhole,
    speedChoice((chosen) => {
      speed = chosen;
      player.speed = chosen;
    }),
    status,
  );
  return {
    node,
    loop: (mora) => {
      if (recording === null) return;
      if (looped === mora) return player.stop();
      void start(mora.startMs, mora.endMs, true).then(() => {
        if (player.playing === null) return;
        looped = mora;
        strip.looped(mora);
        say(words.looping(mora.kana));
      });
    },
    close: () => player.stop(),
  };
}

function speedChoice(onSpeed: (speed: number) => void): HTMLElement {
  const words = interfaceText().listen;
  return element(
    "fieldset",
    { class: "speed" },
    element("legend", {}, words.speed),
    ...speeds.map((value) =>
      element(
        "label",
        { class: "chip" },
        element("input", {
          ...{ type: "radio", name: "speed", value, checked: value === speed, autocomplete: "off" },
          ...{
            "aria-label": words.speedName(value),
            "data-key": `speed-${value}`,
            change: () => onSpeed(value),
          },
        }),
        element("span", { "aria-hidden": "true" }, words.speeds[value]),
      ),
    ),
  );
}
