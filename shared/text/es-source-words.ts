/** Fuentes que no llevan título propio, o llevan al lado de qué tratan. Una publicación se cita como se imprimió. */
export const ES_SOURCES: Readonly<Record<string, string>> = {
  CommonPractice: 'Práctica común del oficio; sin fuente publicada',
  OurJudgement: 'El criterio de quienes hacen Underlane',
  YourValue: 'Un dato que dio usted',
  UsMintCoins: 'U.S. Mint, medidas de las monedas (usmint.gov)',
  ExactIdentity: 'Una identidad que sale de las definiciones, resuelta a mano',
  OneCallRules: 'Leyes estatales de aviso antes de excavar, y el propio boleto',
  VirginiaTrenchlessRule: '20 VAC 5-309-150, Código Administrativo de Virginia: excavación sin zanja',
  CgaBestPractices: 'Common Ground Alliance, Best Practices 2-13 y 4-19 (excavación sin zanja)',
  Cfr1926P: '29 CFR 1926.650–.652 y apéndices A y B (excavaciones)',
  Cfr1926Fall: '29 CFR 1926.501(b)(7) (protección contra caídas en excavaciones)',
  OshaOverhead: '29 CFR 1926.1408, tabla A; guía electrónica de construcción de OSHA (líneas aéreas)',
  MinnesotaSnow: 'Minn. Stat. 216D.05 (marcas en nieve)',
  OneCallTable:
    'Leyes, reglas y páginas de centros de notificación de 35 estados de EE. UU., Reino Unido, Ontario y Australia, nombradas renglón por renglón',
  Cfr1926Air: '29 CFR 1926.302(b) y carta de OSHA del 6 de junio de 1983',
  MineAirRule: '30 CFR 77.412 (sistemas de aire comprimido)',
  Cfr1926Noise: '29 CFR 1926.52, tabla D-2; NIOSH 98-126 (ruido)',
  Cfr1926Silica: '29 CFR 1926.1153 (sílice cristalina respirable)',
  Cfr192: '49 CFR 192.325, 192.329(b), 192.376(b) (tuberías de gas)',
  OrificeTable:
    'Descarga de aire por un orificio, pies cúbicos de aire libre por minuto: la tabla de los manuales de aire comprimido y maquinaria',
  HoseGuide: 'Flujo y pérdida de presión en mangueras, una guía del oficio',
  TemperatureAltitudeRow:
    'Efecto de la altitud y la temperatura en CFM, una tabla para martillos de percusión, sin autor',
  AirSecondCalculation:
    'Pérdidas en la manguera y puntos de operación de un segundo programa, escrito aparte de este con las mismas fórmulas publicadas',
  SecondCalculation:
    'Un segundo cálculo de la misma fórmula, escrito aparte en otro lenguaje (Python con NumPy)',
  PenetrationModel:
    'Modelo de penetración de Underlane: presión de cavidad por un factor de punta calibrado, fricción del cuerpo, un factor de velocidad; avance por balance de energía',
  MolingClassAverages:
    'Promedios de topos neumáticos por diámetro del cuerpo, de memoria, ±30–40 %; sin datos de fabricantes',
  SoilRanges:
    'Estados típicos del suelo por grupo USCS y rango de N, tomados de EM 1110-2-2504, Caltrans tablas 3-1 a 3-3, Terzaghi y Peck y UFC 3-220-10, con ajustes por grupo según criterio',
  DeviationModel:
    'Error de puntería más una deriva al azar del rumbo, ajustada al uno y dos por ciento de la longitud que dice el oficio: derivada para este programa',
  ContactModel: 'La separación entre dos ejes como variable normal: derivada para este programa',
  PipeMisprints: 'Tablas en la red que no concuerdan con la norma que nombran',
  DuctPullLoads:
    'Una tabla publicada de cargas de jalón de 12 horas para ducto de polietileno, con base en 1,100 psi',
  DuctPullLoadsHigh: 'Páginas de ductos que dan 2,580 lb para 2 in SDR 13.5',
  PipeArithmetic: 'Aritmética de tubos en perforaciones: espacio anular, peso, arrastre, bajada, dilatación',
  PolyethyleneExpansion:
    'Dilatación térmica del polietileno: 9.0e-5 por °F en textos de diseño de tubería, 1.8e-4 por K para PE 100',
  OshaSubpartPAppendixB: '29 CFR 1926, subparte P, apéndice B, tabla B-1 y figuras (taludes y bermas)',
  PrismoidalFormula:
    'La fórmula del prismoide V = h/6·(A1 + 4·Am + A2), exacta para un pozo con taludes planos',
  ClearanceSum:
    'Separación de una perforación como suma: norma + radio del topo + deriva + error al descubrir + error del trazo; según Minn. Stat. 216D.05 («known limit of control») y 49 CFR 192.325 (12 in)',
  EngineDerateRule:
    'Texto de ingeniería agrícola: 3 % de la potencia por cada 1000 ft sobre 500 ft sin turbo, nada con turbo hasta su altitud nominal',
  WearIncrementsModel:
    'Desgaste como movimiento browniano con deriva y un previo normal-gamma inversa: actualización conjugada derivada para este programa',
  RateLearningModel:
    'ln(observado/planeado) de perforaciones pasadas como normal con un previo normal, las que se atoran como censuradas por momentos igualados: derivada para este programa',
}
