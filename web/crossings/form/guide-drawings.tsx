import type { JSX } from 'preact'

/** Drawn by ourselves: a hand, and what it does to the ground. The words beside them say the same. */
export const GUIDE_TESTS = ['thumb', 'ribbon', 'dry'] as const
export type GuideTest = (typeof GUIDE_TESTS)[number]

const LUMP = 'M14 46 q2 -14 18 -14 h36 q16 0 18 14 q2 16 -16 18 h-40 q-18 -2 -16 -18 z'

const DRAWN: Readonly<Record<GuideTest, JSX.Element>> = {
  thumb: (
    <>
      <path d={LUMP} />
      <path d="M38 2 v26 q0 12 11 12 q11 0 11 -12 v-26" />
      <path d="M43 26 q6 -5 12 0 v6 q-6 5 -12 0 z" />
      <path d="M28 32 q10 2 12 8 M70 32 q-10 2 -12 8" />
    </>
  ),
  ribbon: (
    <>
      <path d="M4 38 h52 q10 0 10 9 q0 9 -10 9 h-52" />
      <path d="M4 20 h34 q10 0 12 8 q-4 8 -14 8 h-32" />
      <path d="M50 34 q26 -8 34 6 q6 12 2 24 l-9 -1 q3 -11 -2 -19 q-5 -8 -18 -6" />
      <path d="M90 40 v24 M86 40 h8 M86 64 h8" />
    </>
  ),
  dry: (
    <>
      <path d="M6 14 q18 -4 28 10 l4 12" />
      <path d="M94 14 q-18 -4 -28 10 l-4 12" />
      <path d="M36 36 l6 -10 h16 l6 10 l-4 12 h-20 z" />
      <path d="M50 26 l-3 8 l5 6 l-3 8" />
      <path d="M40 58 h2 M48 62 h2 M56 57 h2 M61 64 h2 M36 65 h2" />
    </>
  ),
}

export const GuideDrawing = ({ test }: { readonly test: GuideTest }) => (
  <svg
    viewBox="0 0 100 70"
    width="100"
    height="70"
    fill="none"
    stroke="currentColor"
    stroke-width="2"
    stroke-linecap="round"
    stroke-linejoin="round"
    aria-hidden="true"
  >
    {DRAWN[test]}
  </svg>
)
