/** One maker a kind of question: from the graph, the zones and a seeded source of numbers to an item, or null when it can't. */

import type { Zone } from '../anatomy/types';
import type { Bone, Content } from '../content/schema';
import type { BoneId } from '../ids';
import { fill } from '../wording';
import { type BoneGraph, chainsOf, rowOf } from './graph';
import { QUIZ_PHRASES as P } from './phrases';
import { pick, type Random, sample, shuffled } from './random';
import type { Choice, MeetsItem, NameLitItem, OrderItem, PointToItem, QuizItem, QuizKind, ZoneItem } from './types';

export interface Material {
  readonly content: Pick<Content, 'bones' | 'joints' | 'regions'>;
  readonly graph: BoneGraph;
  /** Zones of one long bone, tip to head; empty = no zone questions. */
  readonly zones: readonly Zone[];
}
export type Maker = (material: Material, random: Random) => QuizItem | null;

const NAME_CHOICES = 4;
const ORDER_LENGTH = 4;
const MEETS_EXTRA = 3;
/** A break is never drawn closer than this share of the zone to its border: nobody can see on which side it lies. */
const ZONE_MARGIN_SHARE = 0.2;

const choiceOf = (bone: Bone): Choice => ({ id: bone.id, text: bone.term, latin: bone.latin });

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')}${P['list.and']}${names[names.length - 1]}`;

/** What a bone is, and what it meets: the why of every question about one bone. */
const whyBone = (graph: BoneGraph, id: BoneId): string[] => {
  const bone = graph.bone(id);
  const neighbours = graph.neighbours(id).map((other) => graph.bone(other).term);
  return [
    fill(P['why.thisIs'], { bone: bone.term, latin: bone.latin }),
    bone.what.study,
    ...(neighbours.length === 0 ? [] : [fill(P['why.meets'], { bones: listed(neighbours) })]),
  ];
};

const sourcesOf = (bone: Bone) => (bone.idEvidence.source === null ? [] : [bone.idEvidence.source]);

/** Bones that are easily taken for this one: same row first, then same group, then the nearest in order heel to toe. */
const lookAlikes = (graph: BoneGraph, id: BoneId, random: Random): Bone[] => {
  const self = graph.bone(id);
  const distance = (other: Bone): number =>
    rowOf(other.id) === rowOf(id) ? 0 : other.group === self.group ? 1 : 1 + Math.abs(other.order - self.order);
  return shuffled(
    random,
    graph.bones.filter((bone) => bone.id !== id),
  ).sort((a, b) => distance(a) - distance(b));
};

const nameLit: Maker = ({ graph }, random): NameLitItem | null => {
  const bone = pick(random, graph.bones);
  if (bone === undefined) return null;
  const others = lookAlikes(graph, bone.id, random).slice(0, NAME_CHOICES - 1);
  if (others.length < NAME_CHOICES - 1) return null;
  return {
    kind: 'nameLit',
    id: `nameLit ${bone.id}`,
    prompt: P['nameLit.prompt'],
    choices: shuffled(random, [bone, ...others]).map(choiceOf),
    correct: [bone.id],
    why: whyBone(graph, bone.id),
    lit: bone.id,
    sources: sourcesOf(bone),
  };
};

const pointTo: Maker = ({ graph }, random): PointToItem | null => {
  const bone = pick(random, graph.bones);
  if (bone === undefined) return null;
  return {
    kind: 'pointTo',
    id: `pointTo ${bone.id}`,
    prompt: fill(P['pointTo.prompt'], { bone: bone.term }),
    choices: graph.bones.map(choiceOf),
    correct: [bone.id],
    why: whyBone(graph, bone.id),
    lit: null,
    sources: sourcesOf(bone),
  };
};

const order: Maker = ({ graph }, random): OrderItem | null => {
  const chain = pick(
    random,
    chainsOf(graph).filter((c) => c.length >= ORDER_LENGTH),
  );
  if (chain === undefined) return null;
  const chosen = new Set(sample(random, chain, ORDER_LENGTH));
  const correct = chain.filter((id) => chosen.has(id));
  const mixed = shuffled(random, correct);
  // The start must not be the answer: one turn of the list makes it another order.
  const shown = mixed.every((id, i) => id === correct[i]) ? [...mixed.slice(1), ...mixed.slice(0, 1)] : mixed;
  return {
    kind: 'order',
    id: `order ${correct.join(' ')}`,
    prompt: P['order.prompt'],
    choices: shown.map((id) => choiceOf(graph.bone(id))),
    correct,
    why: [fill(P['why.order'], { bones: correct.map((id) => graph.bone(id).term).join(', ') })],
    lit: null,
    sources: [],
  };
};

const meets: Maker = ({ content, graph }, random): MeetsItem | null => {
  const bone = pick(
    random,
    graph.bones.filter((b) => graph.neighbours(b.id).length > 0),
  );
  if (bone === undefined) return null;
  const right = graph.neighbours(bone.id);
  const rightRows = right.map((id) => rowOf(id));
  const near = (id: BoneId): boolean => rightRows.includes(rowOf(id)) || rowOf(id) === rowOf(bone.id);
  const free = graph.bones.filter((b) => b.id !== bone.id && !graph.joined(bone.id, b.id));
  const extras = [
    ...shuffled(
      random,
      free.filter((b) => near(b.id)),
    ),
    ...shuffled(
      random,
      free.filter((b) => !near(b.id)),
    ),
  ].slice(0, MEETS_EXTRA);
  const joints = content.joints.filter((joint) => joint.articular && joint.bones.includes(bone.id));
  return {
    kind: 'meets',
    id: `meets ${bone.id}`,
    prompt: fill(P['meets.prompt'], { bone: bone.term }),
    choices: shuffled(random, [...right.map((id) => graph.bone(id)), ...extras]).map(choiceOf),
    correct: right,
    why: [
      fill(P['why.meets'], { bones: listed(right.map((id) => graph.bone(id).term)) }),
      ...joints.map((j) => j.term),
    ],
    lit: bone.id,
    sources: [...new Set(joints.flatMap((j) => (j.evidence.source === null ? [] : [j.evidence.source])))],
  };
};

const zone: Maker = ({ content, graph, zones }, random): ZoneItem | null => {
  const records = zones.map((z) => content.regions.find((region) => region.id === z.region));
  const index = Math.floor(random() * zones.length);
  const chosen = zones[index];
  const record = records[index];
  if (chosen === undefined || record === undefined || zones.length < 2) return null;
  const share = ZONE_MARGIN_SHARE + random() * (1 - 2 * ZONE_MARGIN_SHARE);
  return {
    kind: 'zone',
    id: `zone ${chosen.region}`,
    prompt: fill(P['zone.prompt'], { bone: graph.bone(record.bone).term }),
    choices: records.flatMap((r) => (r === undefined ? [] : [{ id: r.id, text: r.term, latin: null }])),
    correct: [chosen.region],
    why: [fill(P['why.zone'], { zone: record.term }), fill(P['why.border'], { border: record.border })],
    lit: null,
    sources: record.evidence.source === null ? [] : [record.evidence.source],
    breakAt: { bone: record.bone, sMm: chosen.fromMm + share * (chosen.toMm - chosen.fromMm), region: chosen.region },
  };
};

export const MAKERS: Readonly<Record<QuizKind, Maker>> = { nameLit, pointTo, order, meets, zone };
