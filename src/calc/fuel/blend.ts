/**
 * Blends by volume: what they weigh, what heat is in them, how they are made and topped up.
 *
 * Volumes are taken to add up; hydrocarbons shrink by well under one part in a hundred when mixed (common practice,
 * no source).
 */
import type { Liquid } from './liquids';

/** One liquid of a blend and its share of the volume, 0 to 1. */
export interface Portion {
  readonly liquid: Liquid;
  readonly share: number;
}

/** A blend; its shares make 1. A fuel of one liquid is a blend of one portion. */
export type Blend = readonly Portion[];

/** An amount of one liquid. */
export interface Amount {
  readonly liquid: Liquid;
  readonly volumeM3: number;
  readonly massKg: number;
}

/** What a blend weighs and the heat in it. */
export interface BlendProperties {
  readonly densityKgPerM3: number;
  /** J/kg */
  readonly higherHeatingValue: number;
  /** J/kg */
  readonly lowerHeatingValue: number;
  /** J/m³ */
  readonly higherHeatPerM3: number;
  /** J/m³ */
  readonly lowerHeatPerM3: number;
}

/** A blend from liquids and volumes (or shares) in any measure; like liquids are put together. */
export function blendOf(parts: readonly { readonly liquid: Liquid; readonly volume: number }[]): Blend {
  const whole = parts.reduce((sum, part) => sum + part.volume, 0);
  if (!(whole > 0) || parts.some((part) => part.volume < 0)) {
    throw new RangeError('a blend needs liquids in amounts that are not less than nothing');
  }
  const byKey = new Map<string, Portion>();
  for (const { liquid, volume } of parts) {
    byKey.set(liquid.key, { liquid, share: (byKey.get(liquid.key)?.share ?? 0) + volume / whole });
  }
  return [...byKey.values()];
}

/** Mass and heat of a blend, from its liquids by volume (masses and heats add up). */
export function blendProperties(blend: Blend): BlendProperties {
  const sum = (of: (liquid: Liquid) => number): number =>
    blend.reduce((total, { liquid, share }) => total + share * of(liquid), 0);
  const densityKgPerM3 = sum((liquid) => liquid.densityKgPerM3);
  const higherHeatPerM3 = sum((liquid) => liquid.densityKgPerM3 * liquid.higherHeatingValue);
  const lowerHeatPerM3 = sum((liquid) => liquid.densityKgPerM3 * liquid.lowerHeatingValue);
  return {
    densityKgPerM3,
    higherHeatingValue: higherHeatPerM3 / densityKgPerM3,
    lowerHeatingValue: lowerHeatPerM3 / densityKgPerM3,
    higherHeatPerM3,
    lowerHeatPerM3,
  };
}

/** How much of each liquid makes `volumeM3` of the blend. */
export function amountsToMix(blend: Blend, volumeM3: number): readonly Amount[] {
  return blend.map(({ liquid, share }) => amount(liquid, share * volumeM3));
}

/** The blend that results when two stand together in one tank. */
export function mixed(
  first: { readonly blend: Blend; readonly volumeM3: number },
  second: { readonly blend: Blend; readonly volumeM3: number },
): Blend {
  const parts = [first, second].flatMap(({ blend, volumeM3 }) =>
    blend.map(({ liquid, share }) => ({ liquid, volume: share * volumeM3 })),
  );
  return blendOf(parts);
}

/** How to bring a tank that holds one blend up to a volume of another. */
export type ToppingUp =
  | { readonly kind: 'add'; readonly amounts: readonly Amount[] }
  /** The tank holds too much of `tooMuchOf`; `leastVolumeM3` is where it could be made right, if anywhere. */
  | { readonly kind: 'too-much'; readonly tooMuchOf: Liquid; readonly leastVolumeM3?: number };

/** What a tank holds now. */
export interface TankContent {
  readonly blend: Blend;
  readonly volumeM3: number;
}

/** What to add to `now` so that the tank holds `wantedM3` of `wanted`. */
export function topUp(now: TankContent, wanted: Blend, wantedM3: number): ToppingUp {
  if (wantedM3 < now.volumeM3) throw new RangeError('a tank is not topped up by taking out');
  const liquids = blendOf(
    [...now.blend, ...wanted].map(({ liquid, share }) => ({ liquid, volume: share })),
  ).map((portion) => portion.liquid);
  const missing = liquids.map((liquid) => ({
    liquid,
    held: now.volumeM3 * shareOf(now.blend, liquid),
    share: shareOf(wanted, liquid),
  }));
  const worst = missing.reduce((a, b) => (fillNeeded(b) > fillNeeded(a) ? b : a));
  const least = fillNeeded(worst);
  if (least > wantedM3 * (1 + 1e-9)) {
    return {
      kind: 'too-much',
      tooMuchOf: worst.liquid,
      ...(Number.isFinite(least) ? { leastVolumeM3: least } : {}),
    };
  }
  const amounts = missing.map(({ liquid, held, share }) =>
    amount(liquid, Math.max(0, share * wantedM3 - held)),
  );
  return { kind: 'add', amounts };
}

/** The volume of the wanted blend in which so much of a liquid would be right. */
function fillNeeded({ held, share }: { readonly held: number; readonly share: number }): number {
  if (held === 0) return 0;
  return share === 0 ? Number.POSITIVE_INFINITY : held / share;
}

function shareOf(blend: Blend, liquid: Liquid): number {
  return blend.find((portion) => portion.liquid.key === liquid.key)?.share ?? 0;
}

function amount(liquid: Liquid, volumeM3: number): Amount {
  return { liquid, volumeM3, massKg: volumeM3 * liquid.densityKgPerM3 };
}
