import * as estimates from "../messages/estimates.ts";
import { retellingExactly as exact, type Retelling, retellingOf, retelling as tell } from "./retelling.ts";

const contrasts: Readonly<Record<string, string>> = {
  "single and geminate": "単独と促音",
  "short and long": "短と長",
};
const sides: Readonly<Record<string, string>> = { long: "長い", short: "短い" };

/** What rates and ratios warn of and rest on. */
export const japaneseEstimateMessages: readonly Retelling[] = [
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
    estimates.fewVowels,
    (wanted) => `母音が${wanted}個に満たず、割合を言うには少なすぎます。区間の示す範囲とだけ読んでください。`,
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
];

function share(text: string): string {
  return text === "an unknown share" ? "不明な割合" : text.replace(" ", "");
}

function cuts(text: string): string {
  const [, both, names] = /Not both (.+?) in every cut: (.+)\./su.exec(text) ?? [];
  const told = (names ?? "").replace(
    /\(left out of (\d+) of (\d+) cuts, counted in the others\)/g,
    "(区分$2つのうち$1つで除き、ほかでは数える)",
  );
  return `区分によっては${contrasts[both ?? ""] ?? both}の両方がないもの: ${told}。`;
}
