import { z } from 'zod'
import * as access from '../../shared/contracts/access.ts'
import {
  apiError,
  changeConflict,
  crossingHistory,
  crossingPage,
  keptCrossing,
} from '../../shared/contracts/kept-crossing.ts'
import { documentHistory, documentPage, keptDocument } from '../../shared/contracts/kept-document.ts'
import { PLAIN_NOUNS } from '../../shared/contracts/noun-files.ts'
import { sharedPlan } from '../../shared/contracts/shared-plan.ts'
import { ENGINE_VERSION } from '../../shared/core/engine-version.ts'
import { jsonSchema } from '../schemas.ts'
import { NOUNS } from '../store/nouns.ts'
import { fileComponent, OPENAPI_PATHS } from './openapi-paths.ts'

const ANSWERS: Readonly<Record<string, z.ZodType>> = {
  'crossing-page': crossingPage,
  'crossing-kept': keptCrossing,
  'crossing-history': crossingHistory,
  'document-page': documentPage,
  'document-kept': keptDocument,
  'document-history': documentHistory,
  error: apiError,
  conflict: changeConflict,
  session: access.sessionAnswer,
  'code-looked': access.codeLookAnswer,
  'device-list': access.deviceList,
  'factor-started': access.factorStartAnswer,
  'factor-set': access.factorAnswer,
  'account-list': access.accountList,
  'account-kept': access.accountAnswer,
  'account-code': access.newCodeAnswer,
  'token-list': access.tokenList,
  'token-made': access.newTokenAnswer,
  'share-list': access.shareList,
  'share-made': access.newShareAnswer,
  'share-accesses': access.shareAccessList,
  'shared-plan': sharedPlan,
}

const REQUESTS: Readonly<Record<string, z.ZodType>> = {
  'sign-in': access.signInRequest,
  code: access.codeRequest,
  'code-look': access.codeLookRequest,
  password: access.passwordRequest,
  'factor-start': access.factorStartRequest,
  factor: access.factorRequest,
  account: access.accountRequest,
  'account-change': access.accountChange,
  token: access.tokenRequest,
  share: access.shareRequest,
  shared: access.sharedRequest,
}

/** Published under the names of files, with a hyphen: a component's name may hold no @. */
const PUBLISHED: Readonly<Record<string, string>> = {
  'crossing-1': 'crossing@1',
  'plan-1': 'plan@1',
  'relation-1': 'relation@1',
  'release-1': 'release@1',
  ...Object.fromEntries(PLAIN_NOUNS.map((noun) => [fileComponent(noun), NOUNS[noun].format])),
}

/** Inside the document a schema is known by its place, not by a name of its own. */
function asComponent(schema: unknown): unknown {
  if (schema === null || typeof schema !== 'object') return {}
  const { $id: _id, $schema: _dialect, ...rest } = schema as Record<string, unknown>
  return rest
}

/** The whole API, said for programs. */
export function openApiDocument() {
  const published = Object.entries(PUBLISHED).map(([name, full]) => [name, asComponent(jsonSchema(full))])
  const components = (schemas: typeof ANSWERS, io: 'input' | 'output') =>
    Object.entries(schemas).map(([name, schema]) => [
      name,
      asComponent(z.toJSONSchema(schema, { io, unrepresentable: 'any' })),
    ])
  const answers = [...components(ANSWERS, 'output'), ...components(REQUESTS, 'input')]
  return {
    openapi: '3.1.0',
    info: {
      title: 'Underlane',
      version: ENGINE_VERSION,
      description:
        'Quantities in files are strings with a unit ("46 ft 6 in", "7 bar"); results are in SI and say so in their names. Where people sign in, every route but those that say otherwise wants the cookie of a session or a bearer token: 401 without, 403 beyond the role. Every error has one shape: a code, the id of the request, and every problem with its place and a sentence (English or Spanish by Accept-Language).',
    },
    paths: OPENAPI_PATHS,
    components: { schemas: Object.fromEntries([...published, ...answers]) },
  }
}
