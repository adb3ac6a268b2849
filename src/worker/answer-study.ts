import {
  carrierActions,
  concededShots,
  createChanceState,
  gatherDecisions,
  gatherRuns,
  momentsOfTrial,
  playGuided,
  studyCarrier,
  studyRunner,
  traceMoment,
  valueMoment,
} from '../engine/index.ts';
import { answerBelief, answerWalk } from './answer-scout.ts';
import type { StudyRequest, WorkerAnswer } from './protocol.ts';
import { readySetup } from './ready-setup.ts';

/** Answers what is asked of decisions: what could have been done, and what that is worth. A page loads this when somebody asks. */
export function answerStudy(request: StudyRequest): WorkerAnswer {
  const ready = readySetup(request.setup);
  if (ready.kind === 'refused') return ready;
  const { model, state, cast } = ready;
  switch (request.kind) {
    case 'decisions': {
      const memory = { state, spare: createChanceState(model) };
      const { carrier, range, horizon } = request;
      const chances = gatherDecisions(model, memory, carrier, carrierActions(model.matchup.play, carrier), {
        ...range,
        horizon,
      });
      return { kind: 'decisions', chances };
    }
    case 'study':
      return { kind: 'study', study: studyCarrier(model.matchup.play, request.carrier, request, request.limits) };
    case 'guided':
      return { kind: 'guided', outcomes: playGuided(model, state, request.carrier, request.guidance, request) };
    case 'runs': {
      const memory = { state, spare: createChanceState(model) };
      const { order, range, horizon } = request;
      return { kind: 'runs', chances: gatherRuns(model, memory, order, { ...range, horizon }) };
    }
    case 'runStudy':
      return { kind: 'runStudy', study: studyRunner(request.order, request.learn, request.held, request.limits) };
    case 'moments': {
      const { carriers, range } = request;
      const trials = Array.from({ length: range.to - range.from }, (_, at) => range.from + at);
      const moments = trials.flatMap((trial) => momentsOfTrial(model, state, trial, carriers));
      return { kind: 'moments', cast, moments };
    }
    case 'momentValues': {
      const memory = { state, spare: createChanceState(model) };
      const values = request.moments.map((moment) => valueMoment(model, memory, moment, request.futures));
      return { kind: 'momentValues', values };
    }
    case 'momentTraces': {
      const memory = { state, spare: createChanceState(model) };
      const traces = traceMoment(model, memory, request.moment, request.shown, request);
      return { kind: 'momentTraces', traces };
    }
    case 'belief':
      return answerBelief(ready.playbook, model, request.setup, request.asked);
    case 'walk':
      return answerWalk(ready.playbook, model, request.setup, request);
    case 'conceded': {
      const { from, to } = request.range;
      return { kind: 'conceded', cast, shots: concededShots(model, state, from, to) };
    }
    default:
      throw new TypeError(`unknown request: ${JSON.stringify(request satisfies never)}`);
  }
}
