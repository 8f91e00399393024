import type { Random } from "./random.ts";

const list = (text: string): readonly string[] => text.split(" ");

const things = list(
  "切手 切符 手紙 地図 チーズ 靴 服 箱 菊の花 薬 石鹸 牛乳 ビール 鉛筆 水筒 茶碗 雑誌 小説 切り株 敷物 汽車の絵 古い機械 薄いシャツ 広い机 深い皿 低い椅子 涼しい上着 空気入れ 電池 写真 切り抜き ポスター スープ ケーキ チケット セーター キーホルダー コップ ラケット スケッチブック タオル クッキー ノート 毛布 風船 時計 帽子 リュックサック 掃除機 封筒 絵葉書 磁石 おにぎり 草餅 月見団子 七輪 必要な書類",
);
const places = list(
  "駅 市役所 図書館 公園 学校 喫茶店 空港 病院 郵便局 橋のたもと 港 台所 二階の部屋 玄関 地下室 商店街 放送室 北口 南口 西の畑 音楽室 診療所 プール 工場 市場 停留所 切り通し 湖 キャンプ場 スーパー",
);
const people = list(
  "父 母 姉さん 兄さん 妹 弟 おばさん おばあさん おじさん おじいさん 先生 友達 係の人 隣の人 店長 運転手 校長先生 郵便屋さん 看護師さん 放送係 新しい学生 息子さん",
);
const past = list(
  "置きました 切りました 見つけました 買ってきました 探しています 忘れました 作りました 失くしました 拾いました 借りました 届けてくれました 比べています 持っていきました 引き出しました 包んでいます 使っています 隠しました 紹介しました 準備しています 注文しました 集めています 直したそうです 描きたいです 聞いたことがあります 送ってください",
);
const times = list(
  "昨日 今日 明日 一昨日 四月に 七月に 二月に 夕方 昨夜 来週 土曜日に 朝早く 必ず 時々 すぐに ゆっくり きっと 静かに もう一度 急に",
);
const qualities = list(
  "好きです 必要です 素敵です 不思議です 安いです 美しいです 大きいです 小さいです 丈夫です 便利です 貴重です",
);

const shapes: readonly ((random: Random) => string)[] = [
  ({ pick }) => `${pick(times)}、${pick(people)}が${pick(things)}を${pick(past)}。`,
  ({ pick }) => `${pick(people)}は${pick(places)}で${pick(things)}を${pick(past)}。`,
  ({ pick }) => `${pick(things)}と${pick(things)}は、${pick(places)}にあります。`,
  ({ pick }) => `${pick(places)}の${pick(things)}は${pick(qualities)}。`,
  ({ pick }) => `これは${pick(things)}ですか、${pick(things)}ですか。`,
  ({ pick }) => `${pick(people)}と${pick(people)}が${pick(times)}${pick(things)}を${pick(past)}。`,
  ({ pick }) => `${pick(people)}に聞いてから、${pick(places)}へ行きます。`,
  ({ pick }) => `${pick(things)}を${pick(past)}。`,
];

/** Sentences put together from our own words, each different from the others: less natural, but as many as are asked for. */
export function combineSentences(count: number, random: Random): string[] {
  const sentences = new Set<string>();
  for (let tries = 0; sentences.size < count; tries++) {
    if (tries > count * 20) throw new Error(`${count} sentences are more than the word lists can give`);
    sentences.add(random.pick(shapes)(random));
  }
  return [...sentences];
}
