import type { QuizChoice, QuizQuestion, Worth } from '../render/index.ts';
import { element, part } from './page-element.ts';
import { svgElement } from './svg-element.ts';

/** How an answer came out: the index of what was chosen, or none in time. */
export type Chosen = number | 'late';

/** Whether the answer counts as right. */
export function isRight({ choices }: QuizQuestion, chosen: Chosen): boolean {
  return chosen !== 'late' && choices[chosen]?.right === true;
}

/** Shows what is right, why, and what each choice is worth. `comesBack`: it will be asked again in this round. */
export function showAnswer(question: QuizQuestion, chosen: Chosen, comesBack: boolean): void {
  const right = isRight(question, chosen);
  part('prompt').textContent = verdictWords(question, chosen, right);
  part('verdict').className = `verdict ${right ? 'isRight' : 'isWrong'}`;
  part('reason').textContent = question.reason;
  part('taught').textContent = question.taught;
  part('taught').hidden = question.taught === '';
  part('said').textContent = `Against: ${question.before.name}.${comesBack ? ' This one comes back.' : ''}`;
  const byWorth = question.choices
    .map((_, at) => at)
    .sort((one, other) => meanOf(question, other) - meanOf(question, one));
  const most = Math.max(...question.choices.map(({ worth }) => worth[2]));
  part('worths').replaceChildren(...byWorth.map((at) => worthRow(question.choices[at]!, at === chosen, most)));
}

function verdictWords({ choices, best }: QuizQuestion, chosen: Chosen, right: boolean): string {
  const words = choices[best]?.words ?? '';
  if (right) return chosen === best ? 'Right.' : 'Right: as good as the best.';
  return chosen === 'late' ? `Time is up. Best: ${lowerFirst(words)}.` : `Not this time. Best: ${lowerFirst(words)}.`;
}

function worthRow({ words, worth, right, why }: QuizChoice, isMine: boolean, most: number): HTMLLIElement {
  const head = element(
    'div',
    'row',
    sign(right),
    element('span', '', element('b', '', words), `${right ? ', right' : ''}${isMine ? ', your choice' : ''}`),
    element('span', 'number', numberWords(worth)),
  );
  const bar = element('div', 'bar');
  const fill = element('i', '');
  const span = element('s', '');
  fill.style.width = `${share(worth[0], most)}%`;
  span.style.left = `${share(worth[1], most)}%`;
  span.style.width = `${share(worth[2], most) - share(worth[1], most)}%`;
  bar.append(fill, span);
  const row = element('li', `${right ? 'isRight' : 'isWrong'}${isMine ? ' mine' : ''}`, head, bar);
  if (why !== '') row.append(element('p', 'why quiet', why));
  return row;
}

/** A tick or a cross, drawn: not every phone has letters for them. The words beside it say the same. */
function sign(right: boolean): SVGSVGElement {
  const mark = svgElement('svg', 'sign', { viewBox: '0 0 20 20', 'aria-hidden': 'true' });
  mark.append(svgElement('path', '', { d: right ? 'M3 11l5 5L17 4' : 'M4 4l12 12M16 4L4 16' }));
  return mark;
}

function numberWords([mean, low, high]: Worth): string {
  return `${hundred(mean)} (${hundred(low)} to ${hundred(high)})`;
}

function hundred(goals: number): number {
  return Math.round(Math.max(0, goals) * 100);
}

function share(goals: number, most: number): number {
  return most > 0 ? Math.round((1000 * Math.max(0, goals)) / most) / 10 : 0;
}

function meanOf({ choices }: QuizQuestion, at: number): number {
  return choices[at]?.worth[0] ?? 0;
}

/** Words of a button inside a sentence. */
export function lowerFirst(words: string): string {
  return `${words.charAt(0).toLowerCase()}${words.slice(1)}`;
}
