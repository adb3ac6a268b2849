import { describe, expect, it } from 'vitest';
import { schemesFor } from '../../engine/index.ts';
import { demoPlaybook, parsePlaybook } from '../../playbook/index.ts';
import { papers } from '../../render/index.ts';
import { answerRequest, type TrialPool } from '../../worker/index.ts';
import { type ManDownQuestion, manDownAnswers, theirPlaybook } from './man-down.ts';
import { manDownContent, printedManDown } from './man-down-sheet.ts';

const pool: TrialPool = {
  threads: 1,
  answer: (requests) => Promise.resolve(requests.map(answerRequest)),
  close: () => Promise.resolve(),
};
const asked: ManDownQuestion = {
  play: 'lantern',
  runs: 'set',
  side: 'right',
  level: null,
  schemes: ['box-zone', 'shutoff'],
  penalty: null,
  seed: 1,
  trials: 12,
};
const plays = demoPlaybook.plays.map(({ id }) => id);
const wishes = { opponent: 'River Bend', paper: 'letter', date: '14 March 2026' } as const;

describe('their man-up unit', () => {
  it.each(plays.flatMap((play) => (['set', 'play'] as const).map((runs) => ({ play, runs }))))(
    'is a playbook without a fault: $play, $runs',
    ({ play, runs }) => {
      for (const side of ['left', 'right'] as const) {
        const theirs = theirPlaybook(demoPlaybook, { ...asked, play, runs, side });
        const { diagnostics } = parsePlaybook(JSON.stringify(theirs));
        expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
      }
    },
  );

  it('has the grades that are said of its spots, and is played against as well as is said of us', () => {
    const theirs = theirPlaybook(demoPlaybook, { ...asked, grades: { TR: { shoot: 5 } }, discipline: 'sharp' });
    expect(theirs.team.roster.filter(({ grades }) => grades !== undefined).map(({ name }) => name)).toEqual(['TR']);
    expect(theirs.opponents?.[0]?.discipline).toEqual({ all: 'sharp' });
  });
});

describe('what each scheme of ours concedes', () => {
  it('comes least first, with the shots that it gives up, those that cost most first', async () => {
    const answers = await manDownAnswers(pool, demoPlaybook, asked);
    expect(answers.map(({ trials }) => trials)).toEqual([12, 12]);
    expect(answers[0]!.goals.mean).toBeLessThanOrEqual(answers[1]!.goals.mean);
    for (const { breaks } of answers) {
      const goals = breaks.map((one) => one.goals);
      expect(goals).toEqual([...goals].sort((one, other) => other - one));
    }
  });

  it('is more when they have better shooters', async () => {
    const better = {
      WL: { shoot: 5 },
      WR: { shoot: 5 },
      TL: { shoot: 5 },
      TR: { shoot: 5 },
      C: { inside: 5, shoot: 5 },
    };
    const schemes = ['box-zone'];
    const [usual] = await manDownAnswers(pool, demoPlaybook, { ...asked, schemes, trials: 60 });
    const [strong] = await manDownAnswers(pool, demoPlaybook, { ...asked, schemes, trials: 60, grades: better });
    expect(strong!.goals.mean).toBeGreaterThan(usual!.goals.mean);
  });
});

describe('the sheet', () => {
  it.each(plays)('of every scheme against the set of %s fits on one page of either paper', (play) => {
    for (const scheme of [...schemesFor(5).map(({ id }) => id), 'northgate-net']) {
      for (const paper of ['letter', 'a4'] as const) {
        const question = { ...asked, play, schemes: [scheme] };
        const content = manDownContent(demoPlaybook, question, [], { ...wishes, paper });
        const [page] = printedManDown(content).pages;
        const words = page!.marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
        expect(words.every(({ at }) => at.y < papers[paper].height - 20 && at.x < papers[paper].width - 30)).toBe(true);
        for (const man of content.men) expect(words.some(({ text }) => text === man.toUpperCase())).toBe(true);
      }
    }
  });

  // "TR: holds his place, watches TR": ours and theirs go by the same places.
  it('says of each man of theirs that he is theirs', () => {
    const { rows, spots } = manDownContent(demoPlaybook, { ...asked, schemes: ['box-zone'] }, [], wishes);
    for (const duty of rows.flatMap(({ duties }) => duties)) {
      const named = spots.some(({ id }) => duty.split(/[ ,]+/).includes(id));
      expect(/their [A-Z]/.test(duty), duty).toBe(named);
    }
  });

  it('is of the scheme that concedes least, and names the men as they stand on its side', async () => {
    const answers = await manDownAnswers(pool, demoPlaybook, { ...asked, side: 'left' });
    const content = manDownContent(demoPlaybook, { ...asked, side: 'left' }, answers, wishes);
    expect(content.answers[0]!.scheme).toBe(content.scheme);
    const tr = content.men.indexOf('tr');
    if (tr >= 0)
      expect(content.rows[0]!.places[tr]!.x).toBeGreaterThan(content.rows[0]!.places[content.men.indexOf('tl')]!.x);
  });
});
