import type { Severity } from './severity.ts';

export interface CodeInfo {
  readonly severity: Severity;
  /** What it means and what to do, for the manual; the message of each diagnostic adds the particulars. */
  readonly help: string;
}

function error(help: string): CodeInfo {
  return { severity: 'error', help };
}

function warning(help: string): CodeInfo {
  return { severity: 'warning', help };
}

function note(help: string): CodeInfo {
  return { severity: 'note', help };
}

/** Every code that reading a playbook can give. Codes are stable: new ones are added, none is renamed or used again. */
export const diagnosticCodes = {
  // The file as text.
  'file-too-large': error('The file is larger than 5 MB. No playbook is; look whether it is the right file.'),
  'json-empty': error('The file holds nothing.'),
  'json-syntax': error('The text is not JSON at this place. The message says what should stand there.'),
  'json-extra-comma': error('A comma has nothing after or before it. Take it out.'),
  'json-missing-comma': error('Two values follow each other without a comma. Put one between them.'),
  'json-comment': error('JSON has no comments. Use a "notes" field.'),
  'json-quotes': error('Names and texts stand in straight double quotes.'),
  'json-string': error('A text has no end on its line, or holds a character that must be written otherwise.'),
  'json-number': error('A number is written in a way that JSON does not know, or is too large to be one.'),
  'json-unclosed': error('A brace, bracket or value is missing at the end.'),
  'json-extra': error('There is text after the end of the document.'),
  'json-name-twice': error('An object has the same name twice, so one of the two would be lost.'),
  'json-forbidden-name': error(
    'Names such as __proto__ or constructor are refused, because they can be used to trick programs.',
  ),
  'json-too-deep': error('Lists and objects lie far deeper in one another than a playbook needs.'),
  'json-too-many-values': error('The file holds far more values than a playbook needs.'),
  'too-many-problems': error('There are more problems than are listed. Mend the first ones and check again.'),

  // The shape of the document.
  'format-wrong': error(
    'The file does not say that it is a playbook. Its first field must be "format": "sliderule-playbook".',
  ),
  'version-wrong': error('"version" must be a whole number from 1.'),
  'version-newer': error('The file was written by a newer version of this program. Get the newer version to open it.'),
  'field-missing': error('A field that is needed is not there.'),
  'field-unknown': error('A field is not one of those that stand in this place. Often a slip of the finger.'),
  'field-type': error('A value is of the wrong kind: a text instead of a number, or the like.'),
  'field-value': error('A value is not one of those that are allowed.'),
  'field-range': error('A number is too small or too large.'),
  'field-length': error('A text or list is too short or too long.'),
  'field-form': error('A short name is not written as such names are.'),

  // Team and settings.
  'roster-short': error('A man-up unit needs six field players who are not absent.'),
  'number-twice': error('Two players wear the same number, so plays and depth cannot tell them apart.'),
  'keeper-missing': warning(
    'Nobody on the roster has "crosse": "goalkeeper". The simulation does not need your keeper; your team does.',
  ),
  'depth-player': error(
    'The depth chart names a number that is not on the roster, is the goalkeeper, or stands in one line twice.',
  ),
  'measured-odd': error(
    'A measurement is so far from what is usual at the level that it must be a slip, or in another unit.',
  ),
  'level-no-man-up': note(
    "At 8U and 10U no team is ever a man up or down in games (USA Lacrosse boys' youth rules, since 2020): these plays are for practice.",
  ),
  'rule-unknown': error('A rule value is set that the rule code does not have, or to something that it cannot be.'),
  'rule-unconfirmed': note(
    'A rule value could not be confirmed in a current rulebook. Confirm it in your rulebook, and set it in "settings" when it differs.',
  ),

  // Sets and spots.
  'id-twice': error('Two plays, sets, schemes, opponents, practice plans, quizzes, man-ups or steps have the same id.'),
  'set-unknown': error('The set is not one that is known, and not an own set of this playbook.'),
  'set-ambiguous': error('The name of the set means more than one set. Use one of the full names.'),
  'spot-count': error('A set has exactly six spots.'),
  'spot-unknown': error('A spot is named that this play does not have.'),
  'spots-overlap': error('Two men would stand in the same place.'),
  'place-in-crease': error('A place lies inside the crease, where the offense may not be.'),
  'place-out-of-bounds': error('A place lies outside the field, or over the midline.'),
  'restart-in-box': error(
    'After a penalty the ball is put in play outside the box, except after it went over the end line.',
  ),

  // Beats, actions, reads.
  'action-syntax': error('An action is not written in the play language. Line and column lead to the word.'),
  'trigger-syntax': error('What starts the step is not written in the play language.'),
  'cue-syntax': error('A cue is not written in the play language.'),
  'read-syntax': error('The end of a read is not written in the play language.'),
  'seconds-range': error('A time is out of range.'),
  'self-target': error('A man is told to pass to, fake to, pick for or look for himself.'),
  'beat-unknown': error(
    'A step is named that is not in the same script. The last ten seconds have a script of their own.',
  ),
  'start-missing': error('No step begins on "start", so the play never begins.'),
  'beat-never-starts': error('Nothing in the play can make this step start.'),
  'two-places': error('A man is told to be in two places at once.'),
  'two-ball-actions': error('A man is told to do two things with the ball at once.'),
  'moves-meet': warning('Two men end their runs in the same place.'),
  'no-ball': error('A man is told to pass, carry, fake or shoot when the ball cannot have come to him.'),
  'run-too-long': error('A run is longer than anybody of the level can run in the time.'),
  'long-run': warning(
    'A way takes a usual man of the level more than four and a half seconds. Look whether the place is right.',
  ),
  'call-too-early': warning('A call tells a man to throw or shoot before he is where he carries the ball.'),
  'late-for-pass': warning('A man is thrown to long before he can be where the play sends him.'),
  'through-crease': warning('The straight way of a run leads through the crease. Lead it round with "via".'),
  'read-never-fires': error('A read can never be used.'),
  'reads-too-many': warning(
    'A carrier has more reads than players keep in mind (four), or a read has more than two cues.',
  ),
  'reset-elsewhere': warning('The play is to run again from a man who does not start it.'),
  'last-ten-empty': error('"lastTen" changes nothing. Give it steps ("beats") or reads, or take it out.'),

  // Own schemes and opponents.
  'scheme-men': error(
    'An own scheme has 3, 4 or 5 defenders (6 when nobody is in the box), and no two stand in the same place.',
  ),
  'defender-unknown': error('A defender is named that the scheme does not have.'),
  'duty-syntax': error('A duty is not written in the play language.'),
  'duty-twice': error('A defender has two duties at once.'),
  'duty-missing': error('A row gives a defender no duty.'),
  'nobody-on-ball': warning(
    'With the ball in front of the goal no defender has the duty "ball". The nearest man will go.',
  ),
  'row-twice': error('A scheme has two rows for the same place of the ball.'),
  'scheme-unknown': error('A scheme is named that is not built in and not one of this playbook.'),

  // Practice plans. A plan that has grown old stops no play from being tested: all but the ids are warnings.
  'practice-play': warning('A practice plan names a play that the playbook does not have.'),
  'practice-scheme': warning('A practice plan names a scheme that is not built in and not one of this playbook.'),
  'practice-spot': warning('A practice plan names a spot that its play does not have, or one twice.'),
  'practice-time': warning('The blocks of a practice plan take longer than there is.'),
  'practice-keeper': warning('A practice plan has a live man-up although no goalkeeper comes.'),
  'practice-date': warning('The date of a practice plan is no day of the calendar.'),

  // Quizzes: what they ask about may be gone, what came back is kept.
  'quiz-answers': warning(
    'A result of a quiz does not have one answer for each question, or more right answers than it was asked.',
  ),

  // Man-ups that were played: what they name may be gone, what was written down is kept.
  'chance-date': warning('The date of a man-up is no day of the calendar.'),
  'chance-counts': warning('The counts of a man-up contradict each other or its result.'),
  'chance-marks': warning('A mark of a man-up does not say where the ball is, or names other than its defenders.'),
} as const satisfies Record<string, CodeInfo>;

export type DiagnosticCode = keyof typeof diagnosticCodes;
