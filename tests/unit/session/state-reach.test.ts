import { expect, test } from 'vitest';
import { createSession, STATE_REACH } from '../../../src/session';
import { reaching } from '../../../src/session/state-reach';
import { CONTENT, echo, START } from './helpers';

const state = createSession({ content: CONTENT, file: START, runExplain: async (request) => echo(request) }).getState();

test('every key of the state has an answer, and no other', () => {
  expect(Object.keys(STATE_REACH).sort()).toEqual(Object.keys(state).sort());
});

test('a link carries nothing about a case', () => {
  expect(Object.keys(reaching('link', state)).sort()).toEqual(['question', 'reader']);
});

test('a file carries the case and nothing else', () => {
  expect(reaching('file', state)).toEqual({ file: START });
});

test('the browser keeps neither what-if nor explanation', () => {
  expect(Object.keys(reaching('browser', state)).sort()).toEqual(['file', 'keepOnDevice', 'theme']);
});
