## Everywhere; the first ones are written by the window itself, in these words.
all-lifters = todos
switch-to = cambiar a { $lifter }
more = más
more-lifters = más atletas
set-up = montaje
other-reps = otras reps.
history = historial
done = hecho
ready = listo
work = serie
warm-up = calentar
skipped = omitida
of = { $n } de { $all }
hole = agujero { $hole }
from-the-floor = desde el suelo
from-the-hooks = desde los ganchos
hooks-hole = ganchos en el agujero { $hole }
from-hooks-hole = desde los ganchos, agujero { $hole }
from-hooks-any = desde los ganchos, a la altura que te vaya bien
estimated-measure = { $start }; estimado, mide
undo = deshacer
back = atrás
cannot-start = El kiosco no puede arrancar
tried-again = Se vuelve a intentar cada pocos segundos.
belt = cinturón
straps = correas
from-load = { $gear } desde { $load }
double-overhand = agarre prono
hook-grip = agarre de gancho
double-overhand-grip = agarre prono con ambas manos
reps =
    { $n ->
        [one] 1 rep.
       *[other] { $n } reps.
    }
sets-of =
    { $n ->
        [one] 1 serie de { $set }
       *[other] { $n } series de { $set }
    }
no-mat = sin loseta
mats =
    { $n ->
        [one] 1 loseta, { $mm } mm
       *[other] { $n } losetas, { $mm } mm
    }
back-held = espalda firme
back-moved = la espalda cedió
back-moved-at-rep = la espalda cedió en la rep. { $rep }

## Large, in lines that read well.
stopped-at-rep = la espalda cedió en la rep. { $rep }
back-moved-at = cedió en la { $rep }
warm-up-of = calentar { $n } de { $all }
work-set = serie efectiva
work-set-of = serie efectiva { $n } de { $all }

## Heights.
bar-height = barra a { $mm } mm sobre los pies, { $how }
on-the-mark = justo en la marca
under-the-mark = { $mm } mm bajo la marca
over-the-mark = { $mm } mm sobre la marca
shares = comparte { $length } con: { $lift }
leaves-gap = deja un hueco de { $length } con: { $lift }
mm-in = { $mm } mm ({ $inches } pulg.)
collars = cierres { $mass }

## Loading.
empty-bar = barra vacía
leave-bar = deja la barra como está
reps-done = { $n } hechas

## All lifters.
no-lifters = aún no hay atletas: escríbelos en lifters.toml, en la carpeta de datos
floor = sala
rest-left = pausa { $time }
done-of = { $n } de { $all } hechas
nothing-today = hoy nada
measure-first = mide primero

## The end.
nothing-done = nada hecho
next = luego: { $what }
next-lifter = siguiente
not-done = sin hacer
sets =
    { $n ->
        [one] 1 serie
       *[other] { $n } series
    }
reps-in-all =
    { $n ->
        [one] 1 rep. en total
       *[other] { $n } reps. en total
    }
minutes =
    { $n ->
        [one] 1 minuto
       *[other] { $n } minutos
    }
own-record = tu registro en tu teléfono: se abre una vez, durante diez minutos

## Pads.
how-many-reps = ¿cuántas reps. con { $load }?
which-rep = ¿en qué rep. cedió la espalda?
end-lift = terminar el ejercicio
did-it = la hice de todos modos
did-all = hice las { $n } de todos modos

## The floor.
nobody-yet = aún no levanta nadie
up = en turno
next-up = luego

## What undo takes back.
the-start = el comienzo
the-end = el final
going-on = «seguir»
the-skip = «omitir»

## Rest.
rest = pausa
after = tras { $set }
go-now = levantar ya

## Set-up.
start = empezar
back-to-bar = volver a la barra
not-planned = para hoy no hay nada previsto; pregunta al entrenador
not-a-lifter = { $lifter } no está en lifters.toml; pregunta al entrenador
height-unknown = sobre los pasadores, altura desconocida

## The back moved.
set-of = { $set }, { $n } de { $all }
moved-advice = Si la espalda cede, se acabó subir. Si hay dolor, para: ve al médico.
go-on = seguir, el entrenador está de acuerdo

## No sheet.
missing = no existe «{ $name }» ({ $what }); escríbelo en los ficheros del gimnasio
nothing-until = hoy nada; { $lift } el { $date }
goes-on-from = hoy nada; { $programme } sigue desde el { $date }
no-training-max = no hay máximo de entrenamiento para este día; escríbelo en lifters.toml, o la carga como peso
no-best = no hay mejor marca en el registro; escribe la carga como peso
no-ladder = { $why }; pide otra carga al entrenador

## Landmarks.
tibial-tuberosity = tuberosidad tibial
patella-top = rótula, arriba
mid-thigh = mitad del muslo
lockout = bloqueo

## This panel.
panel = kiosco
panel-title = Este kiosco
language = idioma
light = luz
by-hour = según la hora
daylight = clara
dim = oscura
by-hour-detail = clara de { $from } a { $to } h
about = sobre Pinladder
about-value = versión y licencias
about-what = Pinladder { $version }: lo que el rack debe mostrar hoy, y un registro de lo que se levantó.
about-terms = Software libre bajo la GNU General Public License, solo versión 3, sin garantía alguna. El código fuente y el texto completo de la licencia vienen con él.
about-parts = Dibujado con Slint bajo la misma licencia; compuesto en Roboto Condensed, cuya licencia está junto a la fuente. Las demás bibliotecas están en Cargo.lock.
about-care = Las barras pesadas hacen daño. Las cifras del acero son una guía, nunca un certificado. Lo que digan tu entrenador, tu médico y las normas del lugar va primero.
lan-opens = Ábrela con otro equipo de esta red: { $address }
lan-or = { $first } o { $second }
lan-print = Antes de confiar en su certificado, comprueba que el navegador muestra el mismo SHA-256: { $print }
lan-root = Para que un teléfono confíe siempre, carga root.crt de ahí y comprueba que tiene este SHA-256: { $print }
lan-readable = Sin TLS, quien esté en esta red puede leer el código del entrenador; se activa en la mesa.

## History.
no-sessions = aún no hay series efectivas
a-best = récord
moved-warm = al calentar
sets-done-of =
    { $all ->
        [one] { $n } de 1 serie
       *[other] { $n } de { $all } series
    }

## Next time.
next-time = próxima vez: { $due }
n-up = { $load }, { $by } más
n-again = otra vez { $load }
n-least = otra vez { $load }, no hay menos
n-down = { $load }, { $by } menos
n-because = { $change }: { $why }
n-back = { $went }, en el camino de vuelta
n-no-step = { $went }, pero la siguiente carga que se puede montar queda demasiado arriba
n-light = { $went }, en un día más ligero de lo que tocaba
n-try = { $went }, intento { $n } de { $all }
n-too-much = { $went }, demasiado pronto para probar otra vez { $load }
n-stuck = { $went }, otra vez sin nueva mejor marca; pregunta al entrenador
x-not-hurt = { $lifter } no figura con lesión; no hay nada que quitar
x-ill-backwards = { $to } es anterior a { $from }, cuando empezó; escribe desde, luego hasta
no-hurt = con lesión: no toca nada hasta que decida el entrenador; para y ve al médico
no-untried = { $load } parece un error: no hay nada en el registro que lo respalde; pregunta al entrenador
no-many-reps = { $n } reps. efectivas con { $load } parecen un error; pregunta al entrenador
no-looks-wrong = { $load } parece un error: el registro respalda { $supported }; pregunta al entrenador
due-then-plan = toca { $due }, plan { $plan }
plan-then-due = plan { $plan }, toca { $due }
n-hard = { $went }, más duro de lo pedido
n-range = { $went }, aún no el tope del rango en cada serie
n-waiting = { $went }; decide el entrenador
n-away =
    { $days ->
        [one] 1 día fuera más de lo previsto
       *[other] { $days } días fuera más de lo previsto
    }
n-anew =
    { $days ->
        [one] 1 día fuera más de lo previsto; empieza de nuevo con el entrenador
       *[other] { $days } días fuera más de lo previsto; empieza de nuevo con el entrenador
    }
n-ill =
    { $days ->
        [one] enfermedad, 1 día cuenta como pausa
       *[other] enfermedad, { $days } días cuentan como pausa
    }
n-family = desde entonces la espalda cedió en otro tirón
n-over = salió mal un tirón tras otro; pregunta al entrenador
n-long-ago = hace mucho, mientras seguían otros tirones
n-week = la subida de la semana está gastada
n-hurt = con lesión: nada hasta que decida el entrenador; para y ve al médico
n-nothing = no toca nada: { $why }
n-coach = fijado por el entrenador
n-coach-said = { $load }, del entrenador: { $note }
v-raise = sube
v-repeat = repite
v-drop = baja
v-reset = retrocede
v-ease = afloja
o-well = todas las reps., espalda firme
o-moved = la espalda cedió en la rep. { $rep }{ $where }
o-moved-warm = la espalda cedió al calentar
o-cut =
    { $all ->
        [one] { $n } de 1 serie, espalda firme
       *[other] { $n } de { $all } series, espalda firme
    }
next-session = luego

## Choosing the load on the day. The caution: common practice, no source.
other-load = otra carga
the-choice = la elección
the-plan = el plan
the-due = toca
too-early = demasiado pronto
over-due = más de lo que toca
work-set-reps = serie efectiva, { $reps }
work-sets-of =
    { $n ->
        [one] 1 serie efectiva de { $reps }
       *[other] { $n } series efectivas de { $reps }
    }
settle-caution = más solo si la espalda aguantó en todo el calentamiento; decide el entrenador
keep-load = ir con { $load }
first-time = la primera vez
last-time = última vez { $load }, { $went }, el { $date }
as-last-time = como la última vez
more-than-last = { $by } más que la última vez
less-than-last = { $by } menos que la última vez
n-well = todas las reps. con la espalda firme
n-short =
    { $all ->
        [one] { $n } de 1 rep.{ $where }
       *[other] { $n } de { $all } reps.{ $where }
    }
n-moved = la espalda cedió en la rep. { $rep }{ $where }
n-moved-warm = la espalda cedió al calentar
n-cut =
    { $all ->
        [one] { $n } de 1 serie, la espalda aguantó
       *[other] { $n } de { $all } series, la espalda aguantó
    }
n-in-set = {" "}en la serie { $set }

## What a warning says.
w-no-hole = ningún agujero de { $rack } pone la barra a { $mm } mm; usa bloques u otro rack
w-straight-bar = hay una barra recta sobre los pasadores y puede doblarse; trae la retirada
w-overlap = el solape no llega a los { $least } mm del entrenador; baja los pasadores
w-not-loadable = { $load } no se puede cargar aquí; se muestra lo más cercano
w-too-rough = { $landmark }: solo estimado, { $spread } mm arriba o abajo, demasiado basto para agujeros cada { $spacing } mm; que el entrenador mida, y luego pon los pasadores
w-at = con { $load }
w-from-to = de { $from } a { $to }
w-low-plates = { $loads } los discos pequeños dejan la barra { $raise } demasiado baja; súbela eso
w-estimated = { $landmark }: estimado por la estatura, { $spread } mm arriba o abajo; mide
w-estimated-doubtful = { $landmark }: estimado por la estatura, { $spread } mm arriba o abajo, quizá valga el agujero de al lado; mide
w-pins-rated = { $load } supera lo que aguantan los pasadores ({ $rated }); usa menos
w-rack-rated = { $load } supera lo que aguanta el rack ({ $rated }); usa menos
w-bar-rated = { $load } supera lo que aguanta la barra ({ $rated }); usa otra barra
w-set-at-rest = según las cifras del fabricante, esta carga puede doblar la barra sobre los pasadores ({ $share } % del límite elástico en reposo); usa otra barra; una guía, nunca un certificado
w-set-dropped = según las cifras del fabricante, una caída de { $mm } mm sobre los pasadores dobla esta barra; pósala; una guía, nunca un certificado
w-not-measured = { $landmark }: sin medir; que el entrenador mida, y luego pon los pasadores
