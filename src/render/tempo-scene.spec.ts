import { describe, expect, it } from 'vitest';
import type { Point } from '../engine/index.ts';
import { handMadePlay } from './hand-made.fixture.ts';
import { handMadeChart, handMadeTempo } from './hand-made-tempo.fixture.ts';
import type { Primitive, SceneLayer, StyleName } from './scene.ts';
import { sceneToSvg } from './svg.ts';
import { type TempoChart, tempoChart } from './tempo-chart.ts';
import { tempoHitAreas, tempoHitAt, tempoIdText } from './tempo-hit-areas.ts';
import { ballShare, layOutTempo, rowTop, secondToFit, spotAt, timeToX, xToTime } from './tempo-layout.ts';
import { worthLevel } from './tempo-marks.ts';
import { tempoChartScene, tempoPlayhead } from './tempo-scene.ts';

const chart = handMadeChart();
const scene = tempoChartScene(chart);
const layout = layOutTempo(chart);

function styled(layer: SceneLayer, style: StyleName): readonly Primitive[] {
  return layer.items.filter((item) => item.style === style);
}

function texts(layer: SceneLayer, style: StyleName): readonly string[] {
  return styled(layer, style).flatMap((item) => (item.kind === 'text' ? [item.text] : []));
}

function ballLine(spot: string, time: number): Point {
  return { x: timeToX(layout, time), y: rowTop(layout, chart, spot)! + layout.sizes.row * ballShare };
}

describe('tempoChartScene', () => {
  it('holds the ball along the row of the man who has it', () => {
    expect(styled(scene, 'ballHeld')).toEqual([
      { kind: 'line', style: 'ballHeld', from: ballLine('P', 0), to: ballLine('P', 0.5) },
      { kind: 'line', style: 'ballHeld', from: ballLine('TR', 1), to: ballLine('TR', 2.5) },
      { kind: 'line', style: 'ballHeld', from: ballLine('WL', 3.25), to: ballLine('WL', 4) },
    ]);
  });

  it('hops from row to row, and tells a skip from a pass to the next man by line and word', () => {
    const [adjacent] = styled(scene, 'hopAdjacent');
    const [skip] = styled(scene, 'hopSkip');
    expect(adjacent?.kind === 'line' && adjacent.from).toEqual(ballLine('P', 0.5));
    expect(skip?.kind === 'line' && skip.from).toEqual(ballLine('TR', 2.5));
    expect(texts(scene, 'hopWord')).toEqual(['skip', 'shot']);
  });

  it('shoots upward to the goal with a double line', () => {
    const rails = styled(scene, 'hopShot');
    expect(rails).toHaveLength(2);
    for (const rail of rails) expect(rail.kind === 'line' && rail.to.y).toBeLessThan(layout.top);
    expect(styled(scene, 'goalNet')).toHaveLength(1);
  });

  it("draws what each man does in the trade's line, with its word", () => {
    // Straight: the run's and the step's shafts, a pick's line and bar. Paths: the zigzag and the seal's bracket.
    const doing = styled(scene, 'doing');
    expect(doing.filter(({ kind }) => kind === 'line')).toHaveLength(4);
    const paths = doing.flatMap((item) => (item.kind === 'path' ? [item.steps.length] : []));
    expect(paths).toContain(4);
    expect(Math.max(...paths)).toBeGreaterThan(6);
    expect(styled(scene, 'doingWait')).toHaveLength(1);
    expect([...texts(scene, 'doingWord')].sort()).toEqual(
      ['carry', 'replace', 'fake WR', 'pick WL', 'step in', 'seal C'].sort(),
    );
  });

  it('names each beat above its start, and what starts it, with a mark on the row of who does', () => {
    expect(texts(scene, 'beatName')).toEqual(['open', 'skip', 'finish']);
    expect(texts(scene, 'triggerText')).toEqual(['start', 'catch TR', 'catch WL']);
    expect(styled(scene, 'triggerMark')).toHaveLength(3);
  });

  it('never lets the names of two beats lie on each other', () => {
    const crowded: TempoChart = {
      ...chart,
      beats: [0, 0.1, 0.2, 0.3, 1, 1.1].map((starts, index) => ({ ...chart.beats[0]!, id: `beat-${index}`, starts })),
    };
    const { labels, top } = layOutTempo(crowded);
    for (const [index, a] of labels.entries()) {
      expect(a.y).toBeLessThan(top);
      for (const b of labels.slice(index + 1)) expect(b.y !== a.y || b.x >= a.x + a.width).toBe(true);
    }
  });

  it('branches a read to the row of the man whom it sends the ball to, with what has to be seen', () => {
    expect(texts(scene, 'readCue')).toEqual(['if open WL, left WL', 'always: shot', 'if pressed: hold']);
    const [stub] = styled(scene, 'readStub');
    expect(stub?.kind === 'line' && [stub.from.y, stub.to.y]).toEqual([ballLine('TR', 0).y, ballLine('WL', 0).y]);
    expect(styled(tempoChartScene(chart, { reads: false }), 'readStub')).toEqual([]);
  });

  it('shades a window by what it is worth, by tint and by how dense its hatching is', () => {
    const area = (style: StyleName): number => styled(scene, style).length;
    expect((['openTint1', 'openTint2', 'openTint3', 'openTint4'] as const).map(area)).toEqual([1, 0, 0, 1]);
    expect(texts(scene, 'openWorth')).toEqual(['.10', '.41']);
    const density = (worth: number): number => {
      const one = tempoChartScene({ ...chart, windows: [{ spot: 'C', opens: 1, closes: 3, worth }] });
      const [hatch] = styled(one, 'openHatch');
      return hatch?.kind === 'path' ? hatch.steps.length : 0;
    };
    const densities = [0.1, 0.2, 0.3, 0.4].map(density);
    for (const [index, lines] of densities.slice(1).entries()) expect(lines).toBeGreaterThan(1.3 * densities[index]!);
    expect(styled(tempoChartScene(chart, { windows: false }), 'openHatch')).toEqual([]);
  });

  it.each([
    [0, 1],
    [0.149, 1],
    [0.15, 2],
    [0.25, 3],
    [0.35, 4],
    [1, 4],
  ])('a worth of %d is of level %d', (worth, level) => {
    expect(worthLevel(worth)).toBe(level);
  });

  it('draws nothing outside its view, in any size', () => {
    for (const second of [2.2, 4.5, 9]) {
      const { items, view } = tempoChartScene(chart, { second });
      const [right, bottom] = [view.left + view.width, view.top + view.height];
      const points = items.flatMap((item) =>
        item.kind === 'line'
          ? [item.from, item.to]
          : item.kind === 'text'
            ? [item.at]
            : item.kind === 'circle'
              ? [item.centre]
              : item.steps.flatMap((step) => (step.kind === 'close' ? [] : [step.to])),
      );
      for (const { x, y } of points) {
        expect(x >= view.left && x <= right, `x ${x}`).toBe(true);
        expect(y >= view.top && y <= bottom, `y ${y}`).toBe(true);
      }
    }
  });

  it('shows a lost pass crossed out', () => {
    const ball = [{ ...handMadeTempo.ball[1]!, lost: 'dropped' }] as TempoChart['ball'];
    const lost = tempoChartScene({ ...chart, ball });
    expect(texts(lost, 'hopWord')).toEqual(['dropped']);
    expect(styled(lost, 'hopSkip')).toHaveLength(2);
  });

  it('draws the same file again', () => {
    expect(sceneToSvg(scene)).toMatchSnapshot();
  });
});

describe('the playhead', () => {
  it.each([
    [-1, 0],
    [2, 2],
    [99, chart.end],
  ])('of %d s stands at %d s', (time, shown) => {
    const [head] = styled(tempoPlayhead(chart, time), 'playhead');
    expect(head?.kind === 'line' && head.from.x).toBeCloseTo(timeToX(layout, shown), 9);
    expect(texts(tempoPlayhead(chart, time), 'playheadText')).toEqual([`${shown.toFixed(1)} s`]);
  });
});

describe('tempoHitAreas', () => {
  const areas = tempoHitAreas(chart);
  const find = (name: string) => areas.find(({ id }) => tempoIdText(id) === name);

  it('has one for each action and its ends, each trigger, each read, under names of their own', () => {
    const names = areas.map(({ id }) => tempoIdText(id));
    expect(new Set(names).size).toBe(names.length);
    expect(names).toHaveLength(9 * 3 + 3 + 3);
    expect(names).toEqual(
      expect.arrayContaining(['bar open 0', 'start skip 4', 'end finish 0', 'trigger skip', 'read 2']),
    );
  });

  it('lets a throw be taken where it leaves and where it arrives', () => {
    const at = (name: string): Point => {
      const { left, top, width, height } = find(name)!.area;
      return { x: left + width / 2, y: top + height / 2 };
    };
    for (const [name, spot, time] of [
      ['start open 2', 'P', 0.5],
      ['end open 2', 'TR', 1],
      ['start skip 4', 'TR', 2.5],
    ] as const) {
      expect(at(name).x).toBeCloseTo(ballLine(spot, time).x, 9);
      expect(at(name).y).toBeCloseTo(ballLine(spot, time).y, 9);
    }
  });

  it('says in words what can be taken hold of', () => {
    expect(find('bar open 0')!.label).toBe('P carries, 0.0 to 0.5 s');
    expect(find('end open 1')!.label).toBe('end: TL fills the empty place, 0.0 to 1.5 s');
    expect(find('trigger skip')!.label).toBe('"skip" starts when TR catches');
    expect(find('read 0')!.label).toContain('if WL is open');
  });

  it('leaves the middle of every bar to take hold of, however short it is', () => {
    for (const { id, area } of areas) {
      if (
        id.part !== 'bar' ||
        ['pass', 'shot'].includes(chart.beats.find((beat) => beat.id === id.beat)!.actions[id.action]!.action.kind)
      )
        continue;
      const own = areas.filter(
        (one) => 'beat' in one.id && 'action' in one.id && one.id.beat === id.beat && one.id.action === id.action,
      );
      const hit = tempoHitAt(own, area.left + area.width / 2, area.top + area.height / 2);
      expect(hit && tempoIdText(hit.id)).toBe(tempoIdText(id));
    }
  });

  it('finds nothing where nothing is', () => {
    expect(tempoHitAt(areas, -1, -1)).toBeUndefined();
  });
});

describe('the plane of a chart', () => {
  it('finds time and spot again from a place', () => {
    expect(xToTime(layout, timeToX(layout, 2.7))).toBeCloseTo(2.7, 9);
    for (const spot of chart.rows) expect(spotAt(layout, chart, rowTop(layout, chart, spot)! + 0.1)).toBe(spot);
    expect(spotAt(layout, chart, layout.top - 0.1)).toBeUndefined();
    expect(spotAt(layout, chart, layout.bottom + 0.1)).toBeUndefined();
    expect(rowTop(layout, chart, 'X')).toBeUndefined();
  });

  it('is as wide as it is asked to be', () => {
    expect(layOutTempo(chart, { second: secondToFit(chart, 50) }).view.width).toBeCloseTo(50, 9);
    expect(secondToFit(chart, 5, 2.2)).toBe(2.2);
  });

  it('has room for what no beat says', () => {
    const empty = tempoChart({ ...handMadePlay, beats: [] }, { beats: [], ball: [] });
    expect(tempoChartScene(empty).view.height).toBeGreaterThan(6 * layout.sizes.row);
  });
});
