/** Nombres de las fórmulas. */
export const ES_RELATION_TITLES: Readonly<Record<string, string>> = {
  'air-density-ratio': 'Densidad del aire en un sitio',
  'air-loss-first-order': 'Pérdida de presión en un tubo de aire, primer orden',
  'air-operating-point': 'Presión en el topo: compresor, manguera y topo juntos',
  'compressor-delivery': 'Lo que entrega el compresor en un sitio',
  'friction-factor': 'Factor de fricción de Darcy',
  'hose-friction-loss': 'Pérdida de presión en una manguera de aire',
  'orifice-discharge': 'Aire que se escapa por un orificio',
  'receiver-time': 'Tiempo que aguanta un tanque de aire',
  'standard-atmosphere': 'Atmósfera estándar a una altitud',
  'advance-rate': 'Avance mientras golpea',
  'anchorage-length': 'Largo enterrado que sostiene el retroceso',
  'cavity-expansion-factors': 'Factores de Vesic para la expansión de una cavidad',
  'cavity-pressure-dilatant': 'Presión límite de la cavidad, suelo con fricción y dilatancia',
  'cavity-pressure-undrained': 'Presión límite de la cavidad, arcilla no drenada',
  'dcp-resistance': 'Resistencia según un penetrómetro de cono manual',
  'driving-resistance': 'Resistencia durante el hincado',
  'ground-displacement': 'Movimiento del suelo junto a una perforación',
  'heave-progress': 'Levantamiento de la superficie según avanza la perforación',
  'impact-efficiency': 'Energía que se conserva en el golpe',
  'pile-tip-factors': 'Factores de carga de Vesic para la punta de un pilote',
  'pipe-curvature-ratio': 'Parte de la curvatura del suelo que toma un tubo que cruza',
  'sand-strength': 'Fricción y dilatancia de la arena según densidad y esfuerzo',
  'set-per-blow': 'Avance por golpe',
  'shaft-friction': 'Fricción sobre el cuerpo del topo',
  'sideways-push': 'Empuje del suelo hacia los lados de la perforación, a profundidad',
  'spt-fine-sand': 'Corrección del SPT en arena fina saturada',
  'spt-friction-angle': 'Ángulo de fricción de la arena según el N del SPT',
  'spt-stress-correction': 'Corrección del SPT por profundidad',
  'spt-undrained-strength': 'Resistencia no drenada de la arcilla según el N del SPT',
  'surface-heave': 'Levantamiento de la superficie sobre la perforación',
  'tip-resistance-clay': 'Presión en la punta, en arcilla',
  'tip-resistance-granular': 'Presión en la punta, en suelo con fricción',
  'tool-at-pressure': 'Golpe de un topo a la presión que recibe',
  'tool-proportions': 'Proporciones de un topo según el diámetro del cuerpo',
  'vibration-distance': 'Distancia a la que la vibración baja al límite',
  'vibration-ppv-attewell-farmer': 'Vibración según Attewell y Farmer',
  'vibration-ppv-caltrans': 'Vibración con la forma de Caltrans para pilotes',
  'vibration-ppv': 'Vibración junto al topo',
  deviation: 'Desviación de un topo que no se dirige',
  'drift-allowance': 'Margen por deriva',
  'observed-deviation': 'Desviación después de ver pasar el topo',
  'hit-chance': 'Probabilidad de llegar a la ventana',
  'contact-chance': 'Probabilidad de contacto, la fórmula sola',
  'geodesic-length': 'Longitud entre dos lugares',
  'pit-volume': 'Volumen de un pozo',
  'pit-slope': 'Talud más parado de un pozo',
  'required-clearance': 'Separación que se necesita',
  'annulus-volume': 'Espacio alrededor del tubo',
  'bend-radius': 'Radio mínimo de curvatura',
  'bundle-diameter': 'Haz de tubos iguales',
  'dry-drag': 'Arrastre del tubo en una perforación abierta',
  'oversize-ratio': 'Perforación entre tubo',
  'pipe-lead-in': 'Bajada del tubo hacia la perforación',
  'pipe-mass': 'Peso de un tubo',
  'pipe-size': 'Tamaño de un tubo',
  'pull-in-limit': 'Límite de jalón de un tubo de polietileno',
  'pull-stress-load': 'Carga de un tubo con un esfuerzo dado',
  'thermal-length-change': 'Cambio de longitud con la temperatura',
  'air-loss-harris': 'Pérdida de presión en un tubo de aire, fórmula de Harris',
  'component-loss': 'Pérdida de presión en una aceitera, un separador o una válvula',
  'compressor-fuel': 'Diésel que quema un compresor portátil',
  'compressor-power': 'Potencia que pide un compresor',
  'condensate-rate': 'Agua que suelta el aire comprimido',
  'coupling-loss': 'Pérdida en un acople angosto de manguera',
  'engine-power': 'Potencia del motor según la altitud',
  'exhaust-temperature': 'Qué tan frío sale el escape',
  'hose-parting': 'Empuje y energía guardada de una manguera que se suelta',
  'saturated-vapour': 'Vapor de agua en aire saturado',
  'valve-flow': 'Aire por una válvula de Cv conocido',
  'earliest-start': 'Primer inicio posible tras avisar',
  'noise-duration': 'Horas al día que se permite un ruido',
  'noise-dose': 'Ruido del día como parte de lo permitido',
  'hose-thrust': 'Empuje de una manguera que se zafa',
  'position-tolerance': 'Qué tan bien sabe una clase de evidencia dónde está una línea',
  'burning-line-distance': 'Distancia a una línea de gas que arde',
  'archard-wear': 'Desgaste de un par que desliza (Archard)',
  'equivalent-quartz': 'Cuarzo equivalente',
  'coin-feeler': 'Holgura leída con monedas',
  'ring-gap-wear': 'Desgaste de un anillo abierto según su separación',
  'degradation-forecast': 'Uso que le queda a una pieza hasta su límite',
  'drift-to-limit': 'Cuándo una lectura que cambia llega a una raya',
  'weibull-fit': 'Ley de vidas según fallas y lo que sigue trabajando (Weibull)',
  'weibull-scale': 'Escala de una ley de vidas con la forma dada',
  'age-replacement': 'Edad para cambiar una pieza que todavía sirve',
  'repair-trend': 'Si las reparaciones vienen más seguido (ley de potencia)',
  'rate-learning': 'Multiplicador del avance según sus propias perforaciones',
}

/** Lo que hay que saber antes de confiar en ellas. */
export const ES_RELATION_REMARKS: Readonly<Record<string, string>> = {
  'air-loss-first-order':
    'Sirve para cotejar con tablas impresas; los planes usan la forma isotérmica de hose-friction-loss.',
  'air-operating-point':
    'El exponente es 1 por las columnas de altitud de los manuales; un pistón libre que golpea con √p daría 1.5.',
  'compressor-delivery':
    'Las máquinas de pistón de una y dos etapas pierden más: 84 y 97 % del volumen a 10 000 ft.',
  'friction-factor':
    'Entre Re 2300 y 4000 el flujo puede ser laminar o turbulento: se da el valor turbulento, que es el mayor. Por debajo de 2300 todos los métodos dan 64/Re, menos Churchill, cuya curva cubre todos los regímenes.',
  'hose-friction-loss':
    'Isotérmica a la temperatura dada: los primeros metros tras una salida caliente pierden hasta 16 % más. Manda el diámetro interior: 24 mm en vez de 25.4 mm cuesta 32 %. La rugosidad es de memoria; ponga 0 para lo bajo y 0.046 mm para lo alto.',
  'orifice-discharge':
    'El coeficiente 0.97 es de un orificio con borde redondeado; uno cortado o rasgado deja pasar unas dos terceras partes.',
  'receiver-time':
    'El tanque de un compresor portátil es de decenas de litros: aguanta segundos y no compensa una máquina demasiado chica.',
  'standard-atmosphere':
    'La altitud es geométrica, como en un mapa. Las tablas por altitud geopotencial (ISO 2533) difieren 0.008 % en presión a 2000 m. La presión es el barómetro que se usa para un sitio; la temperatura estándar no se supone para el aire que toma un compresor.',
  'cavity-pressure-dilatant':
    'No se conoce ningún ejemplo impreso; se coteja con una integración independiente de la ecuación de similitud (0.1 %) y con el límite no drenado.',
  'spt-undrained-strength':
    'Las páginas que dan cerca de 12.5 N como resistencia citan la resistencia no confinada, el doble de esta.',
  'tool-proportions':
    'No hay datos de fabricantes. Una cifra de la hoja de datos del topo que tiene en la mano reemplaza cada una de estas.',
  'vibration-ppv':
    'Nunca prueba que un vecino esté a salvo: pasa del límite, o no se ha mostrado que lo pase.',
  deviation: 'Un plano a la vez: la lateral y la vertical tienen cada una la suya.',
  'contact-chance':
    'No dice nada de las líneas que no están anotadas, ni de una cuya profundidad solo se ha adivinado.',
  'geodesic-length': 'A la altura del elipsoide: un suelo 100 m más alto es 1.6 mm más largo por cada 100 m.',
  'pit-slope':
    'Solo hasta 20 ft. Una persona competente clasifica el suelo; las señales de falla acuestan el talud 1/2:1.',
  'required-clearance':
    'El levantamiento, el movimiento de la otra línea y la vibración se revisan por separado.',
  'bend-radius': 'Para polietileno. PEX unas 8 veces el diámetro, microducto de 10 a 12.',
  'bundle-diameter': 'Sume coples, agarre y cable trazador: manda lo más grande que pasa.',
  'dry-drag':
    'Una perforación abierta que se sostiene. Lo que rompe el tubo es una que se cerró: por eso el eslabón débil.',
  'pipe-size': 'Las tablas son copias de las normas; manda el tubo que va en el remolque.',
  'pull-in-limit': 'A 73 °F. La carga de un tubo de gas la limita un eslabón débil de esa capacidad o menos.',
  'thermal-length-change':
    'Las fuentes para polietileno van de 8e-5 a 1.2e-4 por °F. El tubo jalado también se encoge durante la noche.',
  'air-loss-harris':
    'Da una cuarta parte más que las tablas medidas. Está aquí porque muchos talleres todavía calculan con ella.',
  'condensate-rate':
    'Un portátil sin posenfriador la manda toda por la manguera; un separador saca lo que cae antes de él.',
  'exhaust-temperature':
    'Con aire húmedo se hace hielo desde 0 °C; las cuadrillas lo buscan desde 40 a 45 °F afuera.',
  'engine-power':
    'Un turbo conserva la potencia hasta la altitud para la que está hecho; está en la placa del motor.',
  'hose-parting':
    'Lo que detiene el latigazo es un cable en cada unión y un corte automático donde la manguera pasa de 1/2 in por dentro.',
  'earliest-start':
    'Ayuda para planear, no consejo legal: nada se calcula con un renglón revisado más de doce meses antes del aviso, y siempre manda el boleto impreso.',
  'position-tolerance':
    'La pintura y los planos son la clase más baja: ni posición ni profundidad. Aun la mejor clase sin descubrir se come la mitad de una separación de 12 in a 1 m. Toda línea en el trayecto se descubre, sea cual sea su clase.',
  'noise-duration':
    'En el oído del operador, medido: no hay un nivel público para el topo. Por encima de 115 dBA no se permite ningún tiempo; los picos no pasan de 140 dB. La tabla impresa redondea.',
  'noise-dose': 'Los picos no pasan de 140 dB, y nadie pasa de 115 dBA por corto que sea.',
  'hose-thrust':
    'En reposo. El tirón de una manguera que se suelta, y el latigazo de su punta, son mayores: la capacidad de un cable la da quien lo hace.',
  'burning-line-distance':
    'Para gas, no para líquidos ni para una explosión. En el sitio deciden los bomberos y el dueño.',
  'archard-wear':
    'Un coeficiente acierta, cuando mucho, en el orden de magnitud; mandan las lecturas de su propio topo.',
  'degradation-forecast':
    'Una flota simulada, no una publicación, dice que la banda de uno en diez a nueve en diez cubre de 78 a 90 % con 0 a 6 lecturas.',
  'weibull-fit': 'Con menos de unas cinco fallas no hay que confiar en la forma: dé una y use weibull-scale.',
  'rate-learning':
    'Acótelo: una familia de suelo, una zona, un topo. Las perforaciones que se atoraron también cuentan, o solo aprende de la suerte.',
}

/** Las fórmulas que llevan palabras; las demás son las mismas en cualquier idioma. */
export const ES_RELATION_FORMULAS: Readonly<Record<string, string>> = {
  'advance-rate': 'r0 = s f; v = 1.5 (1 − e^(−r0/1.5)) m/min; se atora si s < 0.15 mm o v < 0.05 m/min',
  'friction-factor': '1/√f = −2·log10(ε/(3.7·D) + 2.51/(Re·√f)); f = 64/Re si Re < 2300',
  'air-density-ratio': 'relación = (p(z)/p0)·(T0/T)',
  'cavity-expansion-factors':
    'cilindro: Fq = (1+sin φ)(Irr sec φ)^(sin φ/(1+sin φ)); esfera: Fq = 3(1+sin φ)/(3−sin φ) Irr^(4 sin φ/(3(1+sin φ))); Fc = (Fq−1) cot φ; φ = 0: Fc = ln Irr + 1, esfera (4/3)(ln Irr + 1), Fq = 1',
  'cavity-pressure-undrained':
    'cilindro: p = p0 + su (1 + ln Ir), Rp/a = Ir^(1/2); esfera: p = p0 + (4/3) su (1 + ln Ir), Rp/a = Ir^(1/3); Ir = G/su',
  'shaft-friction': 'arcilla: fs = a su; granular: fs = 0.6 rf q',
  'spt-fine-sand': "N' = 15 + 0.5 (N − 15) si N > 15; si no, N",
  'spt-friction-angle': 'Wolff: φ = 27.1 + 0.3 N − 0.00054 N² (grados)',
  'spt-undrained-strength':
    'su = 6.25 N kPa con N 2, 4, 8; 100 kPa con 15, 200 kPa con 30; recta entre ellos',
  'tool-proportions':
    'r = D/45 mm: E = 20 r^2.2 J, f = 9.2 r^−0.4 Hz, L = r^0.55 m, m = 0.62 ρ π D² L/4, m1 = 0.22 m, carrera = 0.080 r^0.55 m, F = E/(0.85 carrera), aire = 0.45 r^1.8 m³/min',
  'vibration-distance': 'D = 25 ft (PPVref/límite)^(2/3)',
  deviation: 'σ = √(puntería²·s² + deriva²·s³/3)',
  'geodesic-length': 'geodésica sobre WGS84 (a = 6 378 137 m, 1/f = 298.257223563), Karney 2013',
  'pit-volume': 'V = h·L·W + s·h²·(L + W) + 4/3·s²·h³; arriba = piso + 2·s·h',
  'pit-slope':
    'roca vertical, A 3/4:1, B 1:1, C 1-1/2:1 (avance horizontal por altura); ángulo = atan(1/avance)',
  'required-clearance': 'C = norma + radio del topo + deriva + error al descubrir + error del trazo',
  'oversize-ratio': 'relación = B/D; holgura = (B − D)/2',
  'pipe-lead-in':
    'un arco L = √(2Rh − h²), ángulo acos(1 − h/R); curva en S L = √(4Rh − h²), ángulo acos(1 − h/2R)',
  'pipe-mass': 'm = ρ·π·t·(D − t)·L con t = pared·factor',
  'pipe-size': 'según la tabla de su norma',
  'pull-in-limit': 'F = 0.40·f(t)·fluencia·π·D²·(1/DR − 1/DR²)',
  'pull-stress-load': 'F = esfuerzo·π·D²·(1/DR − 1/DR²)',
  'compressor-fuel': 'q = P_isentrópica/η·c·[i + (1 − i)·x]',
  'engine-power': 'P = P_r·[1 − 0.03·(z − 500 ft)/1000 ft] sin turbo',
  'earliest-start':
    'día del aviso = 0; cuatro maneras de contar: días completos, enésimo día, horas desde la siguiente apertura, horas de reloj',
  'position-tolerance':
    'PAS 128: B1 ±150 mm y ±15 % de la profundidad, B2 ±250 mm y ±40 %, mínimos 150 y 250 mm; las demás por tabla',
  'noise-duration': 'OSHA T = 8 h / 2^((L − 90)/5); NIOSH T = 8 h / 2^((L − 85)/3)',
  'noise-dose': 'F = Σ C/T, T según la fórmula de la regla',
  'burning-line-distance': 'x ft = 2.28·D in·√(p psig); se toma el mayor entre x y 330 ft',
  'archard-wear': 'V = K F s / H, o V = K F s / (3 H)',
  'equivalent-quartz': 'EQC = Σ parte × factor(dureza de Mohs)',
  'drift-to-limit': '(y₀ − a − b x)² = t² s² (k + (x − x̄)²/S_xx), k = 1/n (media) o 1 + 1/n (una lectura)',
  'weibull-fit': 'Σt^β ln t/Σt^β − 1/β − media(ln t_fallas) = 0; η = (Σt^β/r)^(1/β)',
  'age-replacement':
    'mínimo en t de (c_p R + c_f (1 − R))/∫₀ᵗ R; a la mejor edad, tasa de falla × (c_f − c_p) = costo por uso',
  'rate-learning':
    'ln M ~ N(0, τ²); ln(observado/planeado) ~ N(ln M, σ²): m = Σy/(n + σ²/τ²), s² = 1/(1/τ² + n/σ²); una que se atora: momentos igualados de Φ((c − θ)/σ)',
}
