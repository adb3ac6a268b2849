import type { PracticeKind, PracticeSituation } from '../playbook/index.ts';

/** What a stretch of practice is called, on screen and on paper. */
export const practiceKindWords: Readonly<Record<PracticeKind, string>> = {
  talk: 'Talk at the board',
  keeper: 'Goalkeeper warm-up',
  walk: 'Walk-through',
  skeleton: 'Skeleton, no defense',
  dummy: 'Dummy defense',
  part: 'Part of the play',
  live: 'Live 6 v 5',
  situation: 'Situation',
  water: 'Water',
};

/** What a situation of a game is called. */
export const practiceSituationWords: Readonly<Record<PracticeSituation, string>> = {
  lastTen: 'Ten seconds left',
  flagDown: 'Flag down',
  restart: 'From the restart',
};
