import { describe, expect, it } from 'vitest';
import { COURSE_S, type Course, happens, reaches } from '../../../sim/answers/course.ts';
import { doJob } from '../../../sim/index.ts';
import { smallScenario } from './small.ts';

describe('a course', () => {
  it('says when samples first reach a limit, on a straight line between two', () => {
    const rising = [0, 10, 20, 30];
    expect(reaches(rising, 15, 0)).toBe(1.5 * COURSE_S);
    expect(reaches(rising, 15, COURSE_S)).toBe(0.5 * COURSE_S);
    expect(reaches(rising, 5, 2 * COURSE_S)).toBe(0);
    expect(reaches(rising, 31, 0)).toBeNull();
    expect(reaches([...rising].reverse(), 5, 0, -1)).toBe(2.5 * COURSE_S);
  });

  it('says when something happened after a time', () => {
    const event = (time_s: number) => ({ time_s, part: 'store', name: 'store.boiling' });
    const course = { events: [event(100), event(900)] } as Course;
    expect(happens(course, 'store.boiling', 500)).toBe(400);
    expect(happens(course, 'store.boiling', 1000)).toBeNull();
  });

  it('comes with a job that asks for it, and moves nothing in its figures', () => {
    const edits = [{ path: 'run.days', value: 1 }];
    const [plain, told] = [{}, { course: true as const }].map((more) =>
      doJob(smallScenario(), { edits, ...more }, {}),
    );
    if (!plain.ok || !told.ok) throw new Error('a run failed');
    expect(plain.course).toBeUndefined();
    expect(told.course?.top_C).toHaveLength(86_400 / COURSE_S + 1);
    expect(told.figures).toEqual(plain.figures);
  });
});
