import type { Quiz } from '../render/index.ts';
import { part, showOnly } from './page-element.ts';
import { dueOn, nextDay } from './quiz-calendar.ts';
import { type KeptCalendar, loadCalendar, today } from './quiz-storage.ts';

/** What a player chose before he began. */
export interface Player {
  readonly number: number;
  /** Questions of this round. */
  readonly questions: readonly number[];
  /** Questions that he wants to know, due or not. */
  readonly wanted: readonly number[];
  readonly hasClock: boolean;
  readonly wholeField: boolean;
  readonly kept: KeptCalendar;
}

export const sections = ['start', 'ask', 'end'] as const;

/** Listens to the start of the page; `begin` is told who plays which questions. */
export function listenToStart(quiz: Quiz, begin: (player: Player) => void): { readonly show: () => void } {
  const buttons = Array.from(part('numbers').querySelectorAll('button'));
  const other = part<HTMLInputElement>('other');
  let man = -1;
  const refresh = (): void => showChoice(quiz, man, numberOf(quiz, man));
  const press = (pressed: number): void => {
    man = pressed;
    for (const [at, each] of buttons.entries()) each.setAttribute('aria-pressed', String(at === man));
    refresh();
  };
  for (const [index, one] of buttons.entries()) {
    one.addEventListener('click', () => {
      other.value = '';
      press(index);
    });
  }
  other.addEventListener('input', () => press(-1));
  part('which').addEventListener('change', refresh);
  part('begin').addEventListener('click', () => {
    const number = numberOf(quiz, man);
    if (number !== undefined) begin(playerOf(quiz, man, number));
  });
  refresh();
  return {
    show: () => {
      refresh();
      showOnly('start', sections, 'who');
    },
  };
}

function playerOf(quiz: Quiz, man: number, number: number): Player {
  const wanted = wantedBy(quiz, man);
  const kept = loadCalendar(quiz.id, number, quiz.questions.length);
  const due = dueOn(kept.calendar, today(), wanted);
  return {
    number,
    wanted,
    questions: due.length > 0 ? due : wanted,
    hasClock: !part<HTMLInputElement>('noClock').checked,
    wholeField: part<HTMLInputElement>('wholeField').checked,
    kept,
  };
}

/** The number that was tapped or typed; undefined while there is none. */
function numberOf({ numbers }: Quiz, man: number): number | undefined {
  if (man >= 0) return numbers[man];
  const typed = part<HTMLInputElement>('other').value.trim();
  return /^\d{1,3}$/.test(typed) ? Number(typed) : undefined;
}

function ownOf({ questions }: Quiz, man: number): readonly number[] {
  return questions.flatMap(({ carrier }, index) => (carrier === man ? [index] : []));
}

function wantedBy(quiz: Quiz, man: number): readonly number[] {
  const own = ownOf(quiz, man);
  const isMine = document.querySelector<HTMLInputElement>('input[name=which]:checked')?.value === 'mine';
  return isMine && own.length > 0 ? own : quiz.questions.map((_, index) => index);
}

function showChoice(quiz: Quiz, man: number, number: number | undefined): void {
  const own = ownOf(quiz, man).length;
  const all = quiz.questions.length;
  part('which').hidden = own === 0 || own === all;
  part('mineWords').textContent = `Only mine, with the ball at ${quiz.spots[man] ?? ''}: ${own}`;
  part('allWords').textContent = `The whole unit's: ${all}`;
  const begin = part<HTMLButtonElement>('begin');
  begin.disabled = number === undefined;
  part('due').textContent = '';
  begin.textContent = 'Begin';
  if (number === undefined) return;
  const { questions, wanted, kept } = playerOf(quiz, man, number);
  begin.textContent = `Begin: ${counted(questions.length, 'question')}`;
  part('due').textContent = dueWords(wanted, kept);
}

function dueWords(wanted: readonly number[], { calendar, isKept }: KeptCalendar): string {
  if (calendar.rounds === 0) return '';
  const due = dueOn(calendar, today(), wanted).length;
  if (!isKept) return '';
  if (due === 0)
    return `Nothing is due before ${dayWords(nextDay(calendar, wanted) - today())}. You can practise all the same.`;
  return due === wanted.length
    ? ''
    : `${counted(due, 'question')} of ${wanted.length} ${due === 1 ? 'is' : 'are'} due today.`;
}

/** "tomorrow", "in 3 days". */
export function dayWords(days: number): string {
  return days <= 1 ? 'tomorrow' : `in ${days} days`;
}

export function counted(value: number, one: string): string {
  return `${value} ${value === 1 ? one : `${one}s`}`;
}
