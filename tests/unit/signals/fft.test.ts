import { expect, test } from "vitest";
import { createRealFft } from "../../../src/signals/fft.ts";

const size = 64;

/** The definition, without any speed. */
function slowPower(x: Float64Array, k: number): number {
  let re = 0;
  let im = 0;
  for (let n = 0; n < x.length; n++) {
    re += x[n]! * Math.cos((2 * Math.PI * k * n) / x.length);
    im -= x[n]! * Math.sin((2 * Math.PI * k * n) / x.length);
  }
  return re * re + im * im;
}

const irregular = Float64Array.from({ length: size }, (_, n) => Math.sin(n * n * 0.37) + 0.3 * Math.cos(n));

test("createRealFft(64).power() equals the definition at every bin", () => {
  const fft = createRealFft(size);
  fft.input.set(irregular);
  const power = fft.power();
  expect(power.length).toBe(33);
  for (let k = 0; k <= 32; k++) expect(power[k]).toBeCloseTo(slowPower(irregular, k), 8);
});

test("power() of a cosine of 5 periods is (N/2)² in bin 5 and 0 elsewhere", () => {
  const fft = createRealFft(size);
  for (let n = 0; n < size; n++) fft.input[n] = Math.cos((2 * Math.PI * 5 * n) / size);
  const power = fft.power();
  power.forEach((value, k) => {
    expect(value).toBeCloseTo(k === 5 ? (size / 2) ** 2 : 0, 8);
  });
});

test("power() keeps Parseval's sum", () => {
  const fft = createRealFft(size);
  fft.input.set(irregular);
  const power = fft.power();
  let sum = power[0]! + power[32]!;
  for (let k = 1; k < 32; k++) sum += 2 * power[k]!;
  expect(sum / size).toBeCloseTo(
    irregular.reduce((total, x) => total + x * x, 0),
    8,
  );
});

test("autocorrelation() of a zero-padded frame equals the sum of products at every lag", () => {
  const fft = createRealFft(size);
  fft.input.fill(0);
  for (let n = 0; n < 24; n++) fft.input[n] = irregular[n]!;
  const lags = Float64Array.from(fft.autocorrelation());
  for (let lag = 0; lag <= 32; lag++) {
    let sum = 0;
    for (let n = 0; n + lag < 24; n++) sum += irregular[n]! * irregular[n + lag]!;
    expect(lags[lag]).toBeCloseTo(sum, 9);
  }
});

test("createRealFft(size) refuses what is no power of two", () => {
  for (const wrong of [0, 3, 48, 512.5, Number.NaN])
    expect(() => createRealFft(wrong)).toThrow(/power of two/);
});
