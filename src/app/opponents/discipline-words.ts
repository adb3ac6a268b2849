import { type DisciplineName, disciplines, type Level, levelDiscipline } from '../../engine/index.ts';

export const disciplineTitles: Readonly<Record<DisciplineName, string>> = {
  faultless: 'Faultless',
  sharp: 'Sharp',
  ordinary: 'Ordinary',
  loose: 'Loose',
};

const inShort: Readonly<Record<DisciplineName, string>> = {
  faultless: 'Always on time and always with the right man.',
  sharp: 'Hardly ever late, hardly ever with the wrong man.',
  ordinary: 'A step late now and then, and sometimes with the wrong man.',
  loose: 'Late, drawn to the ball, and often with the wrong man.',
};

/** What a grade of discipline means, in a sentence and in the figures that it is played by. */
export function disciplineMeaning(name: DisciplineName): { readonly short: string; readonly figures: string } {
  const { late, wrongSplit, ballWatch, mixed } = disciplines[name];
  if (name === 'faultless') return { short: inShort[name], figures: 'What the scheme asks is done at once.' };
  return {
    short: inShort[name],
    figures:
      `Takes a new duty ${hundredths(late)} s late on average; of two men, goes to the wrong one ${inHundred(wrongSplit)}; ` +
      `misses a change altogether ${inHundred(mixed)}; leans to the ball ${Math.round(100 * ballWatch)} % of the way that one who watches nothing else would.`,
  };
}

/** What counts where nothing is said of a man: what is said of all, or what is usual at the level. */
export function usualDiscipline(level: Level, all: DisciplineName | undefined): DisciplineName {
  return all ?? levelDiscipline[level];
}

function hundredths(seconds: number): string {
  return seconds.toFixed(2).replace(/^0/, '');
}

function inHundred(odds: number): string {
  const times = Math.round(100 * odds);
  return `${times} ${times === 1 ? 'time' : 'times'} in 100`;
}
