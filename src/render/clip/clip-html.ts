import type { FieldMarkings } from '../field-scene.ts';
import { viewpointNote } from '../play-scene.ts';
import { escapeXml } from '../svg.ts';
import type { Clip } from './clip.ts';
import { clipStyle } from './clip-style.ts';
import { fieldGround } from './field-ground.ts';
import { pageWithProgram } from './page-with-program.ts';

/** What a clip's page is made of besides the clip. */
export interface ClipParts {
  readonly field: FieldMarkings;
  /** The program of the page. */
  readonly script: string;
  /** SHA-256 of a text in base64: by it alone the page's own program and style are let in. */
  readonly hashOf: (text: string) => Promise<string>;
}

/**
 * One whole page that plays a clip wherever it is opened, without a network: it holds everything it needs, and its own rules forbid it to ask
 * for anything more. RangeError for a clip without a scheme, or a script that would end its own element.
 */
export async function clipHtml(clip: Clip, { field, script, hashOf }: ClipParts): Promise<string> {
  if (clip.schemes.length === 0) throw new RangeError('a clip needs one scheme at least');
  const title = `${clip.play}: a man-up play`;
  return pageWithProgram({
    title,
    style: clipStyle(),
    body: body(clip, field),
    data: clip,
    dataId: 'clip',
    script,
    hashOf,
  });
}

function body({ play, team, spots, men, schemes, follow }: Clip, field: FieldMarkings): string {
  const against = schemes.map(({ name }, index) => option(String(index), name, index === 0));
  const views = [
    option('-1', 'Whole unit', follow === -1),
    ...spots.map((spot, index) => option(String(index), manName(spot, men[index]), follow === index)),
  ];
  return `<main>
<header><h1>${escapeXml(play)}</h1><p class="quiet">${escapeXml(team)}. ${escapeXml(viewpointNote)}</p></header>
<div class="picks side">
<div><label for="against">Against</label><select id="against">${against.join('')}</select></div>
<div><label for="follow">Follow me</label><select id="follow">${views.join('')}</select></div>
</div>
<div class="stage"><svg class="field" id="field" role="img" aria-label="" viewBox="0 0 1000 945"><g id="world">${fieldGround(field)}</g><g id="lines"></g><g id="men"></g></svg></div>
<div class="side">
<div class="bar"><button id="back" type="button">Back</button><button id="play" class="main" type="button">Play</button><button id="next" type="button">Next</button></div>
<div class="scrub"><input id="time" type="range" min="0" step="0.1" value="0" aria-label="Moment of the play"><span class="time" id="clock"></span></div>
</div>
<p class="said side" id="said" aria-live="polite"></p>
<fieldset class="side"><legend>Speed</legend><div class="speeds">${speeds.map(speedChoice).join('')}</div></fieldset>
<section class="side" aria-labelledby="what"><h2 id="what">What happens</h2><ol class="steps" id="steps"></ol></section>
<footer class="side quiet"><p id="note"></p><p>Circles are the offense, filled for the man with the ball; crosses the defense, G the keeper. A dashed line is a pass, a ring a man who is open. Space plays and stops; left and right arrow go from one thing that happens to the next.</p></footer>
<noscript><p>This page needs JavaScript to move. Some mail programs show a page without it: save it and open it in a browser.</p></noscript>
</main>`;
}

const speeds = ['0.5', '1', '2'] as const;
const speedWords = { '0.5': 'Half', '1': 'Real', '2': 'Double' } as const;

function speedChoice(speed: (typeof speeds)[number]): string {
  const checked = speed === '1' ? ' checked' : '';
  return `<label><input type="radio" name="speed" value="${speed}"${checked}><span>${speedWords[speed]}</span></label>`;
}

function option(value: string, words: string, selected: boolean): string {
  return `<option value="${value}"${selected ? ' selected' : ''}>${escapeXml(words)}</option>`;
}

function manName(spot: string, man: string | undefined): string {
  return man === undefined ? spot : `${spot}, ${man}`;
}
