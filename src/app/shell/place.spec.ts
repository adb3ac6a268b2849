import { describe, expect, it } from 'vitest';
import { addressOf, type Place, placeOf } from './place.ts';

const places: readonly Place[] = [
  { kind: 'play', play: undefined },
  { kind: 'play', play: 'lantern' },
  { kind: 'play', play: 'a/b c%' },
  { kind: 'reads', play: undefined },
  { kind: 'reads', play: 'ferry' },
  { kind: 'teach', part: 'sheets', play: undefined },
  { kind: 'teach', part: 'quiz', play: 'a/b c%' },
  { kind: 'team' },
  { kind: 'opponents', opponent: undefined },
  { kind: 'opponents', opponent: 'copper-falls' },
  { kind: 'opponents', opponent: 'copper-falls', part: 'film' },
  { kind: 'bench' },
  { kind: 'season' },
  { kind: 'opponents', opponent: 'copper-falls', part: 'find-out' },
  { kind: 'playbook' },
];

describe('an address', () => {
  it.each(places)('brings back to its place: %o', (place) => {
    expect(placeOf(addressOf(place))).toEqual(place);
  });

  it.each(['', '#', '#/', '#/nowhere', '#/play/'])('that is none of ours leads to the play: %s', (address) => {
    expect(placeOf(address)).toEqual({ kind: 'play', play: undefined });
  });

  it.each(['#/teach', '#/teach/', '#/teach/nothing'])(
    'of nothing that is taught leads to the sheets: %s',
    (address) => {
      expect(placeOf(address)).toEqual({ kind: 'teach', part: 'sheets', play: undefined });
    },
  );

  it('that was typed wrong is taken as it stands', () => {
    expect(placeOf('#/play/50%')).toEqual({ kind: 'play', play: '50%' });
  });
});
