import type { RosterColumn } from '../../playbook/index.ts';
import { skillWords } from './team-words.ts';

/** What a column of a table was taken for. */
export function tableColumnWords(column: RosterColumn | undefined): string {
  if (column === undefined) return 'Left out';
  switch (column.kind) {
    case 'number':
      return 'Number';
    case 'name':
      return 'Name';
    case 'firstName':
      return 'First name';
    case 'lastName':
      return 'Last name';
    case 'hand':
      return 'Hand';
    case 'crosse':
      return 'Crosse';
    case 'role':
      return 'Role';
    case 'level':
      return 'Level';
    case 'notes':
      return 'Notes';
    case 'absent':
      return 'Absent';
    case 'present':
      return 'Present';
    case 'grade':
      return `Grade: ${skillWords[column.grade].name.toLowerCase()}`;
    case 'speed':
      return `${column.of === 'passSpeedMph' ? 'Pass' : 'Shot'} speed, ${column.unit === '' ? 'mph' : column.unit}`;
    case 'sprint':
      return '20 yd, s';
    case 'wallBall':
      return 'Wall ball in 30 s';
    case 'onGoal':
      return 'Shots on goal';
    case 'height':
      return column.unit === '' ? 'Height' : `Height, ${column.unit}`;
    default:
      return exhaustive(column);
  }
}

function exhaustive(column: never): never {
  throw new TypeError(`unknown column: ${JSON.stringify(column)}`);
}
