import { describe, expect, it } from 'vitest';
import { heightSeenMm } from '../../src/layout/legibility';
import { readTheme } from '../../src/layout/theme';
import { plainThemeText, plexFonts } from '../helpers/fonts';

function problemsOf(text: string) {
  const read = readTheme(text, 'mine.yaml', plexFonts);
  return read.ok ? [] : read.problems;
}

/** The plain theme with one line changed; fails if there is no such line. */
function changed(from: string | RegExp, to: string): string {
  const text = plainThemeText.replace(from, to);
  if (text === plainThemeText) throw new Error(`nothing to change: ${from}`);
  return text;
}

describe('readTheme', () => {
  it('reads the theme that comes with the program', () => {
    expect(problemsOf(plainThemeText)).toEqual([]);
  });

  it('refuses type that is too small, at its line, with its x-height', () => {
    const [problem, ...others] = problemsOf(
      changed('{ face: text, size: 10.5, leading: 14 }', '{ face: text, size: 8, leading: 14 }'),
    );
    expect(others).toEqual([]);
    expect(problem).toMatchObject({
      code: 'theme-legibility',
      at: { file: 'mine.yaml', path: 'type.body.size' },
    });
    expect(problem?.found).toBe('8 pt, an x-height of 1.46 mm');
  });

  it('refuses lines that stand closer than 1.25 type sizes', () => {
    const [problem] = problemsOf(
      changed('{ face: text, size: 10.5, leading: 14 }', '{ face: text, size: 10.5, leading: 13 }'),
    );
    expect(problem).toMatchObject({ code: 'theme-legibility', at: { path: 'type.body.leading' } });
  });

  it('refuses white letters on the orange of a warning', () => {
    const text = changed("panel: '#e97600', letters: '#000000'", "panel: '#e97600', letters: '#ffffff'");
    const [problem] = problemsOf(text);
    expect(problem).toMatchObject({ code: 'theme-contrast', at: { path: 'cautions.warning.letters' } });
    expect(problem?.found).toMatch(/^a contrast of 2\.98 in colour/);
  });

  it('refuses a panel that comes out darker in grey than that of something graver', () => {
    // the standard's blue has the luma of its red, far under that of its orange
    const text = changed("panel: '#ffffff', letters: '#000000'", "panel: '#0067a7', letters: '#ffffff'");
    const found = problemsOf(text).map(({ code, at }) => [code, at?.path]);
    expect(found).toEqual([['theme-contrast', 'cautions.notice.panel']]);
  });

  it('refuses colours that part on a screen but not on a grey printer', () => {
    // red on black has contrast 5.25 in colour; the same luma on paper is a dark grey
    const text = changed("panel: '#bd1e24', letters: '#ffffff'", "panel: '#000000', letters: '#ff0000'");
    const [problem] = problemsOf(text);
    expect(problem?.code).toBe('theme-contrast');
    expect(problem?.message).toContain('without colours');
  });

  it('refuses marks of chapters that touch the text, are too narrow, or lie where printers put no ink', () => {
    const found = (from: string, to: string) =>
      problemsOf(changed(from, to)).map(({ code, at }) => [code, at?.path]);
    expect(found('widthMm: 4.5', 'widthMm: 9')).toEqual([['theme-tabs', 'tabs.widthMm']]);
    expect(found('widthMm: 4.5', 'widthMm: 3')).toEqual([['theme-tabs', 'tabs.widthMm']]);
    expect(found('clearMm: 6.5', 'clearMm: 5')).toEqual([['theme-shape', 'tabs.clearMm']]);
    // what is not shown is in nobody's way
    expect(problemsOf(changed('widthMm: 4.5', 'widthMm: 9').replace('show: true', 'show: false'))).toEqual(
      [],
    );
  });

  it('refuses marks of chapters whose words, or which themselves, cannot be seen in grey', () => {
    const text = changed("panel: '#111111'\n  letters: '#ffffff'", "panel: '#bbbbbb'\n  letters: '#ffffff'");
    expect(problemsOf(text).map(({ code, at }) => [code, at?.path])).toEqual([
      ['theme-contrast', 'tabs.letters'],
      ['theme-contrast', 'tabs.panel'],
    ]);
  });

  it('refuses cards cut or punched so near to the edge that their film does not hold', () => {
    const found = (from: string | RegExp, to: string) =>
      problemsOf(changed(from, to)).map(({ code, at, found }) => [code, at?.path, found]);
    // the corner of margins of 4 mm is 1.66 mm inside a corner cut to 4 mm, and outside one cut to 20 mm
    expect(found('cornerMm: 4 ', 'cornerMm: 6 ')).toEqual([]);
    expect(found('cornerMm: 4 ', 'cornerMm: 8 ')).toEqual([
      ['theme-card-edge', 'card.cornerMm', '2.34 mm of edge'],
    ]);
    expect(found('centreMm: 7 ', 'centreMm: 5 ')).toEqual([
      ['theme-card-edge', 'card.hole.centreMm', '2.50 mm of edge'],
    ]);
    expect(found('diameterMm: 5', 'diameterMm: 9')).toEqual([
      ['theme-card-edge', 'card.hole.centreMm', '2.50 mm of edge'],
    ]);
    expect(
      problemsOf(changed('centreMm: 7 ', 'centreMm: 5 ').replace('place: corner', 'place: none')),
    ).toEqual([]);
  });

  it('asks more contrast of words read in the dark than of others', () => {
    // 5.74 to 1: enough by day
    const [problem, ...others] = problemsOf(changed("ink: '#ffffff'", "ink: '#888888'"));
    expect(others).toEqual([]);
    expect(problem).toMatchObject({
      code: 'theme-contrast',
      at: { path: 'dark.ink' },
      expected: 'at least 7 (WCAG 2.2)',
    });
  });

  it('tells everything that is wrong at once, each at its place', () => {
    const text = changed('size: 10.5, leading: 14 }', 'size: ten, leading: 14 }').replace(
      'hair: 0.4',
      'hairs: 0.4',
    );
    expect(problemsOf(text).map(({ code, at }) => [code, at?.path])).toEqual(
      expect.arrayContaining([
        ['theme-shape', 'type.body.size'],
        ['theme-shape', 'line.hair'],
        ['theme-shape', 'line'],
      ]),
    );
  });

  it('refuses text that is not YAML', () => {
    expect(problemsOf('type: [').map(({ code }) => code)).toContain('theme-yaml');
    expect(problemsOf('').map(({ code }) => code)).toEqual(['theme-shape']);
  });
});

describe('heightSeenMm', () => {
  // H = 2 D tan(a / 2); NUREG-0700 rev. 2 prints the same as H = 6.283 D MA / 21600
  it.each([
    [15, 0.4, 1.745],
    [16, 0.4, 1.862],
    [20, 0.5, 2.909],
    [22, 1.5, 9.599],
  ])('of %d minutes of arc at %d m is %d mm', (minutes, distanceM, heightMm) => {
    expect(Math.abs(heightSeenMm(distanceM, minutes) - heightMm)).toBeLessThan(0.001);
    expect(heightSeenMm(distanceM, minutes)).toBeCloseTo((6.283 * distanceM * 1000 * minutes) / 21600, 2);
  });
});
