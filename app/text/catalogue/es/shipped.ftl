## Lifts.
shipped-rack-pull = tirón desde el rack
shipped-halting-deadlift = peso muerto a la rodilla
shipped-barbell-shrug = encogimientos con barra
shipped-deadlift = peso muerto
shipped-power-clean = cargada de potencia
shipped-power-snatch = arrancada de potencia

## Cues.
shipped-back-set-before-the-bar = espalda firme antes de mover la barra
shipped-bar-against-the-leg = barra pegada a la pierna
shipped-shoulders-in-front-of-the = hombros por delante de la barra
shipped-shins-near-vertical = tibias casi verticales
shipped-push-the-floor-away = empuja el suelo
shipped-stop-at-the-top-of = para en lo alto de la rótula
shipped-stand-tall-first = primero bien erguido
shipped-shoulders-to-the-ears = hombros a las orejas
shipped-arms-straight = brazos rectos
shipped-slow-off-the-floor-fast = lento desde el suelo, rápido pasada la rodilla
shipped-bar-close = barra cerca
shipped-elbows-through = codos adelante
shipped-wide-hook-grip = agarre de gancho ancho

## Cautions.
shipped-back-moved-the-set-is = si la espalda cede, se acabó la serie
shipped-pain-stop-and-see-a = dolor: para, y ve al entrenador o al médico
shipped-collars-on-same-load-on = cierres puestos, misma carga en ambos lados

## As sheets of an older journal have it.
shipped-collars-on-plates-alike-on = cierres puestos, discos iguales en ambos lados
shipped-pins-at-the-same-hole = pasadores en el mismo agujero a ambos lados, barra centrada
shipped-hands-and-feet-clear-of = manos y pies lejos de los pasadores
shipped-set-the-bar-down-do = posa la barra; no la dejes caer sobre los pasadores
shipped-nobody-within-reach-of-the = nadie al alcance de la barra
shipped-missed-let-go-and-step = fallo: suelta y apártate de la barra

## Kinds of things in the files.
shipped-lift = ejercicio
shipped-rack = rack
shipped-bar = barra
shipped-hole = agujero
shipped-plate-set = juego de discos
shipped-warm-up-pattern = patrón de calentamiento
