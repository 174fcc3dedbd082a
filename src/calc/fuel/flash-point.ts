/**
 * The flash point of a blend, estimated so as to err on the side of danger.
 *
 * Formula: R. O. Wickey and D. H. Chittenden, "Flash Points of Blends Correlated", Hydrocarbon Processing, June 1963
 * (citation from memory): log10 I = -6.1188 + 4345.2 / (F + 383), F in °F; indices add by volume.
 * It was made for middle distillates; for a liquid far lighter than that it is extrapolated, and said to be.
 */
import type { Blend } from './blend';

/** The span the published index tables cover, K: 20 °C to 110 °C. */
const tabled = { fromK: 293.15, toK: 383.15 } as const;
/** GHS (rev. 9) 2.6.4.2: a calculated flash point counts only if it clears a limit by 5 °C (from memory). */
const calculationMarginK = 5;

/** Index of a flash point; a lighter liquid has a far larger one. */
export function blendingIndex(flashPointK: number): number {
  const fahrenheit = flashPointK * 1.8 - 459.67;
  return 10 ** (-6.1188 + 4345.2 / (fahrenheit + 383));
}

/** The flash point that has an index, K. */
export function flashPointOfIndexK(index: number): number {
  const fahrenheit = 4345.2 / (Math.log10(index) + 6.1188) - 383;
  return (fahrenheit + 459.67) / 1.8;
}

/** The flash point of a blend and how it was come by. */
export interface FlashPointEstimate {
  /** The likeliest, K. */
  readonly flashPointK: number;
  /** The one to go by for cautions and classes: lower by the doubt of the method, but not under the lightest liquid. */
  readonly cautiousK: number;
  /** `stated` for one liquid; `estimated` inside the method's tables; `extrapolated` outside them. */
  readonly basis: 'stated' | 'estimated' | 'extrapolated';
}

/**
 * Flash point of a blend. Where the method is extrapolated, the cautious value is that of the lightest liquid: a
 * little gasoline makes kerosene nearly as quick to light as gasoline.
 */
export function blendFlashPoint(blend: Blend): FlashPointEstimate {
  const present = blend.filter((portion) => portion.share > 0);
  const points = present.map((portion) => portion.liquid.flashPointK);
  const lowest = Math.min(...points);
  if (new Set(points).size === 1) return { flashPointK: lowest, cautiousK: lowest, basis: 'stated' };
  const index = present.reduce(
    (sum, { liquid, share }) => sum + share * blendingIndex(liquid.flashPointK),
    0,
  );
  const flashPointK = Math.max(lowest, flashPointOfIndexK(index));
  const outside = points.some((point) => point < tabled.fromK || point > tabled.toK);
  if (outside) return { flashPointK, cautiousK: lowest, basis: 'extrapolated' };
  return { flashPointK, cautiousK: Math.max(lowest, flashPointK - calculationMarginK), basis: 'estimated' };
}

/** The temperature at which a blend begins to boil, K: that of its lightest liquid, which errs low. */
export function blendStartsBoilingK(blend: Blend): number {
  return Math.min(
    ...blend.filter((portion) => portion.share > 0).map((portion) => portion.liquid.startsBoilingK),
  );
}
