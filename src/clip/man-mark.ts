import { svgElement } from './svg-element.ts';

/** Units of a mark a yard, as the shapes and letters of every drawing are measured (`pxPerYard`). */
export const unitsPerYard = 21;
/** The sizes of the marks, yd: those of a large field (`usualSizes`). */
export const attackerRadius = 1.05;
const crossHalf = 0.62;
export const ballRadius = 0.42;
/** Of the rings round an open man and round him whose view it is, in radii of his circle. */
const openRing = 1.35;
const myRing = 1.6;
/** Where a defender's name and an open man's word stand below his middle, yd. */
export const nameBelow = 1.35;
const wordBelow = 2.05;

/** What of a man's mark changes while a play runs. */
export interface ManMark {
  readonly group: SVGGElement;
  readonly showBall: (hasBall: boolean) => void;
  readonly showOpen: (word: string | undefined) => void;
  readonly showMine: (isMine: boolean) => void;
}

/** A circle with his spot: filled when he has the ball, ringed when he is open. */
export function attackerMark(spot: string): ManMark {
  const group = svgElement('g', 'man');
  const mine = svgElement('circle', 'me', { r: units(attackerRadius * myRing) });
  const ring = svgElement('circle', 'openRing', { r: units(attackerRadius * openRing) });
  const disc = svgElement('circle', 'attacker', { r: units(attackerRadius) });
  const letters = word('attackerText', spot, 0, 19);
  const open = word('openText', '', units(wordBelow), 17);
  group.append(mine, ring, disc, letters, open);
  return {
    group,
    showBall: (hasBall) => {
      disc.setAttribute('class', hasBall ? 'carrier' : 'attacker');
      letters.setAttribute('class', hasBall ? 'carrierText' : 'attackerText');
    },
    showOpen: (text) => {
      ring.setAttribute('display', text === undefined ? 'none' : 'inline');
      open.textContent = text ?? '';
    },
    showMine: (isMine) => mine.setAttribute('display', isMine ? 'inline' : 'none'),
  };
}

/** What of a defender's mark changes: on which side of him his name is written. */
export interface DefenderMark {
  readonly group: SVGGElement;
  readonly nameAbove: (isAbove: boolean) => void;
}

/** A cross with his name below or above it. */
export function defenderMark(name: string): DefenderMark {
  const group = svgElement('g', 'man');
  const h = units(crossHalf);
  const d = `M${-h} ${-h}L${h} ${h}M${-h} ${h}L${h} ${-h}`;
  const letters = word('defenderText', name, 0, 18);
  group.append(svgElement('path', 'defenderHalo', { d }), svgElement('path', 'defender', { d }), letters);
  return {
    group,
    nameAbove: (isAbove) =>
      letters.setAttribute('transform', `translate(0 ${units(isAbove ? -nameBelow : nameBelow)})`),
  };
}

/** A square with a G. */
export function keeperMark(): SVGGElement {
  const group = svgElement('g', 'man');
  const h = units(crossHalf);
  const square = { x: -h, y: -h, width: 2 * h, height: 2 * h };
  group.append(svgElement('rect', 'keeper', square), word('keeperText', 'G', 0, 16));
  return group;
}

export function ballMark(): SVGGElement {
  const group = svgElement('g', 'man');
  group.append(svgElement('circle', 'ball', { r: units(ballRadius) }));
  return group;
}

// The middle of a letter's height is about .36 of its size above the line it stands on (as `sceneToSvg` has it).
function word(look: string, content: string, below: number, size: number): SVGTextElement {
  const text = svgElement('text', look, { 'text-anchor': 'middle', y: below + 0.36 * size });
  text.textContent = content;
  return text;
}

function units(yards: number): number {
  return yards * unitsPerYard;
}
