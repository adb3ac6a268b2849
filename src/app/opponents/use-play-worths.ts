import { useEffect, useMemo, useState } from 'react';
import type { Opponent, Playbook, PlayEntry } from '../../playbook/index.ts';
import type { AnswersSnapshot } from '../answers/answers-snapshot.ts';
import type { Ask } from '../answers/ask.ts';
import { readPlayOf } from '../play/play-reading.ts';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import { schemeInfo } from './scheme-info.ts';
import { sharesOf } from './shares.ts';
import { nextToSharpen, type PlayWorth } from './worth-rounds.ts';

export interface PlayWorths {
  readonly plays: readonly PlayEntry[];
  readonly known: ReadonlyMap<string, PlayWorth>;
  /** The play that is worked on now. */
  readonly current: string | undefined;
}

/** As many answers as are remembered, with some to spare: the records of `createAnswers`. */
const sharpenedAtOnce = 60;
/** The same trials for every play and scheme, those of the Play screen: so they share their luck, and its answers. */
const seed = 20_260;

/** What each play that is not put away is worth against an opponent's mix; worked on while `wanted`, one play after the other. */
export function usePlayWorths(opponent: Opponent, wanted: boolean): PlayWorths {
  const { answers } = useDesk();
  const playbook = usePlaybook();
  const { format, version, team, sets, settings, schemes } = playbook;
  // Names and notes change no answer: the text stands for what does.
  const mixText = JSON.stringify([
    ...[opponent.id, opponent.schemes ?? {}],
    ...[opponent.discipline ?? {}, opponent.keeper ?? []],
  ]);
  const plays = useMemo(() => playbook.plays.filter((play) => play.archived !== true), [playbook.plays]);
  const standing = useMemo(
    (): Playbook => ({
      format,
      version,
      team,
      ...(sets && { sets }),
      plays: [],
      ...(schemes && { schemes }),
      ...(settings && { settings }),
    }),
    [format, version, team, sets, settings, schemes],
  );
  const [known, setKnown] = useState<ReadonlyMap<string, PlayWorth>>(new Map());
  const [current, setCurrent] = useState<string>();
  useEffect(() => {
    const [id, weights, discipline] = JSON.parse(mixText) as [string, Record<string, number>, Opponent['discipline']];
    const parts = sharesOf(weights).filter((part) => schemeInfo(standing, part.scheme) !== undefined);
    // What stood there is of another mix or team now.
    setKnown((before) => new Map([...before].map(([play, worth]) => [play, { ...worth, coarse: true }])));
    if (!wanted || parts.length === 0 || plays.length === 0) return undefined;
    const found = new Map<string, PlayWorth>();
    const most = Math.max(2, Math.floor(sharpenedAtOnce / parts.length));
    const against = { ...standing, opponents: [{ id, name: id, ...(discipline && { discipline }) }] };
    let asked: Ask | undefined;
    let isOver = false;
    const learn = (play: string, worth: PlayWorth): void => {
      found.set(play, worth);
      setKnown((before) => new Map(before).set(play, worth));
    };
    const goOn = (): void => {
      if (isOver) return;
      const next = nextToSharpen(
        plays.map((play) => play.id),
        found,
        most,
      );
      setCurrent(next);
      if (next === undefined || next === asked?.play) return;
      const entry = plays.find((play) => play.id === next)!;
      if (!canBePlayed(standing, entry)) {
        learn(next, { goals: null, coarse: false, ended: true, reason: 'It has something to fix first.' });
        setTimeout(goOn);
        return;
      }
      asked = {
        playbook: { ...against, plays: [entry] },
        play: next,
        schemes: parts.map(({ scheme }) => scheme),
        weights: parts.map(({ weight }) => weight),
        opponent: id,
        side: 'right',
        penalty: null,
        level: null,
        seed,
      };
      // The play before is no measure for this one.
      answers.dropBaseline();
      answers.ask(asked);
    };
    const stop = answers.subscribe(() => {
      const snapshot = answers.snapshot();
      if (asked === undefined || snapshot.ask !== asked) return;
      learn(asked.play, worthOf(snapshot));
      // Not from inside the news of the last answer.
      setTimeout(goOn);
    });
    goOn();
    return () => {
      isOver = true;
      stop();
      setCurrent(undefined);
      // Nobody looks any more: nothing is left to be counted.
      if (asked !== undefined && answers.snapshot().ask === asked) answers.ask({ ...asked, schemes: [], weights: [] });
    };
  }, [answers, standing, plays, mixText, wanted]);
  return { plays, known, current };
}

/** Whether a play is free of errors, whatever own schemes are. */
function canBePlayed(standing: Playbook, entry: PlayEntry): boolean {
  const { schemes: _, ...rest } = standing;
  return readPlayOf(rest, entry).isWhole;
}

function worthOf({ overall, schemes, finished, failure }: AnswersSnapshot): PlayWorth {
  const reasons = [...new Set(schemes.flatMap(({ reason }) => reason ?? []))];
  return {
    goals: overall?.goals ?? null,
    coarse: overall?.coarse ?? true,
    ended: finished || failure !== null || schemes.every(({ state }) => state === 'refused'),
    reason: failure ?? reasons.join(' '),
  };
}
