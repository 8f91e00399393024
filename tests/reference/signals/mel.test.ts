import { describe, expect, test } from "vitest";
import { hzToMel, makeMelFilterbank, melToHz } from "../../../src/signals/mel.ts";

describe("hzToMel", () => {
  /** Computed from mel = 2595·log10(1 + f/700), the scale of ETSI ES 201 108 (O'Shaughnessy 1987). */
  const published: readonly (readonly [number, number])[] = [
    [64, 98.597852],
    [100, 150.489102],
    [440, 549.638675],
    [500, 607.44592],
    [1000, 999.985537],
    [2000, 1521.359554],
    [4000, 2146.064528],
    [8000, 2840.023047],
  ];
  test.each(published)("hzToMel(%d) is %d", (hz, mel) => {
    expect(hzToMel(hz)).toBeCloseTo(mel, 6);
    expect(melToHz(mel)).toBeCloseTo(hz, 4);
  });
});

describe("makeMelFilterbank", () => {
  const options = { sampleRateHz: 16000, fftSize: 512, channels: 23, minHz: 64, maxHz: 8000 };
  const bank = makeMelFilterbank(options);
  test("centres are equally far apart in mel", () => {
    const step = (hzToMel(8000) - hzToMel(64)) / 24;
    bank.centresHz.forEach((hz, c) => {
      expect(hzToMel(hz)).toBeCloseTo(hzToMel(64) + (c + 1) * step, 9);
    });
  });
  test("weights of a bin sum to 1 between the first and the last centre", () => {
    const total = new Float64Array(257);
    for (let c = 0; c < bank.channels; c++)
      for (let w = bank.start[c]!; w < bank.start[c + 1]!; w++)
        total[bank.first[c]! + w - bank.start[c]!]! += bank.weights[w]!;
    for (let k = 0; k <= 256; k++) {
      const hz = k * 31.25;
      if (hz >= bank.centresHz[0]! && hz <= bank.centresHz[22]!) expect(total[k]).toBeCloseTo(1, 12);
    }
  });
  test("apply() of a flat spectrum gives each channel its sum of weights", () => {
    const out = new Float64Array(23);
    bank.apply(new Float64Array(257).fill(2), out);
    for (let c = 0; c < 23; c++) {
      let sum = 0;
      for (let w = bank.start[c]!; w < bank.start[c + 1]!; w++) sum += bank.weights[w]!;
      expect(out[c]).toBeCloseTo(2 * sum, 12);
    }
  });
  test("a channel without any bin and an edge above half the rate are refused", () => {
    expect(() => makeMelFilterbank({ ...options, channels: 200 })).toThrow(/holds no bin/);
    expect(() => makeMelFilterbank({ ...options, maxHz: 9000 })).toThrow(/above half/);
  });
});
