import type { english } from "./english/index.ts";
import { cardInJapanese, cardLinesInJapanese, stretchInJapanese } from "./japaneseCard.ts";
import { claimInJapanese, nouns, rest, retellings, showsInJapanese } from "./japaneseRetold.ts";
import { retoldBy } from "./retelling.ts";
import type { Translation } from "./translation.ts";

const count = (n: number) => n.toLocaleString("ja");
const percent = (share: number) => `${Math.round(100 * share)}%`;
const sure = (share: number) => (share > 0.99 ? "99%超" : share < 0.01 ? "1%未満" : percent(share));
const speakers = (n: number) => `話者${count(n)}名`;
const unit = { word: "単語", phrase: "ポーズ間の区間" };

const lengths = {
  "vowel-length": { long: "長母音", short: "短母音" },
  gemination: { long: "促音", short: "単独の子音" },
};
/** Kinds of sounds as the models part them. */
const soundKinds = {
  geminate: "促音",
  pause: "ポーズ",
  "h-row": "ハ行",
  stop: "破裂音",
  affricate: "破擦音",
  fricative: "摩擦音",
  nasal: "鼻音",
  liquid: "流音",
  approximant: "接近音",
  vowel: "母音",
  "voiceless stop": "無声破裂音",
  "voiceless affricate": "無声破擦音",
  "voiceless fricative": "無声摩擦音",
  "voiced stop": "有声破裂音",
  "voiced affricate": "有声破擦音",
  "voiced fricative": "有声摩擦音",
};

/** What is measured of one sound, by its column. */
const measures: Readonly<Record<string, string>> = {
  startMs: "始まり。発話の録音、またはその部分の始まりから",
  endMs: "終わり。発話の録音、またはその部分の始まりから",
  durationMs: "長さ。促音では閉鎖と開放の合計",
  durationErrorMs: "長さの不確かさ (標準偏差)",
  confidence: "両方の境界が真の位置から 20 ms 以内にある、おおよその確率 (0〜1)",
  closureMs: "促音の前半の長さ",
  speechRateMoraePerSec: "ポーズ間の区間の1秒あたりのモーラ数",
  devoicedProbability: "母音が無声化している確率 (0〜1)",
  voicingLogOdds: "一つ目の判定: 20 ms で最も高い、声の対数オッズ (−8〜8)。負なら無声化を示す",
  islandMs: "二つ目の判定: 途切れずに続く、母音のような声の最長の長さ。20未満なら無声化を示す",
  voicedMs: "前の子音の開放から次の子音の始まりまでの声の長さ",
  voicedShare: "区間のうち声のある割合 (0〜1)",
  periodicity: "前の子音の開放から次の子音の始まりまでで最も高い周期性、20 ms の平均 (0〜1)",
  lowBandDb: "そこでの 90〜600 Hz の最も高い強さ、録音の母音と比べて",
  intensityDb: "平均の強さ、最大振幅の矩形波と比べて",
  f0Hz: "声の高さ F0、有声のフレームの中央値",
  f0SlopeSemitonesPerSec: "F0の傾き",
  f1Hz: "第1フォルマント",
  f2Hz: "第2フォルマント",
  f3Hz: "第3フォルマント",
  closurePartMs: "破裂音・破擦音の閉鎖の長さ",
  releasePartMs: "破裂から終わりまでの長さ",
  fricationMs: "摩擦の長さ",
  fricationCentreHz: "摩擦のスペクトル重心",
};

const basis = { measured: "測定", annotated: "注釈", aligned: "整列", predicted: "予測" };

/** The pages in Japanese. What is missing here is shown in English. */
export const japanese: Translation<typeof english> = {
  site: {
    names: {
      index: "はじめに",
      devoicing: "無声化",
      length: "長さ",
      timing: "タイミング",
      "vowel-space": "母音空間",
      colouring: "子音の音色",
      "what-matters": "要因の比較",
      listen: "聞く",
      rules: "経験則",
      words: "練習語",
      "look-up": "語を調べる",
      datasets: "データセット",
      method: "方法",
      dictionary: "列の一覧",
      cite: "引用",
    },
    descriptions: {
      cite: "データセット、ソフトウェア、この結果の引用方法。テキスト、BibTeX、CSL-JSON。",
      index: "母音の無声化、長母音、促音について、このコーパスから分かることと、その確かさ。",
      devoicing: "母音が無声化する割合を、前後の音ごとに区間つきで示します。条件を変えると計算し直します。",
      length: "長母音と促音が、短母音や単独の子音よりどれだけ長いかを区間つきで示します。",
      timing: "モーラ数と語の長さの関係、無声化した拍の長さ、話者ごとのリズム。",
      "vowel-space": "母音の第1・第2フォルマント。ヘルツと正規化、短母音と長母音、公表された値との比較。",
      colouring: "無声化した /i/ と /u/ の前の子音のスペクトル重心と、その差。",
      "what-matters": "ほかの条件をそろえたとき、無声化と母音の長さを左右するもの。",
      listen: "母音と子音を一つずつ。拍の長さ、スペクトログラム、測定値、判定の理由。",
      rules: "日本語の音についての経験則が、録音で裏づけられるかどうか。区間と例外つき。",
      words: "このコーパスの証拠で選んだ練習語とミニマルペア。",
      "look-up": "かなで入力した語の、各母音が無声化する見込みとその理由。",
      datasets: "このページのもとになったデータセット。ライセンス、クレジット、除外したものとその理由。",
      method: "それぞれの数値がどのように得られ、何を示し、何を示せないか。",
      dictionary: "結果のすべての列。意味、単位、出典、欠測の意味。",
    },
    care: "このページはコーパスについて述べるもので、話者や学習者を評価するものではありません。聞こえや話し方についての心配は、資格のある専門家にご相談ください。",
    aboutData: "このデータについて",
    credits: "データセットとクレジット",
    resultsOf: "結果の日付",
    languages: "言語",
  },
  choices: {
    unknown: (label, value, instead) =>
      `${label}: 「${value}」はここにはありません。${instead} を示しています。`,
  },
  dataset: {
    description: (name) => `${name} から分かること、話者、ライセンス、ラベル、問題点。`,
    shows: "分かること",
    noFindings: "このラベルでは「はじめに」のどの問いにも答えられません。",
    devoicing: "無声化",
    length: "長さ",
    cite: "引用のしかた",
    speakers: "話者",
    speakersOf: (set) => `${set} の話者`,
    neutral: "話者はデータセットの記号で示します。誰であるかは分かりません。",
    speaker: "話者",
    sounds: "母音と子音",
    card: "データセットについて",
    own: "このデータセットだけのページ",
  },
  devoicing: {
    title: "どの母音が、どこで無声化するか",
    lead: "無声化した母音は、場所と長さを保ったまま声を失います。「です」の「す」、「きた」の「き」がそうです。母音と前後の音を選ぶと、下の数値を区間つきで数え直します。",
    choices: "数えるもの",
    byWord: {
      told: (parts) =>
        `同じ話者の母音どうしと同じように、同じ語の母音どうしも似ることがあります。語も考慮した区間は、${parts.join("、")}です。`,
      part: (name, interval, n) => `${name} ${interval} (${count(n)}語)`,
      wider: (points) =>
        `同じ話者の母音どうしと同じように、同じ語の母音どうしも似ることがあります。語も考慮した区間は「数値」にあり、最大で${points}ポイント広くなります。`,
      noWider:
        "同じ話者の母音どうしと同じように、同じ語の母音どうしも似ることがあります。語も考慮した区間は「数値」にあり、話者だけを考慮した区間より広くはありません。",
      unknown: "区間は話者だけを考慮しています。このコーパスでは、どの母音がどの語のものかが分かりません。",
      notCarried:
        "区間は話者だけを考慮しています。母音が多すぎて、どの語のものかをページに載せられません。「数値」の下のコマンドは、40万音までなら語も考慮した区間を出します。",
      noTokens:
        "区間は話者だけを考慮しています。この結果には母音の集計だけがあり、一つ一つの母音はありません。",
    },
    corrected: {
      shown:
        "塗りつぶし: 判定どおりの数。白抜き: 人が印を付けた母音での判定の誤りで補正した値。その不確かさも区間に含みます。",
      overAll: (rate, interval) => `判定の誤りで補正すると、全員での割合は${rate}です (${interval})。`,
      inTable: "升は数えたままの割合です。判定の誤りで補正した割合は、升を選ぶか「数値」で見られます。",
      unknown: "この結果では判定がどれだけ誤るか分からないので、割合は数えたままを示します。",
      markSome:
        "補正した割合を見るには、無作為な標本に耳で印を付け (`morascope sample`)、`morascope run --marks` に渡してください。",
      notBetterThanChance: "印を付けた母音が少なく、判定が偶然より良いとは言いきれないため、補正できません。",
    },
    compare: {
      heading: "二つの条件を並べる",
      lead: "一つ目は上で選んだ条件です。二つ目をここで選んでください。",
      form: "二つ目の条件",
      question: "二つの条件はどう違うか",
      first: "一つ目",
      second: "二つ目",
      finding: (first, second, difference, interval, verdict) =>
        `一つ目は${first}、二つ目は${second}、差は${difference}ポイントです (${interval})。${
          {
            open: "このコーパスでは違いがあるとは言えません。",
            more: "一つ目のほうが多く無声化します。",
            less: "一つ目のほうが無声化は少なくなります。",
          }[verdict]
        }`,
      same: "二つの条件が同じです。二つ目を変えてください。",
      none: "どちらかの条件に印のある母音がないため、比べられません。",
      rule: "この印は規則がテキストから書いたものです。証拠ではないので、差は示しません。",
      cut: (name, text) => `${name}: ${text}。`,
      between: "、",
      field: (label, value) => `${label} ${value}`,
      rates: "無声化 (母音の%)",
      difference: "一つ目−二つ目 (ポイント)",
      row: "差",
      shared: (n) => `母音${count(n)}個が両方に入っており、差は小さめに出ます。`,
      tokens: (n) => `母音${count(n)}個`,
      counts: (first, second, who, marks) => `母音${count(first)}個と${count(second)}個、${who}、${marks}。`,
      columns: { what: "条件", rate: "割合または差 (%)", low: "下限", high: "上限", n: "母音の数" },
    },
    sweep: {
      heading: "境界の置き方でどれだけ変わるか",
      question: "判定をもっと厳しく、または緩くすると",
      finding: (rate, interval, low, high, verdict) =>
        `通常の境界0.5では${rate}です (${interval})。緩い0.2から厳しい0.8までで${low}から${high}まで動きます。${
          {
            hardly: "境界の置き方ではほとんど変わりません。",
            some: "境界の置き方で少し変わります。",
            much: "境界の置き方で変わるので、割合は慎重に読んでください。",
          }[verdict]
        }`,
      none: "この条件には、無声化の確率が示された母音がありません。録音が必要で、ラベルだけでは得られません。",
      long: "確率は無声子音のあとの短母音についてだけ残しています。この条件には含まれません。",
      waiting: "個々の母音の確率を読み込んでいます。",
      axisX: "この確率以上を無声化とする",
      axisY: "無声化 (母音の%)",
      usual: "通常",
      counts: (n, who) => `母音${count(n)}個、${who}。確率は音声から測定。`,
      remark:
        "線: 境界ごとの割合。帯: 話者を単位とする区間。無声子音のあとの短母音を、ラベルによらず音から測ったもの。アクセントは見ていません。",
      columns: { cutOff: "境界", rate: "割合", low: "下限", high: "上限", devoiced: "無声化", n: "母音の数" },
    },
  },
  length: {
    title: "長母音は本当に2倍の長さか",
    lead: "日本語は長さだけで語を区別します。「おばさん」と「おばあさん」、「きて」と「きって」。このコーパスの話者が長いほうにどれだけ時間をかけるかを、同じ話者の同じ音どうしで比べます。",
    choices: "比べるもの",
    vowels: "長母音と短母音",
    consonants: "促音と単独の子音",
    measured:
      "促音 (「っ」とその次の子音) は閉鎖の始まりから開放の終わりまでを測り、単独の子音も同じように測ります。",
    whole: {
      "vowel-length":
        "データセットの全話者・全位置、子音の間の母音。上の選択のうちデータセットだけが効きます。",
      gemination: "データセットの全話者・全位置。上の選択のうちデータセットだけが効きます。",
    },
    none: "長さと話す速さの両方が十分に分かる音がここにはありません。",
    counts: (contrast, long, short, who, times_) =>
      `${lengths[contrast].long}${count(long)}個、${lengths[contrast].short}${count(short)}個、${who}、${times_}。`,
    tokens: (long, short) => `${count(long)} : ${count(short)}個`,
    positions: {
      "vowel-length": "ポーズ間での位置で変わるか",
      gemination: "ポーズ間での位置で変わるか",
    },
    normalised: {
      question: "話す速さのせいか",
      finding: (contrast, raw, perMora, interval, who, verdict) =>
        `その区間の1拍の長さで割ると、${lengths[contrast].long}は${lengths[contrast].short}の${perMora}倍です (${interval}、${who})。ミリ秒のままでは${raw}倍です。${
          {
            alike: "速さを考えても比はほとんど変わりません。",
            smaller: "元の比の一部は速さによるものです。",
            larger: "速さが比の一部を隠しています。",
          }[verdict]
        }`,
      morae: (short, long) => `平均して、短い音は1拍の${short}、長い音は${long}を占めます。`,
      remark: "塗りつぶし: ミリ秒の長さ。白抜き: ポーズ間の区間の平均の拍で割った長さ。",
      all: "全体",
      axis: "倍率",
      columns: {
        sound: "音",
        raw: "長さの比",
        low: "下限",
        high: "上限",
        perMora: "拍あたりの比",
        perLow: "拍あたりの下限",
        perHigh: "拍あたりの上限",
        long: "長い音の数",
        short: "短い音の数",
        speakers: "話者",
      },
    },
    pace: {
      question: "ゆっくり話しても速く話しても同じか",
      bands: { slow: "ゆっくり", middle: "ふつう", fast: "速い" },
      finding: (contrast, parts, who, verdict) =>
        `${lengths[contrast].long}は${lengths[contrast].short}の${parts.join("、")}です (${who})。${
          {
            open: "区間が重なるため、これだけでは速さによる違いは確かではありません。",
            larger: "ゆっくり話すときのほうが比は大きくなります。",
            smaller: "ゆっくり話すときのほうが比は小さくなります。",
          }[verdict]
        }`,
      part: (ratio, band) => `${ratio}倍 (${band})`,
      remark:
        "話者ごとの速さを三つに分けたもので、速い・遅いは同じ話者の中でのことです。速さはポーズ間の区間の1秒あたりのモーラ数。",
      axis: "倍率",
      columns: {
        band: "話す速さ",
        ratio: "比",
        low: "下限",
        high: "上限",
        long: "長い音の数",
        short: "短い音の数",
        speakers: "話者",
      },
    },
  },
  ruleExamples: {
    summary: (clearest, contrary) =>
      `${[...(clearest > 0 ? [`最も明らかな${clearest}音`] : []), ...(contrary > 0 ? [`最も反する${contrary}音`] : [])].join("と")}`,
    clearest: "経験則に最もよく合う音",
    mostContrary: "最も反する音",
    chosen: (by) =>
      by === "probability"
        ? "印の確かさ (測定した場合は無声化の確率) の順、異なる話者を優先して選びました。極端な例で、典型ではありません。"
        : "比べる相手の話者自身の平均に対する長さの順、異なる話者を優先して選びました。極端な例で、典型ではありません。",
    notAllHeard: "ライセンス、報告の大きさ、または録音がないために、ここで聞けないものがあります。",
    none: "一つの音では示せません。この経験則は多くの音をまとめたものか、印や測定が足りません。",
    card: "図",
  },
  controls: {
    set: "データセットとラベル",
    any: "すべて",
    reset: "元に戻す",
    vowels: "母音",
    before: "前の音",
    after: "後の音",
    length: "母音の長さ",
    position: "ポーズ間での位置",
    speaker: "話者",
    allSpeakers: (n) => `全員 (${n})`,
    by: "比べるもの",
    standing: "母音の位置",
    classes: {
      voiceless: "無声子音 (ッを除く)",
      voiced: "すべての有声音",
      stop: "すべての破裂音",
      affricate: "すべての破擦音",
      fricative: "すべての摩擦音",
    },
    lengths: { short: "短い", long: "長い" },
    surroundings: { consonants: "子音の間", pause: "ポーズの隣", all: "どこでも" },
    comparisons: {
      phone: "母音",
      before: "前の音",
      after: "後の音",
      position: "位置",
      accented: "アクセント",
      devoiceableNeighbour: "隣の無声化しうる母音",
      length: "母音の長さ",
    },
    soundOfLength: "音",
    values: {
      unknown: "不明",
      accented: { true: "アクセント核あり", false: "アクセント核なし" },
      devoiceableNeighbour: { true: "隣にもある", false: "単独" },
      position: { initial: "はじめ", medial: "なか", final: "おわり", only: "一つだけ" },
    },
  },
  start: {
    title: "このコーパスから分かること",
    basis: (how) => `${how}。`,
    lead: (datasets, n, utterances, tokens) =>
      `${datasets}: ${speakers(n)}、${count(utterances)}発話、時刻のある母音と子音${count(tokens)}個。`,
    questions: {
      "high-between-voiceless": {
        question: "/i/ と /u/ は無声子音の間で無声化するか",
        where: "無声子音の間では",
      },
      "high-before-pause": {
        question: "「です」のようにポーズの前ではどうか",
        where: "無声子音とポーズの間では",
      },
      "high-before-voiced": { question: "有声音の前ではどうか", where: "有声音の前では" },
      "non-high-between-voiceless": { question: "/a/、/e/、/o/ も同じか", where: "無声子音の間では" },
      "vowel-length": { question: "長母音は短母音の2倍の長さか", where: "" },
      gemination: { question: "促音は1拍分長いか", where: "" },
    },
    cannot: "分からないこと",
    onward: "授業に向けて",
    look: "詳しく見る",
    nothing:
      "この結果では、このページの問いに答えられません。無声化と有声、長短を区別するラベルがないためです。",
    examples: "聞ける例",
  },
  format: {
    percent: (digits) => `${digits}%`,
    lessThan: (share) => `${share}未満`,
    moreThan: (share) => `${share}超`,
    range: (from, to) => `${from}〜${to}`,
    interval: (share) => `${share.replaceAll("\u00a0", "")}区間`,
    amount: (n, one) => (nouns[one] ?? ((amount: string) => `${amount} ${one}`))(n),
    list: (names, last) => names.join({ and: "、", or: "または", against: "対" }[last] ?? "、"),
    pause: "ポーズ",
    firstOfDoubled: "ッ (促音の前半)",
  },
  sentences: {
    nothing: "選んだ条件に合うものがこのコーパスにありません。",
    warningOf: (names, warning) => `${names}: ${warning}`,
    rates: {
      subject: (vowels) => `母音 ${vowels} `,
      expected: (words, marked, cases, alone) =>
        `規則によれば、${words.trim()} の${cases}のうち${marked}が無声化するはずです。${alone ? "誰も聞いていません。" : ""}規則による予測で、割合ではありません。`,
      oneSpeaker: (words, rate, cases, interval) =>
        `この一人の話者は、${words.trim()} の${cases}の${rate}を無声化しています (${interval}、この話者についてだけ)。`,
      several: (words, _plural, rate, cases, interval, who) =>
        `${words.trim()} は${cases}の${rate}で無声化しています (${interval}、${who})。`,
      ruleMarks: (name, marked, vowels) => `${name}: 規則は${vowels}のうち${marked}個に印を付けます。`,
      tooFew: (least) => `どれも母音が${least}個に満たず、順位を付けられません。`,
      of: (name, sentence) => `${name}: ${sentence}`,
      apart: (top, most, bottom, least, difference, between) =>
        `${top} (${most}) は ${bottom} (${least}) より無声化が多く見られます${
          between ? " (ここで最も高い割合と最も低い割合)" : ""
        }。${difference === null ? "" : `${difference}。`}`,
      open: (top, most, bottom, least, difference) =>
        `無声化の割合は ${bottom} の${least}から ${top} の${most}までです。${
          difference === null
            ? "区間が重なるため、これだけでは順序は確かではありません。"
            : `${difference}。違いがないことも含むため、順序は確かではありません。`
        }`,
      difference: (points, interval, pairs) =>
        `差は${points}ポイントです (${interval}${pairs > 1 ? "、どの二つを比べてもよいように広くとったもの" : ""})`,
      byOne: (text) => `この一人の話者では、${text}`,
      how: {
        measured: "無声化は音声から測定",
        annotated: "無声化は人が付けたもの、または合成時に既知のもの",
        aligned: "無声化は自動整列のラベルによるもの",
        predicted: "無声化は規則によるテキストからの予測",
      },
      counts: (vowels, who, how) => `${vowels}、${who}、${how}。`,
      method: (method) => `区間: ${method}。`,
      speakers: (who, span, over) => `${who}の割合は${span}です${over}。`,
      overAll: (rate, interval) => `。全員では${rate} (${interval})`,
      apartBases: (vowels, bases) => `由来の違う印 (${bases}) のある${vowels}は別に数えます。`,
      answer: {
        expected: (where, marked, cases, names) =>
          `${where}、規則によれば ${names} の${cases}のうち${marked}が無声化するはずです。規則による予測で、誰も聞いていません。`,
        found: (where, who, rates, vowels) =>
          `${where}、${who ?? "この一人の話者"}が ${rates}を無声化しています。${vowels}を数えました${who === null ? "。ほかの話者のことは分かりません" : ""}。`,
        rate: (name, rate, interval) => `${name} の${rate} (${interval})`,
        counted: (name, vowels) => `${name} は${vowels}`,
        tooFew: (where, counts) => `${where}、割合を出すには母音が少なすぎます (${counts})。`,
        besides: (counts) => `割合を出すには少なすぎるもの: ${counts}。`,
      },
      question: (by) => `どれだけ無声化するか (${by}ごと)`,
      axis: "無声化 (母音の%)",
      rule: (marked, of) => `規則: ${of}個中${marked}個`,
      columns: {
        rate: "割合",
        low: "下限",
        high: "上限",
        corrected: "補正した割合",
        correctedLow: "補正した下限",
        correctedHigh: "補正した上限",
        wordLow: "下限 (語も考慮)",
        wordHigh: "上限 (語も考慮)",
        words: "語",
        devoiced: "無声化",
        vowels: "母音の数",
        speakers: "話者",
        basis: "由来",
        method: "方法",
      },
    },
    ratios: {
      times: (ratio, atLeast) => `${atLeast ? "少なくとも" : ""}${ratio}倍`,
      none: (contrast, reason) =>
        `${lengths[contrast].long}と${lengths[contrast].short}の比は、ここでは得られません。${reason}`,
      one: (contrast, ratio, interval, who, long, short) =>
        `${who === null ? "この一人の話者では、" : ""}${lengths[contrast].long}は${lengths[contrast].short}の${ratio}です (${interval}、${who ?? "この話者についてだけ"}、${long}対${short})。`,
      tooFew: (contrast, least) =>
        `どれも一方の音が${least}個に満たず、${lengths[contrast].long}を比べられません。`,
      of: (name, sentence) => `${name}: ${sentence}`,
      end: (name, ratio, interval) => `${ratio} (${name}、${interval})`,
      span: (contrast, alone, bottom, top) =>
        `${alone ? "この一人の話者では、" : ""}${lengths[contrast].long}の長さは${lengths[contrast].short}の${bottom}から${top}です。`,
      lowerBounds: "下限でしか分からないものがあるため、順位は確かではありません。",
      overlap: "区間が重なるため、これだけでは順序は確かではありません。",
      counted: (_contrast, long, alone) =>
        `${long}を数えました${alone ? "。ほかの話者のことは分かりません" : ""}。`,
      voiced: (share, names, ratios) =>
        `短い${names}の${share}は無声化して短くなっています。有声のものとだけ比べると、${ratios}です。`,
      withDevoiced: (share, names) =>
        `短い${names}の${share}は無声化して短くなっており、それも数えています。`,
      how: {
        measured: "境界は測定",
        annotated: "境界は人が付けたもの、または合成時に既知のもの",
        aligned: "境界は自動整列によるもの",
        predicted: "境界は予測",
      },
      counts: (contrast, long, short, who, how) =>
        `${lengths[contrast].long}${long}、${lengths[contrast].short}${short}、${who}、${how}。`,
      method: (method) => `推定と区間: ${method}。`,
      durations: (contrast, long, short, atMost) =>
        `幾何平均: ${lengths[contrast].long}は${long}、${lengths[contrast].short}は${atMost ? "長くて" : ""}${short}。`,
      speakers: (who, from, to, atLeast, over) =>
        `${who}の比は${atLeast ? "少なくとも" : ""}${from}〜${to}倍です${over}。`,
      overAll: (ratio, interval) => `。全員では${ratio} (${interval})`,
      question: { "vowel-length": "長母音はどれだけ長いか", gemination: "促音はどれだけ長いか" },
      axis: "倍率",
      columns: {
        ratio: "比 (幾何平均)",
        low: "下限",
        high: "上限",
        longMean: "長い音の幾何平均 (ms)",
        shortMean: "短い音の幾何平均 (ms)",
        means: "平均の比",
        medians: "中央値の比",
        longs: "長い音の数",
        shorts: "短い音の数",
        bound: "限界",
        speakers: "話者",
        basis: "由来",
        method: "方法",
      },
    },
    environments: {
      noMarks: "この条件には、無声化の印のある母音がありません。",
      byRule: "前後の音ごとの、規則による予想。規則による予測で、聞いたものではありません。",
      tooWide: "ほとんどの升は母音が少なく、区間が広いため、環境の順位を付けられません。",
      between: (before, after, rate) => `${before} と ${after} の間 (${rate})`,
      found: (most, least, difference, certain, between) =>
        `母音が十分にある無声の環境のうち、${
          certain
            ? `${most} は ${least} より無声化が多く見られます${between ? " (ここで最も高い割合と最も低い割合)" : ""}`
            : `無声化の割合は ${least} から ${most} までです`
        }。${
          difference === null
            ? "これだけでは順序は確かではありません。"
            : `${difference}。${certain ? "" : "違いがないことも含むため、順序は確かではありません。"}`
        }`,
    },
  },
  grid: {
    label: "前後の音ごとの無声化",
    question: "どの音の間で無声化するか",
    remark:
      "升を選ぶと、ほかの図もその環境に絞られます。点は、その環境の母音がコーパスにないことを示します。",
    corner: "前 ↓ 後 →",
    column: "前 – 後",
    voiced: "有声",
    where: (before, after) => `前が ${before}、後が ${after}: `,
    aVoicedSound: "有声音",
    byRule: " 個 (規則による予測)、母音 ",
    vowels: " 個",
    devoiced: (interval, thin) => `${thin ? "個" : "%"}が無声化、区間 ${interval}、母音`,
    rest: (_single, who) => `個、${who}`,
    interval: (interval) => `区間 ${interval}`,
    corrected: (rate, interval) => `補正 ${rate}、区間 ${interval}`,
    predicted: "規則による予測",
    legendByRule:
      "斜線: 規則による予測。大きな数字: 規則が印を付ける母音の数、小さな数字: 母音の総数。割合は示しません。",
    legend: {
      from: "色: 無声化 0% ",
      to: " 100%。",
      wide: "大きさ: 区間が広い ",
      narrow: (thin) =>
        ` 狭い。大きな数字: %、小さな数字: 母音の数。淡い升: 母音が${thin}個未満で、無声化した数/総数。`,
    },
  },
  spread: {
    question: "長さはどう散らばるか",
    none: "短い音と長い音の両方が十分にある音がないので、長さの散らばりを示せません。",
    remark: "10 ms ごとの割合を、曲線ごとに示します。最も長い100分の1は最後の段に入れています。",
    floor: (floorMs) =>
      `点線: ${floorMs} ms、自動整列が付けられる最短の長さ。そこにある音は、長くてもその長さです。`,
    sides: {
      "vowel-length": { short: "短", long: "長" },
      gemination: { short: "単独", long: "促音" },
    },
    axis: "長さ (ms)",
    columns: { sound: "音", side: "長短", duration: "長さ (ms)", tokens: "個数" },
  },
  limits: {
    synthetic: (names) =>
      `日本語についてのこと全般。声が機械で作られているためです: ${names}。数値はこのページの働きを示すだけです。`,
    unmarked: (names) => `無声化。ラベルに印がないためです: ${names}。`,
    ruled: (names) =>
      `母音が実際にどれだけ無声化するか。印を、どの話者にも同じ規則がテキストから書いたためです: ${names}。「規則による予測」として示します。`,
    floors: (names) =>
      `最も短い音の長さ。自動整列が下限より短い音を記せないためです: ${names}。短母音がその下限にあるとき、比は「少なくとも」です。`,
    alone: (names) => `ほかの話者についてのこと。話者が一人だからです: ${names}。`,
    read: "会話のしかた。読み上げた文は会話ではなく、会話では無声化や短縮のしかたが違います。",
  },
  agreement: {
    none: "この結果は別のラベルと比べていないので、境界や印がどれだけ信頼できるかはここでは分かりません。人が付けたラベルがあれば `morascope agreement RESULTS --labels FOLDER` で比べられ、次の報告に数値が載ります。",
    stale:
      "この比較は同じフォルダの以前の結果によるもので、このページの数値のものではありません。`morascope agreement` をもう一度実行してください。",
    boundaries: "境界",
    marks: "無声化",
    boundaryHead: ["境界", "n", "中央値", "偏り", "≤ 10 ms", "≤ 20 ms", "≤ 50 ms"],
    boundaryRemark:
      "差の絶対値の中央値。偏りは符号つきの差の中央値で、この結果のほうが遅いと正。続いて、差がその値以下の境界の割合。",
    markHead: ["短母音", "n", "無声化: ラベル", "無声化: 結果", "一致", "カッパ係数"],
    markRemark:
      "予想される環境: 無声音の間、または無声音のあとでポーズの前。一致: 両者が同じである割合。カッパ係数は偶然を超える一致で、0は偶然どおり、1は完全な一致。",
    high: "/i, u/",
    expected: "… 予想される環境",
    elsewhere: "… その他",
    nonHigh: "/a, e, o/",
    all: "すべて",
    against: (name, labelSet, reference, recordings) =>
      `${name} と ${reference} のラベル「${labelSet}」の比較: ${recordings}。`,
  },
  examples: {
    shows: {
      devoiced: "無声化",
      voiced: "有声",
      long: "長い",
      short: "短い",
      geminate: "促音",
      single: "単独",
    },
    between: (sound, before, after) => `${before} と ${after} の間の ${sound}`,
    shown: (shows, place) => `${shows}: ${place}`,
    card: cardInJapanese,
    cardLines: cardLinesInJapanese,
    cardStretch: stretchInJapanese,
    cardKey: {
      voiced: "有声",
      devoiced: "無声化",
      thick: "太い: 声あり",
      notJudged: "声の判定なし",
      noRecording: "録音なし",
    },
  },
  verdicts: {
    number: (digits, scale) =>
      `${digits}${{ ratio: "倍", semitones: "半音", hertz: " Hz", share: "%", difference: "ポイント" }[scale]}`,
    range: (low, high, scale) =>
      `${low}〜${high}${{ ratio: "倍", semitones: "半音", hertz: " Hz", share: "%", difference: "ポイント" }[scale]}`,
    orMore: (value) => `${value}以上`,
    orLess: (value) => `${value}以下`,
    interval: (level, bounds) => `${level}%区間 ${bounds}`,
    holds: (asked, scale) => {
      if (asked.when === "between") return asked.range;
      if (asked.when === "about") return `約${asked.value} (±${asked.margin})`;
      const more = asked.when === "more-than";
      const [up, down] =
        scale === "ratio"
          ? ["より長い", "より短い"]
          : scale === "hertz" || scale === "semitones"
            ? ["より高い", "より低い"]
            : ["より多い", "より少ない"];
      const direction =
        asked.limit === null ? (more ? up : down)! : `${asked.limit}${more ? "より上" : "より下"}`;
      return asked.small === null
        ? direction
        : `${direction} (${asked.small}まで${more ? "" : "の減少"}は小さすぎて問題にならない)`;
    },
    judged: (dataset, n, claimed, interval, asked, tail) =>
      `${dataset} の${n === 1 ? "この一人の話者" : speakers(n)}では、${claimInJapanese(claimed)} (${interval})。経験則の求めるもの: ${asked}。${tail}。`,
    tails: {
      "borne out": "区間全体がそれを満たします",
      contradicted: "区間全体がその外にあります",
      "too small to matter": "あるとしても小さすぎて問題になりません",
      inPart: {
        holds: "全体としては満たしますが、例外があります",
        fails: "全体としては満たしませんが、一部は満たします",
        small: "全体としては小さすぎて問題になりませんが、すべてではありません",
        open: "全体としては決められませんが、一部は確かです",
      },
      openSide: "区間の片側が開いているため、決められません",
      both: "区間は、成り立つことも成り立たないことも許します",
    },
    places: (names, holds) =>
      `${names.slice(0, 5).join("、")}${rest(names, 5)}では${holds ? "成り立ちます" : "成り立ちません"}。`,
    people: (names, judged, holds) =>
      `音が十分にある${speakers(judged)}のうち${names.length}名 (${names.slice(0, 5).join("、")}${rest(names, 5)}) では${holds ? "成り立ちます" : "成り立ちません"}。`,
    nothingFollows: "ほかの話者のことは分かりません。",
    silent: (dataset, reason) => `${dataset} からは分かりません: ${reason}。`,
    counted: { sounds: "音", morae: "モーラ", words: "語", phrases: "区間" },
    nothing: (dataset, counted) => `${dataset} にはこの経験則が述べる${counted}がなく、数えられません。`,
    tooFew: (dataset, tokens, counted, least) =>
      `${dataset} には${tokens.length > 1 ? `比べる両側に${counted}が${tokens.join("と")}個あり、それぞれ` : `${counted}が${tokens[0]}個あり、`}少なくとも${least}個必要です。何かを言うには少なすぎます。`,
    tooFewSpeakers: (dataset, n, least) =>
      `${dataset} でこれを示す話者は${n}名です。話者一般について述べるには少なくとも${least}名必要です。`,
    sounds: { pause: "ポーズ", cl: "促音" },
    part: (column, value, sound) => {
      const yes = value === "true";
      const told: Readonly<Record<string, string>> = {
        phone: sound,
        before: `${sound} のあと`,
        after: `${sound} の前`,
        position:
          value === "only"
            ? "1拍だけの区間"
            : `ポーズ間の区間の${{ initial: "最初", medial: "途中", final: "最後" }[value] ?? value}の拍`,
        length: `${{ short: "短い", long: "長い", single: "単独の", geminate: "促音の" }[value] ?? value}音`,
        accented: yes ? "アクセント核のある拍" : "アクセント核のない拍",
        devoiceableNeighbour: yes ? "隣にも無声化しうる母音があるとき" : "隣に無声化しうる母音がないとき",
      };
      return told[column] ?? `${column} ${value}`;
    },
    marks: {
      read: "文献またはその要旨を確認",
      "read, secondary": "ほかの文献での引用を確認",
      computed: "計算による",
      memory: "記憶による、未確認",
    },
    example: (shows, sound, around, word) =>
      `${word === null ? "" : `「${word}」の、`}${around.join("、")}の${shows === null ? "" : (showsInJapanese[shows] ?? shows)} ${sound}`,
    probability: (value) => `確率 ${value}`,
    timesMean: (value) => `話者自身の平均の${value}倍`,
    names: {
      "borne out": "裏づけられる",
      "borne out in part": "一部は裏づけられる",
      contradicted: "反する",
      "too small to matter": "小さすぎる",
      undecided: "決められない",
      "too little evidence": "証拠が足りない",
      "not measurable": "測れない",
    },
    byOneSpeaker: (verdict) => `${verdict} (この一人の話者)`,
  },
  rules: {
    title: "経験則は成り立つか",
    lead: "日本語の音について授業で言われることを、この録音とラベルに照らしました。判定は一つの数値ではなく区間全体にもとづき、この録音についてだけ述べています。",
    meanings: {
      "borne out": "区間全体が、経験則の言う範囲にあります",
      "borne out in part": "一部の環境または話者でだけそうです。それを挙げています",
      contradicted: "区間全体が、経験則の成り立たない範囲にあります",
      "too small to matter": "証拠は十分で、経験則の言うことはあってもごくわずかです",
      undecided: "音と話者は十分ですが、区間はどちらも許します",
      "too little evidence": "音または話者が、経験則の求める数に足りません",
      "not measurable": "この録音やラベルからは分かりません",
    },
    counted: {
      "borne out": (n) => `裏づけられる ${n}件`,
      "borne out in part": (n) => `一部は裏づけられる ${n}件`,
      contradicted: (n) => `反する ${n}件`,
      "too small to matter": (n) => `小さすぎる ${n}件`,
      undecided: (n) => `決められない ${n}件`,
      "too little evidence": (n) => `証拠が足りない ${n}件`,
      "not measurable": (n) => `この録音では測れない ${n}件`,
    },
    key: "判定の種類、件数と意味",
    showOnly: (counted) => `${counted}: これだけを表示`,
    filter: "表示する経験則",
    verdict: "判定",
    shown: (shown, all) => `${all}件の経験則のうち${shown}件を表示しています。`,
    link: (found) => `${found}を、この録音に照らしました。`,
    linkTo: "図、例外、出典を見る",
    howToRead:
      "図の帯は経験則が成り立つ範囲、線は得られた区間、点は推定値です。矢印は、その側で区間が開いていることを示します (自動整列は下限より短い音を記せません)。帯の斜線の部分では、経験則は成り立ちますが、小さすぎて問題になりません。",
    asks: (what) => `求めるもの: ${what}`,
    source: "出典",
    silent: "ここでは測れないもの",
    silentSummary: (found) => `ここでは判定できない${found}と、それぞれに必要なもの`,
    silentLead: "これらの経験則は、録音やラベルから分からないことを問うています。必要なもの:",
    noVerdicts: "この結果は、経験則を毎回判定するようになる前のものなので、示せる判定がありません。",
    noVerdictsWayOut: [
      "データセットに morascope run をもう一度実行してください。新しい結果の rules.json から、このページが作られます。",
      "または、この結果の判定を morascope rules RESULTS で表示してください。",
    ],
    noRules: "この結果には経験則の判定がありません。",
    ownRule:
      "自分の経験則も同じように判定できます。JSONファイルに書き、`morascope rules RESULTS --rules mine.json` を実行してください。",
    synthetic: "合成音声のため、日本語についての証拠ではありません",
    noEnvironments: "例外: 単独で調べるだけの音がある環境はありません。",
    noParts: "例外: 単独で調べるだけの音がある環境も話者もありません。",
    noneCertain: (looked) => `例外を${looked}で調べました。確かなものはありません。`,
    lookedAlone: (looked) => `単独で調べたもの: ${looked}`,
    more: (n) => `ほかの${n}件は \`rules.json\` にあります。`,
    places: { holds: "成り立つ", fails: "成り立たない", small: "小さすぎる", open: "どちらもあり" },
    mind: (n) => `注意 (${n}件)`,
    basis: (of) =>
      `由来: ${{ measured: "音声から測定", annotated: "人または音声の作成者による注釈", aligned: "自動整列による時刻", predicted: "規則によるテキストからの予測" }[of]}`,
    noInterval: "区間なし",
    picture: (value, interval, asked, verdict) =>
      `${value}、${interval}。経験則の求めるもの: ${asked}。判定: ${verdict}。`,
    many: (level) =>
      `判定は一つずつ${level}%の区間にもとづきます。多くの判定をまとめて読むと、いくつかは偶然に誤っていることがあります。例外はより厳しい水準で探したので、一つの判定の横に挙げたものはまとめて信頼できます。判定はこの録音について述べるもので、人を評価するものではありません。`,
    units: {
      share: "無声化した母音の割合",
      difference: "二つの割合の差 (パーセントポイント)",
      ratio: "長さの倍率 (対数目盛り)",
      semitones: "半音",
      hertz: "Hz",
      "vowel-separation": "自分の種類の中心に近い母音の割合",
      "mora-count": "モーラ数で説明される長さの分散の割合",
      formant: "基準からの半音の差",
      "length-quality": "長短の母音の半音の差",
      colouring: "/i/ の前と /u/ の前の重心の差 (Hz)",
    },
  },
  datasets: {
    title: "数値の出どころ",
    lead: "このページのどの数値も、次のデータセットの一つと、そのラベルの一つにもとづいています。同じ録音の別のラベルを合算することはありません。",
    basis: {
      measured: "音声から測定",
      annotated: "人または音声の作成者による注釈",
      aligned: "自動整列による",
      predicted: "規則によるテキストからの予測 (証拠ではない)",
    },
    grid: (ms) => `${ms} ms 刻み`,
    floor: (ms) => `${ms} ms より短いものはなし`,
    between: "、",
    none: "なし",
    noLength: "長短を区別するものなし",
    lengthFrom: { label: "ラベル", reading: "読み" },
    unknown: "不明",
    noAudio: "見つかりません",
    hours: (hours) => `${hours}時間`,
    allowed: {
      all: "すべての録音を公開できます。",
      excerpt: (most) => `${count(most)}件までの録音を公開できます。`,
      none: "録音は公開できません。",
    },
    facts: {
      licence: "ライセンス",
      credits: "クレジット",
      citation: "引用",
      homePage: "ホームページ",
      publishing: "録音の公開",
      speakers: "話者",
      utterances: "発話",
      audio: "音声",
      readings: "読み",
      readAs: "読み込み方",
    },
    readings: (utterances) => `${count(utterances)}発話`,
    version: (version) => `版 ${version}`,
    labels: "ラベル",
    columns: ["ラベル", "発話", "時刻", "無声化の印", "長母音の区別", "アクセント", "これらの根拠"],
    problems: {
      title: "除いたものと、その他の指摘",
      none: "除いたものも、指摘もありません。",
      found: (total, excluded) =>
        `指摘は${count(total)}件。${excluded === 0 ? "除いた録音はありません" : `そのために${count(excluded)}件の録音を除きました`}。`,
      first: (listed) => `最初の${count(listed)}件を示します。`,
      line: (file, line) => `${file}、${line}行目`,
      leftOut: "除外",
      kept: "使用",
      columns: ["データセット", "発話", "場所", "内容", "対処", "扱い"],
      download: "すべてをダウンロード (CSV)",
    },
  },
  retell: (sentence) => retoldBy(retellings, sentence),
  dictionary: {
    title: "列の一覧",
    lead: "結果のすべての列を、ファイルを書いたプログラムの定義どおりに示します。列の説明は英語です。",
    about: {
      cells: "このページの計算のもと: 話者と環境が同じ音を、合計と個数にまとめたもの。",
      tokens: "母音または子音1個につき1行。環境と、録音から分かること。",
      intervals: "ラベルの付いた区間1個につき1行。ポーズを含む。",
      utterances: "録音1件につき1行。テキストを含む。",
    },
    columns: ["列", "意味", "単位", "得られ方", "欠測の意味"],
    number: "数 (単位なし)",
    never: "欠測なし",
  },
  method: {
    title: "数値はどのように得られたか",
    lead: "どの数値にも、どう得られたか、どれだけのデータにもとづくか、どれだけずれうるかを添えています。",
    "knowing-heading": "値の四つの由来",
    knowing:
      "音声から測ったものは **測定** (measured)、人が聞いたり見たりして付けたものは **注釈** (annotated)、プログラムが時刻の境界を置いたものは **整列** (aligned)、テキストだけから規則が書いたものは **予測** (predicted) です。無声化の証拠になるのは測定と注釈だけです。予測の印は規則の予想を示すもので、数えて斜線で示しますが、割合とは呼びません。",
    "devoicing-heading": "無声化",
    devoicing:
      "割合は、有声か無声かの印がある母音のうち、無声化したものの割合です。前後の音によって変わるので、数値を読む前に選んでください。長母音はほとんど無声化しないため、別に数えます。",
    "length-heading": "長さ",
    length:
      "長さの比は、同じ音色の長母音と短母音、または同じ種類の促音と単独の子音を、同じ話者の中で比べたものです。幾何平均の比で、算術平均や中央値の比も表に示します。ポーズの隣の母音は、句末で伸びるため別に扱います。",
    sequences:
      "同じ母音が続くとき、それを一つの長母音とみなすのは、読みがそう示す場合 (「ー」、または語の一部分の中の連続) だけです。どの規則で決めたかは「列の一覧」にあります。",
    "intervals-heading": "区間",
    intervals:
      "一人の話者の音は互いに似ているので、一人の千の母音は千人の証人ではありません。話者が複数のときは話者間のばらつきから区間を計算します。話者が一人のときは、その話者についてだけの区間であり、そう記します。同じ語の音も互いに似ています。一つ一つの音とその語が分かるところでは、話者と語を考慮した区間も添えます。二つの割合の大小は差の区間で判断します。それぞれの区間しか分からず、それが重なるときは順序を決めませんが、違いがないという意味ではありません。",
    coverage:
      "区間がどれほど信頼できるかは、作ったコーパスで試しました。話者が10名以上のとき、割合と比の95%区間が真の値を含んだのは93〜98%です。0%や100%に近く、話者の違いが大きい (ほとんど無声化しない人とよくする人がいる) 割合には注意してください。コーパスが違う人をたまたま含まないと、実際より確かに見えます。その多くには注意書きが付きますが、付かない少数の区間が真の値を含んだのは70〜90%にとどまるため、0%や100%に近いものは安全と呼びません。「何が効くか」のモデルは、母音、話者、または一方の結果が少なすぎる水準には数値を出しません。話者1〜3名で示す区間のうち、真の値を含んだのは93%以上です。",
    "level-before": "すべての区間の水準:",
    "floor-heading": "自動整列の下限",
    floor:
      "自動整列は一定の刻みで動き、数刻みより短い音を記せません。この下限にある音は、長くてもその長さということです。短母音の多くが下限にあると、その平均は長すぎ、比は小さすぎるため、「少なくとも」と記します。",
    "agreement-heading": "別のラベルとの一致",
    "corrections-heading": "読者による訂正",
    "published-heading": "公表された値",
    published:
      "図の帯は文献の値で、出典とその確認の程度を添えています。語も話者も測り方も違うので、一致はよい兆し、違いは問いであり、どちらも検定ではありません。",
    "limits-heading": "このページでは分からないこと",
  },
  navigation: {
    label: "ページ",
    skip: "本文へ移動",
    all: "ページ一覧",
    groups: {
      start: "概要",
      sounds: "録音から分かること",
      lessons: "授業のために",
      sources: "数値の根拠",
      own: "追加したページ",
    },
  },
  pages: {
    timing: "タイミング",
    vowels: "母音空間",
    colouring: "子音の音色",
    whatMatters: "要因の比較",
    words: "練習語",
    lookUp: "語を調べる",
    listen: "聞く",
    cite: "引用",
  },
  figure: {
    how: "計算の方法",
    numbers: "数値",
    numbersBehind: "この図の数値",
    terminal: "端末で同じ数値を出すコマンド",
    terminalNote:
      "RESULTS は、run の結果のあるフォルダーです。データセットのほかのラベルや根拠は、そこでは別の行になります。",
    keep: (finding) => `保存・共有: ${finding}`,
    copyNumbers: "数値をコピー",
    saveNumbers: "数値を保存 (CSV)",
    saveSvg: "図を保存 (SVG)",
    savePng: "図を保存 (PNG)",
    copyLink: "リンクをコピー",
    cite: "引用",
    keepOrCite: "保存・引用",
    copied: "コピーしました。",
    notCopied: "このブラウザではコピーできません。ファイルに保存するか、文字を選択してコピーしてください。",
    saved: (name) => `${name} として保存しました。`,
    linkCopied: "この図へのリンクをコピーしました。",
    notDrawn: "PNGの図を作れませんでした。SVGは保存できます。",
    gridKey: "色と大きな数字: 無声化の割合 (%)。四角: 大きいほど確か。小さな数字: 母音の数。",
    columns: {
      dataset: "データセット",
      version: "データセットの版",
      licence: "ライセンス",
      filter: "絞り込み",
      basis: "値の由来",
      software: "ソフトウェア",
      resultsOf: "結果の日付",
      address: "アドレス",
    },
  },
  figures: {
    noAnswers:
      "この結果には個々の音についての答えがありません。別の版で作られたものです。もう一度実行してください。",
    cannotTell: (reason) => `ここでは分かりません。${retoldBy(retellings, reason) ?? reason}`,
    times: {
      measured: "時刻は音声から測定",
      annotated: "時刻は人が付けたもの、または合成時に既知のもの",
      aligned: "時刻は自動整列によるもの",
      predicted: "時刻は予測",
    },
    marks: {
      measured: "無声化は音声から測定",
      annotated: "無声化は人が付けたもの、または合成時に既知のもの",
      aligned: "無声化は自動整列のラベルによるもの",
      predicted: "無声化は規則によるテキストからの予測",
    },
    speakers,
    interval: (level, low, high, unitOf = "") =>
      low === null || high === null
        ? "区間なし: 話者または語が少なすぎます"
        : `${percent(level)}区間 ${low}〜${high}${unitOf}`,
    seen: {
      read: "原典を確認",
      "read-secondary": "ほかの文献での引用を確認",
      memory: "記憶による、未確認",
    },
    speakersDiffer: "話者によってどれだけ違うか",
    speaker: "話者",
    tokens: (n) => `${count(n)}個`,
    oneSpeaker: "この条件の話者は一人なので、話者による違いは分かりません。",
    noTwoSpeakers:
      "この条件には、長い音と短い音の両方がある話者が二人いないので、話者による違いは分かりません。",
    noMarks: "ここでは、無声化の印のある母音を持つ話者がいません。",
    ruleSpeakers: "規則はどの話者にも同じなので、話者による違いは分かりません。",
    rateDots:
      "点は話者で、母音が多いほど大きく示します。帯は全員での区間です。母音が少ないだけでも点は散らばります。",
    ratioDots:
      "点は話者で、その話者の中だけで比べています。長い音が多いほど大きく示します。帯は全員での区間です。",
    level: "水準",
    setComparison: "データセットとラベル",
    band: (low, high, what, seen) => `帯: ${low}〜${high}、公表された値 (${what}、${seen})`,
    fromMemory: (low, high, what) =>
      `よく引かれる値: ${low}〜${high} (${what})。記憶によるもので出典は未確認のため、図には示さず、引用もできません。`,
    sources: "公表された値の出典",
    address: "アドレス",
  },
  cite: {
    resultsTitle: (datasets) => `${datasets.join("、")}における日本語の音の測定`,
    datasets: "データセット",
    results: "この結果",
    resultsLead: "一つの図や数値には、図の下の引用を使ってください。何を数えたかを示し、同じ表示に戻れます。",
    software: "プログラム",
    noCitation: "作者による引用方法はカードにありません。次はカードの記載です。",
    versionUsed: (version) => `${version} 版。`,
    addAddress: "このページを見たアドレスと日付を添えてください。",
    saveAll: (form) => `すべてを${form}で保存`,
    title: "引用のしかた",
    description: "データセット、ソフトウェア、この結果の引用方法。テキスト、BibTeX、CSL-JSON。",
    lead: "配布資料や論文を読む人が、同じ数値にたどり着けるように。まずデータセットの作者を引用してください。録音がなければ測るものもありません。次にこの結果と、計算したプログラムを引用してください。",
    licenceIs: (name, url) => `ライセンス: ${name}${url === null ? "" : ` (${url})`}`,
    softwareNote: "コンピュータプログラム。ライセンス: MIT",
    computedWith: (software, version) => `${software} ${version} で計算`,
    figureCalled: (id) => `図「${id}」`,
    counted: (filter) => `対象: ${filter}`,
    asSaid: "文に示したとおり",
    everything: "すべて、絞り込みなし",
    version: (version) => `${version} 版`,
    resultsOf: (day) => `${day} の結果`,
    seenOn: (day) => `${day} 閲覧`,
    data: (datasets) => `データ: ${datasets}`,
    text: "テキスト",
    copy: "コピー",
    save: (ending) => `保存 (${ending})`,
  },
  timing: {
    noneOf:
      "この結果には個々の音についての答えがありません。別の版で作られたものです。もう一度実行してください。",
    title: "どの拍も同じ長さか",
    lead: "モーラは日本語の拍です。「か」は1拍、「かん」「かっ」は2拍。授業では「どの拍も同じ長さ」と教えます。語の長さが拍の数にどこまで従うか、母音が無声化した拍はどうなるかを示します。",
    choices: "見たいもの",
    unit: "長さの単位",
    units: unit,
    one: unit,
    morae: "モーラ数",
    duration: "長さ (ms)",
    growth: {
      heading: "長さとモーラ数",
      question: {
        word: "1モーラ増えると、語はどれだけ長くなるか",
        phrase: "1モーラ増えると、区間はどれだけ長くなるか",
      },
      finding: (of, step, interval, who, share) =>
        `1モーラ増えるごとに${unit[of]}は${step}長くなります (${interval}、${who})。話者ごとの長さの違いの${share}がモーラ数で説明できます。`,
      alone: (of, step, share) =>
        `この話者では、1モーラ増えるごとに${unit[of]}が${step}長くなります。長さの違いの${share}がモーラ数で説明できます。ほかの話者については何も言えません。`,
      counts: (n, of, who, times) => `${unit[of]}${count(n)}個、${who}、${times}。`,
      left: (ms) => `直線からのずれ (標準偏差): ${ms}。`,
      remark:
        "点: 中央値。太い線と細い線: 中央の半分と中央の8割。薄い点は個々の長さの一部。薄い線は話者ごと、濃い線はその平均です。",
      few: (least) => `${least}個に満たないモーラ数は表にのみ示します。`,
      method:
        "話者ごとに最小二乗法で直線を当て、傾きの平均と、話者にわたるt区間を示します。R²は、その話者の長さの分散のうち直線で説明できる割合です。",
      columns: { morae: "モーラ数", n: "個数", speakers: "話者", line: "直線 (ms)" },
      quantile: (share) => `${share}%はこれ以下 (ms)`,
    },
    steps: {
      question: "話者による違いはどれくらいか",
      finding: (n, low, high) =>
        `1モーラあたりの増え方は、話者により${low}〜${high} msです (${speakers(n)})。`,
      remark:
        "点は話者で、個数が多いほど大きく描きます。帯は全体の区間です。速く話す人ほど増え方は小さくなります。",
      none: "直線を当てられる話者が2名に満たないため、話者による違いについては何も言えません。",
      axis: "1モーラで増える長さ (ms)",
      columns: { speaker: "話者", step: "1モーラあたり (ms)", start: "0モーラでの値 (ms)", n: "個数" },
    },
    twins: {
      heading: "無声化した母音の拍",
      question: "母音が無声化しても、拍の長さは保たれるか",
      finding: (ratio, interval, who, verdict) =>
        `母音が無声化した拍の長さは、有声の同じ拍の${ratio}倍です (${interval}、${who})。${
          {
            shorter: "短くなりますが、大部分は保たれます。",
            longer: "長くなります。",
            open: "このコーパスでは違いがあるとは言えません。",
          }[verdict]
        }`,
      muchShorter: (ratio, interval, who) =>
        `母音が無声化した拍の長さは、有声の同じ拍の${ratio}倍しかありません (${interval}、${who})。`,
      counts: (devoiced, voiced, morae, who, how) =>
        `${count(morae)}種の拍の無声化${count(devoiced)}例と有声${count(voiced)}例、${who}、${how}。`,
      remark:
        "塗りつぶし: 有声、白抜き: 無声化。子音と母音を合わせた長さの幾何平均を、同じ話者の同じ拍どうしで比べています。",
      most: (n) => `組の多い${n}種を描きました。表にはすべてあります。`,
      method:
        "幾何平均の比。同じ話者の同じ拍の中だけで比べ、個数で重みづけ。区間は対数上で話者を単位とするt区間で、独立とみなした区間より狭くはしません。",
      axis: "子音+母音 (ms)",
      voiced: "有声",
      devoiced: "無声化",
      all: "全体",
      columns: {
        mora: "拍",
        ratio: "無声化÷有声",
        low: "下限",
        high: "上限",
        devoicedMs: "無声化 (ms)",
        voicedMs: "有声 (ms)",
        devoiced: "無声化の数",
        voiced: "有声の数",
        speakers: "話者",
      },
    },
    rhythm: {
      method:
        "話者の値は、ポーズ間の区間の値を長さで重みづけた平均。全体は話者の平均とt区間で、どの話者も同じ重み。Ramus, Nespor & Mehler (1999) Cognition 73:265–292、Grabe & Low (2002) Laboratory Phonology 7:515–546。",
      published: (language, work) => `${language}、${work}`,
      heading: "リズム",
      question: "よく使われる指標ではどんなリズムか",
      finding: (parts) => `話者の平均: ${parts.join("、")}。`,
      alone: (parts) => `この話者では: ${parts.join("、")}。ほかの話者については何も言えません。`,
      measures: {
        vowelPercent: {
          axis: "時間に占める母音の割合 (%)",
          plain:
            "ポーズ間の時間のうち、母音が占める割合。「か」「た」のような単純な音節の言語では大きく、子音が重なる言語では小さくなります。",
        },
        deltaConsonantMs: {
          axis: "子音区間のばらつき (ms)",
          plain:
            "子音の区間の長さがどれだけ違うか。どの音節も子音が一つなら小さく、ゆっくり話しても大きくなります。",
        },
        vowelNpvi: {
          axis: "隣り合う母音区間の違い (%)",
          plain:
            "隣り合う母音区間の長さの違いを、長さに対する割合で表したもの。長母音と短母音が並んだり、無声化があったりすると大きくなります。",
        },
      },
      remark: "点: 話者。帯: 平均の区間。三角: 公表された値 (別のテキスト)。",
      counts: (who, times) => `${who}、${times}。`,
      columns: { speaker: "話者", vowel: "ΔV (ms)", raw: "子音のrPVI (ms)" },
      mean: "平均",
      low: "下限",
      high: "上限",
    },
  },
  vowelSpace: {
    table: (who, work) => `${who} (${work})`,
    title: "五つの母音はどこにあるか",
    lead: "第1フォルマント (F1) は口が開くほど、第2フォルマント (F2) は舌が前にあるほど高くなります。両方の軸を逆向きにすると、母音はおよそ舌の位置に並びます。左が前、上が狭い母音です。",
    choices: "見たいもの",
    scale: "目盛り",
    scales: { hz: "Hz", z: "正規化 (Lobanov)" },
    group: "声",
    allGroups: "すべて",
    length: "長さ",
    lengths: { all: "短母音と長母音を合わせて", split: "短母音と長母音を分けて" },
    japanese: "公表された日本語の値",
    english: "公表されたアメリカ英語の値",
    none: "なし",
    chart: {
      finding: (group, own, u) => {
        const whose = group === null ? "" : `${group}では、`;
        const text = `${whose}母音はF1で${own.close}から${own.open}まで (${own.f1Low}〜${own.f1High})、F2で${own.back}から${own.front}まで (${own.f2Low}〜${own.f2High}) に広がります。`;
        return u === null ? text : `${text}${u}`;
      },
      central: (u, value, interval, share) =>
        `${u} は${value}にあり (${interval})、後ろから前までの${share}の位置です。`,
      spoken: (vowel, f1, f2) => `${vowel}: F1 ${f1}、F2 ${f2}`,
      heading: "母音図",
      question: "母音はどこにあるか",
      alone: "話者1名なので、ほかの話者については何も言えません。",
      corpus: "このコーパス",
      published: "公表値",
      axes: { z: { f1: "F1 (話者内のz値)", f2: "F2 (話者内のz値)" } },
      remark:
        "大きな文字: 話者の平均。楕円: 話者自身の平均のまわりに、その話者の母音の約3分の2が入る範囲。小さな文字: 個々の母音の一部。",
      split: "実線: 短母音。破線とː: 長母音。",
      groups: (names) => `色と線: ${names.join("、")}。`,
      publishedRemark: (ja, en) =>
        `公表された平均: 日本語は線でつなぎ (${ja})、アメリカ英語はつないでいません (${en})。`,
      onlyHz: "公表された値はヘルツなので、正規化した値とは並べられません。",
      counts: (n, who) => `母音${count(n)}個、${who}。フォルマントは音声から測定。`,
      noZ: "五つの母音すべてが十分に測れた話者がいないため、正規化できません。Hzを選んでください。",
      columns: {
        group: "声",
        vowel: "母音",
        length: "長さ",
        low: "下限",
        high: "上限",
        within: "話者内のばらつき",
        n: "母音の数",
        speakers: "話者",
      },
    },
    shift: {
      openAlone: "長母音と短母音の音色に明らかな違いはありません。どの区間も0を含みます。",
      heading: "長母音と短母音",
      question: "長母音は別の音色か",
      finding: (parts) => `長母音は短母音と音色が違います: ${parts.join("、")}。`,
      part: (vowel, formant, size, higher) => `${vowel}の${formant}が${size}半音${higher ? "高い" : "低い"}`,
      open: "このコーパスでは、長母音と短母音の音色に明らかな違いはありません。複数の話者が両方を発音しているところでは、どの区間も0を含みます。",
      none: "同じ母音の長短を2個以上ずつ測れた話者がいないため、音色を比べられません。",
      axis: "長−短 (半音)",
      row: (formant, vowel) => `${vowel}の${formant}`,
      remark:
        "同じ話者の長母音と短母音を比べています。0から離れた線は音色の違いを示します。1半音は約6%です。",
      thin: "薄い色: 話者1名のみ。上の文には含めていません。",
      tokens: (long, short) => `母音 ${count(long)} : ${count(short)}`,
      counts: (long, short, who) =>
        `長母音${count(long)}個と短母音${count(short)}個、${who}。フォルマントは音声から測定。`,
      method: "話者の平均とt区間。どの話者も同じ重み。話者1名のときは母音にわたるウェルチの区間。",
      columns: {
        vowel: "母音",
        formant: "フォルマント",
        shift: "長−短 (半音)",
        low: "下限",
        high: "上限",
        hz: "長−短 (Hz)",
        long: "長母音の数",
        short: "短母音の数",
        speakers: "話者",
      },
    },
    sources: {
      heading: "公表された値の出典",
      question: "日本語とアメリカ英語のフォルマントの公表値",
      finding: "ほかの研究者が、別の話者、テキスト、装置で得た平均です。細かい桁ではなく形を比べてください。",
      columns: { table: "話者", vowel: "母音", source: "出典", seen: "出典の確認" },
    },
  },
  colouring: {
    title: "無声化した母音は子音に音色を残すか",
    lead: "「し」や「しゅ」の母音が無声化しても、子音そのものが /i/ の前で /u/ の前より明るければ、聞き手は二つを区別できます。雑音のスペクトル重心 (Hz) がその明るさを表します。",
    choices: "見たいもの",
    consonant: "子音",
    before: { i: "/i/ の前", u: "/u/ の前" },
    vowels: { devoiced: "無声化した母音", voiced: "有声の母音" },
    difference: {
      counts: (i, u, who, marks) =>
        `/i/ の前の子音${count(i)}個と /u/ の前の${count(u)}個、${who}。重心は音声から測定、${marks}。`,
      reason: (vowel, reason) => `${vowel}: ${reason}`,
      columns: {
        vowel: "母音",
        difference: "差 (Hz)",
        low: "下限",
        high: "上限",
        mixed: "変量効果モデル (Hz)",
        mixedLow: "その下限",
        mixedHigh: "その上限",
        i: "/i/ の前 (Hz)",
        u: "/u/ の前 (Hz)",
        nI: "/i/ の前の数",
        nU: "/u/ の前の数",
        speakers: "話者",
        words: "語",
      },
      question: "/i/ の前の子音は /u/ の前よりどれだけ明るいか",
      brighter: (sound, hz, interval, who) =>
        `無声化した /i/ の前の ${sound} は、無声化した /u/ の前より${hz}明るくなります (${interval}、${who})。子音が母音の音色を保っています。`,
      darker: (sound, hz, interval, who) =>
        `無声化した /i/ の前の ${sound} は、無声化した /u/ の前より${hz}暗く (${interval}、${who})、予想とは逆です。`,
      open: (sound, hz, interval, who) =>
        `明らかな違いはありません。無声化した /i/ の前の ${sound} と /u/ の前の差は${hz}です (${interval}、${who})。`,
      axis: "/i/ の前 − /u/ の前 (Hz)",
      tokens: (i, u) => `子音 ${count(i)} : ${count(u)}`,
      remark: "線の右: /i/ の前のほうが明るい。有声の母音の前を比較のために並べています。",
    },
    spread: {
      oneSide: (sound, side) => `無声化した母音の前の ${sound} は${side}にしかなく、比べられません。`,
      remark: (step) =>
        `${step} Hzごとの割合。塗りつぶし: /i/ の前、線: /u/ の前。話者の声は異なり、両方を同じだけ発音するとは限らないので、話者内の差 (上の図) に従ってください。`,
      columns: { vowel: "母音", before: "前", from: "下端 (Hz)", tokens: "個数" },
      question: "重心はどのように分布しているか",
      finding: (sound, i, u) =>
        `無声化した母音の前で、${sound} の重心は平均して /i/ の前で${i}、/u/ の前で${u}です (全話者)。`,
      none: "無声化した /i/ や /u/ の前の子音のスペクトルは、ここでは測られていません。",
      axis: "雑音の重心 (Hz)",
    },
    speakers: {
      remark:
        "点は話者で、少ないほうの個数が多いほど大きく描きます。帯は全体の区間です。個数が少ないだけでも点は散らばります。",
      columns: {
        speaker: "話者",
        difference: "差 (Hz)",
        i: "/i/ の前 (Hz)",
        u: "/u/ の前 (Hz)",
        nI: "/i/ の前の数",
        nU: "/u/ の前の数",
      },
      question: "話者による違いはどれくらいか",
      finding: (n, brighter, low, high) =>
        `${speakers(n)}のうち${count(brighter)}名で、無声化した /i/ の前の子音のほうが明るくなります。差は${low}〜${high} Hzです。`,
      none: "両方の母音の前にこの子音がある話者が2名に満たないため、話者による違いについては何も言えません。",
    },
  },
  whatMatters: {
    levels: {
      accented: { true: "アクセント核あり", false: "アクセント核なし" },
      devoiceableNeighbour: { true: "隣にもある", false: "単独" },
      devoiced: { true: "無声化", false: "有声" },
      position: { initial: "ポーズ直後の拍", later: "それ以後" },
      after: soundKinds,
      before: soundKinds,
      length: { long: "長母音", short: "短母音" },
    },
    row: (term, level) => `${term}: ${level}`,
    perUnit: (term, of) => `${term}: ${of}増えると`,
    units: { "mora/s": "毎秒1モーラ", tenfold: "10倍" },
    against: (level) => `${level}と比べて`,
    title: "すべてを合わせて考えると、何が効くか",
    lead: "母音、前後の音、アクセント、話す速さは、実際の発話では結びついています。回帰分析はそれらを同時に考え、ほかをそろえたときに一つの条件がどう働くかを示します。",
    choices: "見たいもの",
    outcome: "説明するもの",
    outcomes: { devoicing: "無声化", duration: "母音の長さ" },
    scale: "表し方",
    scales: { points: "パーセントポイント", ratio: "オッズ比" },
    terms: {
      vowel: "母音",
      before: "前の音",
      after: "後の音",
      accented: "アクセント",
      position: "位置",
      devoiceableNeighbour: "隣の母音",
      speechRate: "話す速さ",
      wordFrequency: "語の頻度",
      length: "長さ",
      devoiced: "声",
    },
    effects: {
      finding: {
        devoicing: (parts) => `ほかをそろえたとき、無声化の割合に最も確かに効くもの: ${parts.join("、")}。`,
        duration: (parts) => `ほかをそろえたとき、母音の長さに最も確かに効くもの: ${parts.join("、")}。`,
      },
      points: (name, against, points, interval) =>
        `「${name}」${against === null ? "" : ` (${against})`} ${points}ポイント (${interval})`,
      times: (name, against, ratio, interval) =>
        `「${name}」${against === null ? "" : ` (${against})`} ${ratio}倍 (${interval})`,
      none: "すべてを合わせて見ると、確かな効果はありません。話者や語の違いを考えた区間がどれも「効果なし」を含むか、調べた効果が多すぎます。",
      counts: (n, what, who, words, marks) =>
        `母音${count(n)}個 (${what})、${who}${words === null ? "" : `、${count(words)}語`}、${marks}。`,
      average: {
        devoicing: (share) => `そのうち${share}が無声化しています。`,
        duration: (ms) => `幾何平均は${ms}です。`,
      },
      thin: (names) =>
        `母音、話者、または一方の結果が少なすぎて分からないもの: ${names.join("、")}。数値は出しません。`,
      separated: (name, devoiced, n) =>
        `${name}: 母音${count(n)}個の${devoiced === 0 ? "どれも無声化していない" : "すべてが無声化している"}ため、オッズ比を出せず、除きました。`,
      models: { clustered: "クラスター回帰", mixed: "混合モデル" },
      converged: (model) => `${model}: 収束しました。`,
      failed: {
        "not converged": (model, reason) => `${model}: 収束しなかったため、何も示しません。${reason}`,
        "cannot be estimated": (model, reason) => `${model}: 推定できません。${reason}`,
      },
      tokens: (n) => `母音${count(n)}個`,
      tooFew: (n) => `${count(n)}個: 少なすぎて不明`,
      method: (parts) => parts.join(" "),
      columns: {
        model: "モデル",
        term: "項",
        level: "水準",
        against: "比較の相手",
        ratio: { devoicing: "オッズ比", duration: "倍率" },
        low: "下限",
        high: "上限",
        points: "パーセントポイント",
        pointsLow: "ポイントの下限",
        pointsHigh: "ポイントの上限",
        p: "調整したp値 (Benjamini–Hochberg)",
        n: "母音の数",
        devoiced: "無声化",
        speakers: "話者",
        thin: "少数",
      },
      few: "少数",
      question: {
        devoicing: "ほかをそろえたとき、無声化を増やすもの、減らすもの",
        duration: "ほかをそろえたとき、母音を長くするもの、短くするもの",
      },
      remark:
        "塗りつぶし: 話者と語を単位とした誤差による回帰。白抜き: 話者と語の変量効果を含むモデル。違うときは広いほうの区間に従ってください。",
      axis: {
        points: "割合の変化 (パーセントポイント)",
        ratio: "無声化のオッズ比 (対数目盛り)",
        duration: "長さの倍率 (対数目盛り)",
      },
    },
    variance: {
      finding: (parts) => `これらの項で説明されない違いのうち、${parts.join("、")}。`,
      between: (share, groups, of) =>
        `${share}は${of === "speaker" ? "話者" : of === "word" ? "語" : "音の並び"} (${count(groups)}) の間`,
      single: (share) => `${share}は個々の母音`,
      remark:
        "モデルの尺度 (対数オッズまたは対数長) での割合。話者間の割合は、環境によらず無声化や伸ばし方が話者で違うことを示します。割合には区間がありません。",
      names: { speaker: "話者", word: "語", "sound frame": "音の並び", "single vowel": "個々の母音" },
      columns: { of: "何の間", groups: "数", sd: "標準偏差", share: "割合" },
      question: "話者と語による違いはどれくらいか",
      none: "混合モデルからは割合が得られません。",
    },
  },
  listen: {
    empty:
      "この結果には個々の音の表がありません。データセットに `morascope run` をもう一度実行してください。",
    noRecordings: (dataset) =>
      `${dataset} には録音がありません。ラベルどおりに見ることはできますが、聞けません。`,
    excerptOnly: (dataset, recordings, note) =>
      `${dataset}: ここで聞けるのは${count(recordings)}件の録音です。${note} ほかの音は測定値だけを示します。`,
    unreadable: (dataset, recordings, fault) =>
      `${dataset}: ${count(recordings)}件の録音を読めませんでした。${fault}`,
    corrections: {
      none: "この結果には読者が訂正した母音がありません。「聞く」のページで母音に有声・無声の印を付け、`morascope run --corrections` で取り込めます。",
      used: (marks, used, devoiced, voiced, cannotTell) =>
        `この結果の母音${count(used)}個を読者が訂正しました。無声化へ${devoiced}個、有声へ${voiced}個、分からないとして不明へ${cannotTell}個。${used === marks ? "" : `合わなくなった印${count(marks - used)}件は問題の一覧にあります。`}`,
      leftOut: (vowels, bases) =>
        `別の由来 (${bases}) の印のある母音${count(vowels)}個は、ここでは除いています。疑わしいものの訂正は無作為な標本ではないからです。`,
      apart: "訂正した母音は注釈として別に扱い、測定としては数えません。測定した値もそのまま残します。",
      noSample:
        "読者は疑わしいものを訂正します。無作為な標本ではないので、訂正した母音の無声化の割合は率ではなく、測定の率からはその母音だけが抜け、判定の誤りの割合も分かりません。それには無作為な標本に印を付け (`morascope sample`)、`morascope run --marks` に渡してください。",
    },
    allHere: (dataset, n) => `${dataset} の母音と子音${count(n)}個がすべてここにあります。`,
    someHere: (dataset, shown, n) =>
      `${dataset} の母音と子音${count(n)}個のうち${count(shown)}個がここにあります。録音を丸ごと、話者が偏らないように、測定とは無関係な決まった順で選びました。手元で \`morascope serve RESULTS\` を使うと、すべてを見て聞けます。`,
    playsAll: "このコンピュータから配信しています。録音はデータセットのフォルダから再生し、外には出ません。",
    row: (sound, before, after, word, said, speaker) =>
      `${before} と ${after} の間の ${sound}${word === null ? "" : `、${word}`}: ${said}、${speaker}`,
    edges: (of, synthetic) => (of === "annotated" && synthetic ? "境界は合成時に既知" : `境界: ${basis[of]}`),
    word_: (word) => `「${word}」`,
    strip: (kana, said) =>
      `${kana} の拍を時間に比例させ、スペクトログラム (0〜8 kHz) の上に示した図。この音は${said}。`,
    stripSilent: (kana, said) => `${kana} の拍を時間に比例させて示した図。この音は${said}。`,
    title: "聞いて、見て、自分で判断する",
    lead: "どの数値も、一つ一つの音からできています。音を選び、ゆっくり聞き、なぜ無声または有声と判定されたかを見てください。耳と合わなければ、印を付けてください。",
    loading: "音を読み込んでいます…",
    form: "探すもの",
    reset: "元に戻す",
    more: "前後の音、話者、測定値",
    any: "すべて",
    set: "データセットとラベル",
    word: "語 (かな、ローマ字、漢字)",
    sound: "音",
    highVowels: (i, u) => `${i} と ${u}`,
    anyVowel: "すべての母音",
    anyConsonant: "すべての子音",
    anySound: "すべての音",
    decision: "判定",
    decisions: {
      any: "すべて",
      devoiced: "無声化",
      voiced: "有声",
      doubtful: "疑わしい (20〜80%)",
      undecided: "判定なし",
      marked: "自分の印",
    },
    order: "並び順",
    orders: {
      corpus: "コーパスの順",
      boundary: "境界に近い順",
      shortest: "短い順",
      longest: "長い順",
      lowest: "低い順",
      highest: "高い順",
    },
    before: "前の音",
    after: "後の音",
    voicelessConsonant: "無声子音 (ッを除く)",
    voicedSound: "すべての有声音",
    length: "長さ",
    lengths: { short: "短母音", long: "長母音", single: "単独の子音", geminate: "促音" },
    speaker: "話者",
    allSpeakers: (n) => `全員 (${n})`,
    measure: "測定値",
    from: "から",
    to: "まで",
    scope: "探す範囲",
    scopeAll: (n) => `全${count(n)}音`,
    scopeSite: "このサイトにあるもの",
    measures: {
      durationMs: "長さ",
      devoicedProbability: "無声化の確率 (0〜1)",
      voicingLogOdds: "声の対数オッズ",
      islandMs: "最長の声",
      voicedMs: "声の合計",
      f0Hz: "高さ F0",
      f1Hz: "第1フォルマント",
      f2Hz: "第2フォルマント",
      fricationCentreHz: "摩擦の重心",
      intensityDb: "強さ",
    },
    found: (n, shown) =>
      n === 0
        ? "該当する音がありません。条件を減らすか、かなで入力してください。"
        : n <= shown
          ? `${count(n)}音が該当します。`
          : `${count(n)}音が該当します。最初の${shown}音を示します。`,
    list: "該当する音",
    moreSounds: (n) => `さらに${n}音を表示`,
    place: (position, of) => `${count(of)}音中の${count(position)}番目`,
    outside: "アドレスで指定された音です。条件には合いません。",
    previous: "前へ",
    next: "次へ",
    between: (sound, before, after) => `${before} と ${after} の間の ${sound}`,
    kinds: { long: "長母音", geminate: "促音" },
    pause: "ポーズ",
    doubled: "促音",
    voiced: "有声",
    devoiced: "無声化",
    unknown: "不明",
    said: (devoiced, probability) =>
      `${devoiced ? "無声化" : "有声"}${probability === null ? "" : ` ${sure(devoiced ? probability : 1 - probability)}`}`,
    margin: (probability) => {
      if (probability > 0.2 && probability < 0.8) return "境界に近い";
      return Math.max(probability, 1 - probability) >= 0.95 ? "明らか" : "かなり明らか";
    },
    byPerson: "人が付けた印による",
    byMaker: "そのように合成されたもの",
    byEither: "作成者または読者の印による",
    byRule: "テキストの規則による予測のみ",
    duration: (ms, atFloor) => `${Math.round(ms)} ms${atFloor ? "以下" : ""}`,
    soundAlone: (error) => `音だけから分かる長さの精度は ±${Math.round(error)} ms (標準偏差)`,
    morae: "拍: 選ぶと繰り返し再生します。矢印キーで次へ移ります",
    mora: (kana, voicing, ms) => `${kana}、${voicing === "" ? "" : `${voicing}、`}${ms} ms: 繰り返し`,
    key: { voiced: "有声の母音", devoiced: "無声化", unknown: "不明", consonant: "子音" },
    playing: "再生",
    play: "再生",
    playWhole: "録音全体を再生",
    stop: "停止",
    speed: "速さ",
    speedName: (speed) => `${100 * speed}%、高さはそのまま`,
    loopHint: "拍を選ぶと繰り返し再生します。",
    looping: (kana) => `${kana}を繰り返しています。もう一度選ぶと止まります。`,
    fetching: "録音を読み込んでいます…",
    cannotPlay: (fault) => `録音を再生できません (${fault})。測定値は下にあります。`,
    withoutSound: "聞こえるものはすべて図と文でも示しているので、音なしでも使えます。",
    why: {
      title: (devoiced) =>
        devoiced === null ? "なぜ判定がないのか" : `なぜ${devoiced ? "無声化" : "有声"}と判定したか`,
      agree: (devoiced) =>
        devoiced
          ? "互いに独立な二つの判定が、どちらも子音の間に声を見つけていません。"
          : "互いに独立な二つの判定が、どちらも子音の間に声を見つけています。",
      disagree: "二つの判定が一致しないので、ほかの証拠で決まります。",
      together: (probability) =>
        `強さ、立ち上がり、周期性と合わせて、無声化の確率は${sure(probability)}。50%以上を無声化とします。`,
      doubtful: "20〜80%は疑わしい判定として数えます。",
      classifier: "話者ごとに学習した声の判別",
      classifierValue: (logOdds) => `対数オッズ ${logOdds.toFixed(1)}、0未満なら声なし`,
      island: "最も長く続く声",
      islandValue: (ms) => `${Math.round(ms)} ms、20 ms未満なら声なし`,
      combined: "総合",
      combinedValue: (probability) => `無声化 ${sure(probability)}`,
      sides: { voiced: "有声", devoiced: "無声化" },
      annotated: (devoiced) =>
        `人、または音声の作成者が${devoiced ? "無声化" : "有声"}と記しており、それに従います。`,
      heard: (devoiced) => `録音からの測定では${devoiced ? "無声化" : "有声"}です。次のとおりです。`,
      predicted: "この母音についてはテキストの規則による予測しかなく、証拠にはなりません。",
      consonant: "子音の有声・無声はどの子音かによって決まるため、判定しません。",
      reasons: {
        "no-audio": "録音がありません。",
        "outside-audio": "録音の外にあります。",
        "too-short": "短すぎて判定できません。",
        silent: "録音が無音です。",
        "too-noisy": "雑音が多く、声を判定できません。",
      },
      none: "何も測られておらず、声についてのラベルもありません。",
    },
    marks: {
      title: "耳で聞いても同じですか",
      mine: "この母音は",
      options: { voiced: "有声", devoiced: "無声化", "cannot tell": "分からない" },
      none: "印なし",
      kept: (marks, dataset) =>
        marks === 0
          ? "印は、ダウンロードするまでこのブラウザに残ります。"
          : `${dataset} に${count(marks)}件の印。このブラウザに保存しています。`,
      notKept: "このブラウザには保存できません。離れる前に印をダウンロードしてください。",
      download: "印をダウンロード (CSV)",
      forget: "印を消す",
      forgetSure: "本当に消しますか",
      use: (file) =>
        `\`morascope run DATASET --corrections ${file}\` で取り込むと、これらの母音は人が付けたものとして数えられます。`,
      caution:
        "疑わしいものに付けた印は個々の母音を直しますが、標本ではないので、判定の誤りの割合は分かりません。それには無作為な標本に印を付けてください: `morascope sample`。",
    },
    table: {
      about: (column) => measures[column] ?? null,
      measure: "測定",
      value: "値",
      meaning: "意味",
      column: "列",
      how: "方法",
    },
    question: "この音の測定値",
    silentHere: "この音はここでは聞けません。",
  },
  lookUp: {
    accentUnknownHere: (kana) =>
      `${kana}: このコーパスにはアクセントの情報がないので、動いたときの変化は分かりません。`,
    title: "語を調べる",
    lead: "語をかなで入力してください。箱の一つ一つが拍で、その母音がこのコーパスのような話者に無声化される見込みと、その理由を下に示します。",
    label: "語 (かな、ローマ字)",
    examples: "例",
    kanji: (text) =>
      `「${text}」にはかな以外の文字があります。辞書は大きすぎて読み込めないので、このページではかなだけが使えます。読みを入力するか、漢字の分かる端末で調べてください:`,
    notKana: (odd) => `「${odd}」はかなでもローマ字でもありません。`,
    noEvidence:
      "このコーパスからは無声化の割合が分からないので、見込みは不明です。拍の数え方は正しく示しています。",
    onlyPredicted: "このコーパスには規則による予測の印しかありません。証拠ではないので、見込みは不明です。",
    readings: "読み",
    readAs: { long: "長母音", apart: "二つの母音" },
    beats: (n) => `${n}拍`,
    row: (kana, n) => `${kana}: ${n}拍`,
    accent: "アクセント: 次の拍のあとで下がる",
    accentNames: { unknown: "分からない", flat: "下がらない (平板)" },
    afterBeat: (n, kana) => `${n}拍目、${kana}`,
    kinds: { long: "母音を伸ばす", geminate: "子音の前の無音の拍", nasal: "ん、独立した拍" },
    whispered: "無声化しやすい",
    voiced: "有声になりやすい",
    open: "どちらもありうる",
    unknown: "不明",
    chance: (estimate) => `無声化の見込み 約${estimate}`,
    percent,
    vowel: "母音ごとに",
    pause: "ポーズ",
    doubled: "促音",
    between: (before, after) => `${before} と ${after} の間`,
    why: {
      long: "長母音です。長母音はほとんど無声化しません。",
      low: "/a/、/e/、/o/ です。めったに無声化しません。",
      voice: "二つの無声音に挟まれていません。",
      both: "二つの無声音に挟まれています。ここでは /i/ と /u/ がよく無声化します。",
      pause: "無声音のあとで、ポーズの前の語末です。",
    },
    accented: "アクセント核があり、声が保たれやすくなります。",
    neighbour: "隣の母音も無声化しうるので、続けて無声化することはまれです。",
    heard: (devoiced, tokens, n, basis) =>
      `このコーパスでは、このような母音${count(tokens)}個のうち${count(devoiced)}個が無声化、${speakers(n)} (${basis})。`,
    notHeard: (tokens, n, alike) =>
      `この環境の母音そのものは聞かれていません。見込みはほかの${count(tokens)}個 (うち、同じ母音で環境が似たもの${count(alike)}個) から推定しました、${speakers(n)}。`,
    expectedByModel: (others) =>
      `見込みは、ほかの${count(others)}個 (無声音のあとで、無声音かポーズの前の /i/ と /u/) も環境に応じて重みを付けて使った値です。ここで聞いた数が少ないほどそちらに近くなるので、聞いた割合とは違うことがあります。`,
    expectedByAlike: (alike) =>
      `見込みは、同じ母音で環境が似たもの${count(alike)}個全体の割合なので、聞いた割合とは違うことがあります。`,
    tooFew: (alike, least) =>
      `無声化の割合は不明です。同じ母音で環境が似たものの印は${count(alike)}個しかなく、少なくとも${count(least)}個が必要です。`,
    accentMoves: "アクセントが動くと",
    withAccent: (kana, on, off) => `${kana}: アクセントがあれば約${on}、なければ約${off}。`,
    nearest: "近い例を聞く",
    eachWord:
      "それぞれの語だけで数えたものです。見込みはこのような母音全体についての値なので、一つの語では違うことがあり、数回しか聞いていない語では特にそうです。",
    noNearest: "似た例はこのコーパスにありません。",
    likeness: { word: "同じ音の並び", sounds: "前後が同じ音", kinds: "前後が同じ種類の音" },
    attested: (devoiced, tokens, n) => `${count(tokens)}個中${count(devoiced)}個が無声化、${speakers(n)}`,
    alone: "前後にポーズを置いて、語だけを言う場合です。",
  },
  words: {
    noWords: "この結果には練習語がありません。別の版で作られたものです。もう一度実行してください。",
    shown: (shown, listed, found) =>
      found > listed
        ? `見つかった${count(found)}件のうち上位${count(listed)}件${shown < listed ? `、その中の${count(shown)}件` : ""}。`
        : `見つかった${count(found)}件のうち${count(shown)}件。`,
    setAbout:
      "絞り込みで残ったものから、どの環境も一度は出るように、次に証拠の多い順に選びます。下の番号が同じなら同じセットになります。",
    showAll: (n) => `${count(n)}件すべてを表示`,
    bestOnly: (n) => `最初の${count(n)}件だけを表示`,
    saveList: "一覧全体を保存",
    reading:
      "「無声化 約…」はこのような母音全体で見込まれる割合、その下は同じ環境でこのコーパスが実際に持つ数です。見込みはほかの環境の母音も使って求めるので、聞いた数が少ないところでは二つが違います。",
    uncovered: (n) =>
      n === 0 ? "すべての環境が入っています。" : `あと${count(n)}の環境には、もっと大きなセットが必要です。`,
    chance: (vowel, estimate, range) => `/${vowel}/ の無声化 約${estimate} (${range})`,
    ratio: {
      long: (sound, estimate, range, atLeast) =>
        `長い ${sound} は短い音の${atLeast ? "少なくとも" : ""}${estimate}倍 (${range})`,
      doubled: (sound, estimate, range, atLeast) =>
        `促音の ${sound} は単独の${atLeast ? "少なくとも" : ""}${estimate}倍 (${range})`,
    },
    between: (low, high) => `${low}〜${high}`,
    range: (low, high) => `${Math.round(100 * low)}〜${percent(high)}`,
    anySound: { long: "母音 (全種)", doubled: "子音 (全種)" },
    noEvidence: "このコーパスからは対立の大きさが分かりません。",
    onlyPredicted: "見込みは不明: 規則による予測の印しかありません。",
    heardSame: (devoiced, n, who) =>
      `前後が同じ種類の母音${count(n)}個のうち${count(devoiced)}個、${speakers(who)}`,
    notHeard: (n, who, alike) =>
      `同じ環境の母音はなし。ほかの${count(n)}個 (うち、同じ母音で環境が似たもの${count(alike)}個) から推定、${speakers(who)}`,
    notFound:
      "このコーパスから出せる語はありません。合う語がないか、この種の母音の印が少なすぎて無声化の割合が分かりません。",
    behindRatio: (n, who, devoiced) =>
      `${count(n)}音、${speakers(who)}${devoiced === null ? "" : `、短母音の${Math.round(100 * devoiced)}%は無声化しており、それも数えた`}`,
    basis,
    saidBy: (n, several) => (n === 0 ? "コーパスにはない" : `${several ? "すべて" : ""}${speakers(n)}が発音`),
    sameAccent: "アクセントは同じ",
    confounds: {
      "accent-differs": "アクセントが違い、高さで区別できてしまう",
      "accent-unknown": "アクセント不明",
      "other-devoiceable": "ほかの母音も無声化しうる",
      "many-homophones": "同音の語が多い",
      "parts-of-speech-differ": "品詞が違う",
      "not-met": "この環境そのものは聞かれていない",
    },
    accentOf: (accents) => `アクセント ${accents.join("または")}`,
    voicedIn: "有声の例",
    play: (word, speaker) => `${word} を聞く、${speaker}`,
    playAs: { devoiced: "無声化", voiced: "有声", unknown: "" },
    cannotPlay: "この録音は再生できません。",
    lost: (n) => `アドレスにある${count(n)}件は、この結果の一覧にありません。`,
    linkNotCopied: "このブラウザではコピーできません。ページのアドレスをコピーしてください。",
    sheet:
      "母音の下の丸 (i̥, ɯ̥) は、無声化した発音のほうが見込みが高いことを示します。ː は長母音または促音です。",
    silent: "聞けないものもあります",
    title: "練習に使える語",
    lead: "対立が実際に現れる語を集めました。たいてい無声化する母音、1拍だけが違うペア。それぞれに、このコーパスから分かることを添えています。使いたいものに印を付けてください。選んだ語はページのアドレスに残るので、そのまま人に送れます。",
    filter: "練習したいもの",
    target: "練習の対象",
    heading: (about) => `${about}。`,
    targets: {
      "devoiced-i": { name: "無声化する /i/", about: "/i/ がたいてい無声化している語" },
      "devoiced-u": { name: "無声化する /u/", about: "/u/ がたいてい無声化している語" },
      final: { name: "語末の母音", about: "ポーズの前で語末の /i/ や /u/ が無声化しうる語" },
      "kept-voiced": { name: "声が残る母音", about: "規則では無声化するはずだが、たいてい有声のままの語" },
      "vowel-length": { name: "長母音", about: "長母音だけが違うペア" },
      gemination: { name: "促音", about: "「っ」だけが違うペア" },
      triplet: {
        name: "短・促・長",
        about: "短母音、促音、長母音の三つ組。学習者は促音を長母音と聞きがちです",
      },
      "devoiced-pair": {
        name: "無声化した /i/ と /u/",
        about: "無声化した母音が前の子音に残す跡だけで区別されるペア",
      },
      "moraic-nasal": { name: "撥音", about: "「ん」だけが違うペア" },
    },
    any: "すべて",
    search: "検索 (かな、漢字、ローマ字)",
    longest: "語の長さ",
    upTo: (morae) => `${morae}モーラまで`,
    before: "前の音",
    after: "後の音",
    vowelBefore: "母音",
    heardBy: "コーパスでの話者数",
    atLeast: (n) => `${n}名以上`,
    accent: "アクセント",
    accents: { known: "分かっている", same: "両方の語で同じ" },
    order: "並び順",
    orders: {
      score: "総合",
      contrast: "対立の大きさ",
      heard: "聞ける話者数",
      morae: "語の長さ",
      kana: "五十音",
    },
    reset: "元に戻す",
    none: "すべてに合う語がありません。条件を減らしてください。",
    setHeading: "あらゆる環境を含むセット",
    size: "語数",
    seed: "セット番号",
    choose: "このセットを選ぶ",
    another: "別のセット",
    list: "語とペア",
    pick: (word) => `${word} を選ぶ`,
    pickShort: "選ぶ",
    picked: "選択済み",
    percent,
    picks: "選んだ語",
    noPicks: "まだ何も選ばれていません。一覧で印を付けるか、セットをまとめて選んでください。",
    pickCount: (n) => `${count(n)}件`,
    drop: (word) => `${word} を外す`,
    clear: "すべて外す",
    save: "保存",
    print: "印刷",
    paper: "用紙",
    copyLink: "リンクをコピー",
    linkCopied: "リンクをコピーしました。",
    columns: { word: "語", romaji: "ローマ字", ipa: "IPA", accent: "アクセント", meaning: "意味" },
    accentUnknown: "不明",
    handout: "練習語",
    sources: "出典",
    care: "コーパスの話者について分かることは、学習者を測るものではありません。",
  },
};
