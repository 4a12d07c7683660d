## Whom, what and when.
checked-a-row-that-says-otherwise = una fila que dice otra cosa que la cabecera de encima
checked-keep-one-of-the-two-words = quédate con uno de los dos
checked-on-what-is-headed = { $a } en lo que lleva por cabecera { $b }
checked-move-the-row-to-a = lleva la fila a una hoja propia, o cambia el nombre de la hoja
checked-write-the-date = escribe la fecha
checked-a-week-without-a-day = una semana sin su día
checked-write-the-weekday-or-the = escribe el día de la semana, o la fecha
checked-a-weekday-without-the-monday = un día de la semana sin el lunes en que empieza la semana 1
checked-write-first-monday-2026-12 = escribe "first Monday: 2026-12-07" encima del plan, da --monday 2026-12-07, o escribe las fechas
checked-which-is-no = { $a }, que no es { $b }
checked-write-the-date-or-the = escribe la fecha o el día de la semana que se quiere
checked-two-first-mondays-and = dos primeros lunes, { $a } y { $b }
checked-monday = lunes
checked-tuesday = martes
checked-wednesday = miércoles
checked-thursday = jueves
checked-friday = viernes
checked-saturday = sábado
checked-sunday = domingo
checked-write-a-day-such-as = escribe un día, por ejemplo "Monday"
checked-not-a-day-of-the = no es un día de la semana
checked-no-lifter = ningún atleta
checked-name-the-sheet-after-the = pon a la hoja el nombre del atleta, o añade la columna "lifter"
checked-write-the-lift-in-front = escribe delante el ejercicio, o añade la columna "lift"
checked-a-first-day-that-is = un primer día que no es lunes
checked-write-the-monday-of-week = escribe el lunes de la semana 1, por ejemplo { $a }
checked-write-its-weekday-or-its = escribe su día de la semana o su fecha
checked-a-day-by-its-number = un día por su número
checked-write-the-monday-of-the-week = escribe el lunes de la semana
checked-a-week-that-begins-on = una semana que empieza en domingo
checked-a-week-of-the-calendar = una semana del calendario sin año
checked-write-the-year-with-it = escribe el año con ella, como "KW 49/2026", o las fechas
checked-a-weekday-that-is-not = un día de la semana que no es el de la fecha
checked-a-day-without-a-year = un día sin año
checked-a-short-name-that-has = un nombre corto que tiene { $a }
checked-give-it-to-one-of = dáselo a uno de los dos

## Headers and lines beside the plan.
checked-sets-and-reps-under-a = series y reps. bajo una cabecera desconocida, { $a }
checked-write-a-week-a-day = escribe una semana, un día o un atleta en la cabecera, o "note"
checked-a-first-row-that-names-one = una primera fila que nombra una sola columna
checked-show-it-in-the-spreadsheet = muéstrala en la hoja de cálculo si es parte del plan
checked-column-hidden-left-out = columna { $a } oculta, sin contar
checked-take-the-line-away-if = quita la raya si es parte del plan
checked-a-hidden-row-left-out = una fila oculta, sin contar
checked-a-row-struck-through-left = una fila tachada, sin contar
checked-text-struck-through-left-out = texto tachado, sin contar
checked-a-line-of-words-left = una línea de palabras, sin contar
checked-put-it-under-note-if = ponla en "note" si alguien debe leerla

## Cells.
checked-a-day-which-a-spreadsheet = un día, que una hoja de cálculo hace de "3-5"
checked-a-time-which-a-spreadsheet = una hora, que una hoja de cálculo hace de "3:00"
checked-format-the-cell-as-text = da a la celda formato de texto y escríbela otra vez
checked-which-could-be-or-a = que puede ser { $a } o un porcentaje
checked-write-or-the-load-with = escribe { $a }, o la carga con su unidad
checked-more-than-letters-in-one = más de { $a } letras en una celda
checked-write-a-row-for-each-lift = escribe una fila por ejercicio, y los comentarios en la nota
checked-more-than-set-groups = más de { $a } grupos de series
checked-split-it-over-days = repártelo en varios días
checked-write-the-top-set-before = escribe antes la serie tope, como "1x5 @ RPE 8, 3x5 @ 90 % of top set"
checked-a-share-of-today-s = un porcentaje de la serie tope de hoy sin una serie tope antes
checked-a-load-without-a-unit = una carga sin unidad
checked-write-the-unit = escribe la unidad
checked-too-many-numbers-with-a = demasiados números con un signo de multiplicar en medio
checked-write-sets-x-reps-load = escribe series x reps. @ carga, como "5x3 @ 140 kg"
checked-write-or = escribe { $a } o { $b }
checked-one-set-of-reps-or = una serie de { $a } reps. o { $b } series
checked-which-can-mean = que puede significar { $a }
checked-which-can-mean-so-many = que puede significar tantas series o tanta carga
checked-in-which-sets-and-reps = donde series y reps. pueden ir en cualquier orden
checked-not-sets-x-reps = no son series x reps.
checked-write-1-to-sets-x = escribe de 1 a { $a } series x 1 a { $b } reps., como "5x3 @ 140 kg"
checked-sets-where-the-column-beside =
    { $a ->
        [one] 1 serie, cuando la columna de al lado dice { $b }
       *[other] { $a } series, cuando la columna de al lado dice { $b }
    }
checked-write-sets-x-reps-as = escribe series x reps., como { $a }
checked-an-effort-without-its-number = un esfuerzo sin su número
checked-no-reps = sin reps.
checked-write-with-your-sets-and = escribe { $a } con tus series y reps.
checked-a-load-without-sets-and = una carga sin series ni reps.
checked-more-numbers-than-sets-reps = más números que series, reps. y una carga ({ $a })
checked-write-it-as-5x3-140 = escríbelo como "5x3 @ 140 kg", y los comentarios entre paréntesis o en la nota
checked-sets-reps-for-loads-for = series: { $a }, reps. para { $b }, cargas para { $c }
checked-write-the-sets-alone-here = escribe aquí solo las series, y las reps. en "reps"
checked-sets-and-reps-in-one = series y reps. en uno
checked-write-as-many-of-each = escribe tantos de cada como series haya, o uno para todas
checked-write-where-a-share-is = escribe { $a } donde se quiera un porcentaje
checked-an-effort-or-a-load = un esfuerzo o una carga por debajo de 1
checked-write-the-step-as-a = escribe el salto como peso, por ejemplo "+2.5 kg"
checked-a-step-in-percent = un salto en tanto por ciento
checked-a-step-without-a-unit = un salto sin unidad
checked-write-a-range-rising-as = escribe un rango creciente como "3-5", y una serie tras otra como "5/3/1"
checked-reps-that-do-not-rise = reps. que no crecen
checked-write-one-load-as-140 = escribe una sola carga, como "140 kg"
checked-a-load-from-one-to = una carga de una a otra
checked-a-share-of-which-is = un porcentaje de { $a }, que aquí no se conoce
checked-write-the-share-of-best = escribe el porcentaje de "best", "training max" o "top set"
checked-write-one-number-of-reps = escribe un solo número de reps. en reserva de 0 a 9, por ejemplo "RIR 2"
checked-write-one-rpe-from-1 = escribe un solo RPE de 1 a 10 de medio en medio, por ejemplo "RPE 8.5"
checked-not-an-effort = no es un esfuerzo
checked-an-effort-from-one-to = un esfuerzo de uno a otro
checked-an-effort-that-no-scale = un esfuerzo que no tiene ninguna escala
checked-write-it-once-for-each = escríbelo una vez por grupo de series
checked-two-loads-for-the-same = dos cargas para las mismas series
checked-two-efforts-for-the-same = dos esfuerzos para las mismas series
checked-write-the-load-alone-as = escribe solo la carga, como "140 kg", "80 %", "+2.5 kg" o "RPE 8"
checked-more-than-a-load = más que una carga
checked-not-understood-from-on = no se entiende desde { $a }
checked-a-load-of-one-side = una carga de un solo lado
checked-put-a-comma-between-set = pon una coma entre grupos de series
checked-two-set-groups-in-a = dos grupos de series seguidos
checked-a-time-that-nobody-has = un tiempo que nadie llamó descanso
checked-rising-from-1-row-by = { $a } que sube desde 1, fila a fila, que puede numerar las series o contarlas
checked-write-alike-sets-in-one = escribe las series iguales en una fila, como "3x5 @ 140 kg", y 1 en cada fila donde difieran
checked-a-warm-up-the-ladder = un calentamiento: la escalera los hace a partir de la carga efectiva
checked-take-the-row-out-or = quita la fila, o nombra un patrón de calentamiento en "ladder"
checked-a-drop-that-could-be = una bajada que puede ser de { $a } o hasta { $a }
checked-write-for-so-much-less = escribe { $a } para tanto menos que la serie tope, o { $b }
checked-the-same-as-what-is = lo mismo que lo que no se dice
checked-write-for-the-load-of = escribe { $a } para la carga de la última vez, o la carga
checked-write-a-pause-in-each = escribe una pausa en cada rep. en "hold", y aquí un descanso de 15 s a 30 min

## Days of a month, shares of what.
checked-a-day-that-the-month = un día que { $a } no tiene
checked-taken-as-a-share-of = { $a }, leído como porcentaje de la mejor marca
checked-write-of-top-set-where = escribe "{ $a } of top set" si se refiere a las series anteriores, o "{ $a } of best"

## What the rack cannot show yet.
checked-read-but-the-rack-cannot = leído, pero el rack aún no puede mostrarlo; escribe series x reps. @ una carga o un porcentaje de la mejor marca
checked-a-row-without-sets = una fila sin series
checked-a-share-of-a-top = un porcentaje de una serie tope sin nada antes
checked-sets-without-a-load = series sin carga
checked-a-lift-and-more = { $a } y más palabras
checked-write-the-lift-and-how = escribe aquí { $a } y cómo se hace junto a las series, como "3x5 @ 140 kg pause 2 s", o dale al gimnasio un ejercicio con este nombre
