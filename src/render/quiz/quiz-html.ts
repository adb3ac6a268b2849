import { fieldGround, yardsPerUnit } from '../clip/field-ground.ts';
import { pageWithProgram } from '../clip/page-with-program.ts';
import type { FieldMarkings } from '../field-scene.ts';
import { escapeXml } from '../svg.ts';
import type { Quiz } from './quiz.ts';
import { quizStyle } from './quiz-style.ts';

/** What a quiz's page is made of besides the quiz. */
export interface QuizParts {
  readonly field: FieldMarkings;
  /** The program of the page. */
  readonly script: string;
  /** SHA-256 of a text in base64. */
  readonly hashOf: (text: string) => Promise<string>;
}

/** One whole page that asks a quiz wherever it is opened, without a network. RangeError for a quiz without a question, or a script that would end its own element. */
export async function quizHtml(quiz: Quiz, { field, script, hashOf }: QuizParts): Promise<string> {
  if (quiz.questions.length === 0) throw new RangeError('a quiz needs one question at least');
  return pageWithProgram({
    title: `${quiz.play}: read quiz`,
    style: quizStyle(),
    body: body(quiz, field),
    data: quiz,
    dataId: 'quiz',
    script,
    hashOf,
  });
}

function body(quiz: Quiz, field: FieldMarkings): string {
  return `<main>
<header><h1>${escapeXml(quiz.play)}</h1><p class="quiet">Read quiz ${quiz.id}</p></header>
${start(quiz)}
${ask(field)}
${end()}
<noscript><p>This page needs JavaScript. Some mail programs show a page without it: save it and open it in a browser.</p></noscript>
</main>`;
}

function start({ spots, numbers, seconds, questions, team, futures }: Quiz): string {
  const men = spots.map(
    (spot, man) =>
      `<button type="button" data-man="${man}" aria-pressed="false"><b>${numbers[man] ?? ''}</b><span class="quiet">${escapeXml(spot)}</span></button>`,
  );
  return `<section id="start" aria-labelledby="who">
<h2 id="who" tabindex="-1">Who are you?</h2>
<div class="numbers" id="numbers" role="group" aria-labelledby="who">${men.join('')}</div>
<div class="other"><label for="other">Another number:</label><input id="other" type="text" inputmode="numeric" maxlength="3" autocomplete="off"></div>
<fieldset id="which"><legend>Which reads?</legend>
<label class="check"><input type="radio" name="which" value="mine"><span id="mineWords"></span></label>
<label class="check"><input type="radio" name="which" value="all" checked><span id="allWords"></span></label>
</fieldset>
<button type="button" id="begin" class="main" disabled>Begin</button>
<p id="due" class="quiet" aria-live="polite"></p>
<div class="part"><h3>How it goes</h3>
<ul class="how"><li>The play runs and stops. You have the ball, seen from where you stand.</li><li>Choose what to do before the bar is gone (${seconds} s). Tap a button, or a man on the field to throw to him.</li><li>You see what is right and why. What you miss comes back.</li><li>At the end, or where you stop, there is a code for your coach. ${questions.length} questions take about ${minutesFor(questions.length)} minutes.</li></ul></div>
<div class="part"><h3>Change it for you</h3>
<label class="check"><input type="checkbox" id="noClock">No clock: take the time that you need</label>
<label class="check"><input type="checkbox" id="wholeField">Show the whole field, with the goal at the top</label></div>
<footer class="quiet"><p>${escapeXml(team)}. What a choice is worth comes from simulated man-ups, each played on ${futures} times from the moment you see: it is a good guide and no promise. Nothing you do here leaves this page but the code that you send yourself.</p></footer>
</section>`;
}

/** A question takes some 20 s with its answer. */
function minutesFor(questions: number): number {
  return Math.max(1, Math.round(questions / 3));
}

function ask(field: FieldMarkings): string {
  return `<section id="ask" hidden aria-labelledby="prompt">
<div class="part left">
<p class="quiet" id="progress"></p>
<div class="stage"><svg class="field" id="field" role="img" aria-label="" viewBox="0 0 1000 945"><g id="world">${fieldGround(field)}<g id="cues" transform="scale(${yardsPerUnit})"></g></g><g id="lines"></g><g id="men"></g></svg></div>
<div class="clock" id="clock" aria-hidden="true"><div id="left"></div></div>
</div>
<div class="part">
<h2 id="prompt" tabindex="-1" aria-describedby="told"></h2>
<p class="said" id="said"></p>
<div class="choices" id="choices"></div>
<div class="part" id="answer" hidden>
<div class="verdict" id="verdict"><p id="reason"></p><p id="taught" class="quiet"></p></div>
<button type="button" id="next" class="main">Next</button>
<div class="watch" id="watch"></div>
<button type="button" id="stop">Stop here and show my code</button>
<h3>What each is worth</h3>
<p class="quiet">Goals in 100 tries from here. In brackets how sure that is.</p>
<ul class="worths" id="worths"></ul>
</div>
</div>
<p id="told" class="unseen"></p>
</section>`;
}

function end(): string {
  return `<section id="end" hidden aria-labelledby="score">
<h2 class="score" id="score" tabindex="-1"></h2>
<p id="scoreWords"></p>
<div class="part"><h3 id="codeHead">Send this code to your coach</h3>
<p class="code" id="code"></p>
<div class="watch"><button type="button" id="copy">Copy the code</button><button type="button" id="save">Save as a file</button></div>
<p class="quiet" id="copied" aria-live="polite">It says your number and what was right, and no name.</p></div>
<div class="part" id="missedPart"><h3>Look at these again</h3><ul class="missed" id="missed"></ul></div>
<p id="later"></p>
<button type="button" id="goOn" class="main">Go on with the rest</button>
<button type="button" id="again">Another round</button>
</section>`;
}
