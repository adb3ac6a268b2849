import type { Quiz, ResultFile, RoundResult } from '../render/index.ts';
import { element, part, showOnly } from './page-element.ts';
import { type Calendar, dueOn, nextDay } from './quiz-calendar.ts';
import { type Round, toldAnswer } from './quiz-round.ts';
import { counted, dayWords, type Player, sections } from './quiz-start.ts';
import { today } from './quiz-storage.ts';
import { writeResultCode } from './write-result-code.ts';

/** Shows how a round went as far as it went, its code, what was missed and when it comes back. `goOn` asks what is left of it. */
export function showEnd(quiz: Quiz, player: Player, round: Round, calendar: Calendar, goOn: () => void): void {
  const asked = round.asked_byQuestion.flatMap((one, index) => (one.asked > 0 ? [{ ...one, index }] : []));
  const missed = asked.filter(({ since }) => since !== null);
  const first = asked.length - missed.length;
  part('score').textContent = `${first} of ${asked.length} right at once`;
  const found = missed.filter(({ since }) => since !== null && since > 0).length;
  part('scoreWords').textContent =
    round.queue.length === 0 ? scoreWords(missed.length, found) : stoppedWords(missed.length, found, round);
  showWhatNext(round.queue.length > 0, goOn);
  const result = resultOf(quiz, player, round, calendar);
  part('code').textContent = writeResultCode(result);
  part('copied').textContent = `It says number ${player.number} and what was right, and no name.`;
  part('missedPart').hidden = missed.length === 0;
  part('missed').replaceChildren(
    ...missed.map(({ index }) => {
      const { carrier, reason, before } = quiz.questions[index]!;
      return element('li', '', element('b', '', `${quiz.spots[carrier]}, ${before.name}. `), reason);
    }),
  );
  part('later').textContent = laterWords(player, calendar);
  part('save').onclick = () => saveFile(quiz, result);
  showOnly('end', sections, 'score');
}

/** Listens to what can be done at the end; `again` begins anew. */
export function listenToEnd(again: () => void): void {
  part('again').addEventListener('click', again);
  part('copy').addEventListener('click', () => void copyCode());
}

function scoreWords(missed: number, found: number): string {
  if (missed === 0) return 'Nothing missed.';
  if (found === missed)
    return `You missed ${missed === 1 ? 'one and had it' : `${missed} and had them`} right when ${missed === 1 ? 'it' : 'they'} came back.`;
  return `You missed ${missed}; ${found === 0 ? 'none' : found} of them ${found === 1 ? 'was' : 'were'} right when ${missed === 1 ? 'it' : 'they'} came back.`;
}

/** How far a round went that was stopped: what was not asked at all is left out of the code, too. */
function stoppedWords(missed: number, found: number, { queue, asked_byQuestion }: Round): string {
  const open = new Set(queue.filter((question) => asked_byQuestion[question]?.asked === 0)).size;
  const came = found === 0 ? '' : ` and had ${found} right when ${found === 1 ? 'it' : 'they'} came back`;
  const so = missed === 0 ? 'Nothing missed so far.' : `You missed ${missed}${came}.`;
  if (open === 0) return `${so} You stopped before all that you missed came back.`;
  return `${so} You stopped here: ${counted(open, 'question')} ${open === 1 ? 'was' : 'were'} not asked, and your code says so.`;
}

/** The one thing that is likely wanted now looks like it: to go on with a round that was stopped, else to begin another. */
function showWhatNext(isLeft: boolean, goOn: () => void): void {
  part('goOn').hidden = !isLeft;
  part('goOn').onclick = goOn;
  part('again').classList.toggle('main', !isLeft);
}

function resultOf(quiz: Quiz, { number }: Player, round: Round, { rounds }: Calendar): RoundResult {
  return {
    quiz: quiz.id,
    number,
    round: ((rounds - 1) % 32) + 1,
    answers: round.asked_byQuestion.map(toldAnswer),
  };
}

function laterWords({ wanted, kept }: Player, calendar: Calendar): string {
  if (!kept.isKept) {
    return 'This page may not keep dates on this phone. Come back tomorrow, then after 3 days, then after a week: that is what makes it stay.';
  }
  const days = nextDay(calendar, wanted) - today();
  const then = dueOn(calendar, today() + Math.max(days, 0), wanted).length;
  if (days <= 0) return `${counted(then, 'question')} more ${then === 1 ? 'is' : 'are'} due today.`;
  return `Come back ${dayWords(days)}: ${counted(then, 'question')} ${then === 1 ? 'is' : 'are'} due then. What you know comes later each time, what you missed the next day.`;
}

async function copyCode(): Promise<void> {
  const code = part('code');
  try {
    await navigator.clipboard.writeText(code.textContent ?? '');
    part('copied').textContent = 'Copied. Paste it into a message to your coach.';
  } catch {
    // A page from a file may not copy by itself everywhere: it is chosen, so that a long press does.
    getSelection()?.selectAllChildren(code);
    part('copied').textContent = 'The code is marked: copy it by hand, or read it to your coach.';
  }
}

function saveFile(quiz: Quiz, result: RoundResult): void {
  const file: ResultFile = {
    format: 'sliderule-quiz-result',
    version: 1,
    ...result,
    play: quiz.playId,
    name: quiz.play,
    spot: quiz.spots[quiz.spot] ?? null,
    questions: quiz.questions.map(({ carrier, scheme, choices, best }) => ({
      carrier: quiz.spots[carrier] ?? '',
      scheme,
      right: choices[best]?.words ?? '',
    })),
  };
  const address = URL.createObjectURL(new Blob([JSON.stringify(file, null, 2)], { type: 'application/json' }));
  const link = element('a', '');
  link.href = address;
  link.download = `quiz-${quiz.id}-${result.number}-${result.round}.json`.toLowerCase();
  document.body.append(link);
  link.click();
  link.remove();
}
