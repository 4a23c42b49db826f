import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addedInHundreds,
  differenceInHundreds,
  handsSwapped,
  hourByHour,
  impossibleTime,
  minuteNumberRead,
  nearestHourRead,
  onDial,
} from './clock.js';

const at = (hour: number, minute: number) => (hour % 12) * 60 + minute;

describe('wrong readings of a clock face', () => {
  it('swap the hands: 3 o’clock is read as 12:15 (a worked case of tutors, common practice)', () => {
    expect(handsSwapped(at(3, 0))).toBe(at(12, 15));
    expect(handsSwapped(at(6, 10))).toBe(at(2, 30));
    expect(handsSwapped(at(11, 59))).toBe(at(12, 0));
    expect(handsSwapped(at(6, 47))).toBe(at(9, 35));
  });

  it('take the hour that is coming, only once past the half hour', () => {
    expect(nearestHourRead(at(7, 57))).toBe(at(8, 57));
    expect(nearestHourRead(at(11, 45))).toBe(at(12, 45));
    expect(nearestHourRead(at(7, 20))).toBe(at(7, 20));
  });

  it('take the number at the long hand for minutes', () => {
    expect(minuteNumberRead(at(3, 25))).toBe(at(3, 5));
    expect(minuteNumberRead(at(2, 1))).toBe(at(2, 12));
  });

  it('stay on the dial, whatever the time', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 719 }), (time) => {
        for (const read of [
          handsSwapped(time),
          nearestHourRead(time),
          minuteNumberRead(time),
          onDial(time + 7200),
        ])
          expect(read >= 0 && read < 720 && Number.isInteger(read)).toBe(true);
      }),
    );
  });
});

describe('hours and minutes apart', () => {
  it('takes the smaller minutes from the larger: 3:40 to 5:15 as 2 h 25 min', () => {
    expect(hourByHour(at(3, 40), at(5, 15))).toBe(145);
    expect(hourByHour(at(3, 40), at(5, 50))).toBe(130);
  });
});

describe('working in hundreds', () => {
  it('adds minutes without a new hour at sixty', () => {
    expect(addedInHundreds(at(3, 25), 47)).toEqual({ hour: 3, minute: 72 });
    expect(addedInHundreds(at(3, 40), 70)).toEqual({ hour: 4, minute: 10 });
    expect(addedInHundreds(at(12, 55), 50)).toEqual({ hour: 1, minute: 5 });
  });

  it('takes 3:40 from 4:15 as 340 from 415', () => {
    expect(differenceInHundreds(at(3, 40), at(4, 15))).toBe(75);
  });

  it('agrees with the right sum exactly when no hour is passed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 600 }), fc.integer({ min: 1, max: 59 }), (start, minutes) => {
        const { hour, minute } = addedInHundreds(start, minutes);
        const isRight = hour * 60 + minute === start + minutes && minute < 60;
        expect(isRight).toBe((start % 60) + minutes < 60);
      }),
    );
  });

  it('writes a time that no clock shows without a value', () => {
    expect(impossibleTime(3, 72)).toEqual({ kind: 'time', text: '3:72', value: null });
    expect(impossibleTime(8, 93, 24).text).toBe('08:93');
  });
});
