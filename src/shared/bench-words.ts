/** The words of the bench: surfaces, steps, and what each word on the page and the card means. */
import type { SurfaceName, VerdictState } from './project.ts';

export const surfaceWords: Readonly<Record<SurfaceName, string>> = {
  'spigot-outside': 'spigot, outside',
  'tube-inside': 'tube, inside',
  'tube-outside': 'tube, outside',
  'socket-inside': 'socket, inside',
};

export const verdictWords: Readonly<Record<VerdictState | 'unknown', string>> = {
  accept: 'Accept',
  hold: 'Hold for engineering',
  reject: 'Reject',
  unknown: 'Not yet known',
};

/** Usual steps of such a bond (common practice, no source); a joint may have its own. */
export const usualChecklist: readonly string[] = [
  'Gloves on: clean, free of powder, changed when they touch anything else',
  'Degrease tube and sleeve with IPA, clean wipes, one way only',
  'Blast the metal, abrade the carbon; blow off the dust',
  'IPA wipe until the wipe stays white',
  'Water-break test: the film stays whole',
  'Second clean with IPA; let it dry; bond within the hour',
  'Dry fit with spacers; mark the tube at the mouth line',
  'Weigh and mix; write the time; stay within the open time',
  'Wet both faces; turn the tube home; wipe off the squeeze-out',
  'Fixture: on the jig, mark to mark, overnight',
  'Cure by the schedule; log temperature and time',
  'Witness coupons from the same mix, same surfaces, same cure',
];

/** Every word of the page that a newcomer at the bench may not know. */
export const glossary: readonly { readonly word: string; readonly means: string }[] = [
  { word: 'gap', means: 'the space between tube and sleeve that the adhesive fills' },
  {
    word: 'sleeve',
    means: 'the printed metal part: a socket goes over the tube, a spigot into it',
  },
  { word: 'mouth', means: 'the open end of the sleeve, where the tube goes in' },
  { word: 'station', means: 'a place along the joint, in mm from the mouth' },
  { word: 'clocking', means: 'a place around the tube, in degrees from the mark' },
  { word: 'centred', means: 'tube and sleeve on one axis' },
  { word: 'as held', means: 'pushed aside as far as spacers and jig allow' },
  { word: 'spacer', means: 'wire or beads in the adhesive that keep the parts apart' },
  { word: 'jig', means: 'the fixture that holds tube and sleeve while the adhesive cures' },
  {
    word: 'coupons',
    means: 'small test pieces; their range is the gaps that were tested with this adhesive',
  },
  { word: 'typical', means: 'usual for such materials, not tested by you' },
  { word: 'IPA', means: 'isopropyl alcohol, for cleaning' },
  { word: 'water-break test', means: 'water stays a whole film on a clean surface' },
  {
    word: '±',
    means:
      'how far the instruments let the value be off, 95 times in 100; thinnest and thickest are guarded further by samples',
  },
  {
    word: 'margin',
    means: 'strength to spare at this gap: 0.25 is 25 % more than is asked of the joint',
  },
  { word: 'open time', means: 'from mixing until the parts must be together' },
  { word: 'witness coupon', means: 'a small test piece bonded with the joint, broken later' },
];
