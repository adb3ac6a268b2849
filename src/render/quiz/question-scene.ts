import { type FieldMarkings, unitView } from '../field-scene.ts';
import { filmPart } from '../film/film-part.ts';
import { filmGround, filmNames, filmPeople } from '../film/film-scene.ts';
import { filmView } from '../film/film-view.ts';
import type { Scene } from '../scene.ts';
import { pxPerYard } from '../svg-styles.ts';
import type { Quiz, QuizQuestion } from './quiz.ts';

/** The moment of a question with what there is to see in it, the goal at the top: for the coach, who looks a quiz over before it goes out. */
export function questionScene({ spots }: Pick<Quiz, 'spots'>, question: QuizQuestion, field: FieldMarkings): Scene {
  const part = filmPart(question.before);
  const view = filmView(part, { left: 0, top: 0, width: unitView.width, height: unitView.height });
  const ground = filmGround(field, view);
  const drawn = { view, pxPerYard, ground: ground.items };
  const people = filmPeople(part, part.end, spots, drawn, filmNames(part, spots, drawn));
  const carrier = spots[question.carrier] ?? '';
  const best = question.choices[question.best]?.words ?? '';
  return {
    title: `${carrier} with the ball against ${question.before.name}`,
    description: `${carrier} has the ball. Best: ${best}. ${question.reason}`,
    view,
    items: [...ground.items, ...question.marks, ...people.items],
  };
}
