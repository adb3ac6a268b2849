import type { FigureTable, Group, Row } from './row.ts';

/** docs/validation.md as text. `how` is the paragraph on how to repeat it; no clock, no machine: equal inputs give equal pages. */
export function validationPage(
  groups: readonly Group[],
  causes: Readonly<Record<string, string>>,
  how: string,
): string {
  const rows = groups.flatMap((group) => group.rows);
  const red = rows.filter((row) => !row.pass);
  return [
    '# Theirs beside ours',
    how,
    summary(groups),
    `${rows.length - red.length} of ${rows.length} rows are green.`,
    ...(red.length === 0
      ? []
      : [
          'Red rows, each with its cause:',
          red.map((row) => `- **${row.id}** (${row.what}): ${causeOf(row, causes)}`).join('\n'),
        ]),
    ...groups.flatMap(({ title, about, figures, rows: asked }) => [
      `## ${title}`,
      about,
      ...(figures === undefined ? [] : [figureTable(figures)]),
      ...(asked.length === 0 ? [] : [table(asked, causes)]),
    ]),
    '',
  ].join('\n\n');
}

/** Red rows that have no cause, and causes that no red row needs. */
export function causeFaults(groups: readonly Group[], causes: Readonly<Record<string, string>>): readonly string[] {
  const red = new Set(groups.flatMap((group) => group.rows.filter((row) => !row.pass).map((row) => row.id)));
  return [
    ...[...red].filter((id) => !Object.hasOwn(causes, id)).map((id) => `red without a cause: ${id}`),
    ...Object.keys(causes)
      .filter((id) => !red.has(id))
      .map((id) => `cause without a red row: ${id}`),
  ];
}

function summary(groups: readonly Group[]): string {
  return [
    line(['group', 'rows', 'green', 'red']),
    '|---|---|---|---|',
    ...groups.map(({ title, rows }) => {
      const green = rows.filter((row) => row.pass).length;
      return line([`[${title}](#${anchor(title)})`, rows.length, green, rows.length - green]);
    }),
  ].join('\n');
}

/** As GitHub makes them: lower case, punctuation dropped, spaces to dashes. */
function anchor(title: string): string {
  return title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .replace(/\s/g, '-');
}

function figureTable({ head, lines }: FigureTable): string {
  return [
    line(head),
    `|${head.map(() => '---').join('|')}|`,
    ...lines.map((cells) => line(cells.map(escapePipes))),
  ].join('\n');
}

function table(rows: readonly Row[], causes: Readonly<Record<string, string>>): string {
  return figureTable({
    head: ['row', 'source', 'theirs', 'ours', 'test', 'use', ''],
    lines: rows.map((row) => {
      const verdict = row.pass ? 'pass' : `**FAIL**: ${causeOf(row, causes)}`;
      return [row.what, row.source, row.theirs, row.ours, row.test, row.use, verdict];
    }),
  });
}

function line(cells: readonly (string | number)[]): string {
  return `| ${cells.join(' | ')} |`;
}

function causeOf(row: Row, causes: Readonly<Record<string, string>>): string {
  return causes[row.id] ?? 'cause not found yet.';
}

function escapePipes(text: string): string {
  return text.replaceAll('|', '\\|');
}
