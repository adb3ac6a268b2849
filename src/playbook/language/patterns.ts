// The play language as regular expressions, so that an editor that knows JSON Schema marks a bad phrase while it is typed.
// The readers in this folder say what is wrong and where; a test holds the two to the same language.

const spot = '[A-Z][A-Z0-9]{0,3}';
const beat = '[a-z][a-z0-9-]*';
/** What is no name of a step is told by its name, not by its form: the readers say which steps there are. */
const anyWord = '[A-Za-z][A-Za-z0-9-]*';
const decimal = '-?[0-9]+(\\.[0-9]+)?';
const place = `(${decimal} *, *${decimal}|${spot})`;
const path = `(via ${place} )*to ${place}`;

const carrier = `((pass|skip|feed|fake) ${spot}|carry ${path}|step to ${place}|hold ${decimal}|shoot)`;
const runner = `((cut|pop|sneak|flash|replace|backup|getback) ${path}( when open)?|pick at ${place} on ${spot}|seal on ${spot})`;

export const idPattern = /^[a-z0-9][a-z0-9-]*$/;
export const spotIdPattern = new RegExp(`^${spot}$`);
export const beatIdPattern = new RegExp(`^${beat}$`);
export const actionPattern = whole(`${spot} (${carrier}|${runner})`);
export const readActionPattern = whole(`(${carrier}|step in|reset)`);
export const triggerPattern = whole(
  `(start|catch ${spot}|pass ${spot}( to ${spot})?|arrive ${spot}|call ${anyWord} *\\+ *${decimal})`,
);
export const cuePattern = whole(
  `(free|pressed|next steps|my man leaves|crease up|far low (looks away|crosses)|(open|left|lane taken) ${spot})`,
);

const man = '[a-z][a-z0-9]{0,3}';
export const defenderPattern = new RegExp(`^${man}$`);
/** Whoever is on the crease, whatever his spot is called. */
export const creaseWord = 'crease';
const mark = `(${spot}|${creaseWord})`;
const yards = `${decimal} *, *${decimal}`;
export const ballPlacePattern = new RegExp(`^${mark}$`);
export const dutyPattern = whole(
  `${man} (ball|(man|lock|front) ${mark}|split ${mark} ${mark}|(lane|pipe) ${mark}( at ${yards})?|at ${yards})`,
);

/** Any run of spaces where the pattern has one, and round the phrase. */
function whole(pattern: string): RegExp {
  return new RegExp(`^ *${pattern.replaceAll(/ (?!\*)/g, ' +')} *$`);
}
