/** What the program's end tells a script. A held plan is done too. */
export const EXIT = { done: 0, refused: 2, unfinished: 3, usage: 64, interrupted: 130 } as const
export type ExitCode = (typeof EXIT)[keyof typeof EXIT]
