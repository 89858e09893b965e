import { courseAnswer } from '#core/course/course-answer.ts';
import { courseRequest } from '#core/course/course-request.ts';
import { course } from '#core/course/course.ts';
import type { LineCommand } from './command.ts';

export const courseCommand: LineCommand = {
  name: 'course',
  summary: 'where the plan lands on show day, and the smallest correction',
  room: 'course',
  request: courseRequest,
  answer: courseAnswer,
  respond: course,
};
