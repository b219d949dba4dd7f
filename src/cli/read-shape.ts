/** Reads and checks content/anatomy from the disk: the keys of its files, put together. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as v from 'valibot';
import { parse } from 'yaml';
import { type Shape, shapeSchema } from '../anatomy';

const FOLDER = fileURLToPath(new URL('../../content/anatomy/', import.meta.url));

const withoutReview = ({ review: _, ...rest }: Record<string, unknown>): Record<string, unknown> => rest;

export const readShape = (): Shape =>
  v.parse(
    shapeSchema,
    Object.assign(
      {},
      ...readdirSync(FOLDER)
        .filter((name) => name.endsWith('.yaml'))
        .sort()
        .map((name) => withoutReview(parse(readFileSync(`${FOLDER}${name}`, 'utf8')))),
    ),
  );
