import { describe, expect, it } from 'vitest';
import { drawScene } from './draw-scene.ts';
import { handMadeField, handMadeNames, handMadePlay, handMadeTrace } from './hand-made.fixture.ts';
import { type PaletteName, paletteNames } from './palettes.ts';
import { playScene } from './play-scene.ts';
import { RecordingPen } from './recording-pen.fixture.ts';
import { circle, line, type Scene, type StyleName, text } from './scene.ts';
import { sceneToSvg } from './svg.ts';
import { svgStyles } from './svg-styles.ts';
import { traceScene } from './trace-scene.ts';

function sceneOf(items: Scene['items']): Scene {
  return { title: 'A field', description: 'One field.', view: { left: -2, top: -1, width: 4, height: 3 }, items };
}

function drawn(scene: Scene, options: Parameters<typeof drawScene>[2] = {}): RecordingPen {
  const pen = new RecordingPen();
  drawScene(pen, scene, options);
  return pen;
}

/** Every shape of an SVG file in order, each once as a fill and once as an outline where its group has one, with colour and line. */
function shapesOfSvg(svg: string): readonly string[] {
  const shapes: string[] = [];
  for (const [, attributes, body] of svg.matchAll(/<g ([^>]*)>([\s\S]*?)<\/g>/g)) {
    const of = (name: string): string => new RegExp(`(?:^| )${name}="([^"]*)"`).exec(attributes!)?.[1] ?? '';
    const look = `${of('opacity') || 1}`;
    const outline = `${of('stroke')} ${of('stroke-width')} [${of('stroke-dasharray')}] ${look}`;
    for (const shape of body!.trim().split('\n')) {
      const what = outlineOf(shape.trim());
      const isText = shape.includes('<text');
      if (isText && of('stroke') !== '') shapes.push(`strokeText ${what} ${outline}`);
      if (of('fill') !== 'none') shapes.push(`${isText ? 'fillText' : 'fill'} ${what} ${of('fill')} ${look}`);
      if (!isText && of('stroke') !== '') shapes.push(`stroke ${what} ${outline}`);
    }
  }
  return shapes;
}

function outlineOf(shape: string): string {
  const of = (name: string): string => new RegExp(` ${name}="([^"]*)"`).exec(shape)?.[1] ?? '';
  if (shape.startsWith('<path')) return of('d');
  if (shape.startsWith('<circle')) return `circle ${of('cx')} ${of('cy')} ${of('r')}`;
  if (shape.startsWith('<line')) return `M${of('x1')} ${of('y1')}L${of('x2')} ${of('y2')}`;
  const content = />([^<]*)</.exec(shape)?.[1] ?? '';
  return `${content.replaceAll('&quot;', '"').replaceAll('&#39;', "'")} ${of('x')} ${of('y')}`;
}

function shapesOfPen({ drawn: all }: RecordingPen): readonly string[] {
  return all.map(({ how, what, colour, opacity, widthPx, dash }) =>
    how === 'fill' || how === 'fillText'
      ? `${how} ${what} ${colour} ${opacity}`
      : `${how} ${what} ${colour} ${widthPx} [${dash}] ${opacity}`,
  );
}

describe('drawScene', () => {
  const trace = handMadeTrace();
  const scenes: readonly (readonly [string, Scene])[] = [
    ['a moment', traceScene(trace, 0.8, handMadeNames, handMadeField, { reach: [2, 2, 2, 2, 2] })],
    ['a shot', traceScene(trace, 1.6, handMadeNames, handMadeField)],
    ['a step of a play', playScene({ ...handMadePlay, name: 'Far corner' }, 2, handMadeField)],
  ];

  it.each(scenes.flatMap(([name, scene]) => paletteNames.map((palette) => [name, palette, scene] as const)))(
    'draws %s in %s as the SVG has it, shape by shape',
    (_, palette, scene) => {
      const fromSvg = shapesOfSvg(sceneToSvg(scene, palette));
      expect(fromSvg.length).toBeGreaterThan(40);
      expect(shapesOfPen(drawn(scene, { palette, leastFontPx: 0, leastLineShare: 0 }))).toEqual(fromSvg);
    },
  );

  it('puts the view where it is told to, at any scale, for any screen', () => {
    const pen = drawn(sceneOf([line('run', { x: -2, y: -1 }, { x: 1, y: 2 })]), {
      pxPerYard: 5,
      leftPx: 100,
      topPx: 30,
      devicePixelRatio: 2,
    });
    expect(pen.drawn.map(({ what }) => what)).toEqual(['M100 30L115 45']);
    expect(pen.scales).toEqual([2, 2]);
    expect(pen.clips).toEqual(['rect 100 30 20 15']);
    expect(pen.isBalanced).toBe(true);
  });

  it('keeps letters readable and lines visible on a field 150 px wide', () => {
    const small = { pxPerYard: 150 / 33, leastFontPx: 9, leastLineShare: 0.45 };
    const scene = sceneOf([text('attackerText', { x: 0, y: 0 }, 'WL'), line('run', { x: 0, y: 0 }, { x: 1, y: 1 })]);
    const [halo, letters, run] = drawn(scene, small).drawn;
    expect(letters!.font).toMatch(/^700 9px /);
    // The ring grows and shrinks with its letters.
    expect(halo!.widthPx).toBeCloseTo((4 * 9) / 19, 9);
    expect(run!.widthPx).toBeCloseTo(0.45 * svgStyles.paper.run.widthPx!, 9);
    expect(drawn(scene, { ...small, pxPerYard: 42 }).drawn[1]!.font).toMatch(/^700 38px /);
  });

  it.each([
    ['start', 'start'],
    ['middle', 'center'],
    ['end', 'end'],
  ] as const)('anchors a text at its %s', (anchor, align) => {
    const pen = drawn(sceneOf([text('small', { x: 0, y: 0 }, 'x', anchor)]));
    expect(pen.drawn.map((one) => one.align)).toEqual([align]);
  });

  it('draws what shares a look at once, but lets a disc hide the outline of the one below it', () => {
    const dots = (style: StyleName): Scene => sceneOf([1, 2, 3].map((x) => circle(style, { x, y: 0 }, 1)));
    expect(drawn(dots('reach')).strokesAndFills).toBe(1);
    expect(drawn(dots('attacker')).drawn.map(({ how }) => how)).toEqual([
      'fill',
      'stroke',
      'fill',
      'stroke',
      'fill',
      'stroke',
    ]);
  });

  it('leaves no dash from one line on the next', () => {
    const ends = [
      { x: 0, y: 0 },
      { x: 1, y: 1 },
    ] as const;
    const pen = drawn(sceneOf([line('pass', ...ends), line('run', ...ends)]));
    expect(pen.drawn.map(({ dash }) => dash)).toEqual(['9 6', '']);
  });

  it.each([
    ['pxPerYard', 0],
    ['devicePixelRatio', Number.NaN],
  ])('refuses a %s of %d', (name, value) => {
    expect(() => drawn(sceneOf([]), { [name]: value })).toThrow(RangeError);
  });

  it('draws in each palette with its own colours', () => {
    const ink = (palette: PaletteName): unknown =>
      drawn(sceneOf([line('run', { x: 0, y: 0 }, { x: 1, y: 1 })]), { palette }).drawn[0]!.colour;
    expect(new Set(paletteNames.map(ink)).size).toBe(paletteNames.length);
  });
});
