import type { Playbook, PlayEntry, ReadEntry } from '../../playbook/index.ts';
import { type Facts, factsOf, line } from './difference.ts';
import { type PhraseSentences, phraseSentences } from './phrase-sentences.ts';
import { placeText } from './place-text.ts';

type Pairs = (readonly [string, readonly string[]])[];

/** All that a play says, in a coach's words. The playbook is the one that it stands in: its sets give the spots their places. */
export function playFacts(play: PlayEntry, playbook: Playbook): Facts {
  const { start, reset, lastTen } = play;
  const words = phraseSentences(playbook, play, play.beats);
  return factsOf([
    ['Name', line(play.name)],
    ['Set', line(setName(play.set, playbook))],
    ...Object.entries(play.spots ?? {}).map(([id, [x, y]]) => [`Place of ${id}`, [placeText(x, y)]] as const),
    ['The ball at the start', [`with ${start.ball}`]],
    ['The restart', [`at ${placeText(start.restart[0], start.restart[1])}`]],
    ...scriptFacts(play.beats, play.reads, words, ''),
    ['When nothing opens', [resetWords(reset)]],
    ...(lastTen === undefined ? [] : lastTenFacts(play, lastTen, playbook)),
    ['Tags', play.tags ?? []],
    ['Archived', line(play.archived === true ? 'yes' : undefined)],
    ['Notes', line(play.notes)],
  ]);
}

function lastTenFacts(play: PlayEntry, lastTen: NonNullable<PlayEntry['lastTen']>, playbook: Playbook): Pairs {
  const words = phraseSentences(playbook, play, lastTen.beats ?? play.beats);
  return scriptFacts(lastTen.beats ?? [], lastTen.reads, words, 'Last ten seconds: ');
}

function scriptFacts(
  beats: PlayEntry['beats'],
  reads: readonly ReadEntry[] | undefined,
  words: PhraseSentences,
  under: string,
): Pairs {
  const say = (text: string): string => (under === '' ? text : `${under}${text[0]!.toLowerCase()}${text.slice(1)}`);
  return [
    [say('Steps'), beats.map(({ id }) => `“${id}”`)],
    ...beats.flatMap(
      (beat): Pairs => [
        [say(`Step “${beat.id}” begins`), [words.trigger(beat.on)]],
        [say(`Step “${beat.id}”`), beat.do.map(words.action)],
      ],
    ),
    [say('Reads, in order'), (reads ?? []).map(words.read)],
  ];
}

function setName(id: string, { sets: own }: Playbook): string {
  return own?.find((set) => set.id === id)?.name ?? id;
}

function resetWords({ ball, then }: PlayEntry['reset']): string {
  return `back to ${ball}, ${then === 'again' ? 'and the play anew' : 'and play what comes open'}`;
}
