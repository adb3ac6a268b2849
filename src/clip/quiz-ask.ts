import type { ClipScheme, Quiz, QuizQuestion } from '../render/index.ts';
import { cueShapes } from './cue-shapes.ts';
import { type Film, filmOf, isOn, manAt, offenseCount, saidAt } from './film.ts';
import { button, element, part, showOnly } from './page-element.ts';
import { createPicture, type Picture } from './picture.ts';
import { type Chosen, lowerFirst, showAnswer } from './quiz-answer.ts';
import { sections } from './quiz-start.ts';
import { svgElement } from './svg-element.ts';

/** How questions are asked of one player. */
export interface AskOptions {
  readonly hasClock: boolean;
  readonly wholeField: boolean;
  /** Where he stands in the round: "Question 3, 7 to go". */
  readonly progress: string;
  /** Told what he chose and after how many seconds; says whether the question comes back in this round. */
  readonly answered: (chosen: Chosen, seconds: number) => boolean;
  readonly next: () => void;
  /** Ends the round where it is. */
  readonly stop: () => void;
  /** Whether anything is left to ask once this question is answered. */
  readonly isMoreToCome: () => boolean;
}

/** The longest that one picture may stand for, s: who comes back to a page that was hidden finds it where he left it. */
const longestFrame = 0.1;

interface Asking {
  readonly quiz: Quiz;
  readonly question: QuizQuestion;
  readonly options: AskOptions;
  phase: 'runUp' | 'choose' | 'answer';
  film: Film;
  picture: Picture;
  /** Seconds of the film that is shown, and whether it goes on. */
  time: number;
  runs: boolean;
  /** Seconds since he may choose. */
  waited: number;
}

let asking: Asking | null = null;
const isCalm = matchMedia('(prefers-reduced-motion: reduce)').matches;

/** Shows a question: what led to it, then its choices under a clock, then what is right. One at a time. */
export function askQuestion(quiz: Quiz, question: QuizQuestion, options: AskOptions): void {
  const film = filmOf(question.before);
  const now: Asking = {
    quiz,
    question,
    options,
    phase: 'runUp',
    film,
    picture: createPicture(film, quiz.spots),
    // Who wants less motion sees the moment alone, with the ways of its last second.
    time: isCalm ? film.end : 0,
    runs: !isCalm,
    waited: 0,
  };
  asking = now;
  part('progress').textContent = options.progress;
  part('prompt').textContent = `You are ${spotOf(now)}`;
  part('said').textContent = 'Watch: the play stops when you have to choose.';
  part('told').textContent = '';
  part('choices').replaceChildren();
  part('answer').hidden = true;
  part('choices').hidden = false;
  part('cues').replaceChildren();
  part('clock').classList.toggle('off', !options.hasClock);
  showLeft(1);
  showOnly('ask', sections, 'prompt');
  show(now);
  if (isCalm) beginChoice(now);
}

/** Keeps the page moving; called once. */
export function runQuestions(): void {
  let before = performance.now();
  const frame = (time: number): void => {
    const seconds = Math.min(Math.max((time - before) / 1000, 0), longestFrame);
    before = time;
    if (asking !== null) advance(asking, seconds);
    requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
  new ResizeObserver(() => asking && show(asking)).observe(part('field'));
  part('next').addEventListener('click', () => asking?.options.next());
  part('stop').addEventListener('click', () => asking?.options.stop());
  part('field').addEventListener('click', ({ clientX, clientY }) => asking && tapField(asking, clientX, clientY));
  document.addEventListener('keydown', chooseByKey);
}

function advance(now: Asking, seconds: number): void {
  if (now.runs) {
    now.time = Math.min(now.time + seconds, now.film.end);
    if (now.time >= now.film.end) now.runs = false;
    show(now);
    if (now.phase === 'answer') part('said').textContent = saidAt(now.film, now.time) || 'From the moment on:';
    if (!now.runs && now.phase === 'runUp') beginChoice(now);
  } else if (now.phase === 'choose') {
    now.waited += seconds;
    if (!now.options.hasClock) return;
    const left = 1 - now.waited / now.quiz.seconds;
    showLeft(isCalm ? Math.ceil(left * now.quiz.seconds) / now.quiz.seconds : left);
    if (left <= 0) answer(now, 'late');
  }
}

function show({ picture, time, question, options }: Asking): void {
  picture.show(time, options.wholeField ? -1 : question.carrier);
}

function showLeft(share: number): void {
  part('left').style.transform = `scaleX(${Math.max(0, Math.min(share, 1))})`;
}

function beginChoice(now: Asking): void {
  const { question } = now;
  now.phase = 'choose';
  part('prompt').textContent = `You are ${spotOf(now)} with the ball. What do you do?`;
  part('said').textContent = question.choices.some(({ target }) => target >= 0)
    ? 'Tap a choice, or a man with a number.'
    : 'Tap a choice.';
  part('choices').replaceChildren(
    ...question.choices.map(({ words }, at) =>
      button('', () => answer(now, at), element('span', 'key', String(at + 1)), element('span', '', words)),
    ),
  );
  question.choices.forEach(({ target }, at) => {
    const man = now.picture.attackers[target];
    man?.classList.add('canTap');
    man?.append(badge(man, at + 1));
  });
  const words = momentWords(now);
  part('field').setAttribute('aria-label', words);
  part('told').textContent = words;
  part('prompt').focus({ preventScroll: true });
}

/** The number of a choice beside the man whom it is about, clear of his letters and inside the picture. */
function badge(man: SVGGElement, number: number): SVGGElement {
  const field = part('field').getBoundingClientRect();
  const place = man.getBoundingClientRect();
  const isAtEdge = place.right + place.width / 2 > field.right;
  const group = svgElement('g', 'badgeGroup', { transform: `translate(${isAtEdge ? -22 : 22} -20)` });
  const text = svgElement('text', 'badgeText', { y: 6, 'text-anchor': 'middle' });
  text.textContent = String(number);
  group.append(svgElement('circle', 'badge', { r: 13 }), text);
  return group;
}

function answer(now: Asking, chosen: Chosen): void {
  if (now.phase !== 'choose') return;
  now.phase = 'answer';
  const comesBack = now.options.answered(chosen, now.waited);
  part('choices').hidden = true;
  part('answer').hidden = false;
  part('clock').classList.add('off');
  part('stop').hidden = !now.options.isMoreToCome();
  showAnswer(now.question, chosen, comesBack);
  showMoment(now);
  part('watch').replaceChildren(...watchButtons(now, chosen));
  part('prompt').focus({ preventScroll: true });
}

/** The moment again, with what there was to see. */
function showMoment(now: Asking): void {
  put(now, now.question.before, now.film.end);
  now.time = now.film.end;
  now.runs = false;
  part('cues').replaceChildren(...cueShapes(now.question.marks));
  show(now);
}

function watchButtons(now: Asking, chosen: Chosen): readonly HTMLButtonElement[] {
  const { choices, best } = now.question;
  const watch = (at: number, words: string): HTMLButtonElement =>
    button(
      '',
      () => {
        part('cues').replaceChildren();
        put(now, choices[at]!.after, 0);
        now.runs = true;
        part('field').scrollIntoView({ block: 'nearest' });
      },
      words,
    );
  const mine =
    chosen === 'late' || chosen === best ? [] : [watch(chosen, `Watch yours: ${lowerFirst(choices[chosen]!.words)}`)];
  return [
    watch(best, `Watch: ${lowerFirst(choices[best]!.words)}`),
    ...mine,
    ...(mine.length === 0 ? [button('', () => showMoment(now), 'Back to the moment')] : []),
  ];
}

function put(now: Asking, scheme: ClipScheme, time: number): void {
  now.film = filmOf(scheme);
  now.picture = createPicture(now.film, now.quiz.spots);
  now.time = Math.min(time, now.film.end);
  now.runs = false;
}

/** A tap may miss a man by this much, px: a thumb is wide. */
const nearEnough = 32;

/** Chooses the man nearest to a tap, of those to whom he can throw. */
function tapField(now: Asking, x: number, y: number): void {
  if (now.phase !== 'choose') return;
  const distances = now.question.choices.map(({ target }) => {
    const box = now.picture.attackers[target]?.querySelector('.attacker, .carrier')?.getBoundingClientRect();
    return box === undefined
      ? Number.POSITIVE_INFINITY
      : Math.hypot(x - (box.left + box.width / 2), y - (box.top + box.height / 2));
  });
  const nearest = Math.min(...distances);
  if (nearest <= nearEnough) answer(now, distances.indexOf(nearest));
}

function chooseByKey(event: KeyboardEvent): void {
  if (asking === null || part('ask').hidden || event.altKey || event.ctrlKey || event.metaKey) return;
  const at = Number(event.key) - 1;
  if (Number.isInteger(at) && at >= 0 && at < asking.question.choices.length) answer(asking, at);
}

/** The moment for who cannot see it: how near the nearest defender is to each of the six. */
function momentWords({ film, question, quiz }: Asking): string {
  const { spots } = quiz;
  const nearest = (man: number): number =>
    Math.min(
      ...film.x_byMan
        .slice(offenseCount, -1)
        .map((_, index) => offenseCount + index)
        .filter((defender) => isOn(film, defender, film.end))
        .map((defender) => {
          const [one, other] = [manAt(film, man, film.end), manAt(film, defender, film.end)];
          return Math.hypot(one.x - other.x, one.y - other.y);
        }),
    );
  const yards = (man: number): string => `${nearest(man).toFixed(0)} yd`;
  const mates = spots.flatMap((spot, man) => (man === question.carrier ? [] : [`${spot} ${yards(man)}`]));
  return `${spots[question.carrier]} has the ball, the nearest defender ${yards(question.carrier)} away. From the others he is: ${mates.join(', ')}.`;
}

function spotOf({ quiz, question }: Asking): string {
  return quiz.spots[question.carrier] ?? '';
}
