## Everywhere.
page-sessions = Sesiones
page-plan = Plan
page-desk = Mesa
page-floor = Sala
page-pages = Páginas
page-sign-out = Salir
page-coach = Entrenador
page-language = Idioma

## The front, signing in, a lifter's link.
page-floor-board = Panel de la sala
page-own-by-code = El registro propio se abre con el código que muestra el kiosco al final de un ejercicio.
page-page-code = Código
page-sign-in = Entrar
page-your-record = Tu registro
page-once = Esta página se abre una vez, y es tuya en este teléfono hasta medianoche.
page-show-record = Ver mi registro
page-nobody = no hay nadie registrado con ese nombre; elige de la lista
page-gone = Este enlace ya se abrió, o pasaron diez minutos desde el ejercicio. El kiosco muestra otro al final de tu próximo ejercicio.
page-trust = Para que este teléfono confíe en la página
page-trust-root = el certificado raíz del kiosco
page-trust-how = Cárgalo, compara su SHA-256 con el que muestra la página del propio kiosco, y solo entonces deja que el teléfono confíe en él. Responde solo por los nombres de este gimnasio.

## The coach's day.
page-today = Hoy
page-no-day-yet = El kiosco aún no ha dicho su día; mira otra vez en un momento.
page-needs-you = Te espera a ti
page-nobody-waits = Nadie espera tu palabra.
page-see-record = Ver el registro
page-trains-today = Entrenan hoy
page-nobody-trains = Para hoy no hay nadie previsto.
page-due-and-why = Lo que toca, y por qué
page-on-the-floor = Ahora en la sala
page-last-time = La última vez
page-lift = Ejercicio
page-work-sets =
    { $n ->
        [one] 1 serie efectiva, { $load }
       *[other] { $n } series efectivas, hasta { $load }
    }
page-short-in =
    { $n ->
        [one] corta en 1 serie
       *[other] corta en { $n } series
    }
page-back-moved-at = la espalda cedió en la rep. { $rep }
page-back-moved = la espalda cedió
page-this-week = Esta semana

## What the coach does on it.
page-own-load = Otra carga
page-no-reason = sin motivo
page-rule-it = Decidir
page-meant = Va en serio
page-fit-again = Bien otra vez
page-health = Lesión o enfermedad
page-health-hint = Lo que dice cada cual; qué es, lo dice un médico. A quien tiene una lesión no le toca nada hasta estar bien. Una enfermedad se apunta hasta hoy; apúntala otra vez mientras dure.
page-choose = elige
page-from-day = Desde
page-to-day = Hasta
page-was-ill = Enfermo desde, hasta
page-enter = Apuntar
page-is-hurt = Con lesión desde
page-rule-others = Decidir otra carga

## What came of it.
page-done-kept = hecho, y guardado en el diario
page-not-done-why = no se cambió nada: { $why }
page-already = ya está así; no se cambió nada por segunda vez
page-stale = la lista cambió desde que se cargó esta página: entretanto alguien decidió o levantó, o empezó otro día. No se cambió nada; mira la lista como está ahora
page-no-load = eso no es una carga; escríbela como 147,5, 147,5 kg o 325 lb. No se cambió nada
page-to-come = de un día que aún no llegó nadie sabe nada; escribe un día hasta hoy. No se cambió nada
page-slip = de eso hace más de un año; mira otra vez el año. No se cambió nada
page-no-lifter = en este gimnasio nadie se llama así; elige de la lista. No se cambió nada

## The coach's list.
page-due-and-waits = Lo que toca, y quién espera al entrenador
page-nothing-due = Aún no se ha hecho nada de lo que algo se siga.
page-state = Estado
page-why = Por qué

## The board.
page-waiting = esperando al kiosco

## Sets.
page-set = Serie
page-load = Carga
page-reps = Reps.
page-back = Espalda
page-warm-up = calentamiento
page-work = efectiva
page-of = { $n } de { $all }
page-kept = firme
page-moved-at = cedió en la rep. { $rep }
page-no-sets-before = No hay series registradas antes de ese día.
page-no-sets = Aún no hay series registradas.
page-all-sets = Todas las series:
page-downloads = Descargas
page-database = Base de datos
page-lifters = Atletas
page-further = Más
page-latest = Lo último
page-older = Lo anterior

## A lifter's weeks.
page-nothing-of = No hay nada registrado con ese nombre.
page-sets = Series
page-latest-sets =
    { $all ->
        [one] Las últimas { $n } de 1 serie.
       *[other] Las últimas { $n } de { $all } series.
    }
page-loads-chart = Carga efectiva más alta por semana, { $unit }; un cuadrado: la espalda cedió
page-reps-chart = Reps. hechas por semana; pálido: previstas
page-backs-chart = Series efectivas por semana, pálido; delante: la espalda cedió
page-week-of = Semana del
page-heaviest = La más pesada
page-moved-in = cedió en { $n } de { $all }

## The plan and what was done.
page-plan-and-done = Plan y hecho
page-no-plan = No hay ningún plan.
page-no-plan-here = No hay ningún plan para estos días.
page-day = Día
page-lifter = Atleta
page-planned = Previsto
page-done = Hecho
page-at-load = { $sets } con { $load }
page-of-best = { $share } de la mejor marca
page-programme = por el programa
page-programme-of = por el programa: { $name }
page-done-sets =
    { $sets } de { $of_sets ->
        [one] 1 serie
       *[other] { $of_sets } series
    }, { $reps } de{" "}{ $of_reps ->
        [one] 1 rep.
       *[other] { $of_reps } reps.
    }
page-back-held = espalda firme
page-back-moved-in = la espalda cedió en { $n }

## Plans from a browser.
page-hand-in = Entregar un plan
page-choose-plan = Elige un plan, o suéltalo aquí (CSV, XLSX, ODS; 4 MB como mucho)
page-read-it = Leerlo
page-not-yet-taken = Leído, aún sin tomar
page-nothing-taken-yet = Así se lee el plan. Aún no se ha tomado nada.
page-understood = Como se entendió
page-first-rows = Las primeras { $n } de { $all } filas; se toman todas juntas.
page-take-plan = Tomar este plan
page-mend-it = Corrige el fichero y elígelo otra vez; no se toma nada mientras tenga fallos.
page-another-file = Otro fichero
page-took-rows =
    { $n ->
        [one] se tomó 1 fila; queda en el diario
       *[other] se tomaron { $n } filas; quedan en el diario
    }
page-plan-gone = ese plan ya no está aquí: se tomó, llegaron otros después, o el kiosco empezó de nuevo. Ahora no se tomó nada; mira el plan y elige el fichero otra vez
page-plan-faults = rechazado: el plan tiene fallos; no se tomó nada. Corrige el fichero y elígelo otra vez
page-gym-changed = los ficheros del gimnasio cambiaron desde que se leyó este plan; no se tomó nada. Elige el fichero otra vez
page-days-changed = alguien cambió uno de estos días desde que se cargó esta página; no se tomó nada. Mira lo que cambiaría ahora y tómalo entonces
page-plan-busy = se está leyendo otro plan; prueba otra vez en un momento
page-plan-long = el fichero pasa de 4 MB; divide el plan
page-plan-slow = el fichero no llegó en 60 s; prueba más cerca del kiosco
page-file-kind = envía el fichero como multipart/form-data
page-no-file = no se eligió fichero, o está vacío; elige un plan

## The coach's desk.
page-stick = Memoria USB
page-no-stick = No hay ninguna memoria, o kiosk.toml no les da sitio.
page-no-plan-on-it = No trae ningún plan.
page-passed-over = Omitido: { $what }
page-rows =
    { $n ->
        [one] 1 fila
       *[other] { $n } filas
    }
page-faults =
    { $n ->
        [one] 1 fallo
       *[other] { $n } fallos
    }
page-what-changes = Lo que cambia
page-change = { $lifter }: { $span }, { $days }
page-span = { $from } a { $to }
page-new-days =
    { $n ->
        [one] 1 día nuevo
       *[other] { $n } días nuevos
    }
page-changed-days =
    { $n ->
        [one] 1 día cambiado
       *[other] { $n } días cambiados
    }
page-same-days =
    { $n ->
        [one] 1 día como antes
       *[other] { $n } días como antes
    }
page-take-all = Tomarlo todo
page-write-to-it = Escribir el registro en ella
page-copies = Copias del diario
page-copy-now = Copiar ya
page-copies-count =
    { $n ->
        [one] 1 copia
       *[other] { $n } copias
    }
page-copied-at-night =
    { $n ->
        [one] Última copia nocturna: { $day }, 1 evento.
       *[other] Última copia nocturna: { $day }, { $n } eventos.
    }
page-not-at-night = No hubo copia nocturna el { $day }; se intenta cada cuarto de hora: { $why }
page-restore = Restaurar esta copia
page-blank-plan = Un plan en blanco
page-certificate = El certificado de esta página

## Answers of the desk.
page-no-orders = este kiosco no acepta encargos
page-not-yet = el kiosco aún no ha contestado; mira otra vez en un momento
page-took =
    { $n ->
        [one] se tomó 1 fila; ya se puede sacar la memoria
       *[other] se tomaron { $n } filas; ya se puede sacar la memoria
    }
page-not-taken = no se tomó nada: { $why }
page-other-stick = ahora hay otra memoria, o ninguna; mira otra vez
page-stick-faults = rechazado: la memoria tiene fallos; no se tomó nada
page-no-place-sticks = no hay sitio para memorias; escribe stick = "..." en kiosk.toml
page-written = el registro está en la memoria; ya se puede sacar
page-not-written = el registro no está en la memoria: { $why }
page-no-place = no hay segundo sitio; escribe backup = "..." en kiosk.toml
page-copied =
    { $n ->
        [one] copiado y comprobado: 1 evento
       *[other] copiado y comprobado: { $n } eventos
    }
page-not-copied = sin copia: { $why }
page-putting-back = ya se está restaurando una copia; espera
page-copy-gone = esa copia ya no está; mira otra vez
page-restored =
    { $n ->
        [one] se restauró 1 evento; el diario de antes queda al lado
       *[other] se restauraron { $n } eventos; el diario de antes queda al lado
    }
page-not-restored = no se restauró nada: { $why }

## Why somebody is not signed in.
page-no-code = no hay código; el dueño pone uno con: pinladder code
page-wrong = ese no es el código; pídeselo al dueño
page-wait = demasiados códigos fallidos; prueba otra vez en { $seconds } s
page-not-judged = ahora no se puede comprobar el código; el registro de sucesos del kiosco dice por qué

## The week.
page-week = Semana
page-week-from-to = Semana del { $from } al { $to }
page-week-before = la semana anterior
page-week-after = la semana siguiente
page-is-planned = previsto
page-in-part = en parte
page-is-done = hecho
page-not-lifted = sin hacer
page-add-for = { $lifter }, { $day }: escribir una fila
page-filled-here = El programa llena este día; una fila del plan va por delante.
page-begun-stays = Ya se empezó en el rack; se queda como está.
page-day-is-over = Este día ya pasó: no se escribe nada más en él.
page-leave-as-it-is = Dejarlo como está
page-keep-row = Guardar
page-row-of-file = esta fila dice más de lo que cabe aquí; cámbiala en el archivo del plan
page-take-off = Quitar { $lift }
page-what-moves = Qué se mueve
page-whole-day = todo el día
page-to-which-day = A qué día
page-move-it = Mover
page-beside = también donde ya hay algo; un plan va por delante de un programa
page-one-more = Una fila más
page-plan-stale = alguien cambió el plan desde que se cargó esta página. Ahora no se cambió nada; mira la semana como está
page-is-begun = ese ejercicio ya se empezó en uno de los dos días; no se cambió nada
page-is-over = ese día ya pasó o queda fuera de estas dos semanas; elige uno desde hoy. No se cambió nada
page-is-taken = ese día ya tiene algo; marca la casilla si van las dos cosas, o elige otro. No se cambió nada
page-lift-twice = el mismo ejercicio estaría dos veces ese día; no se cambió nada
page-row-grouped = esa fila tiene varios grupos de series, una progresión o una barra propia; cámbiala en el archivo del plan. No se cambió nada
page-done-odd = hecho, y guardado en el diario. Aun así llama la atención: { $what }
page-no-from-day = from y day deben ser días como 2026-03-31
page-no-such-change = do debe ser move, row, add u off, con sus campos

## For programs.
page-query-day = since, from y to deben ser días como 2026-03-31
page-query-twice = una parte de la consulta está dos veces, o no es texto
page-bad-token = ese token no abre nada: se retiró, su día pasó o nunca existió
page-token-reads = ese token puede leer, y no entregar nada
page-near-only = esto se dice solo a esta máquina, o a un token que lee
page-plan-kind = envía el archivo del plan mismo, con su nombre como name= que acabe en .csv, .tsv, .xlsx u .ods
page-not-up = el kiosco aún no ha dicho su día, o su registro no se puede leer
page-tokens = Programas del gimnasio
page-tokens-hint = Con un token un programa lee el registro, o entrega planes, sin el código. Se muestra una vez; solo se guarda su hash.
page-no-tokens = Ningún programa tiene un token.
page-token-name = Nombre del programa
page-token-may = Puede
page-may-read = leer
page-may-plans = leer y entregar planes
page-token-until = Hasta el día, incluido
page-token-make = Crear un token
page-token-back = Retirar: { $name }
page-token-holds = puede { $may }, hasta el { $day }
page-token-over = terminado desde el { $day }
page-token-made = El token de { $name }. Se muestra solo ahora; ponlo donde lo encuentre el programa, y nadie más:
page-token-gone = el token de { $name } ya no abre nada
page-token-no-name = un nombre tiene de 1 a 40 letras, y ningún otro token lo tiene; no se creó nada
page-token-no-day = un token vale hasta un día desde hoy, un año como mucho; no se creó nada
page-tokens-full = hay 20 tokens; retira antes uno. No se creó nada
page-token-unknown = ningún token tiene ese nombre; no se cambió nada
page-token-not-kept = el archivo de los tokens no se puede usar; no se cambió nada. El registro del kiosco dice por qué

## A lift's course.
page-course-chart = Serie efectiva más pesada de cada día, { $unit }
page-day-heaviest = la más pesada del día
page-a-best = una marca
page-estimate = estimación de una rep.
page-reps-missed = reps. falladas
page-comes-next = lo que viene
page-volume = Volumen
page-volume-chart = Volumen por semana, { $unit } por reps.
page-hard-sets = Series duras
page-hard-chart = Series efectivas por semana, pálido; delante: las duras
page-hard-hint = Dura: faltaron reps., o la estimación queda a un 10 % como mucho de la mejor hasta ese día. Se estima carga por (1 + reps. / 30), de series de hasta 10 reps. Práctica común, sin fuente: una guía, no un juicio.
page-plan-chart = Reps. hechas por semana; pálido: previstas
page-in-numbers = Lo mismo en números
page-compare = Comparar con
page-nobody-else = nadie
page-all-lifts = todos los ejercicios
page-show = Mostrar
page-compared = Comparación: la estimación de cada cual, en % de su mejor
page-no-course = No hay nada registrado de estos días y ejercicios.
page-take-home = Llévatelo
page-take-home-hint = Estos archivos son tuyos. La página también se imprime.

## Problems.
page-not-done = Eso no salió
page-to-front = A la primera página
page-sign-in-first = entra primero en /sign-in con el código del entrenador
page-name-no-text = el nombre de la dirección no es texto
page-no-blanks = este kiosco no ofrece planes en blanco; pinladder plan blank escribe uno
page-nothing-here = aquí no hay nada; /openapi.json dice lo que hay
page-no-day = before debe ser un día como 2026-03-31
page-no-such-order = order debe ser take, write, copy o restore
page-no-such-deed = do debe ser rule, meant, hurt, fit o ill, con sus campos
page-no-date = escribe un día como 2026-03-31
page-no-such-language = language debe ser en, de o es
page-form-kind = envía el formulario como application/x-www-form-urlencoded
page-form-long = el formulario es más largo de lo posible, o se cortó
page-form-slow = el formulario no llegó en 10 s
page-form-broken = el formulario no es tal
page-field = un campo del formulario falta o está dos veces
page-too-many-codes = demasiados códigos fallidos; espera, y pide el código al dueño
page-method = esta dirección no admite ese método; Allow dice cuáles admite
page-long-address = la dirección pasa de 1024 bytes
page-one-host = la petición debe nombrar un host
page-other-host = este servidor responde a su dirección IP, a localhost, a nombres en .local y a los de kiosk.toml (hosts)
page-no-root = esta página no tiene raíz propia en la que confiar
page-only-tls = esta página solo acepta formularios con TLS; ábrela con https:// y escríbelo otra vez
page-other-site = una página de otro sitio no puede pedir esto
page-many-boards = hay demasiados paneles abiertos; cierra uno
page-many-readers = demasiados leyendo a la vez; prueba otra vez en un momento
page-unreadable = el registro no se puede leer; el registro de sucesos del kiosco dice por qué
page-slow = el registro tarda en leerse ahora mismo; prueba otra vez en un momento
