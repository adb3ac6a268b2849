import { type Playbook, type QuizEntry, schemeName } from '../playbook/index.ts';
import { count, type Quiz } from '../render/index.ts';
import { mostMissedWords, type Standing, whoKnows } from '../teach/index.ts';
import { formatTable, tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

/** The questions of a quiz with what is right, for the coach. */
export function quizQuestionsText({ spots, questions }: Quiz): string {
  return `${formatTable(
    [
      { title: '', align: 'right' },
      { title: 'carrier', align: 'left' },
      { title: 'against', align: 'left', flexible: true },
      { title: 'right', align: 'left', flexible: true },
    ],
    questions.map(({ carrier, before, choices }, at) => [
      count(at + 1),
      spots[carrier] ?? '',
      before.name,
      choices.flatMap(({ right, words }) => (right ? [words] : [])).join('; or '),
    ]),
  )}\n`;
}

const signs: Readonly<Record<Standing, string>> = { known: '+', found: '~', missed: '-', notAsked: ' ' };

/** Who knows what of a quiz, and which read is missed most. */
export function quizResultsText(playbook: Playbook, quiz: QuizEntry): string {
  const knowledge = whoKnows(quiz);
  const questions = formatTable(
    [
      { title: '', align: 'right' },
      { title: 'carrier', align: 'left' },
      { title: 'against', align: 'left', flexible: true },
      { title: 'right', align: 'left', flexible: true },
      { title: 'at once', align: 'right' },
    ],
    knowledge.questions.map(({ carrier, scheme, right, asked, first }, at) => [
      count(at + 1),
      carrier,
      schemeName(playbook, scheme),
      right,
      asked === 0 ? '-' : `${first} of ${asked}`,
    ]),
  );
  const men = formatTable(
    [
      { title: 'number', align: 'right' },
      { title: 'rounds', align: 'right' },
      ...quiz.questions.map((_, at) => ({ title: count(at + 1), align: 'right' as const })),
    ],
    knowledge.men.map(({ number, rounds, standing_byQuestion }) => [
      String(number),
      count(rounds),
      ...standing_byQuestion.map((standing) => signs[standing]),
    ]),
  );
  const most = mostMissedWords(knowledge, (id) => schemeName(playbook, id));
  const legend = "+ right at once, ~ right when it came back, - missed; by each man's last round. Empty: not asked.";
  return [
    quiz.name,
    '',
    questions,
    '',
    men,
    legend,
    ...(most === undefined ? [] : ['', wrapParagraph(most, tableWidth)]),
    '',
  ].join('\n');
}
