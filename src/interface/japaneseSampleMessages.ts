import * as explain from "../messages/explain.ts";
import { retellingExactly as exact, type Retelling, retellingOf, retelling as tell } from "./retelling.ts";

/** What answers from single sounds, vowel space, timing and colouring, warn of and rest on. */
export const japaneseSampleMessages: readonly Retelling[] = [
  exact(
    explain.noFormants(),
    "フォルマントを測れた母音がありません。録音が必要で、ラベルだけでは母音の音色は分かりません。",
  ),
  tell(
    explain.groupedByPitch,
    (hz) =>
      `話者は声の高さ (F0の中央値が${hz} Hz未満か以上か) で分けています。フォルマントは声道が長いほど低くなるためです。分けているのは声で、人については何も述べません。`,
  ),
  retellingOf(
    /([\d,]+) speakers lack (\d+) measured vowels of each of the five kinds and have no normalised values\./,
    (n, least) => `話者${n}名は、五つの母音のどれかが${least}個測れていないため、正規化した値がありません。`,
  ),
  retellingOf(
    /(\d+) % of the vowels with a voice have no reliable formants and are left out; high voices and nasal surroundings lose most\./,
    (n) =>
      `有声の母音の${n}%は信頼できるフォルマントがないため除きました。高い声と鼻音の隣で多く失われます。`,
  ),
  exact(
    explain.formantsOneSpeaker(),
    "話者は一人です。区間はこの話者の母音を独立とみなしたもので、ほかの話者のことは分かりません。",
  ),
  exact(
    explain.noFrication(),
    "スペクトルを測れた子音がありません。録音が必要で、ラベルだけでは子音の音色は分かりません。",
  ),
  exact(
    explain.noColouringEvidence(),
    "これらの子音のあとに、証拠になる印 (注釈または測定) のある母音がありません。",
  ),
  retellingOf(
    /([\d,]+) before \/i\/ and ([\d,]+) before \/u\/, where (\d+) of each are needed to compare\./,
    (i, u, least) => `/i/ の前に${i}個、/u/ の前に${u}個で、比べるにはそれぞれ${least}個必要です。`,
  ),
  exact(
    explain.noSpeakerWithBoth(),
    "両方の母音の前にその子音がある話者がいないので、話者の中で比べられません。",
  ),
  exact(
    explain.onlyTwoConsonants(),
    "両方の母音の前に同じ音として立つのは /k/ と /sh/ だけで、ほかの子音には比べる組がありません (Whang 2018、JASA 143:1159–1172)。",
  ),
  exact(explain.nothingJudgedTwice(), "人が印を付け、かつ測定された母音がありません。"),
  exact(
    explain.noTimedWords(),
    "語が分からないか、長さの違う語を三つ以上持つ話者がいないため、直線を引けません。",
  ),
  exact(
    explain.noTimedPhrases(),
    "長さの違うポーズ間の区間を三つ以上持つ話者がいないため、直線を引けません。",
  ),
  exact(explain.noTwinMorae(), "証拠になる印があり、同じ話者で無声化と有声の両方が現れる拍がありません。"),
  exact(explain.noRhythm(), "長さのある区間がありません。"),
  exact(
    explain.rhythmDependsOnText(),
    "リズムの値は読んだ文によって変わります。同じ文どうしを、値より順序で比べてください (Arvaniti 2009、Phonetica 66:46–63)。",
  ),
  exact(
    explain.colouringModels(),
    "話者の中での重心の差。話者と語を単位とする区間のうち最も広いもの (CR2、t)。あわせて変量切片 (REML、t)",
  ),
  retellingOf(
    /share judged as marked; Wilson interval over the vowels of one speaker/,
    () => "印どおりに判定された割合。一人の話者の母音についてのウィルソン区間",
  ),
  retellingOf(
    /share judged as marked; interval clustered by (\d+) speakers .+/,
    (n) => `印どおりに判定された割合。話者${n}名を単位とする区間 (ロジット尺度、小標本補正、t)`,
  ),
  retellingOf(
    /The corpus has ([\d,]+) vowels and consonants\. A run answers these questions at once for up to ([\d,]+); .+/,
    (n, most) =>
      `このコーパスには母音と子音が${n}個あります。実行時に答えられるのは${most}個までで、それを超えるものには \`morascope explain RESULTS\` が時間をかけて答えます。`,
  ),
  retellingOf(
    /mean over speakers, each counting the same, with t interval; one speaker: over vowels\. z: Lobanov \(1971\), the five vowels weighing the same/,
    () =>
      "話者を等しく扱った平均とt区間。話者が一人のときは母音について。z: Lobanov (1971)、五つの母音を等しく扱う",
  ),
];
