/**
 * The most that a playbook file may hold. A whole club's playbook is well under each; a file beyond them is
 * a mistake or an attack, and is refused before it can fill the memory.
 */
export const limits = {
  /** Size of the file, bytes of UTF-8; looked at before anything is read. */
  bytes: 5_000_000,
  /** Lists and objects inside one another. The format itself needs 7. */
  depth: 32,
  /** Values of any kind in the whole file. */
  values: 200_000,
  /** Problems that are listed before the rest is only counted. */
  problems: 300,
  name: 80,
  note: 2_000,
  /** One action, trigger or cue. */
  phrase: 160,
  id: 40,
  players: 60,
  readings: 50,
  plays: 500,
  /** Tags of one play, and the letters of one. */
  tags: 12,
  tag: 30,
  beats: 40,
  actions: 24,
  reads: 40,
  cues: 6,
  sets: 50,
  schemes: 50,
  rows: 40,
  opponents: 100,
  /** Practice plans, and what one may hold. A season has some sixty practices. */
  practices: 200,
  practicePlays: 20,
  blocks: 60,
  /** Kinds of rep in one block. */
  runs: 24,
  practiceMinutes: 240,
  reps: 500,
  /** Letters of the sentence that says why a block is there. */
  why: 400,
  /** Quizzes that were handed out, the questions of one (as many as a result code holds), and the rounds that came back of it. */
  quizzes: 100,
  questions: 20,
  results: 400,
  /** Man-ups that were played: some hundred a season. */
  chances: 5_000,
  /** Moments of one man-up at which places were marked, and the men of one side in each. */
  marks: 40,
  marked: 7,
  /** Shots that were marked on one goalkeeper. */
  keeperShots: 400,
  /** Marks of copies; the oldest go first. */
  copies: 20,
} as const;
