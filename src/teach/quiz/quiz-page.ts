import { type Playbook, ruleCodeOf } from '../../playbook/index.ts';
import { drawnField, type Quiz, type QuizParts, quizHtml } from '../../render/index.ts';

/** A quiz as one whole page, on the field of the playbook's rules. */
export function quizPage(playbook: Playbook, quiz: Quiz, parts: Omit<QuizParts, 'field'>): Promise<string> {
  return quizHtml(quiz, { ...parts, field: drawnField(ruleCodeOf(playbook).markings) });
}
