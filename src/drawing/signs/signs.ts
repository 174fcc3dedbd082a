/**
 * Safety signs, drawn here from what each shows, by their numbers in ISO 7010.
 *
 * Numbers and meanings were read in ASR A1.3, annex 1 (Germany, 2022, after DIN EN ISO 7010:2020): P003, P010, P011, W010,
 * W012, W017; and in a public list of the signs of ISO 7010 for W021, W080, M009, F001 and E003. `shared/signs.yaml` says
 * of each what it means and shows. The pictures are ours: simpler than the originals of the standard, and not copies of them.
 */
import type { Drawing } from '../drawing';
import { bucketOnFlame, burningMatch, cross, extinguisherAndFlame, gloves, handOnSurface } from './acts';
import { flameOverLine, lightning, snowCrystal, steamJet, wavesOverSurface } from './hazards';
import { fireEquipment, mandatory, prohibition, type SignShape, safeCondition, warning } from './surrounds';

const drawings = {
  W010: () => warning(snowCrystal),
  W012: () => warning(lightning),
  W017: () => warning(wavesOverSurface),
  W021: () => warning(flameOverLine),
  W080: () => warning(steamJet),
  M009: () => mandatory(gloves),
  P003: () => prohibition(burningMatch),
  P010: () => prohibition(handOnSurface),
  P011: () => prohibition(bucketOnFlame),
  F001: () => fireEquipment(extinguisherAndFlame),
  E003: () => safeCondition(cross),
} as const satisfies Readonly<Record<string, () => SignShape>>;

/** The number of a sign that can be drawn. */
export type SignNumber = keyof typeof drawings;

/** Every sign that can be drawn. */
export const signNumbers = Object.keys(drawings) as readonly SignNumber[];

/** A sign, 100 pt wide; `alt` says what it means and shows. */
export function drawSign(number: SignNumber, alt: string): Drawing {
  const { width, height, shapes } = drawings[number]();
  return { name: number, widthPt: width, heightPt: height, shapes, alt };
}

/**
 * Least height of a sign read from `distanceM`, in millimetres: a fortieth of the distance, h = D / 40 of ISO 3864-2 for
 * labels on products (as a trade handbook quotes it). ASR A1.3, table 3, asks the same of discs and squares (12.5 mm from
 * 0.5 m), and of warnings on walls twice as much.
 */
export function leastSignMm(distanceM: number): number {
  return (distanceM * 1000) / 40;
}
