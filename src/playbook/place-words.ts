import { type JsonPath, valueAt } from './json/json-node.ts';

/**
 * Where a path leads, in the words of the file's own names: `Gull, step "freeze"`, `player 7 Noel Arden`. Empty for the document itself.
 * Counts from 1 where there is no name, and never fails, however broken the document is.
 */
export function placeWords(document: unknown, path: JsonPath): string {
  const [list, index] = path;
  if (list === undefined) return '';
  const parts =
    typeof index === 'number'
      ? itemWords(document, String(list), index, path)
      : index === 'roster' && typeof path[2] === 'number'
        ? playerWords(document, path)
        : fieldWords(path);
  return parts.filter((part) => part !== '').join(', ');
}

function itemWords(document: unknown, list: string, index: number, path: JsonPath): readonly string[] {
  const item = valueAt(document, path.slice(0, 2));
  const kind = {
    plays: '',
    sets: 'set ',
    schemes: 'scheme ',
    opponents: 'opponent ',
    practices: 'practice plan ',
    quizzes: 'quiz ',
    chances: 'man-up ',
  }[list];
  if (kind === undefined) return fieldWords(path);
  const name = nameOf(item, 'name') ?? nameOf(item, 'id');
  const whole = name === undefined ? `${list.slice(0, -1)} ${index + 1}` : `${kind}${name}`;
  return [whole, ...partWords(item, list, path.slice(2))];
}

function partWords(item: unknown, list: string, path: JsonPath): readonly string[] {
  if (list === 'plays') return playWords(item, path);
  if (list === 'schemes') return rowWords(item, path);
  const [field, index] = path;
  return field === 'blocks' && typeof index === 'number' ? [`block ${index + 1}`] : fieldWords(path);
}

function playerWords(document: unknown, path: JsonPath): readonly string[] {
  const player = valueAt(document, path.slice(0, 3));
  const number = valueAt(player, ['number']);
  const known = [typeof number === 'number' ? String(number) : undefined, nameOf(player, 'name')];
  const words = known.filter((part) => part !== undefined).join(' ');
  return [`player ${words === '' ? `${Number(path[2]) + 1} of the roster` : words}`, ...fieldWords(path.slice(3))];
}

function playWords(play: unknown, path: JsonPath): readonly string[] {
  const [field, index] = path;
  if (field === 'lastTen' && path.length > 1)
    return ['last ten seconds', ...playWords(valueAt(play, ['lastTen']), path.slice(1))];
  if (field === 'beats' && typeof index === 'number') {
    const id = nameOf(valueAt(play, ['beats', index]), 'id');
    return [id === undefined ? `step ${index + 1}` : `step "${id}"`];
  }
  if (field === 'reads' && typeof index === 'number') {
    const carrier = nameOf(valueAt(play, ['reads', index]), 'carrier');
    return [carrier === undefined ? `read ${index + 1}` : `read ${index + 1}, of ${carrier}`];
  }
  return fieldWords(path);
}

function rowWords(scheme: unknown, path: JsonPath): readonly string[] {
  const [field, index] = path;
  if (field !== 'rows' || typeof index !== 'number') return fieldWords(path);
  const ball = nameOf(valueAt(scheme, ['rows', index]), 'ball');
  return [ball === undefined ? `row ${index + 1}` : `ball at ${ball}`];
}

/** The names on the way, as far as they help to find the place. */
function fieldWords(path: JsonPath): readonly string[] {
  const names = path.filter((step) => typeof step === 'string');
  return names.slice(0, 3).map(shorten);
}

function nameOf(item: unknown, field: string): string | undefined {
  const value = valueAt(item, [field]);
  return typeof value === 'string' && value.trim() !== '' ? shorten(value) : undefined;
}

/** Letters of a name that are shown: a hostile file's names have no end. */
const longest = 40;

function shorten(text: string): string {
  return text.length <= longest ? text : `${text.slice(0, longest)}...`;
}
