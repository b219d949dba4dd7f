/** The screens: words and controls. What they may not import (the 3D figure, the makers of pictures) the app lends them. */
export { type Measures, PagesProvider, type PagesValue, type PlatePair } from './context';
export { HelpButton } from './help/HelpButton';
export { PICTURE_WORDS_ID } from './parts/Plate';
export { type Address, DEMOS, type Demo, readAddress, START, strangersIn, writeAddress } from './places';
export { Rescue } from './Rescue';
export { Shell } from './Shell';
export { makeSay } from './words';
