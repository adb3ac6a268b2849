import { disciplines } from '../defense/discipline.ts';
import type { Discipline, Scheme } from '../defense/scheme.ts';
import { schemes } from '../defense/schemes.ts';
import { mirrorHand, mirrorPlay } from '../offense/mirror.ts';
import type { Play } from '../offense/play.ts';
import { sets } from '../offense/sets.ts';
import type { Athlete, Hand, Keeper, Level } from '../people/athlete.ts';
import { createAthlete, createKeeper } from '../people/create-athlete.ts';
import { mirrorCover } from '../people/keeper-cover.ts';
import type { Matchup, PenaltyPlan } from './matchup.ts';

// Whole matchups, made as a playbook would make them.

/** Round a 3-3 and back across it with a skip; no reads. */
export const samplePlay: Play = {
  id: 'sample-swing',
  name: 'Round and back across',
  spots: sets['3-3']!.spots,
  start: { ball: 'TR', restart: { x: 12, y: 21 } },
  beats: [
    { id: 'swing', when: { kind: 'start' }, actions: [{ kind: 'pass', by: 'TR', to: 'P', style: 'adjacent' }] },
    {
      id: 'over',
      when: { kind: 'catch', by: 'P' },
      actions: [
        { kind: 'pass', by: 'P', to: 'TL', style: 'adjacent' },
        { kind: 'run', run: 'pop', by: 'C', path: [{ x: 2, y: 9 }], go: 'now' },
      ],
    },
    {
      id: 'low',
      when: { kind: 'catch', by: 'TL' },
      actions: [{ kind: 'pass', by: 'TL', to: 'WL', style: 'adjacent' }],
    },
    { id: 'back', when: { kind: 'catch', by: 'WL' }, actions: [{ kind: 'pass', by: 'WL', to: 'P', style: 'skip' }] },
    { id: 'far', when: { kind: 'pass', from: 'WL', to: 'P' }, actions: [{ kind: 'hold', by: 'P', seconds: 1 }] },
  ],
  reads: [],
  reset: { ball: 'TR', then: 'again' },
};

/** Every kind of action, trigger, run and cue there is, in a 2-3-1, with a change for the last ten seconds. */
export const busyPlay: Play = {
  id: 'sample-busy',
  name: 'Everything at once',
  spots: sets['2-3-1']!.spots,
  start: { ball: 'TR', restart: { x: 6, y: 22 } },
  beats: [
    {
      id: 'begin',
      when: { kind: 'start' },
      actions: [
        { kind: 'carry', by: 'TR', path: [{ x: 11, y: 10 }] },
        { kind: 'run', run: 'replace', by: 'TL', path: [{ x: 1, y: 14 }], go: 'now' },
        { kind: 'pass', by: 'TR', to: 'TL', style: 'adjacent' },
      ],
    },
    {
      id: 'pick',
      when: { kind: 'call', beat: 'begin', seconds: 1.5 },
      actions: [
        { kind: 'pick', by: 'C', at: { x: -3, y: 6 }, on: 'WL' },
        {
          kind: 'run',
          run: 'cut',
          by: 'WL',
          path: [
            { x: -8, y: 7 },
            { x: -4, y: 9 },
          ],
          go: 'whenOpen',
        },
      ],
    },
    {
      id: 'look',
      when: { kind: 'catch', by: 'TL' },
      actions: [
        { kind: 'fake', by: 'TL', toward: 'WL' },
        { kind: 'seal', by: 'C', on: 'WR' },
        { kind: 'pass', by: 'TL', to: 'WR', style: 'skip' },
        {
          kind: 'run',
          run: 'sneak',
          by: 'X',
          path: [
            { x: 4, y: -2 },
            { x: 4, y: 3 },
          ],
          go: 'whenOpen',
        },
      ],
    },
    {
      id: 'finish',
      when: { kind: 'catch', by: 'WR' },
      actions: [
        { kind: 'hold', by: 'WR', seconds: 0.4 },
        { kind: 'pass', by: 'WR', to: 'C', style: 'feed' },
      ],
    },
    {
      id: 'flash',
      when: { kind: 'arrival', who: 'WL' },
      actions: [{ kind: 'run', run: 'flash', by: 'C', path: [{ x: 2, y: 7 }], go: 'now' }],
    },
  ],
  reads: [
    { carrier: 'WR', cues: [{ kind: 'iAmFree' }], then: { kind: 'stepIn', by: 'WR', to: { x: 7, y: 6 } } },
    {
      carrier: 'TL',
      cues: [{ kind: 'left', who: 'WL' }],
      then: { kind: 'pass', by: 'TL', to: 'WL', style: 'adjacent' },
    },
    {
      carrier: 'TR',
      during: 'begin',
      cues: [{ kind: 'iAmPressed' }, { kind: 'open', who: 'WR' }],
      then: { kind: 'pass', by: 'TR', to: 'WR', style: 'adjacent' },
    },
  ],
  reset: { ball: 'TL', then: 'again' },
  lastTen: {
    beats: [
      {
        id: 'now',
        when: { kind: 'start' },
        actions: [
          { kind: 'shot', by: 'TL' },
          { kind: 'pass', by: 'TR', to: 'TL', style: 'adjacent' },
        ],
      },
      { id: 'then', when: { kind: 'catch', by: 'TL' }, actions: [{ kind: 'shot', by: 'TL' }] },
    ],
    reads: [],
  },
};

export interface SampleChoice {
  readonly play?: Play;
  readonly scheme?: Scheme;
  readonly level?: Level;
  readonly discipline?: Discipline;
  readonly penalty?: Partial<PenaltyPlan>;
  readonly sense?: 1 | -1;
  /** Changes of every attacker, of every defender, of the keeper. */
  readonly six?: Partial<Athlete>;
  readonly defenders?: Partial<Athlete>;
  readonly keeper?: Partial<Keeper>;
}

/** Six usual men of a level against a scheme played by usual men of the same level. */
export function sampleMatchup(choice: SampleChoice = {}): Matchup {
  const { play = samplePlay, scheme = schemes['box-zone'], level = 'college', sense = 1 } = choice;
  const attacker = (hand: Hand): Athlete => ({ ...createAthlete({ level, hand, crosse: 'short' }), ...choice.six });
  const defender = (index: number): Athlete => ({
    ...createAthlete({ level, hand: 'right', crosse: scheme.shortSticks.includes(index) ? 'short' : 'pole' }),
    ...choice.defenders,
  });
  return {
    play,
    six: play.spots.map((spot) => attacker(spot.hand === 'either' ? 'both' : spot.hand)),
    scheme,
    defenders: scheme.names.map((_, index) => defender(index)),
    discipline: scheme.names.map(() => choice.discipline ?? disciplines.ordinary),
    keeper: { ...createKeeper({ level }), ...choice.keeper },
    ...(scheme.defenders < 6 && { released: createAthlete({ level, hand: 'right', crosse: 'pole' }) }),
    penalty: {
      seconds: 60,
      releasable: true,
      start: scheme.defenders < 6 ? 'restart' : 'flagDown',
      shotClock: null,
      ...choice.penalty,
    },
    sense,
    ...(scheme.id === 'shutoff' && { star: play.spots[0]!.id }),
  };
}

/** The same chance seen in a mirror: play, hands, the keeper's habits and sense turned over, men and scheme as they were. */
export function mirrorMatchup(matchup: Matchup): Matchup {
  const { cover } = matchup.keeper;
  const mirrored = {
    ...matchup,
    play: mirrorPlay(matchup.play),
    six: matchup.six.map((athlete) => ({ ...athlete, hand: mirrorHand(athlete.hand) })),
    ...(cover !== undefined && { keeper: { ...matchup.keeper, cover: mirrorCover(cover) } }),
    sense: -matchup.sense as 1 | -1,
  };
  const star = matchup.star === undefined ? -1 : matchup.play.spots.findIndex((spot) => spot.id === matchup.star);
  return star < 0 ? mirrored : { ...mirrored, star: mirrored.play.spots[star]!.id };
}
