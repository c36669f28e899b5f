/** Always in view in the app and always on the sheet; never a pop-up to click away. */
export const cautionShort =
  'Screening calculation. Confirm by coupon and joint tests made with your own process; follow local codes; where failure could hurt someone, have a competent engineer approve it.';

export const cautions: readonly string[] = [
  'Screening calculation. Bonded strength depends on surface preparation and process: confirm by coupon and joint tests made with your own process, and keep witness coupons.',
  "Follow the adhesive maker's data and safety sheet, and local codes.",
  'Where failure could hurt someone, have a competent, where required licensed, engineer approve the design, and give the load a second path or a proof test.',
];
