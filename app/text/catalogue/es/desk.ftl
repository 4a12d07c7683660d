desk = mesa del entrenador
behind-code = con código
four-digits = teclea las cuatro cifras
choose-code = elige cuatro cifras; desde ahora abren la mesa
wrong-code = cifras equivocadas; otra vez
code = código
new-code = código nuevo
delete-last = borrar
keep = guardar
type-value = escribe el número y guarda
type-name = escribe el nombre y guarda
not-read = eso no se entiende; tecléalo de nuevo
plans = planes
plans-hint = de la carpeta «plans»; un plan sustituye lo que había para su gente y sus días
no-plans = no hay ningún plan en la carpeta «plans»
take-plan = tomar { $name }
plan-rows =
    { $n ->
        [one] 1 fila, sin fallos
       *[other] { $n } filas, sin fallos
    }
plan-taken = se tomó el plan { $name }
lifters = atletas
new-lifter = atleta nuevo
first-lifter = el primer atleta
add = añadir
measured-of = { $n } de { $all } referencias medidas
landmarks-hint = alturas sobre el suelo, con el calzado de levantar
not-yet-measured = sin medir
unit = unidad
rack = rack
racks = racks
new-rack = rack nuevo
measure-hint = mide cada cifra; toca para teclearla de nuevo
holes =
    { $n ->
        [one] 1 agujero
       *[other] { $n } agujeros
    }
first-hole = del suelo al agujero 1
spacing = de agujero a agujero
hole-count = agujeros
pin-diameter = pasador, diámetro
hole-diameter = agujero, diámetro
mats-title = losetas
bars = barras
new-bar = barra nueva
mass = peso
shaft = eje, diámetro
sleeve = manga, con su cierre
collars-title = los dos cierres
condition = estado
condition-hint = la retirada va sobre los pasadores
straight = recta
retired = retirada
plates = discos
kinds =
    { $n ->
        [one] 1 tipo
       *[other] { $n } tipos
    }
pairs =
    { $n ->
        [one] 1 par
       *[other] { $n } pares
    }
programmes = programas
programmes-hint = sus días y ejercicios están en programme.toml
days =
    { $n ->
        [one] 1 día
       *[other] { $n } días
    }
weeks =
    { $n ->
        [one] 1 semana
       *[other] { $n } semanas
    }
sharing = página en la red
sharing-hint = lo que se cambia aquí vale enseguida
interface = dirección
this-machine = solo este equipo
whole-network = quien esté en esa red
page-code = código de la página
page-code-set = puesto
page-code-missing = ninguno
nobody-signs-in = sin él no entra nadie
six-digits = al menos seis cifras, y guarda
page-name = también se llama
fingerprint = huella del certificado
tls = TLS
tls-on-by-tap = quien esté en esta red puede leer el código del entrenador; toca para activarlo
lan-by-itself = sola, porque otros equipos llegan a la página: su dirección empieza por https
certificate = certificado
lan-stale = se usa el anterior: { $why }
lan-ends = su último día es el { $date }; pon uno nuevo en su lugar
root-fingerprint = SHA-256 de la raíz
code-was-plain = las cifras viejas están a la vista en el diario; elige otras
wait-at-door = demasiados fallos; espera { $time }
on = sí
off = no
checks = comprobaciones
checks-hint = de los ficheros del gimnasio tal como están en la carpeta
hardware = aparatos
all-well = sin fallos
faults = fallos: { $n }
begin = un gimnasio propio
new-gym = empezar de nuevo
take-away = quitar
hold-it = mantén pulsado
this-kind = este tipo

## What still needs a thing.
need-under-way = { $lifter } lo está usando; termina eso primero
need-lifts-there = { $lifter } levanta ahí; dale antes otro rack
need-lifts-with = { $lifter } levanta con ella; dale antes otra barra
need-only-rack = es el único rack; añade antes otro
need-only-bar = es la única barra para { $rack }; añade antes otra
need-only-kind = es el único tipo de su juego; añade antes otro
need-weighed = se pesaron discos de ese tipo; quítalos antes de gym.toml

## The stick and the copies.
stick = memoria USB
stick-hint = lo que trae se toma entero o nada
stick-unset = no tiene sitio asignado
stick-key = escribe stick = "..." en kiosk.toml
stick-out = no hay ninguna
stick-plans = planes: { $names }
stick-take = tomarlo todo
stick-record = registro
stick-write = escribir en la memoria
stick-writing = se está escribiendo; no la saques
stick-passed = omitido
stick-new =
    { $n ->
        [one] 1 nuevo
       *[other] { $n } nuevos
    }
stick-changed =
    { $n ->
        [one] 1 cambiado
       *[other] { $n } cambiados
    }
stick-same =
    { $n ->
        [one] 1 como antes
       *[other] { $n } como antes
    }
stick-days = { $from } a { $to }
copies = copias
copies-hint = del diario, en el segundo sitio; antes se comprueba cada una
copies-unset = no hay segundo sitio
copies-key = escribe backup = "..." en kiosk.toml
copy-now = copiar ya
copying = se está copiando y comprobando
put-back = restaurar
proving = se está comprobando la copia; seguid levantando
on-the-screen = en la pantalla
write-plan = escribir un plan
new-row = un ejercicio
row-hint = toca lo que quieras cambiar y guarda
off-the-day = fuera de este día
lift-title = ejercicio
load-title = carga, barra incluida
sets-title = series efectivas
reps-title = reps. de cada una
ladder-title = calentamiento
ladder-own = el suyo
not-yet = aún no

## Next time, ruled by the coach.
next-times = la próxima vez
next-times-what = decide el entrenador
next-times-hint = lo que se sigue de la última vez; toca para decidir otra cosa
nothing-due = aún no se ha levantado nada, así que nada se sigue
ruling-hint = la carga y el motivo; ambos quedan en el registro
why-title = por qué
note-more = salió bien: sube más
note-less = la espalda aún no es segura: baja
note-tired = cansancio: esta vez menos
note-sore = agujetas o enfermedad: esta vez menos
note-form = trabaja antes la técnica
note-test = se acerca una prueba o competición
note-stay = quédate aquí una vez más

## Programmes and rules.
programme = programa
no-programme = ninguno
programme-hint = toca para meter a alguien o sacarlo
follows = lo sigue
follows-not = no lo sigue
follows-hint = llena los días de los que el plan no dice nada
next-day = viene ahora
apart-days = de un día al siguiente
rule = regla
rule-what = sube, repite, baja
rule-hint = para todo ejercicio; práctica común sin fuente, hasta que el entrenador la cambie
r-step = todas las reps., espalda firme: sube
r-tries = intentos con una carga
r-moved-tries = intentos si la espalda cedió
r-drop = luego baja
r-drops = bajadas antes de retroceder
r-reset = retroceder quita
r-away-days = días fuera que no son pausa
r-away = una pausa quita

## Things of the gym.
own-bar = barra desde el suelo
any-bar = la del rack
stands-by = está en
every-rack = cualquier rack
mats-hint = para subirse donde los agujeros quedan lejos
new-mat = loseta nueva
new-kind = tipo nuevo
plate-hint = un disco: su peso, cuántos pares, grosor, diámetro
pairs-title = pares
thickness = grosor
diameter = diámetro

## Refusals, after X_; reasons why no ladder can be loaded, after L_.
x-empty-plan = el plan no tiene filas; escribe al menos una
x-nothing-planned = el plan no tiene nada para ese día; míralo otra vez
x-empty-ladder = la hoja no tiene series; revisa la carga del plan
x-under-way = { $lifter } está haciendo { $lift }; termínalo primero
x-no-such-lift = ese ejercicio no está en marcha; elige otra vez quién levanta
x-not-the-rung = esa serie ya está apuntada; míralo otra vez
x-over = el ejercicio terminó; deshaz para apuntar más
x-decide-first = la espalda cedió; termina el ejercicio o sigue primero
x-nothing-to-decide = la espalda no cedió; apunta la serie
x-stale-rotation = el orden de turnos está anticuado; hazlo de nuevo
x-not-the-time = la carga se decide una vez, entre el último calentamiento y la primera serie efectiva; deshaz para volver ahí
x-stale-decision = el ejercicio sigue; decide cuando acabe
x-nothing-decided = nada se decidió tras ese ejercicio; escribe la carga en el plan
x-load = { $load } no vale; más que nada y hasta 1000 kg
x-no-note = falta la nota; di por qué en pocas palabras
x-note =
    { $n ->
        [one] la nota tiene 1 carácter; usa { $most } como mucho
       *[other] la nota tiene { $n } caracteres; usa { $most } como mucho
    }
x-reps = { $n } no vale; las reps. van de 0 a { $most }, la que cedió desde 1
fault-cell = { $file }, fila { $row }, columna { $column }
fault-row = { $file }, fila { $row }
fault-found = pone { $read }; { $right }
and-more = { $first } (y { $n } más)
went-wrong = no se hizo: { $why }
l-range = una cifra está fuera de lo posible
l-bar = la barra sola ya pesa más
l-inventory = faltan discos para ello
l-sleeve = los discos no caben en la manga
l-big-inside = un disco grande quedaría por fuera
l-tolerance = no hay discos que lo den

## The front page, the week, the digits twice.
repeat-code = las mismas cuatro cifras otra vez
codes-differ = no eran iguales; elige cuatro cifras de nuevo
saved = guardado
no-file = ningún archivo nuevo
files-wait =
    { $n ->
        [one] 1 archivo espera
       *[other] { $n } archivos esperan
    }
week = la semana
week-what = personas por días
week-before = semana anterior
week-after = semana siguiente
gym = el gimnasio
gym-what = racks, barras, discos
begin-under-way = { $lifter } está levantando; termina antes ese ejercicio
begin-loses = mantén: se va { $gym }, con sus personas ({ $lifters }), racks ({ $racks }) y barras ({ $bars }); el registro queda
rest-title = descanso
rest-own = el de siempre
demo-gym = { $gym } (demo)
demo-steps = de prueba; el tuyo: 1. mesa del entrenador 2. el gimnasio 3. mantén «empezar de nuevo»
