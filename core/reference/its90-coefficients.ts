import type { Provenance } from './published-table.ts';

/** A polynomial Σ cᵢ·tⁱ for the EMF in mV at t °C, reference junction at 0 °C, over a range of t. */
export interface EmfPolynomial {
  readonly fromC: number;
  readonly toC: number;
  /** c₀, c₁, … in mV per °C to the power of the index. */
  readonly coefficients: readonly number[];
}

export const ITS90_PROVENANCE: Provenance = {
  title: 'ITS-90 thermocouple database',
  publisher: 'National Institute of Standards and Technology',
  edition: 'Standard Reference Database 60, version 2.0 (after NIST Monograph 175)',
  table: 'direct coefficients, EMF from temperature, types B E J K N R S T',
  obtained: 'seen',
  obtainedNote: 'checked against the table values in its90-check-values.ts',
};

/**
 * Type K from 0 °C upwards adds amplitude·exp(exponent·(t − centreC)²) to its polynomial, in mV.
 */
export const TYPE_K_EXPONENTIAL = {
  amplitude: 0.1185976,
  exponent: -1.183432e-4,
  centreC: 126.9686,
} as const;

/** Types N and E are held from 0 °C only: no kiln is colder. */
export const ITS90_COEFFICIENTS: Readonly<
  Record<'B' | 'E' | 'J' | 'K' | 'N' | 'R' | 'S' | 'T', readonly EmfPolynomial[]>
> = {
  B: [
    {
      fromC: 0,
      toC: 630.615,
      coefficients: [
        0, -0.00024650818346, 5.9040421171e-6, -1.3257931636e-9, 1.5668291901e-12, -1.694452924e-15,
        6.2990347094e-19,
      ],
    },
    {
      fromC: 630.615,
      toC: 1820,
      coefficients: [
        -3.8938168621, 0.02857174747, -8.4885104785e-5, 1.5785280164e-7, -1.6835344864e-10,
        1.1109794013e-13, -4.4515431033e-17, 9.8975640821e-21, -9.3791330289e-25,
      ],
    },
  ],
  E: [
    {
      fromC: 0,
      toC: 1000,
      coefficients: [
        0, 0.05866550871, 4.5032275582e-5, 2.8908407212e-8, -3.3056896652e-10, 6.502440327e-13,
        -1.9197495504e-16, -1.2536600497e-18, 2.1489217569e-21, -1.4388041782e-24, 3.5960899481e-28,
      ],
    },
  ],
  J: [
    {
      fromC: -210,
      toC: 760,
      coefficients: [
        0, 0.050381187815, 3.047583693e-5, -8.568106572e-8, 1.3228195295e-10, -1.7052958337e-13,
        2.0948090697e-16, -1.2538395336e-19, 1.5631725697e-23,
      ],
    },
    {
      fromC: 760,
      toC: 1200,
      coefficients: [
        296.45625681, -1.4976127786, 0.0031787103924, -3.1847686701e-6, 1.5720819004e-9,
        -3.0691369056e-13,
      ],
    },
  ],
  K: [
    {
      fromC: -270,
      toC: 0,
      coefficients: [
        0, 0.039450128025, 2.3622373598e-5, -3.2858906784e-7, -4.9904828777e-9, -6.7509059173e-11,
        -5.7410327428e-13, -3.1088872894e-15, -1.0451609365e-17, -1.9889266878e-20,
        -1.6322697486e-23,
      ],
    },
    {
      fromC: 0,
      toC: 1372,
      coefficients: [
        -0.017600413686, 0.038921204975, 1.8558770032e-5, -9.9457592874e-8, 3.1840945719e-10,
        -5.6072844889e-13, 5.6075059059e-16, -3.2020720003e-19, 9.7151147152e-23, -1.2104721275e-26,
      ],
    },
  ],
  N: [
    {
      fromC: 0,
      toC: 1300,
      coefficients: [
        0, 0.025929394601, 1.571014188e-5, 4.3825627237e-8, -2.5261169794e-10, 6.4311819339e-13,
        -1.0063471519e-15, 9.9745338992e-19, -6.0863245607e-22, 2.0849229339e-25, -3.0682196151e-29,
      ],
    },
  ],
  R: [
    {
      fromC: -50,
      toC: 1064.18,
      coefficients: [
        0, 0.00528961729765, 1.39166589782e-5, -2.38855693017e-8, 3.56916001063e-11,
        -4.62347666298e-14, 5.00777441034e-17, -3.73105886191e-20, 1.57716482367e-23,
        -2.81038625251e-27,
      ],
    },
    {
      fromC: 1064.18,
      toC: 1664.5,
      coefficients: [
        2.95157925316, -0.00252061251332, 1.59564501865e-5, -7.64085947576e-9, 2.05305291024e-12,
        -2.93359668173e-16,
      ],
    },
    {
      fromC: 1664.5,
      toC: 1768.1,
      coefficients: [
        152.232118209, -0.268819888545, 0.000171280280471, -3.45895706453e-8, -9.34633971046e-15,
      ],
    },
  ],
  S: [
    {
      fromC: -50,
      toC: 1064.18,
      coefficients: [
        0, 0.00540313308631, 1.2593428974e-5, -2.32477968689e-8, 3.22028823036e-11,
        -3.31465196389e-14, 2.55744251786e-17, -1.25068871393e-20, 2.71443176145e-24,
      ],
    },
    {
      fromC: 1064.18,
      toC: 1664.5,
      coefficients: [
        1.32900444085, 0.00334509311344, 6.54805192818e-6, -1.64856259209e-9, 1.29989605174e-14,
      ],
    },
    {
      fromC: 1664.5,
      toC: 1768.1,
      coefficients: [
        146.628232636, -0.258430516752, 0.000163693574641, -3.30439046987e-8, -9.43223690612e-15,
      ],
    },
  ],
  T: [
    {
      fromC: -270,
      toC: 0,
      coefficients: [
        0, 0.038748106364, 4.4194434347e-5, 1.1844323105e-7, 2.0032973554e-8, 9.0138019559e-10,
        2.2651156593e-11, 3.6071154205e-13, 3.8493939883e-15, 2.8213521925e-17, 1.4251594779e-19,
        4.8768662286e-22, 1.079553927e-24, 1.3945027062e-27, 7.9795153927e-31,
      ],
    },
    {
      fromC: 0,
      toC: 400,
      coefficients: [
        0, 0.038748106364, 3.329222788e-5, 2.0618243404e-7, -2.1882256846e-9, 1.0996880928e-11,
        -3.0815758772e-14, 4.547913529e-17, -2.7512901673e-20,
      ],
    },
  ],
};
