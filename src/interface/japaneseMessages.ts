import * as agreement from "../messages/agreement.ts";
import * as explain from "../messages/explain.ts";
import * as models from "../messages/models.ts";
import * as publish from "../messages/publish.ts";
import * as rules from "../messages/rules.ts";
import * as ruleWords from "../messages/ruleWords.ts";
import { japaneseEstimateMessages } from "./japaneseEstimateMessages.ts";
import { japaneseModelMessages } from "./japaneseModelMessages.ts";
import { ruleTexts } from "./japaneseRuleTexts.ts";
import { unitsInJapanese } from "./japaneseTerms.ts";
import {
  retellingExactly as exact,
  type Retelling,
  retellingOf,
  retoldBy,
  retelling as tell,
} from "./retelling.ts";

/** Warnings, methods and reasons that results keep in English. The functions that word them give the patterns. */
export const japaneseMessages: readonly Retelling[] = [
  ...japaneseEstimateMessages,
  retellingOf(
    /(.+ \([^()]+\)): ((?:\d+ of the |Left out: |Left out, |Not both ).+)/,
    (source, note) => `${source}: ${again(note!)}`,
  ),
  exact(
    rules.tokensNotAtHand(),
    "個々の母音と子音が必要ですが、数だけしかありません。`morascope rules` で結果のフォルダ全体を判定してください",
  ),
  retellingOf(
    /it needs (.+), by which rules cannot be judged yet/,
    (needs) => `必要なもの: ${needed(needs!)}。これによる判定はまだできません`,
  ),
  exact(rules.noFormantsMeasured(), "フォルマントを測れた母音がありません。録音が必要です"),
  exact(rules.noVoicesKnown(), "母音を測れた話者の声の高さが分からず、基準が決まりません"),
  tell(rules.noSpeakerWithAllVowels, (least) => `各母音が${least}個ずつ測れた話者がいません`),
  tell(
    rules.noLongAndShort,
    (least) => `長短の両方を発音した話者の、フォルマントを測れた長母音が${least}個ある母音がありません`,
  ),
  retellingOf(
    /Left out for fewer than (\d+) long ones: (.+)\./,
    (least, vowels) => `長いものが${least}個に満たないため除いたもの: ${vowels}。`,
  ),
  tell(
    rules.largestOfMany,
    (n) => `${n}個のずれ (各母音のF1とF2) のうち最大のもの、話者ごとに比べた。下限は、すべてを見たことを考慮`,
  ),
  retellingOf(
    /smallest of (\d+) (.+?); the upper end allows for looking at all of them/,
    (n, of) =>
      `${n}個の${of!.startsWith("pairs") ? "母音の組" : "子音"}のうち最小のもの。上限は、すべてを見たことを考慮`,
  ),
  retellingOf(
    /(.+); (smallest of \d+ .+; the upper end allows for looking at all of them)/,
    (method, smallest) => `${again(method!)}。${again(smallest!)}`,
  ),
  retellingOf(
    /mean over speakers, each counting the same, of how far a mean formant lies above the limit; t interval/,
    () => "平均フォルマントが基準をどれだけ上回るか。話者を等しく扱った平均とt区間",
  ),
  retellingOf(
    /how far the mean formant lies above the limit; t interval over this speaker's vowels, taken as independent/,
    () => "平均フォルマントが基準をどれだけ上回るか。この話者の母音を独立とみなしたt区間",
  ),
  retellingOf(
    /mean over speakers, each counting the same, of the variance that a straight line explains; t interval/,
    () => "直線で説明される分散。話者を等しく扱った平均とt区間",
  ),
  retellingOf(
    /variance that a straight line explains; interval by Fisher's z over this speaker's words, taken as independent/,
    () => "直線で説明される分散。この話者の語を独立とみなしたフィッシャーのz区間",
  ),
  retellingOf(
    /ratio of geometric means, each mora compared with itself within a speaker; interval clustered by speaker/,
    () => "幾何平均の比、話者の中で同じ拍どうしを比較。話者を単位とする区間",
  ),
  retellingOf(
    /ratio of geometric means, each mora compared with itself; interval over this speaker's morae, taken as independent/,
    () => "幾何平均の比、同じ拍どうしを比較。この話者の拍を独立とみなした区間",
  ),
  retellingOf(
    /its words are unknown, or no speaker has enough of them of different length/,
    () => "語が分からないか、長さの違う語を十分に持つ話者がいません",
  ),
  retellingOf(
    /no speaker has enough stretches between pauses of different length/,
    () => "長さの違うポーズ間の区間を十分に持つ話者がいません",
  ),
  exact(rules.noTwins(), "証拠になる印があり、同じ話者で無声化と有声の両方が現れる拍がありません"),
  exact(rules.noMarkedMorae(), "時刻と無声化の印の両方がある拍がありません"),
  retellingOf(
    /(\d+) % of the devoiced vowels stand at the shortest duration the aligner can give; their morae may have been shorter, and the ratio smaller\./,
    (n) =>
      `無声化した母音の${n}%が、自動整列の付けられる最短の長さにあります。その拍は実際はもっと短く、比はもっと小さいかもしれません。`,
  ),
  tell(rules.consonantUnheard, (consonant, reason) => `/${consonant}/ は除きます。${again(reason)}`),
  retellingOf(
    /no centre of gravity of (.+) before both vowels could be compared/,
    (names) => `${names!.replaceAll(" and ", "、")} の重心を両方の母音の前で比べられません`,
  ),
  retellingOf(
    /Judged by every (\d+)\w+ recording: (.+) of (.+) vowels and consonants\./,
    (n, kept, all) => `録音を${n}件に1件ずつ見て判定しました: 母音と子音${all}個のうち${kept}個。`,
  ),
  exact(rules.valueUnknown("accented"), "ラベルから、どの拍にアクセント核があるか分かりません"),
  exact(rules.valueUnknown("length"), "ラベルから、どの音が長くどの音が短いか分かりません"),
  exact(rules.valueUnknown("devoiceableNeighbour"), "ラベルから、隣のどの母音が無声化しうるか分かりません"),
  exact(
    rules.noMarks(),
    "ラベルから、どの母音が無声化したか分かりません。録音から無声化を測るか、印のあるラベルを使ってください",
  ),
  exact(
    rules.marksByRule(),
    "無声化の印は規則がテキストから書いたもので、規則の予想であって実際の発音ではありません",
  ),
  exact(rules.noRatio(), "比べる両方の音を持つ話者がいないか、長さに散らばりがないため、区間が得られません"),
  exact(rules.decisionByChance(), "無声化の判定が偶然より良いとは言いきれないため、割合を求め直せません"),
  retellingOf(
    /(.+); corrected for how often the devoicing decision is wrong \(Rogan and Gladen\), which widens the interval/,
    (method) => `${again(method!)}。判定の誤りで補正 (Rogan・Gladen)、そのぶん区間は広い`,
  ),
  exact(
    rules.decisionUncorrected(),
    "無声化の判定がどれだけ誤るかはここでは分からないため、割合を補正していません。経験則の境目に近い割合は、実際は反対側かもしれません。",
  ),
  tell(
    ruleWords.widerByWords,
    (words) => `この区間は${words}語それぞれの音をひとまとまりとしても数えており、そのぶん広くなっています。`,
  ),
  retellingOf(
    /(?:All of these sounds stand in one word: this speaks of that word only\.|These sounds stand in (\d+) words: this speaks of those words only\.)/,
    (words) =>
      `これらの音は${words === "" ? "一つの語" : `${words}語`}のもので、その語についてだけのことです。`,
  ),
  exact(
    ruleWords.fewWordsCarry(),
    "片方の音のほとんどが一つの語のものなので、区間は語による違いを考えに入れられません。",
  ),
  exact(ruleWords.theseWordsOnly(1), "これらの音はすべて一つの語のもので、その語についてだけ述べています。"),
  tell(ruleWords.theseWordsOnly, (n) => `これらの音は${n}語のもので、その語についてだけ述べています。`),
  exact(
    rules.decisionShrinksDifferences(),
    "判定の誤りは差を実際より小さく見せます。誤りが両側で同じくらいなら、方向は変わりません。",
  ),
  exact(
    rules.boundariesUnsure(),
    "境界が自動整列によるもので、ちょうどこの種の境界で最も不確かです。人が付けた境界が必要です",
  ),
  ...(["lower", "upper"] as const).map((end) =>
    exact(
      rules.floorOpens(end),
      `これらの音の一部は自動整列の付けられる最短の長さにあり、実際はもっと短かったかもしれません。そのため区間の片側は開いており、${end === "lower" ? "下" : "上"}限だけが判定に使えます。最短の長さの音は、少なくともその3分の1の長さだったとみなします。`,
    ),
  ),

  tell(
    agreement.syntheticReference,
    (name) =>
      `${name} は合成音声です。人の音声はもっと難しいので、人の録音ではこれより低いと考えてください。`,
  ),
  exact(
    agreement.sameTimes(),
    "境界の違いが一つもありません。結果はこのラベルから作られたと思われ、その場合どちらの良さも示しません。ほかの人が作ったラベルと比べてください。Morascope自身の境界を確かめるには、同じ録音をラベルなしで実行した結果と比べてください。",
  ),
  exact(agreement.anchorsIntro, "参考として、ほかの言語とコーパスの値 (ここでの測定ではない):"),
  exact(agreement.anchors[0].what, "同じ音声に二人がラベルを付けたとき、20 ms 以内の境界"),
  exact(agreement.anchors[1].what, "英語の朗読音声 (TIMIT) の従来の自動整列、20 ms 以内"),
  exact(
    agreement.boundariesAgainst("annotated"),
    "境界: 人が付けた、または音声の作成者に既知のラベルとの比較",
  ),
  exact(
    agreement.boundariesAgainst("aligned"),
    "境界: 別の自動整列との一致。相手も誤るので、正確さではありません",
  ),
  exact(
    agreement.boundariesAgainst("aligned", false),
    "境界: 由来の示されていないラベルとの一致。人が付けたのでなければ正確さではありません",
  ),
  exact(
    agreement.marksAgainst("annotated"),
    "短い /i, u/ の無声化: 人が付けた、または音声の作成者に既知の印との比較",
  ),
  exact(
    agreement.marksAgainst("predicted"),
    "短い /i, u/ の無声化: 規則がテキストから予測した印との比較。どれだけ規則に従ったかで、判定の正確さではありません",
  ),
  exact(
    agreement.marksAgainst("annotated", false),
    "短い /i, u/ の無声化: 由来の示されていない印との一致。人が聞いたのでなければ正確さではありません",
  ),
  exact(agreement.marksAgainst(null), "無声化: 聞こえた短い /i, u/ に印がないので、比べられません"),

  tell(publish.clipsForbidden, (dataset) => `${dataset}: 録音は公開できません。`),
  tell(
    publish.clipsNeedFolder,
    (dataset, id) =>
      `${dataset}: この報告は録音なしで作られました。聞ける例を加えるには \`--audio ${id}=FOLDER\` を付けて作ってください。`,
  ),
  retellingOf(
    /(.+): (?:One example is|(\d+) examples are) missing, because the recording could not be read\. .+/,
    (dataset, n) => `${dataset}: 録音を読めないため、例が${n === "" ? "1" : n}件ありません。`,
  ),
  ...japaneseModelMessages,
  tell(
    models.fewClusters,
    (clusters, unit) =>
      `${unitsInJapanese[unit] ?? unit}は${clusters}だけです。${unitsInJapanese[unit] ?? unit}を単位とする誤差の根拠はわずかです。`,
  ),
  retellingOf(
    /Only ([\d,]+) (\w+?)s?: the variation among \w+, and errors that depend on it, are rough\./,
    (n, unit) =>
      `${unitsInJapanese[unit!] ?? unit}は${n}${unit === "speaker" ? "名" : ""}だけです。${unitsInJapanese[unit!] ?? unit}の間のばらつきと、それにもとづく誤差はおおまかなものです。`,
  ),
  tell(
    explain.noSpectrumOf,
    (consonant) =>
      `ここでは /${consonant}/ のスペクトルが測れていません。背景から際立つ開放や摩擦が少なすぎます。`,
  ),
];

/** A part of a sentence that is told by itself. */
function again(text: string): string {
  return retoldBy(japaneseMessages, text) ?? text;
}

function needed(text: string): string {
  return [...text.matchAll(/(.+?) \((\w+)\)(?: and |$)/g)]
    .map(([, is, name]) => `${ruleTexts[is!] ?? is} (${name})`)
    .join("、");
}
