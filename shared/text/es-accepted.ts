/**
 * What would do, as the doors and the engine word it, in Spanish. Keys are those words exactly; lists of keys, units and
 * values a file takes are the same in every language and are not here.
 */
export const ES_ACCEPTED: Readonly<Record<string, string>> = {
  'a date and time like 2026-03-02T09:10': 'una fecha y hora como 2026-03-02T09:10',
  'two different people': 'dos personas distintas',
  'how far right or how far low of the line; 0 for on it':
    'cuánto a la derecha o cuánto abajo de la línea; 0 si va sobre ella',
  'left or right only: a sound tells no depth': 'solo izquierda o derecha: un sonido no dice profundidad',
  'example, or a rate book written out': 'example, o un libro de precios completo',
  'a length, or launch and reception positions': 'una longitud, o las posiciones de launch y reception',
  'a system and a size, or an outside diameter': 'un sistema y un tamaño, o un diámetro exterior',
  'a diameter and what else is known': 'un diámetro y lo demás que se sepa',
  'at most 20 MB': '20 MB como máximo',
  'at most 200 million points': '200 millones de puntos como máximo',
  'a still picture': 'una imagen fija',
  'a picture (JPEG, PNG, WebP) or a PDF': 'una imagen (JPEG, PNG, WebP) o un PDF',
  'a JSON object': 'un objeto JSON',
  'a day such as 2026-03-02': 'un día como 2026-03-02',
  'a crossing: a JSON object': 'un cruce: un objeto JSON',
  'a word that fits the USCS symbol, or one of the two':
    'una palabra que concuerde con el símbolo USCS, o solo uno de los dos',
  'length and time between two hose marks': 'largo y tiempo entre dos marcas de la manguera',
  'each family of ground once': 'cada familia de suelo una sola vez',
  'the nearest known word': 'la palabra conocida más parecida',
  'the nearest known key': 'la clave conocida más parecida',
  'station for a line that crosses, offset for one alongside':
    'station para una línea que cruza, offset para una que va al costado',
  '"to" beyond "from"': '«to» más allá de «from»',
  'where this stretch of ground ends': 'dónde termina este tramo de suelo',
  'stretches in order, none over another': 'tramos en orden, ninguno encima de otro',
  'at most 1 MB': '1 MB como máximo',
  'the `next` of a page': 'el `next` de una página',
  'a whole number': 'un número entero',
  'a file that exists': 'un archivo que exista',
  'a file, not a folder': 'un archivo, no una carpeta',
  'a file that may be read': 'un archivo que se pueda leer',
  'a second pass with an expander: set "pull" to "expander"':
    'una segunda pasada con ensanchador: ponga "pull" en "expander"',
  'one value': 'un solo valor',
  'gauge, and really as low as that': 'manométrica, y de verdad tan baja',
  'bar, not psi': 'bar, no psi',
  'a coupling no wider than its hose': 'un acople no más ancho que su manguera',
  'a conductance, or a loss and the flow it is at':
    'una conductancia, o una pérdida y el caudal con que ocurre',
  'an unloading pressure above the set one': 'una presión de descarga mayor que la de trabajo',
  'an oiler, or none in the line': 'una aceitera, o ninguna en la línea',
  'a name of its own for each branch': 'un nombre propio para cada ramal',
  'branches that lead away from the compressor and never back':
    'ramales que se alejan del compresor y nunca regresan',
  'at most three branches one after another': 'cuando mucho tres ramales uno tras otro',
  'a tool at the end of a branch, not where another starts':
    'un topo al final de un ramal, no donde empieza otro',
  'one branch without a tool of its own: this crossing’s tool stands there':
    'un ramal sin topo propio: ahí va el topo de este cruce',
  'a number of tools, or branches with a tool each': 'un número de topos, o ramales con un topo cada uno',
  refusal: 'rechazo',
  'no space': 'sin espacio',
  'no comma': 'sin coma',
  'decimal point': 'punto decimal',
  number: 'número',
  string: 'texto',
  boolean: 'true o false',
  object: 'un objeto',
  array: 'una lista',
  'a three-letter currency code': 'un código de moneda de tres letras',
  'a date like 2026-03-02 or a date and time like 2026-03-02T09:10':
    'una fecha como 2026-03-02 o fecha y hora como 2026-03-02T09:10',
  'the time on the clock there, or a zone as well: zone=America/New_York':
    'la hora del reloj de allí, o también una zona: zone=America/New_York',
  'depth to the top of the line, as a locator or a test hole reads it':
    'profundidad a la parte de arriba de la línea, como la lee un detector o una calicata',
  'depth to its centre': 'profundidad a su centro',
  'depth to its underside': 'profundidad a su parte de abajo',
  'depths are to the centre of the bore': 'profundidades al centro de la perforación',
  'depths are to the top of the pipe': 'profundidades a la parte de arriba del tubo',
  'depths are to the underside of the bore': 'profundidades a la parte de abajo de la perforación',
  'depths are to the floor of the pits': 'profundidades al piso de los pozos',
  '1 to 200 letters, digits and signs': 'de 1 a 200 letras, cifras y signos',
  'the version as its ETag gave it, such as "3"': 'la versión como la dio su ETag, por ejemplo "3"',
  'If-Match: "<version>"': 'If-Match: "<versión>"',
  'a UUID': 'un UUID',
  'a crossing that is kept': 'un cruce guardado',
  'two to sixty small letters, digits and . _ @ + -':
    'de dos a sesenta letras minúsculas, cifras y . _ @ + -',
  'another name: the program uses this one itself': 'otro nombre: este lo usa el programa mismo',
  'letters, digits and signs on one line': 'letras, cifras y signos en una línea',
  'the key as it was given': 'la clave como se dio',
  'the same without the minus sign': 'lo mismo sin el signo menos',
  'a tool that is not held: its tilt test failed, a part is to be replaced, or it is out of use':
    'una herramienta que no esté retenida: falló su prueba de inclinación, hay una pieza por cambiar o está fuera de servicio',
}
