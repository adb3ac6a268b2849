import { describe, expect, it } from 'vitest';
import { contrast, laidOver, relativeLuminance } from './contrast.fixture.ts';
import { heatLevels } from './heat-marks.ts';
import { type PaletteName, paletteNames } from './palettes.ts';
import type { StyleName } from './scene.ts';
import { svgStyles } from './svg-styles.ts';

/** WCAG 2.2, success criterion 1.4.3 (AA), text: https://www.w3.org/TR/WCAG22/#contrast-minimum */
const leastForText = 4.5;
/** WCAG 2.2, success criterion 1.4.11 (AA), what is needed to understand a picture: https://www.w3.org/TR/WCAG22/#non-text-contrast */
const leastForMarks = 3;

const grounds: readonly StyleName[] = ['turf', 'boxArea', 'creaseArea'];

/** What carries meaning on the field. */
const marks: readonly StyleName[] = [
  'goalLine',
  'attacker',
  'carrier',
  'beyond',
  'defender',
  'keeper',
  'run',
  'runHead',
  'carry',
  'pass',
  'passHead',
  'shot',
  'pick',
  'seal',
  'fake',
  'duty',
  'dutyLock',
  'laneSure',
  'laneFair',
  'laneUnder',
  'openRing',
  'readRing',
  'cueRing',
  'cueLane',
  'cueRoom',
  'cueMove',
  'cueMoveHead',
];

/** Words and what they stand on. */
const words: readonly (readonly [StyleName, readonly StyleName[]])[] = [
  ['heading', ['note']],
  ['clock', ['note']],
  ['sentence', ['note']],
  ['small', ['note']],
  ['stepText', grounds],
  ['defenderText', grounds],
  // Its ring is as the turf, wherever it stands.
  ['yardText', ['turf']],
  ['attackerText', ['attacker']],
  ['carrierText', ['carrier']],
  ['keeperText', ['keeper']],
  ['laneText', grounds],
  ['openText', grounds],
  ['readText', grounds],
  // Its ring is as the turf.
  ['heatText', ['turf']],
  ...(
    [
      'spotText',
      'beatName',
      'triggerText',
      'timeText',
      'openWorth',
      'hopWord',
      'doingWord',
      'readCue',
      'playheadText',
    ] as const
  ).map((letters) => [letters, ['chartPage']] as const),
];

/** What carries meaning on a tempo chart. */
const chartMarks: readonly StyleName[] = [
  'beatLine',
  'triggerMark',
  'openHatch',
  'ballCase',
  'hopAdjacent',
  'hopSkip',
  'hopFeed',
  'hopShot',
  'hopHead',
  'doing',
  'doingHead',
  'doingWait',
  'readStub',
  'readEnd',
  'playhead',
  'playheadTip',
];

describe('relative luminance', () => {
  it.each([
    // Both ends and their ratio, as WCAG 2.2 gives them.
    ['#ffffff', 1],
    ['#000000', 0],
    // The weights of the formula itself.
    ['#00ff00', 0.7152],
  ])('of %s is %d', (colour, luminance) => {
    expect(relativeLuminance(colour)).toBeCloseTo(luminance, 9);
  });

  it('gives 21 to 1 for black on white', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 9);
  });
});

describe.each(paletteNames)('palette %s', (name) => {
  const palette = svgStyles[name];

  it.each(marks)('shows %s on every part of the field', (mark) => {
    for (const ground of grounds) expect(seen(name, mark, ground), ground).toBeGreaterThanOrEqual(leastForMarks);
  });

  it.each(words)('lets %s be read', (letters, under) => {
    for (const ground of under)
      expect(contrast(palette[letters].fill!, palette[ground].fill!), ground).toBeGreaterThanOrEqual(leastForText);
  });

  it.each(chartMarks)('shows %s on a chart, also where a window shades it', (mark) => {
    const page = palette.chartPage.fill!;
    const shaded = laidOver(palette.openTint4.fill!, palette.openTint4.opacity!, page);
    for (const ground of [page, shaded]) {
      const { stroke, fill, opacity = 1 } = palette[mark];
      expect(contrast(laidOver(stroke ?? fill!, opacity, ground), ground)).toBeGreaterThanOrEqual(leastForMarks);
    }
  });

  it('lets words be read where windows and beats shade the chart', () => {
    const tint = (style: StyleName, under: string): string =>
      laidOver(palette[style].fill!, palette[style].opacity!, under);
    const shaded = tint('openTint4', tint('beatBand', palette.chartPage.fill!));
    // Letters with a ring stand on that; those without never stand in a row.
    for (const letters of ['hopWord', 'doingWord', 'openWorth', 'readCue'] as const)
      expect(palette[letters].haloColour).toBe(palette.chartPage.fill);
    expect(contrast(palette.spotText.fill!, palette.chartPage.fill!)).toBeGreaterThanOrEqual(leastForText);
    expect(contrast(palette.doingWord.fill!, shaded)).toBeGreaterThanOrEqual(leastForMarks);
  });

  it('keeps people in sight over the best place to shoot from', () => {
    let ground = palette.boxArea.fill!;
    for (const _ of heatLevels) ground = laidOver(palette.heat.fill!, palette.heat.opacity!, ground);
    for (const mark of ['attacker', 'carrier', 'defender', 'pass', 'laneSure', 'openRing'] as const) {
      const { stroke, fill } = palette[mark];
      expect(contrast(stroke ?? fill!, ground), mark).toBeGreaterThanOrEqual(leastForMarks);
    }
  });

  it('tells each band of heat from the one below it, in grey too', () => {
    let ground = palette.boxArea.fill!;
    for (const level of heatLevels) {
      const band = laidOver(palette.heat.fill!, palette.heat.opacity!, ground);
      expect(contrast(band, ground), String(level)).toBeGreaterThan(1.03);
      ground = band;
    }
  });

  it('shows the ball on the field and against the man who has it', () => {
    for (const ground of [...grounds, 'carrier', 'attacker'] as const) {
      const under = palette[ground].fill!;
      const best = Math.max(contrast(palette.ball.fill!, under), contrast(palette.ball.stroke!, under));
      expect(best, ground).toBeGreaterThanOrEqual(leastForMarks);
    }
  });

  it('tells a man with the ball from one without by lightness alone', () => {
    expect(contrast(palette.attacker.fill!, palette.carrier.fill!)).toBeGreaterThanOrEqual(leastForText);
  });
});

describe('the quiet lines: of the field, of where men and ball have been', () => {
  const quiet = ['paint', 'trail', 'passPast'] as const;

  it.each(['dark', 'sun'] as const)('can be seen in %s', (name) => {
    for (const mark of quiet)
      for (const ground of ['turf', 'boxArea'] as const)
        expect(seen(name, mark, ground), `${mark} on ${ground}`).toBeGreaterThanOrEqual(leastForMarks);
  });

  // Known: print stays as it was first made, where they add to what is said in words and figures beside them.
  it.each(['paint', 'trail'] as const)('are quieter on paper: %s', (mark) => {
    expect(seen('paper', mark, 'turf')).toBeLessThan(leastForMarks);
  });
});

/** Contrast of a mark as it is seen: of its outline where it has one, mixed with what shows through. */
function seen(name: PaletteName, mark: StyleName, ground: StyleName): number {
  const { stroke, fill, opacity = 1 } = svgStyles[name][mark];
  const under = svgStyles[name][ground].fill!;
  return contrast(laidOver(stroke ?? fill!, opacity, under), under);
}
