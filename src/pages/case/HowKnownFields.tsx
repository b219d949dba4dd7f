/** How well a claim is known, from whom, and when: the kind of source bounds the status. */
import { useId } from 'react';
import { type ClaimStatus, type Said, SOURCE_KINDS, type SourceKind, STATUS_LIMITS } from '../../cases';
import type { IsoDate } from '../../units';
import { usePages } from '../context';
import { dateOf } from './raw-value';

export interface HowKnown {
  readonly status: ClaimStatus;
  readonly kind: SourceKind;
  readonly on: string;
}
export const AS_TOLD: HowKnown = { status: 'reported', kind: 'person', on: '' };

export const saidOf = ({ status, kind, on }: HowKnown): Said => ({
  status,
  source: sourceOf(kind, dateOf(on)),
});

const sourceOf = (kind: SourceKind, on: IsoDate | null): Said['source'] => (on === null ? { kind } : { kind, on });

interface HowKnownProperties {
  readonly value: HowKnown;
  readonly onChange: (value: HowKnown) => void;
}

export const HowKnownFields = ({ value, onChange }: HowKnownProperties) => {
  const { say } = usePages();
  const id = useId();
  const allowed = STATUS_LIMITS[value.kind];
  return (
    <>
      <p className="field">
        <label htmlFor={`${id}kind`}>{say('claim.source')}</label>
        <select
          id={`${id}kind`}
          value={value.kind}
          onChange={(event) => {
            const kind = SOURCE_KINDS.find((each) => each === event.currentTarget.value) ?? 'person';
            const status = STATUS_LIMITS[kind].includes(value.status)
              ? value.status
              : (STATUS_LIMITS[kind][0] ?? 'reported');
            onChange({ ...value, kind, status });
          }}
        >
          {SOURCE_KINDS.map((kind) => (
            <option key={kind} value={kind}>
              {say(`sourceKind.${kind}`)}
            </option>
          ))}
        </select>
      </p>
      <p className="field">
        <label htmlFor={`${id}status`}>{say('claim.status')}</label>
        <select
          id={`${id}status`}
          value={value.status}
          onChange={(event) => {
            const status = allowed.find((each) => each === event.currentTarget.value);
            if (status !== undefined) onChange({ ...value, status });
          }}
        >
          {allowed.map((status) => (
            <option key={status} value={status}>
              {say(`stamp.${status}`)}
            </option>
          ))}
        </select>
      </p>
      <p className="small-print">{say('claim.limit')}</p>
      <p className="field">
        <label htmlFor={`${id}on`}>{say('claim.on')}</label>
        <input
          id={`${id}on`}
          type="date"
          value={value.on}
          onChange={(event) => onChange({ ...value, on: event.currentTarget.value })}
        />
      </p>
    </>
  );
};
