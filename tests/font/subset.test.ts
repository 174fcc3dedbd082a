import * as fontkit from 'fontkit';
import { describe, expect, it } from 'vitest';
import { tablesOf } from '../../src/font/fontFile';
import { faces } from '../../src/font/metrics';
import { subsetOf } from '../../src/font/subset';
import { unpackWoff } from '../../src/font/woff';
import { fontFiles } from '../helpers/fonts';

function open(file: Uint8Array): fontkit.Font {
  return fontkit.create(file as Buffer) as fontkit.Font;
}

/** 32-bit numbers of a file, added up. */
function sumOf(view: DataView, from: number, length: number): number {
  let sum = 0;
  for (let at = 0; at < length; at += 4) sum = (sum + view.getUint32(from + at)) >>> 0;
  return sum;
}

describe.each(faces)('a subset of %s', (face) => {
  const whole = open(unpackWoff(fontFiles[face]));
  // é, ½ and the colon are put together from parts
  const kept = whole.glyphsForString('Shut V1: é½ fi').map(({ id }) => id);
  const file = subsetOf(tablesOf(fontFiles[face]), kept);

  it('draws and moves each glyph as the whole font does, under the same number', () => {
    const cut = open(file);
    for (const id of kept) {
      expect(cut.getGlyph(id).path.toSVG()).toBe(whole.getGlyph(id).path.toSVG());
      expect(cut.getGlyph(id).advanceWidth).toBe(whole.getGlyph(id).advanceWidth);
    }
    expect(kept.some((id) => whole.getGlyph(id).path.toSVG().length > 100)).toBe(true);
  });

  it('holds no other outlines', () => {
    const other = whole.glyphsForString('W')[0]?.id ?? 0;
    expect(kept).not.toContain(other);
    expect(open(file).getGlyph(other).path.toSVG()).toBe('');
    expect(file.length).toBeLessThan(unpackWoff(fontFiles[face]).length / 8);
  });

  it('has true checksums (OpenType: every table, and the whole file, as 32-bit numbers)', () => {
    const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
    expect(sumOf(view, 0, file.length)).toBe(0xb1b0afba);
    for (let index = 0; index < view.getUint16(4); index += 1) {
      const at = 12 + 16 * index;
      const [offset, length] = [view.getUint32(at + 8), view.getUint32(at + 12)];
      const isHead = view.getUint32(at) === 0x68656164;
      const own = isHead ? view.getUint32(offset + 8) : 0;
      const sum = (sumOf(view, offset, (length + 3) & ~3) - own) >>> 0;
      expect(view.getUint32(at + 4)).toBe(sum);
    }
  });
});

it('a font without TrueType outlines is refused', () => {
  const none = { bytes: () => undefined, view: () => undefined };
  expect(() => subsetOf(none, [1])).toThrow('only TrueType outlines can be embedded');
});
