import { expect, it } from 'vitest';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import { shutOffWords } from './shut-off-words.ts';

const play = toEnginePlay(demoPlaybook, 'lantern');
const numbers = play.spots.map((_, i) => 20 + i);
const at = play.spots.findIndex(({ id }) => id === 'WR');

it.each([
  ['the man and his spot', { play, numbers, shutOff: 'WR' }, `shuts off ${20 + at} at WR`],
  ['nobody', { play, numbers, shutOff: null }, ''],
  ['nothing before there is an answer', null, ''],
])('says %s', (_, cast, words) => expect(shutOffWords(cast)).toBe(words));
