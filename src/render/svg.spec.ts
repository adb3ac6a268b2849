import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { circle, line, type Scene, type StyleName, styleNames, text } from './scene.ts';
import { escapeXml, sceneToSvg } from './svg.ts';
import { pxPerYard, svgStyles } from './svg-styles.ts';

function sceneOf(items: Scene['items'], title = 'A field'): Scene {
  return { title, description: 'One field.', view: { left: -2, top: -1, width: 4, height: 3 }, items };
}

describe('sceneToSvg', () => {
  it('puts the view at the drawing origin, +x right and +y down, in pixels', () => {
    const svg = sceneToSvg(sceneOf([line('run', { x: -2, y: -1 }, { x: 1, y: 2 })]));
    expect(svg).toContain(`viewBox="0 0 ${4 * pxPerYard} ${3 * pxPerYard}"`);
    expect(svg).toContain(`<line x1="0" y1="0" x2="${3 * pxPerYard}" y2="${3 * pxPerYard}"/>`);
  });

  it('rounds coordinates, and writes no minus zero', () => {
    const svg = sceneToSvg(sceneOf([circle('ball', { x: -2 - 1e-9, y: -1 + 1e-9 }, 1 / 3)]));
    expect(svg).toContain('<circle cx="0" cy="0" r="7"/>');
  });

  it('carries a title and a description, and escapes every text in it', () => {
    const svg = sceneToSvg(sceneOf([text('note', { x: 0, y: 0 }, '<script>&"\'')], 'Skip & <shoot>'));
    expect(svg).toContain('<title>Skip &amp; &lt;shoot&gt;</title>');
    expect(svg).toContain('<desc>One field.</desc>');
    expect(svg).toContain('&lt;script&gt;&amp;&quot;&#39;');
    expect(svg).not.toContain('<script>');
  });

  it('groups neighbours of one style and keeps the order of the others', () => {
    const dot = (style: StyleName) => circle(style, { x: 0, y: 0 }, 0.1);
    const svg = sceneToSvg(sceneOf([dot('ball'), dot('ball'), dot('keeper'), dot('ball')]));
    expect([...svg.matchAll(/<g class="(\w+)"/g)].map((found) => found[1])).toEqual(['ball', 'keeper', 'ball']);
  });

  it('refuses a coordinate that is no number', () => {
    expect(() => sceneToSvg(sceneOf([circle('ball', { x: Number.NaN, y: 0 }, 1)]))).toThrow(RangeError);
  });

  it.each(styleNames.map((style) => [style]))('draws %s so that an outside reader of SVG takes it', (style) => {
    const items = svgStyles.paper[style].fontPx
      ? [text(style, { x: 0, y: 0.5 }, 'WL')]
      : svgStyles.paper[style].fill
        ? [circle(style, { x: 0, y: 0.5 }, 1)]
        : [line(style, { x: -1, y: 0 }, { x: 1, y: 1 })];
    const image = new Resvg(sceneToSvg(sceneOf(items))).render();
    expect([image.width, image.height]).toEqual([4 * pxPerYard, 3 * pxPerYard]);
    // White on nothing is still paint: some pixel must be more than transparent. Letters need a font, which a bare machine lacks.
    if (!svgStyles.paper[style].fontPx)
      expect(image.pixels.some((value, index) => index % 4 === 3 && value > 0)).toBe(true);
  });
});

describe('escapeXml', () => {
  it.each([
    ['a\u0000b\u0008c', 'abc'],
    ['line\nend\ttab', 'line\nend\ttab'],
    ['lone \ud800 half', 'lone  half'],
    ['whole \u{1f945} net', 'whole \u{1f945} net'],
    ['nonchar \uffff', 'nonchar '],
  ])('makes %j safe', (raw, safe) => {
    expect(escapeXml(raw)).toBe(safe);
  });
});

// WCAG 2.1, definition of relative luminance: the ways apart must also hold in grey.
describe('black and white', () => {
  const pairs: readonly (readonly [StyleName, StyleName, string])[] = [
    ['attacker', 'carrier', 'fill'],
    ['carrierText', 'carrier', 'fill'],
    ['attackerText', 'attacker', 'fill'],
    ['ball', 'carrier', 'fill'],
  ];
  it.each(pairs)('%s and %s differ in lightness', (a, b) => {
    const [low, high] = [luminance(svgStyles.paper[a].fill!), luminance(svgStyles.paper[b].fill!)].sort(
      (x, y) => x - y,
    );
    // 4.5 to 1 is the least contrast of WCAG 2.1 success criterion 1.4.3 for text.
    expect((high! + 0.05) / (low! + 0.05)).toBeGreaterThan(4.5);
  });

  it.each([
    ['attackerText', 'attacker'],
    ['carrierText', 'carrier'],
  ] as const)('%s has a halo as light or dark as the disc of the %s', (letters, disc) => {
    expect(svgStyles.paper[letters].haloColour).toBe(svgStyles.paper[disc].fill);
  });

  it('tells the kinds of line apart by dash, or by width', () => {
    const looks = (['run', 'pass', 'fake', 'pick'] as const).map((style) =>
      JSON.stringify([svgStyles.paper[style].dashPx ?? [], svgStyles.paper[style].widthPx]),
    );
    expect(new Set(looks).size).toBe(looks.length);
  });

  it('keeps every text readable on the ground it stands on', () => {
    for (const [style, ground] of [
      ['heading', 'note'],
      ['sentence', 'note'],
      ['small', 'note'],
      ['defenderText', 'boxArea'],
      ['yardText', 'turf'],
    ] as const) {
      const letters = luminance(svgStyles.paper[style].fill!);
      const under = luminance(svgStyles.paper[ground].fill!);
      expect((under + 0.05) / (letters + 0.05), style).toBeGreaterThan(4.5);
    }
  });
});

function luminance(colour: string): number {
  const channel = (at: number): number => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return value <= 0.03928 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}
