/** The scale bar under a picture: true everywhere in it, since the projection is parallel. */
import { scaleBar } from '../scale-bar';

export const ScaleBar = ({ mmPerPx }: { readonly mmPerPx: number }) => {
  const { mm, px } = scaleBar(mmPerPx);
  return (
    <div className="stage-scale">
      <svg width={px + 2} height="9" aria-hidden="true">
        <path d={`M1 8V2M1 8H${px + 1}V2`} fill="none" stroke="currentColor" strokeWidth="1.2" />
        <path d={`M1 3.500H${1 + px / 2}`} stroke="currentColor" strokeWidth="3.5" />
      </svg>
      <span>{mm} mm</span>
    </div>
  );
};
