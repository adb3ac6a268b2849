import { playScenario, type Scenario, scenarios } from './index.ts';

// For development, `npm run gallery`: every scenario as the code draws it now, beside the snapshot that its test expects where they differ.

const expected = import.meta.glob<string>('./*/expected*.svg', { query: '?raw', import: 'default', eager: true });

const gallery = document.querySelector('#gallery');
const state = document.querySelector('#state');
if (gallery === null || state === null) throw new TypeError('missing #gallery or #state in gallery.html');
let changed = 0;
for (const scenario of scenarios) {
  const section = document.createElement('section');
  section.className = 'scenario';
  section.append(textOf('h2', scenario.id), textOf('p', scenario.shows), picturesOf(scenario));
  gallery.append(section);
}
state.textContent = changed === 0 ? 'All as expected.' : `${changed} pictures differ from what is expected.`;

function picturesOf(scenario: Scenario): HTMLElement {
  const { svg, darkSvg, tempoSvg } = playScenario(scenario);
  const pictures = document.createElement('div');
  pictures.className = 'pictures';
  for (const [kind, drawn] of [
    ['svg', svg],
    ['dark.svg', darkSvg],
    ['tempo.svg', tempoSvg],
  ] as const) {
    const before = expected[`./${scenario.id}/expected.${kind}`];
    const isSame = before === drawn;
    pictures.append(figureOf(drawn, isSame ? kind : `${kind}: as it is drawn now`, !isSame));
    if (isSame) continue;
    changed += 1;
    if (before !== undefined) pictures.append(figureOf(before, `${kind}: as it is expected`, true));
  }
  return pictures;
}

function figureOf(svg: string, caption: string, isChanged: boolean): HTMLElement {
  const figure = document.createElement('figure');
  if (isChanged) figure.className = 'changed';
  const image = document.createElement('img');
  image.alt = caption;
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  figure.append(image, textOf('figcaption', caption));
  return figure;
}

function textOf(tag: string, content: string): HTMLElement {
  const element = document.createElement(tag);
  element.textContent = content;
  return element;
}
