/** How a player did in one round of a quiz, as his code and his file hold it: by his number, without a name. */
export interface RoundResult {
  /** The quiz's id: four letters. */
  readonly quiz: string;
  /** Jersey number, 0 to 999. */
  readonly number: number;
  /** Which round of his it was, 1 to 32; after that it begins anew. */
  readonly round: number;
  /** One for each question of the quiz, in their order. */
  readonly answers: readonly RoundAnswer[];
}

export interface RoundAnswer {
  /** How often it was asked; 3 for three times and more. */
  readonly asked: number;
  /** How often the answer was right, at most `asked`. */
  readonly right: number;
  /** In which third of his time he chose the first time; null when he was not asked. */
  readonly pace: 'quick' | 'steady' | 'slow' | null;
}

/** The same as a small file, with what was asked, so that it can be loaded where the quiz is not known. */
export interface ResultFile extends RoundResult {
  readonly format: 'sliderule-quiz-result';
  readonly version: 1;
  /** Id of the play, and the spot whose reads were asked; null for the whole unit's. */
  readonly play: string;
  readonly spot: string | null;
  /** Name of the play. */
  readonly name: string;
  readonly questions: readonly { readonly carrier: string; readonly scheme: string; readonly right: string }[];
}
