/** A resonance of an all-pole model. */
export interface Resonance {
  readonly hz: number;
  /** −3 dB bandwidth in Hz, from the pole's radius. */
  readonly bandwidthHz: number;
}

const longestSearch = 60;

/**
 * Resonances of 1 / (1 + Σ a_k z^−k), ascending, real poles left out. Poles outside the unit circle, which the
 * covariance method may give, are reflected into it. All roots at once by the method of Aberth (1973, Math. Comp.
 * 27:339–344); null when it does not settle.
 */
export function resonances(coefficients: Float64Array, sampleRateHz: number): Resonance[] | null {
  const order = coefficients.length;
  const re = new Float64Array(order);
  const im = new Float64Array(order);
  for (let k = 0; k < order; k++) {
    const angle = (2 * Math.PI * (k + 0.35)) / order;
    re[k] = 0.9 * Math.cos(angle);
    im[k] = 0.9 * Math.sin(angle);
  }
  let settled = false;
  for (let step = 0; step < longestSearch && !settled; step++) {
    settled = true;
    for (let k = 0; k < order; k++) {
      const x = re[k]!;
      const y = im[k]!;
      let pr = 1;
      let pi = 0;
      let dr = 0;
      let di = 0;
      for (let c = 0; c < order; c++) {
        const nextDr = dr * x - di * y + pr;
        di = dr * y + di * x + pi;
        dr = nextDr;
        const nextPr = pr * x - pi * y + coefficients[c]!;
        pi = pr * y + pi * x;
        pr = nextPr;
      }
      const slope = dr * dr + di * di;
      if (!(slope > 0)) continue;
      const nr = (pr * dr + pi * di) / slope;
      const ni = (pi * dr - pr * di) / slope;
      let sr = 0;
      let si = 0;
      for (let j = 0; j < order; j++) {
        if (j === k) continue;
        const ar = x - re[j]!;
        const ai = y - im[j]!;
        const size = ar * ar + ai * ai + 1e-30;
        sr += ar / size;
        si -= ai / size;
      }
      const br = 1 - (nr * sr - ni * si);
      const bi = -(nr * si + ni * sr);
      const bottom = br * br + bi * bi + 1e-30;
      const wr = (nr * br + ni * bi) / bottom;
      const wi = (ni * br - nr * bi) / bottom;
      re[k] = x - wr;
      im[k] = y - wi;
      if (wr * wr + wi * wi > 1e-14) settled = false;
    }
  }
  if (!settled) return null;
  const found: Resonance[] = [];
  for (let k = 0; k < order; k++) {
    if (im[k]! < 1e-4) continue;
    const radius = Math.hypot(re[k]!, im[k]!);
    const hz = (Math.atan2(im[k]!, re[k]!) * sampleRateHz) / (2 * Math.PI);
    found.push({ hz, bandwidthHz: (Math.abs(Math.log(radius)) * sampleRateHz) / Math.PI });
  }
  return found.sort((a, b) => a.hz - b.hz);
}
