import { describe, expect, it } from 'vitest';
import { mirrorPlay } from '../engine/index.ts';
import { fieldScene, unitView, viewAround } from './field-scene.ts';
import { handMadeField, handMadeNames, handMadePlay, handMadeTrace } from './hand-made.fixture.ts';
import { wrapText } from './page-layout.ts';
import { playFrames } from './play-frames.ts';
import { playScene } from './play-scene.ts';
import { playSteps } from './play-steps.ts';
import type { Primitive, Scene, StyleName, View } from './scene.ts';
import { sceneToSvg } from './svg.ts';
import { frameAt } from './trace-frame.ts';
import { traceScene } from './trace-scene.ts';

const trace = handMadeTrace();

function styled(scene: Scene, style: StyleName): readonly Primitive[] {
  return scene.items.filter((item) => item.style === style);
}

function texts(scene: Scene, style: StyleName): readonly string[] {
  return styled(scene, style).flatMap((item) => (item.kind === 'text' ? [item.text] : []));
}

describe('playSteps', () => {
  it('moves men and ball from beat to beat', () => {
    const steps = playSteps(handMadePlay);
    expect(steps.map(({ before, after }) => [before.ball, after.ball])).toEqual([
      ['P', 'TR'],
      ['TR', 'WL'],
      ['WL', 'WL'],
    ]);
    expect(steps[0]!.after.places.P).toEqual({ x: 4.5, y: 11.5 });
    expect(steps[1]!.after.places.C).toEqual({ x: -2.5, y: 5.5 });
  });

  it('finds the order of the beats by what starts them', () => {
    const shuffled = { ...handMadePlay, beats: [...handMadePlay.beats].reverse() };
    expect(playSteps(shuffled).map(({ beat }) => beat.id)).toEqual(['open', 'skip', 'finish']);
  });

  it('still shows a beat that nothing starts', () => {
    const stuck = { ...handMadePlay, beats: [{ id: 'x', when: { kind: 'catch', by: 'C' }, actions: [] }] } as const;
    expect(playSteps(stuck).map(({ beat }) => beat.id)).toEqual(['x']);
  });
});

describe('playScene', () => {
  it('draws each action with its own sign', () => {
    const opening = playScene(handMadePlay, 1, handMadeField);
    expect([styled(opening, 'carry').length, styled(opening, 'run').length, styled(opening, 'pass').length]).toEqual([
      1, 1, 1,
    ]);
    const skip = playScene(handMadePlay, 2, handMadeField);
    expect([styled(skip, 'pick').length, styled(skip, 'seal').length, styled(skip, 'fake').length]).toEqual([2, 1, 1]);
    const finish = playScene(handMadePlay, 3, handMadeField);
    expect(styled(finish, 'shot')).toHaveLength(2);
  });

  it('fills only the man who has the ball', () => {
    expect(texts(playScene(handMadePlay, 0, handMadeField), 'carrierText')).toEqual(['P']);
    expect(texts(playScene(handMadePlay, 2, handMadeField), 'carrierText')).toEqual(['TR']);
    expect([...texts(playScene(handMadePlay, 2, handMadeField), 'attackerText')].sort()).toEqual([
      'C',
      'P',
      'TL',
      'WL',
      'WR',
    ]);
  });

  it('says the same in words for who cannot see it', () => {
    const { title, description } = playScene(handMadePlay, 2, handMadeField);
    expect(title).toBe('Far corner <skip & shoot>: step 2 of 3');
    expect(description).toContain('when TR catches: TR fakes to WR');
    expect(description).toContain('WL 8 yards left, 4 above the goal line');
    expect(description).toContain('TR has the ball');
  });

  it('draws the mirror image of a mirrored play', () => {
    const circles = (play: typeof handMadePlay): readonly string[] =>
      playScene(play, 2, handMadeField).items.flatMap((item) =>
        item.kind === 'circle'
          ? [`${item.style} ${Math.abs(item.centre.x).toFixed(6)} ${item.centre.y.toFixed(6)}`]
          : [],
      );
    const mirrored = mirrorPlay(handMadePlay);
    expect(circles(mirrored)).toEqual(circles(handMadePlay));
    expect(texts(playScene(mirrored, 2, handMadeField), 'carrierText')).toEqual(['TL']);
  });

  it.each([-1, 4, 1.5])('refuses step %d', (step) => {
    expect(() => playScene(handMadePlay, step, handMadeField)).toThrow(RangeError);
  });

  it('draws the same file again', () => {
    expect(sceneToSvg(playScene(handMadePlay, 2, handMadeField))).toMatchSnapshot();
  });
});

describe('playFrames', () => {
  const lastTen = {
    beats: [{ id: 'late', when: { kind: 'start' }, actions: [{ kind: 'stepIn', by: 'TR', to: { x: 7, y: 11.5 } }] }],
    reads: [{ carrier: 'TR', cues: [{ kind: 'iAmFree' }], then: { kind: 'shot', by: 'TR' } }],
  } as const;
  const frames = playFrames({ ...handMadePlay, lastTen }, handMadeField);

  it('is the set, then every beat in the order in which they start, then the last ten seconds', () => {
    expect(frames.map(({ beat, lastTen: late }) => `${beat}${late ? ' late' : ''}`)).toEqual([
      'set',
      'open',
      'skip',
      'finish',
      'late late',
    ]);
    expect(playFrames(handMadePlay, handMadeField)).toHaveLength(4);
  });

  it('names beat, trigger and places as the file has them', () => {
    const { scene } = frames[2]!;
    expect(texts(scene, 'heading').join(' ')).toContain(': "skip"');
    const sentence = texts(scene, 'sentence').join(' ').replaceAll('\u00a0', ' ');
    expect(sentence).toMatch(/^Step 2, when TR catches: TR fakes to WR; .*\(to -2\.5,5\.5\)/);
    expect(texts(scene, 'small').join(' ')).toContain("Left and right are the offense's, looking in.");
  });

  it('tells the reads of a step', () => {
    const reads = [{ carrier: 'TR', cues: [{ kind: 'open', who: 'C' }], then: { kind: 'shot', by: 'TR' } }] as const;
    const [, open, skip, finish] = playFrames({ ...handMadePlay, reads }, handMadeField).map(({ scene }) =>
      texts(scene, 'small').join(' '),
    );
    expect([open, skip].map((text) => text?.includes('Reads: if C is open, TR shoots.'))).toEqual([true, true]);
    expect(finish).not.toContain('Reads');
  });

  it('gives the ball to nobody in the last ten seconds, and says what starts them', () => {
    const { scene } = frames[4]!;
    expect(texts(scene, 'carrierText')).toEqual([]);
    expect(texts(scene, 'sentence').join(' ')).toContain('with ten seconds left: TR steps in');
    expect(scene.description).toContain('Whoever has the ball keeps it');
    expect(texts(scene, 'small').join(' ')).toContain('if TR is free, TR shoots');
  });

  it('draws a step of a yard so that it can be seen', () => {
    const at = handMadePlay.spots.find(({ id }) => id === 'TR')!.at;
    const short = { kind: 'stepIn', by: 'TR', to: { x: at.x - 1, y: at.y } } as const;
    const play = { ...handMadePlay, beats: [{ id: 'one', when: { kind: 'start' }, actions: [short] }] } as const;
    expect(styled(playFrames(play, handMadeField)[1]!.scene, 'runHead')).toHaveLength(1);
  });
});

describe('traceScene', () => {
  const scene = (time: number): Scene => traceScene(trace, time, handMadeNames, handMadeField);

  it('says what happened last, and when', () => {
    expect(texts(scene(0.8), 'clock')).toEqual(['0.8 s']);
    expect(texts(scene(0.8), 'sentence').join(' ')).toBe('TR skips to WL: tr stands in the lane (odds 86 %).');
    expect(texts(scene(2), 'sentence').join(' ')).toBe('GOAL by WL, from TR.');
  });

  it('names the offense, the defense and what each defender does', () => {
    expect(texts(scene(0.3), 'defenderText')).toEqual(['tr', 'tl', 'lr', 'll', 'c']);
    expect(texts(scene(0.3), 'small').join(' ').replaceAll('\u00a0', ' ')).toContain('ll splits WL and TL');
    expect(scene(0.8).description).toContain('ll on the ball');
  });

  it('fills the holder, and nobody while the ball is in the air', () => {
    expect(texts(scene(0.3), 'carrierText')).toEqual(['TR']);
    expect(texts(scene(0.8), 'carrierText')).toEqual([]);
    expect(texts(scene(1.2), 'carrierText')).toEqual(['WL']);
  });

  it('dashes a pass and doubles nothing else', () => {
    expect(styled(scene(0.3), 'pass')).toHaveLength(0);
    expect(styled(scene(0.8), 'pass')).toHaveLength(1);
    expect(styled(scene(1.6), 'shot')).toHaveLength(1);
  });

  it('draws a man beyond the edge at the edge, and says that he is farther out', () => {
    const places = trace.places_byFrame.slice();
    places.set([25, 12], 0);
    const far = traceScene({ ...trace, places_byFrame: places }, 0, handMadeNames, handMadeField);
    const right = unitView.left + unitView.width;
    const circles = [...styled(far, 'attacker'), ...styled(far, 'carrier')].flatMap((item) =>
      item.kind === 'circle' ? [item] : [],
    );
    expect(circles).toHaveLength(6);
    for (const { centre, radius } of circles) expect(centre.x + radius).toBeLessThan(right);
    expect(styled(far, 'beyond')).toHaveLength(1);
    expect(styled(scene(0), 'beyond')).toHaveLength(0);
  });

  it('keeps the field in one place from picture to picture', () => {
    const frames = [0, 0.8, 1.2, 2].map(scene);
    expect(new Set(frames.map(({ view }) => `${view.top} ${view.height}`)).size).toBe(1);
  });

  it("never lays the ball over a spot's letters", () => {
    for (let time = 0; time <= 2; time += 0.05) {
      const [ball] = styled(scene(time), 'ball').flatMap((item) => (item.kind === 'circle' ? [item.centre] : []));
      const men = frameAt(trace, time).offense;
      for (const at of men) expect(Math.hypot(at.x - ball!.x, at.y - ball!.y)).toBeGreaterThanOrEqual(0.9);
    }
  });

  it('writes every spot above the crosses, so that a man on him does not hide it', () => {
    for (const time of [0.3, 0.8]) {
      const styles = scene(time).items.map(({ style }) => style);
      const letters = styles.flatMap((style, at) => (style === 'attackerText' || style === 'carrierText' ? [at] : []));
      expect(letters).toHaveLength(6);
      expect(Math.min(...letters)).toBeGreaterThan(styles.lastIndexOf('defender'));
    }
  });

  it('keeps duty lines and sticks as options', () => {
    const bare = traceScene(trace, 0.8, handMadeNames, handMadeField, { duties: false });
    expect([styled(bare, 'duty').length, styled(bare, 'dutyLock').length]).toEqual([0, 0]);
    const reach = traceScene(trace, 0.8, handMadeNames, handMadeField, { reach: [2, 2, 2, 2, 1.4] });
    expect(styled(reach, 'reach')).toHaveLength(5);
  });

  it('explains its marks, the one for a man beyond the edge when he is there', () => {
    const legend = (view: View): string =>
      texts(traceScene(trace, 0, handMadeNames, handMadeField, { view }), 'small').join(' ');
    expect(legend(unitView)).toContain('Circles are the offense, crosses the defense, G the keeper.');
    expect(legend(unitView)).not.toContain('farther out');
    expect(legend({ ...unitView, height: unitView.height - 12 })).toMatch(/Triangle: .*TR.* (is|are) farther out\./);
  });

  it('draws the same file again', () => {
    expect(sceneToSvg(scene(0.8))).toMatchSnapshot();
  });
});

describe('the page', () => {
  it('keeps the field where it is and adds the words outside it', () => {
    const { view } = playScene(handMadePlay, 0, handMadeField);
    expect(view.top).toBeLessThan(unitView.top);
    expect(view.top + view.height).toBeGreaterThan(unitView.top + unitView.height);
    expect([view.left, view.width]).toEqual([unitView.left, unitView.width]);
  });

  it('grows the view alike to both sides for a man far out', () => {
    const view = viewAround([{ x: 19, y: 3 }]);
    expect(view.left).toBeCloseTo(-20.8, 9);
    expect(view.width).toBeCloseTo(41.6, 9);
    expect(viewAround([])).toEqual(unitView);
  });

  it.each([
    ['one two three', 7, ['one two', 'three']],
    ['  spaces   fold  ', 20, ['spaces fold']],
    ['unbreakableword x', 5, ['unbreakableword', 'x']],
    ['', 5, []],
  ])('wraps %j at %d letters', (content, letters, lines) => {
    expect(wrapText(content, letters)).toEqual(lines);
  });
});

describe('fieldScene', () => {
  it('draws no paint outside the view', () => {
    const far = { ...unitView, left: -35, width: 70, top: -16, height: 58 };
    const lines = (view: typeof unitView): number =>
      fieldScene(handMadeField, view).filter((item) => item.kind === 'line' && item.style === 'paint').length;
    // Near: the restraining line. Far: also two box sides, two sidelines and the end line.
    expect([lines(unitView), lines(far)]).toEqual([1, 6]);
  });

  it('runs the restraining line to the sidelines where the code has no box', () => {
    const items = fieldScene({ ...handMadeField, boxHalfWidth: null }, { ...unitView, left: -35, width: 70 });
    expect(items).toContainEqual({ kind: 'line', style: 'paint', from: { x: -30, y: 20 }, to: { x: 30, y: 20 } });
  });
});
