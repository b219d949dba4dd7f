/** Reads and checks content/anatomy from the disk: each file is one key of the shape, named like the file. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as v from 'valibot';
import { parse } from 'yaml';
import { type Shape, shapeSchema } from '../anatomy';

const FOLDER = fileURLToPath(new URL('../../content/anatomy/', import.meta.url));

export const readShape = (): Shape =>
  v.parse(
    shapeSchema,
    Object.fromEntries(
      readdirSync(FOLDER)
        .filter((name) => name.endsWith('.yaml'))
        .sort()
        .map((name) => [name.replace('.yaml', ''), parse(readFileSync(`${FOLDER}${name}`, 'utf8'))]),
    ),
  );
