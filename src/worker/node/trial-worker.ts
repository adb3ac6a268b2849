import { answerRequest } from '../answer-request.ts';

// The thread's only entry: the pool calls it with one request at a time.
export default answerRequest;
