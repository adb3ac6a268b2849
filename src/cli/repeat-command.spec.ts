import { spawnSync } from 'node:child_process';
import { expect, it } from 'vitest';
import { shellCommand } from './repeat-command.ts';

it.each([[['plain', 'a/b.json', '--seed', '7']], [['two words', "coach's", '$HOME', '', 'a\\b', '*']]])(
  'a shell reads %j back',
  (words) => {
    const shell = spawnSync('sh', ['-c', `printf '%s\\n' ${shellCommand(words)}`], { encoding: 'utf8' });
    expect(shell.stdout.split('\n').slice(0, -1)).toEqual(words);
  },
);
