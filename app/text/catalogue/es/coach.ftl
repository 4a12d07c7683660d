## What stands behind the end of a lift.
why = por qué
advice = consejo
next-time-title = la próxima vez
single-title = máximo estimado
split-title = cuándo dividir
back-title = la vuelta
advice-waits = hay un consejo: { $lift }; mira «por qué»

## What is due, without the load.
up-by = { $by } más: { $why }
again = otra vez: { $why }
least-again = otra vez, no hay menos: { $why }
down-by = { $by } menos: { $why }
coach-ruled = del entrenador: { $note }
due-of = { $lift }, { $work }: { $due }
due-last = { $due }; la última vez el { $date }

## Sets by their reps, and a day of the year.
fives = series de cinco
sets-of-reps = series de { $reps }
joined = { $first } y { $second }

## When to split. Common practice, no source.
s-too-few = { $lift }: muy pocas series de { $reps } para ver una tendencia
s-none-well = { $lift }: últimamente ninguna serie de { $reps } salió bien
s-light = { $lift }, { $reps } con { $load }: por debajo de los { $heavy } desde los que se piensa en dividir
s-rising = { $lift }, { $reps } con { $load }: sigue subiendo; adelante
s-test-near = { $slow }; pero la prueba del { $date } está cerca: sigue con { $lift }
s-split = { $slow }; piensa en { $partials } en su lugar, decide el entrenador
s-stay = en ello: { $partials }; sigue ahí
s-stay-until = en ello: { $partials }; vuelve a { $lift } el { $from }, antes de la prueba del { $test }
s-back = la prueba es el { $test }; retoma { $lift }, decide el entrenador
s-slow = { $lift }, { $reps } con { $load }: { $rate } cada vez donde tocan { $step }; { $bad } de { $all } cortas o con la espalda cedida
s-rise = { $by } más
s-fall = { $by } menos
s-no-record = aún nada en el registro: { $lift }
s-back-day = { $date }: { $lift } { $load }
s-back-share = { $date }: { $lift } { $share } % de la mejor marca × { $reps }
s-back-row = vuelta
key = lleno: todas las reps., espalda firme; aro: faltan reps.; cruz: la espalda cedió; línea: mínimos cuadrados
heavy-from = pesado desde { $load }

## Estimates of the single.
from-to = { $from } a { $to }
single-from = según seis fórmulas publicadas, de { $set }; se ajustaron a otra gente
single-head = máximo según { $load } × { $reps }: { $from } a { $to }, según la fórmula
single-line = { $from } a { $to }, según la fórmula

## What is due, as a text.
d-for = { $lifter }, para el { $date }
d-nothing = aún no se ha hecho nada de lo que algo se siga
d-due = toca
d-rules = reglas
d-rule = regla
d-single = máximo
d-sets =
    { $n ->
        [one] 1 serie de { $reps }
       *[other] { $n } series de { $reps }
    }
d-tries =
    { $n ->
        [one] 1 intento
       *[other] { $n } intentos
    }
d-drops =
    { $n ->
        [one] 1 bajada
       *[other] { $n } bajadas
    }
d-figures =
    { $days ->
        [one] sube { $step }; { $tries }, si la espalda cedió { $moved }, luego { $drop } menos; { $drops }, luego { $reset } menos; tras más de 1 día fuera { $away } menos
       *[other] sube { $step }; { $tries }, si la espalda cedió { $moved }, luego { $drop } menos; { $drops }, luego { $reset } menos; tras más de { $days } días fuera { $away } menos
    }

## Measuring. Common practice, no source.
m-intro = con el calzado de levantar, de pie y erguido, el peso en ambos pies; la cinta recta desde el suelo; mide dos veces y anota la media
m-tuberosity = el bulto duro delante en la tibia, bajo la rótula: del suelo a su centro
m-patella = rodilla recta, muslo relajado: del suelo al borde superior de la rótula
m-mid-thigh = a medio camino entre el borde superior de la rótula y la ingle: del suelo hasta ahí
m-lockout = de pie con la barra vacía en las manos colgando: del suelo al centro de la barra
m-mm = { $mm } mm
m-estimate = { $mm } mm estimados, { $spread } mm arriba o abajo
m-not-measured = sin medir
m-write = mídelo y escríbelo en lifters.toml, en landmarks
m-above-floor = { $height } sobre el suelo

## A meet or a test day.
t-caution = una guía: mira la tarima y pregunta al árbitro qué se puede cambiar
t-head = { $lifter }, primer intento { $load } en { $in }: intento { $attempt } de la tanda, { $over } hechos, { $each } s por intento
t-now = ya
t-in = en { $time }
t-each-side = cada lado { $plates }
t-after = tras el intento { $attempt }
t-meet-day = día de competición
t-in-word = en
t-nothing-comes = ya no viene nada más
t-sooner = un minuto antes
t-later = un minuto después
t-begin = empieza la tanda
t-attempt-over = intento hecho
t-next-flight = siguiente tanda
t-not-begun = { $flight }: sin empezar
t-over = { $flight }: { $over } de { $all } intentos hechos, { $each } s cada uno
t-opener = { $load }, primero
t-tap = toca un calentamiento cuando esté hecho; { $caution }
t-after-about = tras el intento { $attempt }, más o menos
t-reckoned = el puesto es un cálculo: de los demás solo se sabe el número
t-round = { $flight }, ronda { $round }
t-good = válido
t-no-lift = nulo
t-was-good = válido
t-passed = renunció
t-second = { $load }, segundo
t-third = { $load }, tercero
t-undeclared = sin declarar: toca aquí
t-without = { $lifter } sin intento válido
t-cards = declaraciones
t-cards-value = pesos y sorteo de los nuestros
t-so-far = hasta ahora
t-the-opener = primer intento
t-the-second = segundo intento
t-the-third = tercer intento
t-another = otro peso
t-another-first = otra persona salió antes
t-lot = sorteo
t-no-lot = ninguno
t-same-lot = { $lifter } tiene el mismo: pregunta en la mesa
t-passes = renuncia a este intento
t-leaves = deja la tanda
t-type-lot = de 1 a 999, según el sorteo, y guarda
t-type-load = como se dijo en la mesa, y guarda
t-changes-left = declarado; cambios que quedan: { $n }
t-declare-in = declara en { $time }; si no, son { $load }
t-by-itself = pasó el minuto: en la mesa son { $load }, salvo que declararas
t-card-over = no queda ningún intento
t-loaded = la barra está cargada: ya no hay cambios
t-below = la barra no baja: { $load } o más
t-late = desde { $time } antes de la tanda el primero queda fijo; pregunta al árbitro
t-no-change = cambios que admite la mesa: { $n }; pregunta al árbitro
t-of-best = { $share } % de la mejor marca, { $best }
t-new-best = { $by } sobre la mejor marca
t-no-best = sin mejor marca en el registro
t-place = intento { $n } desde ahora
t-place-about = más o menos intento { $n } desde ahora
t-left-out = se omite
t-no-time = { $load }: no da tiempo
partial = en un tirón parcial solo comparan a cada cual consigo mismo y no predicen nada más
t-opener-over = el primer intento supera lo que el registro respalda, { $best }; es lo que se hace en un mal día: pregunta al entrenador
t-head-at = { $lifter }, primer intento { $load } hacia las { $at }: intento { $attempt } de la tanda, { $each } s por intento
