import * as explain from "../messages/explain.ts";
import * as models from "../messages/models.ts";
import { japaneseSampleMessages } from "./japaneseSampleMessages.ts";
import { basesInJapanese, termInJapanese, termsInJapanese, unitsInJapanese } from "./japaneseTerms.ts";
import { retellingExactly as exact, type Retelling, retellingOf, retelling as tell } from "./retelling.ts";

const unitsOf = (text: string) =>
  text
    .split(" and ")
    .map((unit) => unitsInJapanese[unit] ?? unit)
    .join("と");
const unitOf = (unit: string | undefined) => unitsInJapanese[unit ?? ""] ?? unit;

function leftOutInJapanese(words: string): string {
  const [, unknown, term] = /^([\d,]+) for which (.+) is unknown$/u.exec(words) ?? [];
  if (term !== undefined) return `「${termInJapanese(term)}」が分からない${unknown}個`;
  return `例外のない環境の${/^[\d,]+/u.exec(words)?.[0] ?? ""}個`;
}

/** What the models of devoicing and duration, and the answers from single sounds, warn of and rest on. */
export const japaneseModelMessages: readonly Retelling[] = [
  exact(
    explain.noDevoiceableVowels(),
    "無声音の間に短い /i/ や /u/ がないので、説明するものがありません。録音を増やしてください。",
  ),
  tell(
    explain.noMarks as (vowels: number) => string,
    (n) =>
      `母音${n}個のどれにも無声化の印がありません。声を測れるように録音を与えるか、印のあるラベルを使ってください。`,
  ),
  retellingOf(
    /The marks of all ([\d,]+) vowels were written from the text by a rule; .+/,
    (n) =>
      `母音${n}個の印はすべて規則がテキストから書いたものです。モデルは音声ではなく規則を見つけることになります。声を測れるように録音を与えてください。`,
  ),
  exact(
    explain.noDurations(),
    "長さのある母音がないので、説明するものがありません。録音を増やしてください。",
  ),
  retellingOf(
    /([\d,]+) vowels whose mark was written from the text were left out\./,
    (n) => `印がテキストから書かれた母音${n}個は除きました。`,
  ),
  retellingOf(
    /([\d,]+) vowels with (\w+) marks were left out: only (\w+) ones are looked at, since they do not err alike\./,
    (n, basis, kept) =>
      `印の由来が「${basesInJapanese[basis!] ?? basis}」の母音${n}個は除きました。誤り方が違うので、「${basesInJapanese[kept!] ?? kept}」だけを見ます。`,
  ),
  exact(explain.devoiceablePopulation(), "無声子音のあと、無声子音またはポーズの前の短い /i/ と /u/"),
  exact(explain.vowelPopulation(), "二つの子音の間の母音、長短とも"),
  exact(
    explain.finalIsBeforePause(),
    "ポーズの前の母音はいつも区間の最後なので、ここでは二つで一つの効果です (後の音: ポーズ)。",
  ),
  retellingOf(
    /(.+) is known for (\d+) % of the vowels only and was left out of the model\./,
    (term, n) => `「${termInJapanese(term!)}」は母音の${n}%でしか分からないため、モデルから除きました。`,
  ),
  retellingOf(
    /([\d,]+) more vowels? (?:has|have) no devoicing mark, because nothing could be decided, and (?:is|are) in no count\./,
    (n) => `ほかに、判定できず無声化の印のない母音が${n}個あり、どの数にも入りません。`,
  ),
  retellingOf(
    /Nothing tells the length of ([\d,]+) of these vowels: .+/,
    (n) =>
      `このうち${n}個は長さが分かりません。長母音かもしれませんが、数に入れています。\`rates\` では --length all で数えます。`,
  ),
  retellingOf(
    /Weighed together are ([\d,]+) of the ([\d,]+) vowels\. Left out: (.+)\./,
    (modelled, all, leftOut) =>
      `まとめて見たのは母音${all}個のうち${modelled}個です。除いたもの: ${leftOut!
        .split(/, (?=\d)/u)
        .map(leftOutInJapanese)
        .join("、")}。`,
  ),
  exact(
    explain.wordsUnknown(),
    "語が分からないので、前後の音が同じ母音 (前の子音・母音・後の子音) を一つの項目とみなします。",
  ),
  retellingOf(
    /(\d+) % of the vowels stand at the shortest duration the aligner can give\. Their true length is unknown, which draws all effects towards none\./,
    (n) =>
      `母音の${n}%が、自動整列の付けられる最短の長さにあります。実際の長さが分からないため、どの効果も小さく出ます。`,
  ),
  exact(
    explain.rateIsPartOfDuration(),
    "話す速さにはその母音自身の時間も含まれるため、効果の一部は計算上のものです。",
  ),
  exact(
    explain.alignedTimes(),
    "時刻は自動整列によるものです。小さな効果は、ある種の音の境界での癖かもしれません。",
  ),
  retellingOf(
    /one regression( with Firth's correction)?; intervals clustered by (.+), the widest of them \(CR2, t\)/,
    (firth, by) =>
      `一つの回帰${firth === "" ? "" : " (Firthの補正)"}。${unitsOf(by!)}を単位とする区間のうち最も広いもの (CR2、t)`,
  ),
  retellingOf(
    /random intercepts for (.+) \((.+)\); t intervals that hold where every (.+) shows the same effects/,
    (by, method, unit) =>
      `${unitsOf(by!)}の変量切片 (${method === "Laplace approximation" ? "ラプラス近似" : method})。どの${unitOf(unit)}でも効果が同じなら成り立つt区間`,
  ),
  retellingOf(
    /One speaker: intervals are clustered by (.+) and speak of this speaker only\./,
    (unit) => `話者は一人です。区間は${unitOf(unit)}を単位とし、この話者についてだけのものです。`,
  ),
  retellingOf(
    /All vowels belong to one (.+): nothing follows about other .+s\./,
    (unit) => `すべての母音が一つの${unitOf(unit)}のものです。ほかの${unitOf(unit)}のことは分かりません。`,
  ),
  retellingOf(
    /One speaker and one (.+): there is nothing to compare, so that no error can be estimated\. Use more recordings\./,
    (unit) =>
      `話者も${unitOf(unit)}も一つなので、比べるものがなく、誤差を推定できません。録音を増やしてください。`,
  ),
  retellingOf(
    /There is one (.+) only, so that variation among .+s cannot be estimated\./,
    (unit) => `${unitOf(unit)}が一つなので、その間のばらつきを推定できません。`,
  ),
  retellingOf(
    /Every vowel has a (.+) of its own, so that variation among .+s cannot be told from chance\./,
    (unit) => `母音ごとに${unitOf(unit)}が違うので、その間のばらつきを偶然と区別できません。`,
  ),
  exact(explain.noBounds(), "区間のない効果は、話者または語が少なく、誤差を推定できないものです。"),
  retellingOf(
    /For (.+) the clustered interval is more than twice as wide as that of the mixed model: .+/,
    (effects) =>
      `${termsInJapanese(effects!)}: クラスター回帰の区間が混合モデルの2倍を超えています。効果そのものが話者や語で違い、変量切片がそれを捉えていないのかもしれません。広いほうに従ってください。`,
  ),
  retellingOf(
    /(.+): the models contradict each other \(clustered (.+), mixed (.+)\)\. (.+) Take it as unknown\./,
    (name, one, other) =>
      `「${termInJapanese(name!)}」: 二つのモデルが食い違います (クラスター回帰 ${one}、混合モデル ${other})。効果が話者や語で違うか、少数の語が効果を担っているようです。分からないものとしてください。`,
  ),
  retellingOf(
    /Of ([\d,]+) vowels ([\d,]+) are looked at, those of every (\d+)\w+ recording: .+/,
    (all, kept, n) =>
      `母音${all}個のうち、録音${n}件に1件ずつの${kept}個を見ています。それ以上は時間がかかるだけで、確かさはほとんど増えません。`,
  ),
  ...japaneseSampleMessages,
  exact(
    models.noVariation("speaker"),
    "話者の間のばらつきは0と推定されました。偶然を超えるものは見られません。",
  ),
  exact(models.noVariation("word"), "語の間のばらつきは0と推定されました。偶然を超えるものは見られません。"),
  retellingOf(
    /Odds ratios would be infinite \((.+)\)\. .+/,
    (found) => `オッズ比が無限大になります (${found})。水準をまとめるか、除いてください。`,
  ),
  retellingOf(
    /Firth's correction was used, because odds ratios would otherwise be infinite \((.+)\)\. .+/,
    (found) =>
      `オッズ比が無限大にならないよう、Firthの補正を用いました (${found})。そのオッズ比は「とても大きい」または「とても小さい」とだけ読んでください。`,
  ),
  retellingOf(
    /(.+) did not settle after ([\d,]+) steps?; do not report these numbers\. .+/,
    (what, n) => `${what} は${n}回で収束しませんでした。この数値は使わないでください。`,
  ),
  retellingOf(
    /([\d,]+) rows? where (.+) is unknown (?:was|were) left out\./,
    (n, column) => `「${termInJapanese(column!)}」が分からない${n}行は除きました。`,
  ),
  retellingOf(
    /(.+) has one value here \((.+)\), so its effect cannot be estimated; it was left out of the model\./,
    (column, value) =>
      `「${termInJapanese(column!)}」の値はここでは一つ (${termInJapanese(value!)}) なので、効果を推定できず、モデルから除きました。`,
  ),
  retellingOf(
    /(.+) follows exactly from the other terms here, so its effect cannot be told apart from theirs; it was left out\./,
    (name) => `「${termInJapanese(name!)}」はほかの項から決まるため、効果を区別できず、除きました。`,
  ),
  retellingOf(
    /Only ([\d,]+) (\w+?)s?: errors clustered by .+ cannot be estimated\. .+/,
    (n, unit) =>
      `${unitOf(unit)}は${n}だけなので、それを単位とする誤差を推定できません。少なくとも2、信頼するには20以上必要です。`,
  ),
  retellingOf(
    /(.+): (?:its one vowel is (\w+)|(none|all) of its ([\d,]+) vowels are devoiced), so an odds ratio has no bound\. .+/,
    (name, one, how, n) =>
      `「${termInJapanese(name!)}」: ${outcome(one!, how!, n!)}ため、オッズ比に限りがありません。除きましたが、ほかの項の効果は変わりません。`,
  ),
  retellingOf(
    /(.+) alone tells every outcome \(.+\), so that odds ratios have no bound and nothing is left for other terms to explain\. .+/,
    (term) =>
      `「${termInJapanese(term!)}」だけですべてが決まるため、オッズ比に限りがなく、ほかの項が説明するものが残りません。割合を見るか、録音を増やしてください。`,
  ),
  retellingOf(
    /Percentage points are left out: they average over how much speakers differ, which (\d+) speakers cannot tell\./,
    (n) =>
      `パーセントポイントは示しません。話者の違いを平均したものですが、話者${n}名ではその違いが分からないためです。`,
  ),
  retellingOf(
    /No effect is given for what takes part in telling some vowels without exception: (.+)\./,
    (names) => `一部の母音を例外なく決めてしまう項の効果は示しません: ${termsInJapanese(names!)}。`,
  ),
  retellingOf(
    /(.+): too few to tell \(([\d,]+) tokens?(?: by ([\d,]+) (.+?)s?)?\)\./,
    (name, n, groups, unit) =>
      `「${termInJapanese(name!)}」: 少なすぎて分かりません (${n}個${groups === "" ? "" : `、${unitOf(unit)}は${groups}`})。`,
  ),
  retellingOf(
    /(.+): too few to tell \(([\d,]+) of ([\d,]+) tokens? marked, so that one of the two outcomes is rare\)\./,
    (name, marked, n) =>
      `「${termInJapanese(name!)}」: 一方の結果が少なすぎて分かりません (${n}個のうち無声化${marked}個)。`,
  ),
  retellingOf(
    /(.+): too few to tell \(only ([\d,]+) tokens? of the rarer outcome\)\./,
    (name, n) => `「${termInJapanese(name!)}」: 少なすぎて分かりません (少ないほうの結果が${n}個だけ)。`,
  ),
  exact(explain.tooFewToTell(), "少なすぎて分からない"),
  exact(explain.noExceptions(), "例外なし"),
];

function outcome(one: string, how: string, n: string): string {
  if (one !== "") return `ただ一つの母音が${one === "devoiced" ? "無声化している" : "有声である"}`;
  return `${n}個の母音が${how === "none" ? "一つも無声化していない" : "すべて無声化している"}`;
}
