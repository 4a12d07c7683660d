## Tables, as they stand in a sentence that begins with them.
checked-the-gym-s-file = el fichero del gimnasio
checked-the-lifters-file = el fichero de los atletas
checked-the-coach-s-file = el fichero del entrenador
checked-the-meet-s-file = el fichero de la competición
checked-the-kiosk-s-file = el fichero del kiosco
checked-a-rack = un rack
checked-a-calibration = una calibración
checked-a-bar = una barra
checked-a-plate-set = un juego de discos
checked-a-weighed-plate = un disco pesado
checked-a-plate = un disco
checked-a-lift = un ejercicio
checked-a-pattern = un patrón
checked-a-step = un escalón
checked-a-place-in-the-queue = un puesto en la cola
checked-a-day = un día
checked-a-task = una tarea
checked-a-lift-to-do = un ejercicio de la tarea
checked-a-rule = una regla
checked-a-split = una división
checked-a-flight = una tanda
checked-a-lifter-of-a-flight = alguien de una tanda
checked-a-lifter = un atleta
checked-a-set-of-landmarks = un juego de referencias

## Things by name.
checked-plate-set = juego de discos
checked-rack = rack
checked-bar = barra
checked-warm-up-pattern = patrón de calentamiento
checked-lift = ejercicio
checked-lifter = atleta
checked-programme = programa
checked-day = día
checked-add-at-least-one-as = añade al menos uno, como [[{ $a }]]
checked-no = nada de esto: { $a }
checked-give-each-a-name-of = da a cada uno ({ $a }) un nombre propio
checked-a-name-that-row-has = un nombre que ya tiene la fila { $a }
checked-no-of-that-name = nada con ese nombre: { $a }
checked-write-the-name-of-a = escribe un nombre que el gimnasio tenga: { $a }

## TOML.
checked-split-it-or-shorten-it = divídelo o acórtalo
checked-a-character-that-is-not = un carácter que no es texto UTF-8
checked-save-the-file-as-utf = guarda el fichero como UTF-8
checked-see-that-keys-quotes-and = mira que claves, comillas y corchetes estén completos
checked-write-there = escribe ahí { $a }
checked-broken-toml = TOML roto: { $a }
checked-a-key-that-does-not = una clave que { $a } no tiene
checked-write-as = escribe { $a } como { $b }
checked-without = { $a } sin { $b }
checked-a-whole-number = un número entero
checked-true-or-false = true o false
checked-a-list = una lista
checked-a-table = una tabla
checked-a-text-in-quotes = un texto entre comillas
checked-not = hace falta { $a }
checked-a-text = un texto, { $a }
checked-a-list-of = una lista, { $a }
checked-a-table-of = una tabla, { $a }
checked-entries-under-more-than-the = { $a } entradas en { $b }, más del máximo, { $c }
checked-leave-some-out = quita algunas
checked-leave-it-out = quítalo
checked-leave-one-of-them-out = quita uno de los dos
checked-add = añade { $a }
checked-write-key-as-value = escribe { $a } = { $b }

## Quantities.
checked-a-mass = un peso
checked-a-length = una longitud
checked-a-stress = una tensión
checked-write-such-as = escribe { $a }, por ejemplo { $b }
checked-without-a-unit = { $a } sin unidad
checked-in-a-unit-not-known = { $a } en una unidad desconocida aquí
checked-that-cannot-be-kept-exactly = { $a } que no se puede guardar con exactitud
checked-write-fewer-decimals-or-a = escribe menos decimales, o una fracción de medios a 64 avos
checked-larger-than-anything-in-a = { $a }, mayor que nada en un gimnasio
checked-less-than-the-least = menos del mínimo, { $a }
checked-more-than-the-most = más del máximo, { $a }
checked-write-from-to = escribe de { $a } a { $b }
checked-write-lb-or-kg = escribe "{ $a } lb" o "{ $b } kg"
checked-write-mm-or-in = escribe "{ $a } mm" o "{ $b } in"
checked-write-mpa-gpa-or-psi = escribe "{ $a } MPa", "{ $b } GPa" o "{ $c } psi"
checked-write-a-whole-number-from = escribe un número entero de { $a } a { $b }
checked-not-a-whole-number = no es un número entero
checked-write-seconds-as-180-or = escribe los segundos como "180" o "180 s", o los minutos como "3 min" o "3:00"
checked-write-min-or-seconds-from = escribe "{ $a } min", o segundos desde 15
checked-a-rest-of-s = un descanso de { $a } s
checked-not-whole-seconds = no son segundos enteros
checked-write-a-percentage-such-as = escribe un porcentaje, por ejemplo "80 %"
checked-a-share-without = una parte sin %
checked-a-percentage-with-more-than = un porcentaje con más de dos decimales
checked-not-a-percentage = no es un porcentaje
checked-a-percentage-far-too-large = un porcentaje demasiado grande

## Racks, bars, plates.
checked-add-a-straight-bar-for = añade una barra recta para los ejercicios desde el suelo en { $a }
checked-no-bar-that-serves-the = ninguna barra sirve al rack { $a }
checked-no-straight-bar-that-serves = ninguna barra recta sirve al rack { $a }
checked-a-hole-of-less-than = un agujero de { $a }, menor que su pasador de { $b }
checked-measure-both-again-a-hole = mide ambos otra vez; un agujero es al menos tan ancho como su pasador
checked-across-not-less-than-the = { $a } de ancho, no menos que la separación de { $b }
checked-write-the-spacing-from-centre = escribe la separación de centro a centro
checked-a-bar-height-of-with = una altura de barra de { $a } con los pasadores en el agujero { $b }, cuyo centro está a { $c }
checked-measure-again-floor-to-the = mide otra vez, del suelo al centro de la barra
checked-write-one-line-for-each = escribe una línea por cada tipo de disco
checked-no-plate-that-can-be = ningún disco que se pueda usar
checked-the-plate-a-second-time = el disco de { $a } por segunda vez
checked-write-it-once-with-all = escríbelo una vez, con todos sus pares
checked-the-mark-a-second-time = la marca "{ $a }" por segunda vez
checked-give-every-plate-its-own = da a cada disco su propia marca
checked-a-label-of-that-the = una etiqueta de { $a } que el juego no tiene
checked-write-the-mass-of-one = escribe el peso de uno de sus discos
checked-for-a-plate-of = { $a } para un disco de { $b }
checked-weigh-it-again-or-keep = pésalo otra vez, o no lo pongas en la barra
checked-more-than-plates-of = más de { $a } discos de { $b }
checked-write-the-sixteen-that-are = escribe los dieciséis que se usan

## Lifts and lifters.
checked-write-the-other-lift-of = escribe el otro ejercicio de los dos, o déjalo fuera
checked-the-lift-itself-as-its = el propio ejercicio como su pareja
checked-for-a-lift-from-hooks = "{ $a }" para un ejercicio desde ganchos, que no es un tirón
checked-write-start-floor-start-pins = escribe start = "floor", start = "pins" o start = "hooks"
checked-a-new-lift-without-start = un ejercicio nuevo sin "start"
checked-for-a-lift-from = "{ $a }" para un ejercicio desde { $b }
checked-leave-it-out-or-write = quítalo, o escribe start = "pins"
checked-write-landmark-tibial-tuberosity-or = escribe landmark = "tibial tuberosity" u otra
checked-a-lift-from-pins-without = un ejercicio desde pasadores sin "landmark"
checked-write-rung-3-100-kg = escribe "rung 3", "100 kg", "225 lb" o "never"
checked-not-a-rung-from-1 = no es un escalón de 1 a 20
checked-neither-a-rung-nor-a = ni un escalón, ni una carga, ni nunca
checked-a-at-not-above-the = { $a } a { $b }, no más alto que { $c } a { $d }
checked-measure-both-again-to-be = mide ambos otra vez para estar seguro
checked-from-the-tibial-tuberosity-to = { $a } desde la tuberosidad tibial al borde superior de la rótula
checked-measure-both-again-to-be-sure = mide ambos otra vez para estar seguro; lo habitual son 75 a 100 mm
checked-write-hole-14 = escribe "hole 14"
checked-not-a-hole-from-1 = no es un agujero de 1 a 500
checked-a-second-hole-for = un segundo agujero para { $a }
checked-a-training-max = un máximo de entrenamiento
checked-a-second-training-max-of = un segundo máximo de entrenamiento de { $a } desde un día
checked-keep-one-of-them-or = quédate con uno, o escribe otro "since"
checked-a-second-best-for = una segunda mejor marca para { $a }

## Patterns, programmes, rules.
checked-write-one-share-reps-for = escribe un {"{"} share, reps {"}"} por cada calentamiento
checked-no-step-that-can-be = ningún escalón que se pueda usar
checked-after = { $a } % después de { $b } %
checked-let-each-step-be-heavier = que cada escalón pese más que el anterior
checked-add-programme-day-tables = añade tablas [[programme.day]]
checked-a-new-programme-without-day = un programa nuevo sin "day"
checked-add-programme-day-tables-or = añade tablas [[programme.day]], o déjalo fuera
checked-no-day = ningún día
checked-write-one-for-each-day = escribe uno por cada día del programa, o por ninguno
checked-a-day-without-weekday-among = un día sin "weekday" entre otros que lo tienen
checked-for-a-second-day-of-the = { $a } para un segundo día del programa
checked-give-each-day-its-own = da a cada día su propio día de la semana
checked-apart-days-beside-days-of = "apart_days" junto a días de la semana
checked-who-is-in-already = { $a }, que ya está en { $b }
checked-name-each-lifter-once = nombra a cada atleta una vez
checked-write-at-least-one-lift = escribe al menos un ejercicio
checked-no-lift = ningún ejercicio
checked-write-at-least-one = escribe al menos una
checked-no-task = ninguna tarea
checked-let-a-reset-take-off = que un retroceso quite al menos tanto como una bajada
checked-a-reset-that-takes-off = un retroceso que quita menos que una bajada

## Meets.
checked-write-one-flight-for-each = escribe un [[flight]] por cada tanda tuya
checked-no-flight-that-can-be = ninguna tanda que se pueda usar
checked-s-for-less-than-the = { $a } s para "{ $b }", menos que los { $c } s de "{ $d }_least"
checked-write-as-long-as-least = escribe "{ $a }" tan largo como "{ $b }_least", o más
checked-write-one-flight-lifter-for = escribe un [[flight.lifter]] por cada uno de los tuyos
checked-a-flight-with-none-of = una tanda sin nadie de los tuyos
checked-a-lifter-of-another-gym = alguien de otro gimnasio
checked-with-before-with = { $a } con { $b } antes de { $c } con { $d }
checked-the-lighter-goes-first-then = sale primero el más ligero, luego el sorteo más bajo: corrige un primer intento, un sorteo o el orden
checked-lot-for-which-is-the = sorteo { $a } para { $b }, que es también el de { $c }
checked-ask-the-table-until-then = pregunta en la mesa; hasta entonces sale primero quien llegó primero
checked-for-whose-best-is = { $a } para { $b }, cuya mejor marca es { $c }
checked-an-opener-is-what-they = un primer intento es lo que sale en un mal día: pregunta al entrenador
checked-write-hours-and-minutes-as = escribe horas y minutos como "10:30"
checked-not-a-time-of-day = no es una hora del día
checked-a-second-time-in-this = { $a } por segunda vez en esta tanda
checked-attempts-before-where-order-has = { $a } intentos antes, donde "order" tiene { $b }
checked-mend-the-order-or-leave = corrige el orden, o quita uno de los dos
checked-without-a-place-in-the = { $a } sin puesto en el orden
checked-write-before-24-or-the = escribe before = 24, o el nombre en "order" de la tanda
checked-for-which-these-plates-do = { $a } para { $b }, que estos discos no dan
checked-ask-for-what-they-make = pide lo que dan, por ejemplo { $a }
checked-for = { $a } para { $b }: { $c }
checked-write-another-opener-or-other = escribe otro primer intento, u otros discos

## The kiosk.
checked-write-numbers-such-as-127 = escribe números, por ejemplo "127.0.0.1" o "192.168.1.20"
checked-not-an-address-in-numbers = no es una dirección en números
checked-an-address-of-all-interfaces = una dirección de todas las interfaces o de ninguna
checked-write-the-address-of-the = escribe la dirección de la única interfaz que puede ver la página
checked-write-both-certificate-and-key = escribe "certificate" y "key", o ninguno de los dos
checked-a-certificate-and-its-key = un certificado y su clave, de los que falta uno
checked-name-a-rack-or-leave = nombra un rack, o quita "racks" para mostrarlos todos
checked-no-rack-to-show = ningún rack que mostrar
checked-write-the-whole-path-such = escribe la ruta entera, por ejemplo "/media/pinladder"
checked-not-an-absolute-path = no es una ruta absoluta
checked-a-path-that-goes-back = una ruta que vuelve sobre sí misma
checked-write-from-1-to-40 = escribe de 1 a 40 letras, cifras y guiones, por ejemplo "north-rack"
checked-not-a-name-for-a = no es un nombre para un equipo
checked-not-a-name-of-a = no es el nombre de un host
checked-write-the-name-alone-such = escribe solo el nombre, por ejemplo "rack.gym.example"
checked-not-the-address-of-a-hub = no es la dirección de un hub
checked-write-a-hub-such-as = escribe postgresql://KIOSK@HOST/BASE, por ejemplo "postgresql://north@192.168.1.5/pinladder"
checked-a-hub-with-a-password = la dirección de un hub con una contraseña dentro
checked-write-the-password-into = quítala y escríbela en hub.password junto a este archivo; estos ajustes quedan en el registro
