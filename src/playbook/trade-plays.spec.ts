import { describe, expect, test } from 'vitest';
import { demoPlaybook } from './demo.ts';
import { diagnosticText } from './diagnostic.ts';
import { parsePlaybook } from './parse.ts';

// The standard actions of the trade, each as a play of ours: all can be written, and none is called wrong.
const plays = [
  {
    name: 'Round the horn, then one more',
    set: '3-3',
    start: { ball: 'WL', restart: [-21, 5] },
    beats: [
      { id: 'one', on: 'start', do: ['WL pass TL'] },
      { id: 'two', on: 'catch TL', do: ['TL pass P'] },
      { id: 'three', on: 'catch P', do: ['P pass TR', 'C cut to 2,6'] },
      { id: 'four', on: 'catch TR', do: ['TR pass WR', 'WL sneak to -5,3 when open'] },
      { id: 'five', on: 'catch WR', do: ['WR feed C'] },
    ],
    reads: [
      { carrier: 'TR', if: ['free'], then: 'shoot' },
      { carrier: 'WR', if: ['left WL'], then: 'skip WL' },
    ],
  },
  {
    name: 'Give and go with the hole filled',
    set: '3-2-1',
    start: { ball: 'P', restart: [0, 22] },
    beats: [
      { id: 'give', on: 'start', do: ['P pass TR'] },
      { id: 'go', on: 'pass P', do: ['P cut via 2,9 to 4,4', 'TL replace to P'] },
      { id: 'feed', on: 'call go + 1.2', do: ['TR feed P'] },
      { id: 'finish', on: 'catch P', do: ['P shoot'] },
    ],
    reads: [{ carrier: 'TR', if: ['pressed'], then: 'pass TL' }],
  },
  {
    name: 'Through cut to an overload, and on to X',
    set: '3-3',
    start: { ball: 'P', restart: [0, 22] },
    beats: [
      { id: 'give', on: 'start', do: ['P pass TR'] },
      { id: 'through', on: 'pass P to TR', do: ['P cut via 4,7 via 6,1 to 0,-6', 'TL replace to -2,14'] },
      { id: 'two-man', on: 'catch TR', do: ['TR hold 0.6', 'TR pass WR'] },
      { id: 'behind', on: 'catch WR', do: ['WR pass P'] },
      { id: 'look', on: 'catch P', do: ['P feed C'] },
    ],
    reads: [{ carrier: 'TR', if: ['open P'], then: 'feed P' }],
  },
  {
    name: 'Wheel on one trigger pass',
    set: '2-3-1',
    start: { ball: 'TL', restart: [-21, 12] },
    beats: [
      { id: 'trigger', on: 'start', do: ['TL pass TR'] },
      {
        id: 'turn',
        on: 'pass TL to TR',
        do: ['WR cut via 8,-2 to 4,-5', 'X cut via -5,-3 to -7,3', 'WL replace to TL', 'TL replace to 0,14'],
      },
      { id: 'over', on: 'catch TR', do: ['TR pass TL'] },
      { id: 'rip', on: 'catch TL', do: ['TL skip X'] },
      { id: 'finish', on: 'catch X', do: ['X shoot'] },
    ],
  },
  {
    name: 'Carry the seam, fake, throw back',
    set: '2-3-1',
    start: { ball: 'TR', restart: [21, 12] },
    beats: [
      { id: 'carry', on: 'start', do: ['TR carry to 0,12', 'WR replace to 9,11', 'C pop to 6,8'] },
      { id: 'back', on: 'arrive TR', do: ['TR fake TL', 'TR pass WR'] },
      { id: 'rip', on: 'catch WR', do: ['WR step to 7,10', 'WR shoot', 'X backup to 4,-10', 'TL getback to 0,22'] },
    ],
    reads: [{ carrier: 'TR', during: 'carry', if: ['open C'], then: 'feed C' }],
  },
  {
    name: 'Pick on the splitter before the skip',
    set: '2-2-2-low',
    start: { ball: 'TR', restart: [21, 12] },
    beats: [
      { id: 'set', on: 'start', do: ['CL pick at -6,8 on TL', 'CR seal on WR', 'TR hold 1', 'TR skip WL'] },
      { id: 'touch', on: 'catch WL', do: ['WL pass TL'] },
      { id: 'rip', on: 'catch TL', do: ['TL shoot'] },
    ],
  },
  {
    name: 'Shallow cut and roll back',
    set: '4-2',
    start: { ball: 'TR', restart: [21, 12] },
    beats: [
      { id: 'drift', on: 'start', do: ['TR carry to -2,13', 'TL cut via 1,9 to TR'] },
      { id: 'roll', on: 'arrive TR', do: ['TR pass TL'] },
      { id: 'rip', on: 'catch TL', do: ['TL shoot'] },
    ],
    reads: [{ carrier: 'TL', if: ['pressed'], then: 'pass TR' }],
  },
  {
    name: 'Two on the crease from behind',
    set: '1-4-1',
    start: { ball: 'X', restart: [0, -14.5] },
    beats: [
      { id: 'come', on: 'start', do: ['X carry to 4,-4', 'CL flash to -1,8', 'CR cut to 4,4'] },
      { id: 'feed', on: 'arrive X', do: ['X feed CR'] },
      { id: 'relay', on: 'catch CR', do: ['CR pass CL'] },
      { id: 'finish', on: 'catch CL', do: ['CL shoot'] },
    ],
    reads: [{ carrier: 'X', if: ['open CL'], then: 'feed CL' }],
  },
  {
    name: 'Series of cuts from set to set',
    set: '3-3',
    start: { ball: 'TR', restart: [21, 12] },
    beats: [
      { id: 'one', on: 'start', do: ['TR pass P', 'WL replace to 0,-5'] },
      { id: 'two', on: 'pass TR to P', do: ['TR cut via 7,8 to 3,5', 'C pop to -3,6'] },
      { id: 'three', on: 'catch P', do: ['P pass TL'] },
      { id: 'four', on: 'catch TL', do: ['TL skip WR'] },
      { id: 'five', on: 'catch WR', do: ['WR feed TR'] },
    ],
  },
];

describe('the actions of the trade can be written', () => {
  test.each(plays)('$name', (play) => {
    const entry = { id: 'it', reads: [], reset: { ball: play.start.ball, then: 'again' }, ...play };
    for (const level of ['12U', '14U', 'highSchool', 'college']) {
      const text = JSON.stringify({
        ...demoPlaybook,
        team: {
          ...demoPlaybook.team,
          level,
          roster: demoPlaybook.team.roster.map(({ measured: _, ...player }) => player),
        },
        plays: [entry],
      });
      const { diagnostics } = parsePlaybook(text);
      expect(diagnostics.filter((each) => each.severity !== 'note').map(diagnosticText)).toEqual([]);
    }
  });
});
