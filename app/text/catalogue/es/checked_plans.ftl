## Any file and cell.
checked-place-and-cell = { $a }, { $b }
checked-more-bytes-than-the-most = más bytes que el máximo, { $a }
checked-faults-more-which-are-not =
    { $a ->
        [one] 1 fallo más, que no se lista
       *[other] { $a } fallos más, que no se listan
    }
checked-mend-these-first-then-check = corrige antes estos, y comprueba otra vez
checked-more-of-this-kind-which =
    { $a ->
        [one] 1 más de este tipo, que no se lista
       *[other] { $a } más de este tipo, que no se listan
    }
checked-look-at-these-first = mira antes estos
checked-characters-more-than-the-most = { $a } caracteres, más del máximo, { $b }
checked-write = escribe { $a }
checked-write-or-give-it-the = escribe { $a }, o dale el nombre corto en los ficheros del gimnasio: { $b }
checked-write-the-only-one-known = escribe { $a }, el único conocido
checked-or-one-of-more = { $a } o uno de { $b } más
checked-or = { $a } o { $b }
checked-write-from-1-to-characters = escribe de 1 a { $a } caracteres en una línea
checked-an-empty-text = un texto vacío
checked-with-a-line-break-or = con un salto de línea u otro carácter de control
checked-not-one-of-the-words = { $a }, que no es una de las palabras para ello
checked-give-gym-toml-lifters-toml = da gym.toml, lifters.toml, programme.toml, kiosk.toml, meet.toml o un plan que acabe en .csv, .xlsx u .ods
checked-a-file-of-a-kind = un fichero de un tipo que no se comprueba
checked-without-a-whole-gym-beside = { $a } sin un gimnasio completo al lado, así que los nombres no se comprobaron
checked-check-it-together-with-gym = compruébalo junto con gym.toml y lifters.toml
checked-a-programme = un programa
checked-a-kiosk = un kiosco
checked-a-meet = una competición
checked-a-plan = un plan
checked-lifters = atletas

## Kinds of files.
checked-split-the-plan-or-delete = divide el plan, o borra lo que no es plan
checked-a-binary-spreadsheet-such-as = una hoja de cálculo binaria como XLS
checked-a-pdf = un PDF
checked-a-word-processor-s-text = un texto de procesador
checked-xml-not-a-plan = XML, que no es un plan
checked-zeros-between-the-letters-no = ceros entre las letras: no es texto
checked-text-that-is-neither-utf = texto que no es ni UTF-8 ni Windows-1252
checked-text-whose-letters-break-off = texto cuyas letras se cortan o no lo son

## Spreadsheets.
checked-open-it-in-the-spreadsheet = ábrelo en la hoja de cálculo y guárdalo otra vez como XLSX u ODS
checked-a-broken-zip-archive = un archivo zip roto
checked-an-archive-of-parts-more = un archivo de { $a } partes, más del máximo, { $b }
checked-save-it-without-a-password = guárdalo sin contraseña, como XLSX u ODS
checked-an-archive-with-a-part = un archivo con una parte cerrada o comprimida de modo desconocido
checked-an-archive-of-more-than = un archivo de más de { $a } bytes al descomprimirlo
checked-delete-what-is-not-plan = borra lo que no es plan, o guárdalo como CSV en UTF-8
checked-save-it-as-xlsx-ods = guárdalo como XLSX, ODS o CSV en UTF-8
checked-a-binary-workbook-xlsb = un libro binario, XLSB
checked-a-text-or-slides-not = un texto o diapositivas, no una hoja de cálculo
checked-an-opendocument-file-that-is = un fichero OpenDocument que no es una hoja de cálculo
checked-a-zip-archive-not-a = un archivo zip, no una hoja de cálculo
checked-a-spreadsheet-whose-xml-is = una hoja de cálculo con el XML roto
checked-a-table-that-stands-for = una tabla que equivale a más de { $a } celdas o { $b } bytes
checked-delete-what-stands-far-below = borra lo que está muy abajo o a la derecha del plan
checked-a-broken-spreadsheet = una hoja de cálculo rota ({ $a })
checked-a-workbook-with-more-than = un libro con más de { $a } bytes de texto
checked-delete-what-is-no-plan = borra lo que no es plan
checked-a-workbook-of-sheets-more = un libro de { $a } hojas, más del máximo, { $b }

## Rows and columns.
checked-cells-in-a-row-more = { $a } celdas en una fila, más del máximo, { $b }
checked-delete-what-stands-beyond-the = borra lo que está más allá del plan
checked-close-it-at-the-end = ciérrala al final de la celda, o escríbela dos veces dentro
checked-a-quote-that-is-never = una comilla que no se cierra
checked-put-the-whole-cell-within = pon la celda entera entre comillas, con cada comilla doble
checked-after-a-closing-quote = tras una comilla de cierre
checked-write-a-header-row-and = escribe una fila de cabecera y una fila por cada ejercicio de cada día
checked-a-file-with-nothing-in = un fichero sin nada dentro
checked-show-the-sheet-in-the = muestra la hoja en la hoja de cálculo si es parte del plan
checked-a-formula-without-its-result = una fórmula sin su resultado
checked-open-the-file-in-a = abre el fichero en una hoja de cálculo, guárdalo allí y léelo otra vez

## Rows beside the record.
checked-where-the-record-supports = { $a }: { $b }, cuando el registro respalda { $c }
checked-check-the-load-and-its = revisa la carga y su unidad; en el rack espera la palabra del entrenador
checked-where-nothing-is-recorded-that = { $a }: { $b }, sin nada en el registro que lo respalde
checked-check-it-or-write-a = revísalo, o escribe una mejor marca en lifters.toml
checked-reps-of-work = { $a }: { $b } reps. efectivas
checked-check-it-at-the-rack = revísalo; en el rack espera la palabra del entrenador
checked-light-and-round-in-the = { $a }: { $b }, ligera y redonda solo en la otra unidad, cuando el registro respalda { $c }
checked-check-the-unit = revisa la unidad
checked-and-more-like-it = { $a }, y { $b } más así
checked-a-hidden-sheet-left-out = una hoja oculta, sin contar
checked-write-a-row-for-each = escribe debajo una fila por cada ejercicio de cada día
checked-a-header-and-no-row = una cabecera sin filas debajo
checked-more-rows-than-the-most = más filas que el máximo, { $a }
checked-split-the-plan = divide el plan
checked-sheet-row = hoja { $a }, fila { $b }
checked-row = fila { $a }
checked-for-on-again-after = { $a } para { $b } el { $c } otra vez, tras { $d }
checked-keep-one-of-the-two = quédate con una de las dos filas
checked-begin-with-a-header-row = empieza con una fila de cabecera: { $a }
checked-a-first-row-that-names = una primera fila que no nombra ninguna columna
checked-a-header-without = una cabecera sin { $a }
checked-add-the-column = añade la columna { $a }
checked-a-column-that-a-plan = una columna que un plan no tiene
checked-the-column-again-after-column = la columna { $a } otra vez, tras la columna { $b }
checked-keep-one-of-them = quédate con una
checked-write-or-leave-the-column = escribe { $a }, o quita la columna
checked-of-a-best-in-the = de una mejor marca en { $a } que { $b } no tiene registrada
checked-of-a-training-max-in = de un máximo de entrenamiento en { $a } que { $b } no tiene el { $c }
checked-write-a-mass-or-the = escribe un peso, o el máximo de entrenamiento en lifters.toml
checked-a-track-s-name-of = un nombre de pista de más de { $a } letras; ä, é y similares cuentan doble
checked-write-a-shorter-one-such = escribe uno más corto, por ejemplo "heavy"
checked-write-a-mass-or-record = escribe un peso, o registra la mejor marca en lifters.toml
checked-less-than-the-lightest-bar = menos que la barra más ligera, { $a }
checked-write-the-load-with-the = escribe la carga con la barra incluida
checked-an-empty-cell = una celda vacía
checked-write-with-its-quotes-or = escribe { $a } con sus comillas, o con punto
checked-a-comma-within-a-cell = una coma dentro de una celda sin comillas
checked-put-each-cell-that-holds = pon entre comillas cada celda que lleva el separador, o borra esta
checked-give-the-column-a-header = da una cabecera a la columna, o borra esta celda
checked-under-no-header = sin cabecera encima

## Dates and times.
checked-write-year-month-day-as = escribe año, mes, día como "2026-12-01"
checked-not-a-date = no es una fecha
checked-a-date-with-a-year = una fecha con un año de dos cifras
checked-format-the-cells-as-dates = da a las celdas formato de fecha, por ejemplo "2026-12-01", y guarda otra vez
checked-a-spreadsheet-s-number-of = el número que una hoja de cálculo da a un día
checked-a-day-that-is-not = un día que no está en el calendario
checked-a-year-before-2000-or = un año anterior a 2000 o posterior a 2099
checked-write-the-year-first-or = escribe primero el año: { $a } o { $b }
checked-a-date-that-can-be = una fecha que se puede leer de dos modos
checked-write-seconds-as-180-s = escribe los segundos como "180 s", o los minutos como "3 min", en una celda de texto
checked-not-a-time = no es un tiempo
checked-a-time-that-can-be = un tiempo que se puede leer como minutos o como segundos
checked-a-time-that-is-no = un tiempo que no es un descanso de 15 s a 30 min
