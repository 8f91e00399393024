import fc from "fast-check";

/** What strangers' files hold that ours would not: broken numbers, separators, markup, formulas, names of built-in things. */
const hostile = [
  ...["", "\0", "\t", "|", ":", ",", "\r\n", "\n\n", "\r", "\ufeff", "\u2028", '"', "'", "\\", "#", ";;"],
  ...[
    "-1",
    "NaN",
    "1e999",
    "-0",
    "0x10",
    "1e-320",
    "99999999999999999999",
    "٣",
    "１２",
    ".5",
    "1.2.3",
    "Infinity",
  ],
  ...[
    "null",
    "true",
    "[]",
    "{}",
    "[[[[[[",
    '{"a":',
    "__proto__",
    "constructor",
    "toString",
    "hasOwnProperty",
  ],
  ...[
    "<script>alert(1)</script>",
    "=HYPERLINK(1)",
    "@SUM(1)",
    "../../etc/passwd",
    "/etc/passwd",
    "C:\\x",
    "..\\x",
  ],
  ...[
    "\ud800",
    "\udc00",
    "\u0301\u0301",
    "\u3099",
    "\u202e",
    "👩‍👩‍👧",
    "ー",
    "っっ",
    "ン゛",
    "ヴ",
    "・",
    "、。",
  ],
  ..."(((((((( )))))))) aaaaaaaaaaaaaaaaaaaaaaaa! 111111111111111x { } [ ] $ ^ *".split(" "),
] as const;

const piece = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...hostile) },
  { weight: 2, arbitrary: fc.string({ unit: "binary", maxLength: 12 }) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(
        fc.constantFrom("a", "1", " ", "(", "ア", "、", ",", "\t", "0 1 a\n", "<a", "\\", '"'),
        fc.integer({ min: 100, max: 5000 }),
      )
      .map(([part, count]) => part.repeat(count)),
  },
);

interface Edit {
  readonly at: number;
  readonly remove: number;
  readonly put: string;
}

const edit: fc.Arbitrary<Edit> = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  remove: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 40 }), fc.constant(100_000)),
  put: piece,
});

/** One of the samples, spoilt in a few places; now and then nothing but odd text. */
export function spoiltText(samples: readonly string[]): fc.Arbitrary<string> {
  const spoilt = fc
    .tuple(fc.constantFrom(...samples), fc.array(edit, { minLength: 1, maxLength: 5 }))
    .map(([sample, edits]) =>
      edits.reduce((text, { at, remove, put }) => {
        const from = Math.floor(at * text.length);
        return text.slice(0, from) + put + text.slice(from + remove);
      }, sample),
    );
  return fc.oneof(
    { weight: 9, arbitrary: spoilt },
    { weight: 1, arbitrary: fc.array(piece, { maxLength: 30 }).map((pieces) => pieces.join("")) },
  );
}

/** A value in one case out of four, else null. */
export function seldom<T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | null> {
  return fc.oneof({ weight: 3, arbitrary: fc.constant(null) }, { weight: 1, arbitrary });
}

const byteEdit = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  /** Most edits fall into the head of the file, where the header is. */
  inHead: fc.boolean(),
  bytes: fc.oneof(
    fc.uint8Array({ minLength: 1, maxLength: 8 }),
    fc.constantFrom(
      ...[[0xff, 0xff, 0xff, 0xff], [0, 0, 0, 0], [0xff, 0xff, 0xff, 0x7f], [0x80], [1]].map((list) =>
        Uint8Array.from(list),
      ),
    ),
  ),
});

/** One of the files with some bytes overwritten, and perhaps cut short or with more behind it. */
export function spoiltBytes(samples: readonly Uint8Array[]): fc.Arbitrary<Uint8Array> {
  return fc
    .tuple(
      fc.nat({ max: samples.length - 1 }),
      fc.array(byteEdit, { maxLength: 6 }),
      seldom(fc.double({ min: 0, max: 1, noNaN: true })),
      seldom(fc.uint8Array({ maxLength: 20 })),
    )
    .map(([which, edits, cut, tail]) => {
      const bytes = Uint8Array.from(samples[which]!);
      for (const { at, inHead, bytes: put } of edits) {
        const room = inHead ? Math.min(64, bytes.length) : bytes.length;
        const from = Math.floor(at * room);
        bytes.set(put.subarray(0, Math.max(0, bytes.length - from)), from);
      }
      const kept = cut === null ? bytes : bytes.subarray(0, Math.floor(cut * bytes.length));
      return Uint8Array.from([...kept, ...(tail ?? [])]);
    });
}
