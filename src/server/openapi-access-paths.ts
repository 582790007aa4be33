import { answer, body, errors, ID, IF_MATCH, ref } from './openapi-parts.ts'

const DONE = { 200: answer('done', { type: 'object' }) }
const GIVES_CODE =
  'The code lets whoever has it choose a password once, within seven days. Nobody else ever knows the password.'

const sessionPaths = {
  '/api/session': {
    get: {
      summary: 'Whether people sign in here, and who is signed in',
      responses: { 200: answer('so', ref('session')) },
    },
    post: {
      summary: 'Sign in',
      description:
        'The answer sets a cookie. A wrong name and a wrong password are answered alike. `code-wanted`: ask again with the code of the second factor. Each failure makes the next try wait longer.',
      requestBody: body(ref('sign-in')),
      responses: { 200: answer('signed in', ref('session')), ...errors(401, 415, 422, 429) },
    },
    delete: { summary: 'Sign out', responses: { 200: answer('signed out', ref('session')) } },
  },
  '/api/session/code': {
    post: {
      summary: 'Choose a password with a one-time code, and sign in',
      requestBody: body(ref('code')),
      responses: { 200: answer('signed in', ref('session')), ...errors(401, 409, 415, 422) },
    },
  },
  '/api/session/code/look': {
    post: {
      summary: 'What a one-time code is for',
      requestBody: body(ref('code-look')),
      responses: { 200: answer('for this', ref('code-looked')), ...errors(401, 415, 422) },
    },
  },
  '/api/session/devices': {
    get: {
      summary: 'Where one is signed in',
      responses: { 200: answer('all of them', ref('device-list')), ...errors(401) },
    },
  },
  '/api/session/devices/{id}': {
    delete: { summary: 'Sign a device out', parameters: [ID], responses: { ...DONE, ...errors(401, 404) } },
  },
  '/api/session/password': {
    post: {
      summary: 'Change one’s password; every other device is signed out',
      requestBody: body(ref('password')),
      responses: { ...DONE, ...errors(401, 415, 422, 429) },
    },
  },
  '/api/session/second-factor': {
    post: {
      summary: 'A new key for an authenticator (RFC 6238); nothing is changed yet',
      requestBody: body(ref('factor-start')),
      responses: { 200: answer('the key', ref('factor-started')), ...errors(401, 415, 422, 429) },
    },
    put: {
      summary: 'Set the second factor with a first code of it; answers recovery codes, once',
      requestBody: body(ref('factor')),
      responses: { 200: answer('set', ref('factor-set')), ...errors(401, 415, 422, 429) },
    },
  },
  '/api/session/second-factor/off': {
    post: {
      summary: 'Take the second factor away; an owner then may do what an estimator may',
      requestBody: body(ref('factor-start')),
      responses: { ...DONE, ...errors(401, 415, 422, 429) },
    },
  },
}

const officePaths = {
  '/api/accounts': {
    get: {
      summary: 'Who may come in; owners only',
      responses: { 200: answer('all of them', ref('account-list')), ...errors(401, 403) },
    },
    post: {
      summary: 'Let somebody in: answers the code to hand to them',
      description: GIVES_CODE,
      requestBody: body(ref('account')),
      responses: { 201: answer('added', ref('account-code')), ...errors(401, 403, 409, 415, 422) },
    },
  },
  '/api/accounts/{id}': {
    put: {
      summary: 'Change name, role or person, or keep them out; another role signs them out everywhere',
      parameters: [ID, { ...IF_MATCH, required: true }],
      requestBody: body(ref('account-change')),
      responses: {
        200: answer('changed', ref('account-kept')),
        ...errors(400, 401, 403, 404, 409, 415, 422),
      },
    },
  },
  '/api/accounts/{id}/code': {
    post: {
      summary: 'A new code for one who has lost password or second factor',
      description: GIVES_CODE,
      parameters: [ID],
      responses: { 200: answer('the code', ref('account-code')), ...errors(401, 403, 404, 409) },
    },
  },
  '/api/tokens': {
    get: {
      summary: 'Tokens for scripts; owners only',
      responses: { 200: answer('all of them', ref('token-list')), ...errors(401, 403) },
    },
    post: {
      summary: 'A new token, told this once; send it as `Authorization: Bearer TOKEN`',
      requestBody: body(ref('token')),
      responses: { 201: answer('made', ref('token-made')), ...errors(401, 403, 415, 422) },
    },
  },
  '/api/tokens/{id}': {
    delete: {
      summary: 'Take a token back',
      parameters: [ID],
      responses: { ...DONE, ...errors(401, 403, 404) },
    },
  },
  '/api/shares': {
    get: {
      summary: 'Links that show a crossing to people without an account',
      responses: { 200: answer('all of them', ref('share-list')), ...errors(401, 403) },
    },
    post: {
      summary: 'A new link, told this once, for at most 90 days: /shared#TOKEN',
      requestBody: body(ref('share')),
      responses: { 201: answer('made', ref('share-made')), ...errors(401, 403, 415, 422) },
    },
  },
  '/api/shares/{id}': {
    delete: {
      summary: 'Take a link back',
      parameters: [ID],
      responses: { ...DONE, ...errors(401, 403, 404) },
    },
  },
  '/api/shares/{id}/accesses': {
    get: {
      summary: 'When and from where a link was used, the latest first',
      parameters: [ID],
      responses: { 200: answer('at most 500', ref('share-accesses')), ...errors(401, 403, 404) },
    },
  },
  '/api/shared': {
    post: {
      summary: 'What a link shows; the token is sent in the body so that no log holds it',
      requestBody: body(ref('shared')),
      responses: {
        200: answer('these fields and no other', ref('shared-plan')),
        ...errors(404, 415, 422, 503),
      },
    },
  },
}

/** Who may come in. Where the server answers only its own machine nobody signs in, and these say so or answer 404. */
export const accessPaths = { ...sessionPaths, ...officePaths }
