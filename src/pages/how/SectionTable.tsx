/** The section of hard bone at one station: area, centroid, second moments, torsion, shear; and its ellipse of inertia, to scale. */
import type { SectionProperties, Station } from '../../mechanics/types';
import { usePages } from '../context';

const SIZE = 150;
const MIDDLE = SIZE / 2;
/** Radii of gyration of a metatarsal reach some 6 mm at its base. px a mm */
const PER_MM = 11;

const fixed =
  (digits: number) =>
  (value: number): string =>
    value.toFixed(digits).replace('-', '−');
const whole = fixed(0);
const tenths = fixed(1);
const degrees = (rad: number): string => whole((rad * 180) / Math.PI);
const pair = ([first, second]: readonly [number, number]): string => `${tenths(first)}, ${tenths(second)}`;

export const SECTION_ROWS: readonly { readonly key: string; readonly text: (s: SectionProperties) => string }[] = [
  { key: 'area', text: (s) => whole(s.areaMm2) },
  { key: 'centroid', text: (s) => pair(s.centroidMm) },
  { key: 'lateral', text: (s) => whole(s.iLateralMm4) },
  { key: 'dorsal', text: (s) => whole(s.iDorsalMm4) },
  { key: 'product', text: (s) => whole(s.iProductMm4) },
  { key: 'most', text: (s) => whole(s.iMostMm4) },
  { key: 'least', text: (s) => whole(s.iLeastMm4) },
  { key: 'roll', text: (s) => degrees(s.rollRad) },
  { key: 'edges', text: (s) => [s.toDorsalMm, s.toPlantarMm, s.toLateralMm, s.toMedialMm].map(tenths).join(', ') },
  { key: 'torsion', text: (s) => whole(s.jMm4) },
  { key: 'shear', text: (s) => `${tenths(s.shearAreaMostMm2)}, ${tenths(s.shearAreaLeastMm2)}` },
  { key: 'shearCentre', text: (s) => pair(s.shearCentreMm) },
];

/**
 * Up is dorsal, right is lateral, as the back of a right bone is seen from its base. The ellipse has the bone's radii of gyration;
 * the line is where bone is neither pulled nor pressed.
 */
const Ellipse = ({ station }: { readonly station: Station }) => {
  const { section, field } = station;
  const along = Math.sqrt(section.iMostMm4 / section.areaMm2) * PER_MM;
  const across = Math.sqrt(section.iLeastMm4 / section.areaMm2) * PER_MM;
  const [a, b, c] = field;
  const steep = Math.hypot(b, c);
  // The neutral line: a + b y + c z = 0, as far from the centroid as it is, at right angles to the gradient.
  const off = steep > 0 ? (-a / steep) * PER_MM : Number.NaN;
  const drawn = Number.isFinite(off) && Math.abs(off) < MIDDLE;
  const turn = (Math.atan2(c, b) * 180) / Math.PI;
  return (
    <svg className="section-drawing" viewBox={`0 0 ${SIZE} ${SIZE}`} width={SIZE} height={SIZE} aria-hidden="true">
      <path className="strip-axis" d={`M${MIDDLE} 4V${SIZE - 4}M4 ${MIDDLE}H${SIZE - 4}`} />
      <g transform={`translate(${MIDDLE} ${MIDDLE}) rotate(${(section.rollRad * 180) / Math.PI})`}>
        <ellipse className="section-ellipse" rx={across} ry={along} />
        <path className="strip-line" d={`M0 ${-along}V${along}M${-across} 0H${across}`} />
      </g>
      {drawn && (
        <g transform={`translate(${MIDDLE} ${MIDDLE}) rotate(${turn})`}>
          <path className="strip-line strip-line-second" d={`M-60 ${-off}H60`} />
          <path
            className="section-pulled"
            d={`M0 ${-off - 4}V${-off - 24}M-4 ${-off - 18}L0 ${-off - 25}L4 ${-off - 18}`}
          />
        </g>
      )}
    </svg>
  );
};

export const SectionTable = ({ station }: { readonly station: Station }) => {
  const { say } = usePages();
  return (
    <>
      <div className="section">
        <Ellipse station={station} />
        <p className="small-print">{say('section.drawing')}</p>
      </div>
      <table className="section-table">
        <caption className="unseen">{say('section.caption')}</caption>
        <tbody>
          {SECTION_ROWS.map(({ key, text }) => (
            <tr key={key}>
              <th scope="row">{say(`section.${key}`)}</th>
              <td>{text(station.section)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="small-print">{say('section.note')}</p>
    </>
  );
};
