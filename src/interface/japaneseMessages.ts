import * as agreement from "../messages/agreement.ts";
import * as estimates from "../messages/estimates.ts";
import * as explain from "../messages/explain.ts";
import * as models from "../messages/models.ts";
import * as publish from "../messages/publish.ts";
import * as rules from "../messages/rules.ts";
import * as ruleWords from "../messages/ruleWords.ts";
import { japaneseModelMessages } from "./japaneseModelMessages.ts";
import { ruleTexts } from "./japaneseRuleTexts.ts";
import { type Retelling, retellingOf, retelling as tell } from "./retelling.ts";

const exact = (english: string, japanese: string): Retelling =>
  retellingOf(new RegExp(english.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")), () => japanese);

const contrasts: Readonly<Record<string, string>> = {
  "single and geminate": "単独と促音",
  "short and long": "短と長",
};
const sides: Readonly<Record<string, string>> = { long: "長い", short: "短い" };
const bases: Readonly<Record<string, string>> = {
  annotated: "注釈",
  measured: "測定",
  aligned: "自動整列",
  predicted: "予測",
};

/** Warnings, methods and reasons that results keep in English. The functions that word them give the patterns. */
export const japaneseMessages: readonly Retelling[] = [
  tell(
    estimates.fewSpeakers,
    (n, wanted) =>
      `話者は${n}名だけです。話者による違いがほとんど分からないため、区間は広く、その水準もおおよそです。${wanted}名以上なら信頼できます。`,
  ),
  exact(estimates.oneSpeakerOnly(), "話者は一人です。ほかの話者のことは分かりません。"),
  tell(
    estimates.fewShowing,
    (n, wanted) =>
      `少ないほうの結果を示す話者は${n}名だけです。${wanted}名未満では、区間の水準はおおよそです。`,
  ),
  exact(
    estimates.unevenSpeakers(),
    "少ないほうの結果の大半を、少数の話者が示しています。このような区間が真の値を含むことは、述べている水準より少なくなります (シミュレーションでは95%ではなく93〜95%、偏ったコーパスではさらに少ない)。",
  ),
  exact(
    estimates.rateNearEdge(),
    "割合が0%または100%に近い値です。話者の違いがここで見たよりずっと大きい場合、区間が真の値を含むことは、述べている水準より少なくなります (シミュレーションでは95%ではなく71〜90%)。",
  ),
  exact(estimates.predictedNotRate, "規則による予測で、割合ではありません"),
  exact(
    estimates.oneSpeakerRate(),
    "一人の話者の音についてのウィルソンのスコア区間。この話者についてだけのもので、音どうしは独立とみなす",
  ),
  tell(
    estimates.clusteredRateMethod,
    (n) =>
      `音の割合。話者${n}名を単位とする区間 (ロジット尺度、小標本補正、t)。ウィルソンの区間より狭くしない`,
  ),
  tell(
    estimates.allOrNoneMethod,
    (n, correlation) =>
      `すべて無声化、またはすべて有声: 話者${n}名の音の実効数による正確な区間。同じ話者の音の相関を${correlation}と仮定`,
  ),
  exact(
    estimates.oneSpeakerRatio(),
    "幾何平均の比。一人の話者の音についての対数尺度の区間 (ウェルチ)。この話者についてだけのもので、音どうしは独立とみなす",
  ),
  tell(
    estimates.clusteredRatioMethod,
    (n) =>
      `幾何平均の比、${n}名の話者それぞれの中での比較。話者を単位とする区間 (対数尺度、小標本補正、t)。独立な音の区間より狭くしない`,
  ),
  exact(
    estimates.unpairedSpeakers(),
    "同じ音の長いものと短いものの両方を持つ話者がいないので、長さの違いを話者の違いと区別できません。",
  ),
  exact(
    estimates.noSpread(),
    "長さがすべて同じか、一つずつしかないため、散らばり、つまり比の確かさが分かりません。",
  ),
  exact(
    estimates.medianAtFloor(),
    "半分以上が自動整列の付けられる最短の長さにあるので、中央値は分かりません。",
  ),
  exact(
    estimates.boundByFloor(),
    "自動整列の付けられる最短の長さにある短い音は、実際はもっと短かったかもしれません。真の比は、示した値以上です。",
  ),
  retellingOf(
    /Only (\d+) (\w+) tokens? where (\d+) are wanted: the interval is only approximate\./,
    (n, side, wanted) =>
      `${sides[side!] ?? side}音は${n}個だけで、${wanted}個に足りません。区間はおおよそです。`,
  ),
  tell(
    estimates.devoicedAmongShort,
    (devoiced, short) =>
      `短母音${short}個のうち${devoiced}個は無声化しています。長母音はほとんど無声化しません。無声化した母音は短く、境界も置きにくいものです。\`morascope ratios … --voiced-only\` はこれを除いて比べます。`,
  ),
  retellingOf(
    /Left out, since they nowhere occur both (single and geminate|short and long): ([^.]+)\.(?: (.+))?/,
    (both, names, more) =>
      `${contrasts[both!]}の両方が現れないため除いたもの: ${names}。${more === "" ? "" : cuts(more!)}`,
  ),
  retellingOf(/(Not both (?:single and geminate|short and long) in every cut: .+\.)/, (all) => cuts(all!)),
  retellingOf(
    /Left out: the (\d+) vowels of these results that were found to be devoiced\.(?: Of (\d+) vowels nobody heard whether they are; they are kept\.)?/,
    (n, kept) =>
      `除いたもの: 無声化と判定された母音${n}個。${kept === "" ? "" : `判定のない母音${kept}個は残しています。`}`,
  ),
  tell(
    estimates.predictedMarks,
    (dataset, set) =>
      `${dataset} (${set}): 無声化の印は、どの話者にも同じ規則がテキストから書いたものです。規則の予想で、実際の発音ではないため、割合は示しません。`,
  ),
  tell(
    estimates.noDevoicingMarks,
    (dataset, set, vowels) =>
      `${dataset} (${set}): ラベルに無声化の印がないため、母音${vowels}個からは割合が得られません。録音から無声化を測るか、印のあるラベルを使ってください。`,
  ),
  retellingOf(
    /No (.+) in these results matches the filter\. Loosen it, .+/,
    () => "この条件に合うものが結果にありません。条件をゆるめるか、一つずつ外してみてください。",
  ),
  exact(
    estimates.longVowelsLeftOut(),
    "長母音と、長さの分からない母音は除きます。長母音は別の場合で、ほとんど無声化しません。",
  ),
  tell(
    estimates.familyNote,
    (rows) =>
      `${rows}個の差をまとめて見ています。調整したp値は、違うとしたもののうち誤りの割合を抑えます (Benjamini–Hochberg)。`,
  ),
  retellingOf(
    /difference of shares of tokens, each speaker set against itself; interval clustered by (\d+) speakers \(t\), not narrower than for independent tokens/,
    (n) => `音の割合の差、話者ごとに比べたもの。話者${n}名を単位とする区間 (t)。独立な音の区間より狭くしない`,
  ),
  exact(
    estimates.differenceMethod("lone-speaker", 2),
    "音の割合の差。一方が一人の話者だけのもので、話者の違いが分からないため、区間は開いたまま",
  ),
  retellingOf(
    /difference of shares of tokens \(Newcombe's interval\): it speaks of this speaker only, and treats the tokens as independent/,
    () => "音の割合の差 (ニューカムの区間)。この話者についてだけのもので、音どうしは独立とみなす",
  ),
  retellingOf(
    /Devoicing was measured from the sound\. The decision finds (.+?) of devoiced vowels and (.+?) of voiced ones\. (.*) Rates are (not )?corrected for that\./,
    (devoiced, voiced, _note, not) =>
      `無声化は音声から測定しました。この判定は、無声化した母音の${share(devoiced!)}、有声の母音の${share(voiced!)}を正しく判定します。${not === "" ? "割合はこれで補正しています。" : "割合はこれで補正していません。この数値は合成音声など、別の音声での判定のものです。"}`,
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
    "境界の違いが一つもありません。結果がこのラベルから作られたためで、どちらの良さも示しません。",
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
  ...japaneseModelMessages(bases),
  tell(
    models.fewClusters,
    (clusters, unit) =>
      `${units[unit] ?? unit}は${clusters}だけです。${units[unit] ?? unit}を単位とする誤差の根拠はわずかです。`,
  ),
  retellingOf(
    /Only ([\d,]+) (\w+?)s?: the variation among \w+, and errors that depend on it, are rough\./,
    (n, unit) =>
      `${units[unit!] ?? unit}は${n}${unit === "speaker" ? "名" : ""}だけです。${units[unit!] ?? unit}の間のばらつきと、それにもとづく誤差はおおまかなものです。`,
  ),
  tell(
    explain.noSpectrumOf,
    (consonant) =>
      `ここでは /${consonant}/ のスペクトルが測れていません。背景から際立つ開放や摩擦が少なすぎます。`,
  ),
];

export const units: Readonly<Record<string, string>> = {
  speaker: "話者",
  word: "語",
  "sound frame": "音の並び",
  item: "項目",
};

function share(text: string): string {
  return text === "an unknown share" ? "不明な割合" : text.replace(" ", "");
}

/** A part of a sentence that is told by itself. */
function again(text: string): string {
  for (const { pattern, tell: told } of japaneseMessages) {
    const found = pattern.exec(text);
    if (found !== null) return told(...found.slice(1).map((group) => group ?? ""));
  }
  return text;
}

function needed(text: string): string {
  return [...text.matchAll(/(.+?) \((\w+)\)(?: and |$)/g)]
    .map(([, is, name]) => `${ruleTexts[is!] ?? is} (${name})`)
    .join("、");
}

function cuts(text: string): string {
  const [, both, names] = /Not both (.+?) in every cut: (.+)\./su.exec(text) ?? [];
  const told = (names ?? "").replace(
    /\(left out of (\d+) of (\d+) cuts, counted in the others\)/g,
    "(区分$2つのうち$1つで除き、ほかでは数える)",
  );
  return `区分によっては${contrasts[both ?? ""] ?? both}の両方がないもの: ${told}。`;
}
