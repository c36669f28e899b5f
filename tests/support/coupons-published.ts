/**
 * Printed samples and what was printed with them. All at second hand: the handbook itself, CMH-17-1G (SAE,
 * March 2012), Vol. 1 chapter 8, and the paper were not before us. Units are the sources' own (ksi; none matter).
 */

/** A worked sample of 18 strengths, printed with the values of every distribution. */
export const EIGHTEEN = [
  137.4438, 139.5395, 150.89, 141.4474, 141.8203, 151.8821, 143.9245, 132.9732, 136.6419, 138.1723,
  148.7668, 143.283, 143.5429, 141.7023, 137.4732, 152.338, 144.1589, 128.5218,
];

/** CMH-17-1G 8.3.11.2.1, hot and wet, 22 results in three batches. */
export const ETW = [
  106.357525, 105.898733, 88.4640082, 103.901744, 80.2058219, 109.199597, 61.0139431, 99.3207107,
  115.86177, 82.6133082, 85.3690411, 115.801622, 44.3217741, 117.328077, 88.6782903, 107.676986,
  108.960241, 116.12264, 80.2334815, 106.14557, 104.667866, 104.234953,
];

/** CMH-17-1G 8.3.11.2.2, hot and wet, three batches. */
export const ETW2 = [
  [99.0239966, 103.341238, 100.30213, 98.4634133, 92.264728, 103.487693, 113.734763],
  [108.172659, 108.426732, 116.260375, 121.04961, 111.223082, 104.574843, 103.222552],
  [99.3918538, 87.3421658, 102.730741, 96.3694916, 99.5946088, 97.0712407],
];

/** CMH-17-1G, table of the maximum normed residual at 5 %: results, critical value. */
export const MNR_TABLE: readonly (readonly [number, number])[] = [
  [3, 1.154],
  [4, 1.481],
  [5, 1.715],
  [6, 1.887],
  [7, 2.02],
  [8, 2.127],
  [9, 2.215],
  [10, 2.29],
  [12, 2.412],
  [15, 2.548],
  [18, 2.652],
  [20, 2.708],
  [25, 2.822],
  [30, 2.908],
];

/** CMH-17-1G 8.3.11.2.1: the first two batches of the sample above and their largest residuals. */
export const MNR_SAMPLES = [
  {
    batch: [
      99.3207107, 115.86177, 82.6133082, 85.3690411, 115.801622, 44.3217741, 117.328077, 88.6782903,
    ],
    printed: 2.008,
  },
  {
    batch: [107.676986, 108.960241, 116.12264, 80.2334815, 106.14557, 104.667866, 104.234953],
    printed: 2.119,
  },
];

/** CMH-17-1G 8.3.11: Levene's F of three batches, 3.850. */
export const LEVENE = [
  [118.3774604, 123.6035612, 115.2238092, 112.6379744, 116.5564277, 123.1649896],
  [128.5589027, 113.1462103, 121.4248107, 134.3241906, 129.6405117, 117.9818658],
  [115.4505226, 120.0369467, 117.1631088, 112.9302797, 117.9114501, 120.1900159, 110.7295966],
];

/**
 * F. W. Scholz, M. A. Stephens, JASA 82 (1987) 918, section 7: smoothness of paper, four laboratories;
 * printed A²kN 8.3559 (right) and 8.3926 (midrank).
 */
export const LABORATORIES = [
  [38.7, 41.5, 43.8, 44.5, 45.5, 46.0, 47.7, 58.0],
  [39.2, 39.3, 39.7, 41.4, 41.8, 42.9, 43.3, 45.8],
  [34.0, 35.0, 39.0, 40.0, 43.0, 43.0, 44.0, 45.0],
  [34.0, 34.8, 34.8, 35.4, 37.2, 37.8, 41.2, 42.8],
];

/** Tolerance factors of a normal sample, n, k_B, k_A, as printed in CMH-17-1G. */
export const K_TABLE: readonly (readonly [n: number, b: number, a: number])[] = [
  [3, 6.157, 10.553],
  [5, 3.408, 5.741],
  [6, 3.007, 5.062],
  [10, 2.355, 3.981],
  [15, 2.069, 3.52],
  [18, 1.974, 3.37],
  [20, 1.927, 3.295],
  [30, 1.778, 3.064],
];

/** Hanson and Koopmans, B-basis: n, r, k of MIL-HDBK-17-1F Vol. 1 chapter 8, from memory. */
export const HK_TABLE_B: readonly (readonly [n: number, r: number, k: number])[] = [
  [2, 2, 35.177],
  [3, 3, 7.859],
  [4, 4, 4.505],
  [5, 4, 4.101],
  [6, 5, 3.064],
  [7, 5, 2.858],
  [8, 6, 2.382],
  [9, 6, 2.253],
  [10, 6, 2.137],
  [11, 7, 1.897],
  [12, 7, 1.814],
  [13, 7, 1.738],
  [14, 8, 1.599],
  [15, 8, 1.54],
  [16, 8, 1.485],
  [17, 8, 1.434],
  [18, 9, 1.354],
  [19, 9, 1.311],
  [20, 10, 1.253],
  [21, 10, 1.218],
  [22, 10, 1.184],
  [23, 11, 1.143],
  [24, 11, 1.114],
  [25, 11, 1.087],
  [26, 11, 1.06],
  [27, 11, 1.035],
  [28, 12, 1.01],
];

/** A-basis: n, k of the same handbook, from memory, but 18 and 22, which were printed with the samples above. */
export const HK_TABLE_A: readonly (readonly [n: number, k: number, digits: number])[] = [
  [2, 80.0038, 4],
  [3, 16.9122, 4],
  [4, 9.49579, 5],
  [5, 6.89049, 5],
  [10, 3.57267, 5],
  [18, 2.4966, 4],
  [22, 2.2602, 4],
];

/**
 * AD* that is exceeded with these chances where the distribution is right, both constants fitted, large samples:
 * M. A. Stephens, JASA 69 (1974) 730 (normal) and Biometrika 64 (1977) 583 (Weibull by its logarithms), from memory.
 */
export const AD_POINTS = {
  normal: [
    [0.15, 0.576],
    [0.1, 0.656],
    [0.05, 0.787],
    [0.025, 0.918],
    [0.01, 1.092],
  ],
  weibull: [
    [0.25, 0.474],
    [0.1, 0.637],
    [0.05, 0.757],
    [0.025, 0.877],
    [0.01, 1.038],
  ],
} as const;
