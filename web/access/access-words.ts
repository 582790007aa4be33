import { spoken } from '../words/spoken-words.ts'

/** Words of signing in, of one's own access, and of who else may come in. */
export const EN_ACCESS = {
  signOut: 'Sign out',
  signedOut: 'You are signed out. What you save waits in this browser until you sign in.',
  waitsFor: (login: string) => `What ${login} saved here goes when ${login} signs in.`,
  signedOutKept: 'You are signed out: only what this browser has kept is shown, and it may be older.',
  offlineWorks: 'Planning works without signing in; saving and what is kept need it.',
  needsNone: 'Nobody signs in here: the server answers only this machine.',
  login: 'Sign-in name',
  name: 'Name',
  password: 'Password',
  newPassword: 'New password',
  currentPassword: 'Password now',
  passwordHint: '12 signs or more. A few words nobody would guess are better than a short one with signs.',
  show: 'Show the password',
  code: 'Code',
  factorCode: 'Code of your authenticator, or a recovery code',
  factorWanted: 'The password is right. Now the code of the second factor.',
  haveCode: 'I have a code',
  backToPassword: 'Sign in with a password',
  codeHint: 'From the console of the server, from an owner, or from “owner reset”.',
  goOn: 'Go on',
  firstOwner: 'First owner',
  firstOwnerIntro:
    'Nobody can sign in yet. The console where the server was started shows a code; whoever types it becomes the first owner.',
  chooseFor: (name: string) => `Choose a password for ${name}.`,
  choose: 'Choose this password',
  oneMoment: 'One moment …',
  done: 'Done.',
  refused: {
    'wrong-credentials': 'Name or password is wrong.',
    'wrong-code': 'This code is wrong, used already, or over.',
    'password-short': 'The password is too short: 12 signs or more.',
    'password-common': 'Many people would try this password first: choose another.',
    'login-taken': 'This sign-in name is somebody’s, or was.',
    'last-owner': 'There would be no owner left: make somebody else an owner first.',
    'second-factor-needed': 'An owner’s powers need the second factor: set it first.',
    'not-allowed': 'Your role does not allow this.',
    'not-for-this-account': 'Not for this account: change your own password with the one you have.',
    'not-signed-in': 'The session has ended: sign in again.',
    conflict: 'Somebody has changed it meanwhile: look again.',
  } as Readonly<Record<string, string>>,
  wait: (seconds: number) =>
    seconds < 90
      ? `Too many tries: wait ${seconds} s.`
      : `Too many tries: wait ${Math.ceil(seconds / 60)} min.`,
  unreachable: 'There is no connection to the server.',
  trouble: 'The server did not take it.',
  as: (name: string, role: string) => `${name}, ${role}`,
  roles: {
    owner: 'owner',
    estimator: 'estimator',
    'crew-lead': 'crew lead',
    mechanic: 'mechanic',
    viewer: 'viewer',
  },
  ownerNeedsFactor:
    'Without a second factor an owner may do what an estimator may. Set it below to let others in.',
  devices: 'Where you are signed in',
  deviceColumns: ['Device', 'Since', 'Last used', 'From', 'Change'],
  thisDevice: 'this one',
  signOutDevice: 'Sign out',
  signOutWhich: (device: string) => `Sign out: ${device}`,
  passwordHeading: 'Password',
  passwordChange: 'Change the password',
  passwordChanged: 'The password is changed. Every other device is signed out.',
  factorHeading: 'Second factor',
  factorIntro: 'An authenticator app on your phone gives a code that changes every half minute.',
  factorStart: 'Set a second factor',
  factorAnew: 'Set it anew',
  factorKey: 'Scan the square with your authenticator, or add the key, then type the code it shows.',
  factorScan: 'The key as a square to scan',
  factorOpen: 'Open in an authenticator on this device',
  factorConfirm: 'Confirm',
  factorOff: 'Take it away',
  factorOn: (left: number) => `It is set. ${left} recovery codes are left.`,
  recovery:
    'Recovery codes: each signs you in once without the phone. Write them down; they are not shown again.',
  people: 'People',
  peopleIntro: 'Whoever is added gets a code from you, and chooses a password nobody else knows.',
  peopleColumns: ['Name', 'Sign-in name', 'Role', 'On the crews as', 'State', 'Change'],
  person: 'On the crews as',
  nobody: 'nobody',
  role: 'Role',
  add: 'Add',
  addPerson: 'Add somebody',
  invited: 'has not signed in yet',
  active: 'may come in',
  withFactor: 'with second factor',
  keptOut: 'kept out',
  keepOut: 'Keep out',
  letIn: 'Let in again',
  newCode: 'New code',
  ofWhom: (action: string, name: string) => `${action}: ${name}`,
  giveCode: (name: string, until: string) => `Give ${name} this code. It works once, until ${until}.`,
  tokens: 'Tokens for scripts',
  tokensIntro: 'A script sends it as “Authorization: Bearer …” and may do what its role may.',
  tokenColumns: ['Name', 'Role', 'Made', 'Last used', 'Change'],
  never: 'never',
  tokenShown: 'Copy the token now: it is not shown again.',
  takeBack: 'Take back',
  takenBack: 'taken back',
  links: 'Links',
  linksIntro:
    'A link shows one crossing to somebody without an account: name, status and reasons, length, bore and cover, depths, the lines crossed that were named, and the drawing. Never price, customer, notes, tools or people.',
  linkColumns: ['For whom', 'Made by', 'Until', 'Uses', 'Change'],
  linkFor: 'For whom',
  linkCrossing: 'Crossing',
  linkDays: 'Days, 90 at most',
  linkMake: 'Make a link',
  linkHere:
    'It opens on this machine only. Open Underlane by the address that others use, and make the link there.',
  linkShown: 'Copy the link now: it is not shown again.',
  uses: 'Show uses',
  usesCount: (count: number) => (count === 1 ? 'one use' : `${count} uses`),
  over: 'over',
  shared: 'Shared crossing',
  sharedGone: 'This link shows nothing: it is over, was taken back, or is not whole.',
  sharedNote: (changed: string, until: string) => `As changed last ${changed}. The link ends ${until}.`,
  sharedNothing: 'There is no plan of this crossing yet.',
  sharedLines: 'Lines crossed that were named; there may be others',
  sharedColumns: ['Line', 'At', 'Gap to the bore’s middle', 'Required', 'Short by'],
  sharedFacts: (length: string, diameter: string, cover: string) =>
    `Bore ${length} long, ${diameter} across, least cover ${cover}.`,
  sharedDrawing: 'Long section of the crossing',
}

export const ACCESS = spoken('access', EN_ACCESS)

/** Why the server did not do it, for a reader. */
export function refusedWords(answer: {
  readonly code: string
  readonly waitS: number
  readonly text: string
}): string {
  if (answer.code === 'too-many-tries') return ACCESS.wait(Math.max(1, answer.waitS))
  const known = Object.hasOwn(EN_ACCESS.refused, answer.code) ? ACCESS.refused[answer.code] : undefined
  return known ?? (answer.text === '' ? ACCESS.trouble : answer.text)
}
