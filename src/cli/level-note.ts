import { type Level, usualRuleCode } from '../engine/index.ts';
import { type Playbook, ruleCodeOf } from '../playbook/index.ts';
import { tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

/** What a coach of this level should know before he uses man-up plays in a game, as lines to print; empty when there is nothing. */
export function levelNote(playbook: Playbook, level: Level | null): string {
  const { note } = level === null ? ruleCodeOf(playbook) : usualRuleCode(level);
  return note === undefined ? '' : `${wrapParagraph(`Note: ${note}`, tableWidth)}\n`;
}
