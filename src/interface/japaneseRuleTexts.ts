/** What the shipped rules of thumb and the cards of known datasets say, by their English text. */
export const ruleTexts: Readonly<Record<string, string>> = {
  // Claims that their files give in English only.
  "After /ch/ or /ts/ and before a voiceless fricative, /i/ and /u/ are voiced more often than devoiced":
    "/ch/、/ts/ のあと、無声摩擦音の前の /i/ と /u/ は、無声化しないことのほうが多い",
  "A closure's share of its word tells doubled from single consonants nearly always":
    "語に占める閉鎖の割合で、促音と単独の子音はほぼ必ず区別できる",
  "Conversation devoices more than reading aloud, and that more than word lists":
    "会話は朗読より、朗読は単語の読み上げより、無声化が多い",
  "/i/ and /u/ are devoiced between voiceless consonants far more often than before a voiced sound":
    "/i/ と /u/ は、有声音の前より無声子音の間でずっと多く無声化する",
  "A short vowel is longer before a pause than inside a phrase": "短母音は、句の中よりポーズの前で長い",
  "After /s/, /sh/, /h/ or /f/ and before a voiceless stop or affricate, nearly every /i/ and /u/ is devoiced":
    "/s/、/sh/、/h/、/f/ のあと、無声の破裂音か破擦音の前では、ほとんどすべての /i/ と /u/ が無声化する",
  "Between two voiceless fricatives /i/ and /u/ are devoiced less often than between a fricative and a stop":
    "/i/ と /u/ は、摩擦音と破裂音の間より、二つの無声摩擦音の間で無声化しにくい",
  "Before a doubled consonant /i/ and /u/ are devoiced less often than before a single voiceless stop or affricate":
    "促音の前の /i/ と /u/ は、単独の無声の破裂音・破擦音の前より無声化しにくい",
  "A doubled consonant lasts 2.15 to 2.8 times as long as a single one":
    "促音は単独の子音の2.15〜2.8倍の長さ",
  "The consonant before a devoiced /i/ is palatalised, that before a devoiced /u/ is not":
    "無声化した /i/ の前の子音は口蓋化し、/u/ の前の子音は口蓋化しない",
  "Long vowels of loanwords are pronounced short more often than those of Sino-Japanese words":
    "外来語の長母音は、漢語の長母音より短く発音されやすい",
  "Long vowels stay clearly longer than short ones beside a pause too":
    "ポーズの隣でも、長母音は短母音より明らかに長い",
  "Long vowels have the quality of short ones: only their length differs":
    "長母音の音色は短母音と同じで、長さだけが違う",
  "/i/ and /u/ are devoiced less often when the vowel next door could be devoiced too":
    "隣の母音も無声化しうるとき、/i/ と /u/ は無声化しにくい",
  "A mora that carries the accent is never devoiced": "アクセント核のある拍は決して無声化しない",
  "The sound that follows matters more for devoicing than the accent":
    "無声化には、アクセントより後の音のほうが効く",
  "/a/ lasts longer than /i/ and /u/ between the same voiced consonants":
    "同じ有声子音の間で、/a/ は /i/ と /u/ より長い",
  "Before a pause /i/ and /u/ are devoiced less regularly than between voiceless consonants":
    "ポーズの前の /i/ と /u/ は、無声子音の間ほど規則的には無声化しない",
  "A stop or affricate is longer before a devoiced vowel, a fricative is not":
    "破裂音と破擦音は無声化した母音の前で長くなり、摩擦音は長くならない",
  "/u/ is pronounced further forward than English /u/": "日本語の /u/ は英語の /u/ より前寄りに発音される",
  "A short vowel is longer before a doubled consonant than before a single one":
    "短母音は、単独の子音の前より促音の前で長い",
  "A short vowel is longer still before ん than before a doubled consonant":
    "短母音は、促音の前よりさらに「ん」の前で長い",
  "A word grows by a nearly constant step with each mora": "語の長さは、1モーラごとにほぼ同じだけ増える",

  // What is compared.
  "accented short /a/, /e/ and /o/": "アクセント核のある短い /a/、/e/、/o/ ",
  "unaccented short /a/, /e/ and /o/": "アクセント核のない短い /a/、/e/、/o/ ",
  "accented /i/ and /u/ between voiceless consonants": "無声子音の間の、アクセント核のある /i/ と /u/ ",
  "unaccented /i/ and /u/ between voiceless consonants": "無声子音の間の、アクセント核のない /i/ と /u/ ",
  "/i/ and /u/ between a voiceless affricate and a voiceless fricative":
    "無声破擦音と無声摩擦音の間の /i/ と /u/ ",
  "/i/ and /u/ between voiceless consonants": "無声子音の間の /i/ と /u/ ",
  "/i/ and /u/ between a voiceless consonant and a voiced sound": "無声子音と有声音の間の /i/ と /u/ ",
  "short /a/, /e/ and /o/ before a pause": "ポーズの前の短い /a/、/e/、/o/ ",
  "short /a/, /e/ and /o/ between consonants": "子音の間の短い /a/、/e/、/o/ ",
  "/u/ after /s/ before a pause": "/s/ のあと、ポーズの前の /u/ ",
  "/i/ and /u/ between a voiceless fricative and a voiceless stop or affricate":
    "無声摩擦音と無声の破裂音・破擦音の間の /i/ と /u/ ",
  "/i/ and /u/ between two voiceless fricatives": "二つの無声摩擦音の間の /i/ と /u/ ",
  "/i/ and /u/ before a doubled consonant": "促音の前の /i/ と /u/ ",
  "/i/ and /u/ before a single voiceless stop or affricate": "単独の無声の破裂音・破擦音の前の /i/ と /u/ ",
  "/i/ and /u/ before /h/, /hy/ or /f/": "/h/、/hy/、/f/ の前の /i/ と /u/ ",
  "/i/ and /u/ before another voiceless consonant": "ほかの無声子音の前の /i/ と /u/ ",
  "/a/, /e/ and /o/ between voiceless consonants": "無声子音の間の /a/、/e/、/o/ ",
  "long /i/ and /u/ between voiceless consonants": "無声子音の間の長い /i/ と /u/ ",
  "/i/ and /u/ beside another vowel that could be devoiced": "隣にも無声化しうる母音がある /i/ と /u/ ",
  "/i/ and /u/ with no such neighbour": "隣に無声化しうる母音のない /i/ と /u/ ",
  "short /a/ sounds": "短い /a/ ",
  "short /i/ and /u/ sounds": "短い /i/ と /u/ ",
  "/i/ and /u/ between a voiceless consonant and a pause": "無声子音とポーズの間の /i/ と /u/ ",
  "/u/ between voiceless consonants": "無声子音の間の /u/ ",
  "/i/ between voiceless consonants": "無声子音の間の /i/ ",
  "short /a/, /e/ and /o/ before a doubled consonant": "促音の前の短い /a/、/e/、/o/ ",
  "short /a/, /e/ and /o/ before a single voiceless consonant": "単独の無声子音の前の短い /a/、/e/、/o/ ",
  "short /a/, /e/ and /o/ before ん": "「ん」の前の短い /a/、/e/、/o/ ",

  // Notes.
  '"As long" is taken to allow 10 % more or less.': "「同じ長さ」は10%の違いまで認めます。",
  "The same source names works that contest it, and says that the effect weakens over time.":
    "同じ出典は、これに異を唱える研究も挙げ、効果が時代とともに弱まっているとしています。",
  "The source gives 33.3 % for /i/ and 48.1 % for /u/ in spontaneous speech.":
    "出典の値は、自発音声で /i/ が33.3%、/u/ が48.1%です。",
  "The source says that a fricative with a devoiced vowel takes about one average mora.":
    "出典によれば、無声化した母音を伴う摩擦音は平均の1拍ほどの長さです。",
  "/i/ and /u/ are left out: before a pause they are often devoiced. The edge to a pause is hard to place, for aligners above all: part of the length may come from there.":
    "/i/ と /u/ はポーズの前でよく無声化するため除きます。ポーズとの境界は、特に自動整列では置きにくく、長さの一部はそのためかもしれません。",
  "Takes every す before a pause, whatever the word.": "語によらず、ポーズの前のすべての「す」を数えます。",
  "Judged by F1 and F2 alone: a vowel counts as told apart when it lies nearer to the centre of its own kind than to the other’s. One half is chance; three quarters is our own limit.":
    "F1とF2だけで判定します。相手より自分の種類の中心に近い母音を、区別できたものと数えます。半分なら偶然どおりで、4分の3は私たちの基準です。",
  "The source gives 95 % or more for spontaneous speech; read speech may differ.":
    "出典の値は自発音声で95%以上です。朗読では違うかもしれません。",
  "The sources speak of closures and of isolated words; here closure and release are taken together, of running speech.":
    "出典は単独の語の閉鎖についてのものです。ここでは続けて話された音声で、閉鎖と開放を合わせて測ります。",
  "Only /sh/ and /k/ stand before both vowels as the same sound. Asks whether their centre of gravity is higher before devoiced /i/ than before devoiced /u/; the smaller of the two differences decides.":
    "両方の母音の前に同じ音として立つのは /sh/ と /k/ だけです。その重心が、無声化した /i/ の前で /u/ の前より高いかを問い、二つの差の小さいほうで決めます。",
  '"About" is taken to allow a quarter more or less: 1.6 to 2.5.':
    "「約」は4分の1の違いまで、つまり1.6〜2.5倍を認めます。",
  "The edge to a pause is hard to place, for aligners above all; long and short vowels share that fault.":
    "ポーズとの境界は、特に自動整列では置きにくいものですが、その誤りは長短の母音に共通です。",
  "Less than one semitone in F1 and F2 of every vowel is our own limit.":
    "どの母音のF1とF2でも1半音未満、というのは私たちの基準です。",
  "The source says low rates in any context; the limit of 5 % is ours.":
    "出典は、どの環境でも割合が低いとしています。5%は私たちの基準です。",
  "The source finds that vowels in a row vary; the direction is the usual reading of it.":
    "出典は、続く母音では揺れがあるとしています。方向は通常の解釈によります。",
  '"Never" is taken to allow 5 %.': "「決して」は5%まで認めます。",
  'The source says "occasionally"; that a few per cent are meant, and so the limit of 10 %, is from memory.':
    "出典は「ときおり」としています。数%を指すということ、したがって10%の基準は、記憶によります。",
  "The two vowels follow different consonants: the exceptions by the consonant before compare like with like.":
    "二つの母音は前の子音が違います。前の子音ごとの例外が、同じ条件での比較です。",
  "Asks whether the F2 of /u/ lies above 1150 Hz for lower voices and above 1300 Hz for higher ones: halfway to the published English value, and our own limit. Voices are parted by their pitch.":
    "/u/ のF2が、低い声で1150 Hz、高い声で1300 Hzより上にあるかを問います。英語の公表値までの中間で、私たちの基準です。声は高さで分けます。",
  "The source says that they normally do not devoice; the limit of 5 % is ours.":
    "出典は、普通は無声化しないとしています。5%は私たちの基準です。",
  "The sources agree on the direction, not on the size. /i/ and /u/ are left out: before single voiceless consonants they are often devoiced.":
    "出典は方向では一致し、大きさでは一致しません。/i/ と /u/ は単独の無声子音の前でよく無声化するため除きます。",
  "An aligner places the edge between a vowel and ん with little certainty, so only boundaries set by a person may judge this.":
    "自動整列は母音と「ん」の境界を確かには置けないので、人が付けた境界だけで判定します。",
  "Asks whether the mora count alone explains more than half of the variance of word durations.":
    "モーラ数だけで語の長さの分散の半分以上を説明できるかを問います。",

  // What a rule would need.
  "the duration of every word": "すべての語の長さ",
  "the style of speech, kept with the counts": "数とともに残した話し方の種類",
  "which word a vowel stands in, kept with the counts": "数とともに残した、母音のある語",
  "the duration of every mora": "すべての拍の長さ",
  "whether a word is a loanword or Sino-Japanese": "語が外来語か漢語か",
  "the length that the dictionary gives a vowel": "辞書にある母音の長さ",
  "whether the vowel of the next mora was devoiced": "次の拍の母音が無声化したか",
  "effects of both, estimated together in one model": "一つのモデルで合わせて推定した両方の効果",
  "whether the vowel after the consonant was devoiced": "子音のあとの母音が無声化したか",

  // Sources without a citation.
  "common practice, no published source": "慣例で、公表された出典なし",
  "from memory": "記憶による",
  "the work or its abstract was read": "文献またはその要旨を確認",
  "read in a work that quotes it": "ほかの文献での引用を確認",
  "worked out": "計算による",
  "cited from memory, not checked": "記憶による引用、未確認",

  // Cards.
  "The voice is synthetic and the readers are invented: these numbers show how the tools work and are no evidence about Japanese.":
    "声は合成で、読み手は架空です。数値は道具の働きを示すもので、日本語についての証拠ではありません。",
  "long by short vowels in read words": "朗読した語の長母音と短母音の比",
  "closure of doubled by closure of single stops in read words; without the release, which these pages include":
    "朗読した語の促音と単独の破裂音の閉鎖の比。このページが含める開放は含まない",
  Japanese: "日本語",
  English: "英語",
  "American English": "アメリカ英語",
  "4 speakers, 5 sentences each": "話者4名、各5文",
  "1 speaker": "話者1名",
  "45 men": "男性45名",
  "48 women": "女性48名",
  "46 children": "子供46名",
  "33 men": "男性33名",
  "28 women": "女性28名",
  "lower voices": "低い声",
  "higher voices": "高い声",
  men: "男性",
  women: "女性",
  "men, words": "男性、単語",
  "speakers of the ETL corpus": "ETLコーパスの話者",
};
