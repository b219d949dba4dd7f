/** Pieces of the case schema that say how much is too much: numbers, lists and tables, counted before each entry is looked at. */
import * as v from 'valibot';
import { id } from '../ids/schema';

/** A number within bounds. Minus zero becomes zero: JSON text does not keep it. */
export const bounded = (min: number, max: number, message: string) =>
  v.pipe(
    v.number(message),
    v.finite(message),
    v.minValue(min, message),
    v.maxValue(max, message),
    v.transform((n) => n + 0),
  );
/** Mass and height are rounded wherever a file is read or written: a file needs no more, and less points at a person. */
export const roundedTo1 = (min: number, max: number, message: string) =>
  v.pipe(bounded(min, max, message), v.transform(Math.round));

type Schema = v.GenericSchema<unknown, unknown>;

/** A list of a million broken entries gives one problem, not a million. */
export const listOf = <T extends Schema>(item: T, most: number, message: string) =>
  v.pipe(v.array(v.unknown(), 'expected a list'), v.maxLength(most, message), v.array(item), v.readonly());

/** The same without repeats. */
export const setOf = <T extends Schema>(item: T, most: number, message: string) =>
  v.pipe(
    listOf(item, most, message),
    v.check((list) => new Set(list).size === list.length, 'something stands twice in this list'),
  );

/**
 * Keys that every object answers to, whether it has them or not. As ids they would be well formed; none is one.
 * The library leaves them out without a word, so they are refused before it looks.
 */
const NOT_OURS = ['__proto__', 'prototype', 'constructor'];

/** A table from id to value: own keys only, counted first. */
export const tableOf = <K extends string, T extends Schema>(value: T, most: number, message: string) =>
  v.pipe(
    v.custom<Readonly<Record<string, unknown>>>(
      (input) => typeof input === 'object' && input !== null && !Array.isArray(input),
      'expected entries between { and }',
    ),
    v.check((input) => Object.keys(input).length <= most, message),
    v.rawCheck(({ dataset, addIssue }) => {
      if (!dataset.typed) return;
      const { value: input } = dataset;
      for (const key of NOT_OURS)
        if (Object.hasOwn(input, key))
          addIssue({
            message: 'expected an id',
            input: key,
            path: [{ type: 'object', origin: 'key', input: { ...input }, key, value: input[key] }],
          });
    }),
    v.record(id<K>(), value),
    v.readonly(),
  );
