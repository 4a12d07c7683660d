checked-as-said = { $a }

## A stick.
checked-more-than-plans-in-one = más de { $a } planes en una carpeta: el resto no se miró
checked-more-than-plans-the-rest = más de { $a } planes: el resto no se leyó; ponlos en otra memoria
checked-place-and-what = { $a }: { $b }
checked-for-on-which-has-too = { $a } para { $b } el { $c }, que también está en { $d }
checked-with-it-the-stick-has = con él la memoria pasa del máximo de filas, { $a }
checked-put-it-on-another-stick = ponlo en otra memoria, o toma antes los otros planes
checked-keep-one-of-the-two-plans = quédate con uno de los dos planes de la memoria
checked-a-link-links-are-not = un enlace; los enlaces no se siguen
checked-cannot-be-opened = no se puede abrir ({ $a })
checked-cannot-be-read = no se puede leer ({ $a })
checked-no-file-but-a-folder = no es un fichero sino una carpeta, un dispositivo o una tubería; no se abrió
checked-broke-off-while-it-was = se cortó mientras se leía ({ $a })
checked-larger-than-the-most-bytes = mayor que el máximo, { $a } bytes
checked-the-stick-was-pulled-while = la memoria se sacó mientras se escribía en ella; ponla y escribe otra vez

## The desk and its files.
checked-is-no-file-of-at = { $a } no es un fichero de { $b } bytes como mucho; guárdalo de nuevo
checked-this-kiosk-keeps-no-files = este kiosco no guarda ficheros; arráncalo con una carpeta de datos
checked-another-kiosk-runs-on-close = otro kiosco está en marcha en { $a }; cierra aquel, o elige otra carpeta de datos
checked-the-journal-is-busy-try = el diario está ocupado; prueba otra vez
checked-the-record-in-record-sqlite = el registro de record.sqlite estaba dañado y se rehace desde el diario; no se pierde nada, pero mira otra vez lo que leíste de él
checked-changed-since-the-kiosk-ran = cambiado desde la última vez que corrió el kiosco, y en vigor desde ahora: { $a }; si no fue nadie, deja el fichero como estaba
checked-no-toml = no es TOML: { $a }
checked-there-is-no-called-look = no hay ningún { $a } llamado "{ $b }"; mira el fichero
checked-there-is-no-number-in = en esa lista no hay número { $a }; míralo otra vez
checked-there-is-no-list-there = ahí no hay ninguna lista "{ $a }"; mira el fichero
checked-there-is-no-such-list = en el fichero no hay tal lista; escríbela allí
checked-that-way-leads-nowhere-in = ese camino no lleva a nada en el fichero; míralo
checked-a-way-needs-at-least = un camino necesita al menos un paso
checked-a-list-has-one-key = una lista tiene una clave; mira el fichero
checked-that-is-not-in-the = eso ya no está en el fichero; míralo
checked-the-file-is-written-in = el fichero está escrito de un modo que esto no puede cambiar; cámbialo allí

## The disk and the journal.
checked-place-what-and-remedy = { $a }: { $b }; { $c }
checked-free-some-space-and-try = libera espacio y prueba otra vez
checked-check-that-it-exists-and = comprueba que existe y que puedes usarlo
checked-no-home-folder-is-set = no hay carpeta personal; elige una carpeta de datos con --data DIR
checked-the-picture-could-not-be = no se pudo dibujar la imagen: { $a }
checked-there-is-no-journal-at = no hay ningún diario en { $a }; elige la carpeta de datos que lo tiene
checked-cannot-be-opened-its-folder = { $a } no se puede abrir: su carpeta falta o está cerrada a este usuario; créala o ábrela, o elige otra carpeta de datos
checked-cannot-be-written-give-this = no se puede escribir en { $a }; da a este usuario permiso de escritura en el fichero y su carpeta, o elige otra carpeta de datos
checked-cannot-grow-the-disk-is = { $a } no puede crecer: el disco está lleno; libera espacio y prueba otra vez
checked-is-kept-busy-by-another = otro programa tiene ocupado { $a } desde hace más de { $b } ms; cierra ese programa y prueba otra vez
checked-is-not-a-database-move = { $a } no es una base de datos; apártalo, y repón una copia del diario
checked-is-a-database-of-another = { $a } es una base de datos de otro programa; apártala, o elige otra carpeta de datos
checked-is-a-database-of-another-program = { $a } es una base de datos de otro programa; apártala
checked-is-empty-no-journal-was = { $a } está vacío: no se empezó ningún diario en él, o se perdió todo; repón una copia si la había
checked-was-written-by-a-newer = { $a } lo escribió una versión más nueva de este programa (formato { $b }, esta conoce hasta { $c }); instala la versión nueva
checked-cannot-be-kept-safe-from = { $a } no se puede proteger de un corte de luz: { $b } es { $c }, no { $d }; pon la carpeta de datos en un disco local
checked-was-moved-or-deleted-while = { $a } se movió o se borró mientras se usaba; reponlo y arranca el programa otra vez
checked-cannot-be-trusted-from-event = no se puede confiar en { $a } desde el evento { $b }: { $c }; { $d }
checked-ends-at-event-before-event = { $a } acaba en el evento { $b }, antes del evento { $c }; se perdieron eventos: repón una copia posterior
checked-ends-at-event-but-knows = { $a } acaba en el evento { $b }, pero { $c } lo conoce hasta el evento { $d }; no se cambió nada: ejecuta "pinladder journal mend", o repón una copia
checked-the-part-failed-and-was = la parte "{ $a }" falló y se empezó de nuevo (veces desde el arranque: { $b }); si sigue, arranca el kiosco otra vez y envía su registro de sucesos a quien lo cuida
checked-is-another-journal-than-knows = { $a } es otro diario que el que conoce { $b }: el evento { $c } no es el que estaba; no se cambió nada: ejecuta "pinladder journal mend", o repón una copia
checked-is-damaged-at-byte-in = { $a } está dañado en el byte { $b }, delante de eventos que estaban a salvo; no se cambió nada: ejecuta "pinladder journal mend", o repón una copia
checked-cannot-be-written-check-the = no se puede escribir en { $a } ({ $b }); revisa el disco
checked-cannot-be-mended-and-tell = { $a } no se puede reparar: { $b } y { $c } cuentan eventos distintos; elige uno y reponlo
checked-has-lost-its-guard-so = { $a } perdió su protección { $b }, así que alguien lo tocó a mano; repón una copia
checked-is-damaged-put-back-a = { $a } está dañado ({ $b }); repón una copia
checked-cannot-be-used-check-the = { $a } no se puede usar ({ $b }); revisa el disco y prueba otra vez
checked-events-to-are-missing-before = antes faltan los eventos { $a } a { $b }
checked-its-content-or-its-place = su contenido o su lugar se alteró: el hash no coincide
checked-its-cannot-be-read = su { $a } no se puede leer
checked-it-was-written-by-a = lo escribió una versión más nueva de este programa (formato { $a }, esta lee hasta { $b })
checked-move-the-file-away-and = aparta el fichero, y repón una copia
checked-install-the-newer-version = instala la versión nueva
checked-the-program-that-wrote-it = la culpa es del programa que lo escribió: instala la versión que lo hizo
checked-was-made-by-another-version = { $a } lo hizo otra versión de este programa; arranca el kiosco, y se rehace
checked-cannot-be-written-check-the-folder = no se puede escribir en { $a } ({ $b }); revisa los permisos de la carpeta
checked-cannot-be-used-check-that = { $a } no se puede usar ({ $b }); comprueba que el sitio está, abierto a este usuario y sin llenar
checked-is-the-data-folder-itself = { $a } es la propia carpeta de datos; elige un sitio en otro disco
checked-is-in-use-close-the = { $a } está en uso; cierra antes el kiosco, o restaura en su mesa
checked-a-code-that-is-soon = un código fácil de adivinar: { $a }; elige otro, por ejemplo tres palabras sencillas
checked-fewer-than-four-different-signs = menos de cuatro signos distintos
checked-the-same-piece-over-and = el mismo trozo una y otra vez
checked-a-row-of-letters-digits = una fila de letras, cifras o teclas
checked-a-date = una fecha
checked-a-word-that-everybody-tries = una palabra que prueba todo el mundo
checked-the-code-cannot-be-kept = el código no se puede guardar con seguridad ({ $a }); prueba otra vez
checked-cannot-be-used-check-the-data = { $a } no se puede usar ({ $b }); revisa los permisos de la carpeta de datos
checked-a-code-of-characters-choose = un código de { $a } caracteres; elige de { $b } a { $c }
checked-cannot-be-used = { $a } no se puede usar ({ $b }); { $c }
checked-give-this-user-write-permission = da a este usuario permiso de escritura en el fichero y su carpeta
checked-close-the-program-that-keeps = cierra el programa que lo tiene ocupado y prueba otra vez
checked-delete-it-and-it-is = bórralo, y se rehace desde el diario

## Devices.
checked-buzzer = zumbador
checked-lamp = lámpara
checked-lights = luces
checked-backlight = iluminación
checked-switches = interruptores
checked-signs = señales
checked-check-hardware-toml-and-the = { $a }; revisa hardware.toml y el cableado, y arranca otra vez
checked-cannot-be-read-check-its = no se puede leer ({ $a }); revisa su cableado
checked-changed-more-than-times-within = cambió más de { $a } veces en un segundo y ya no se le escucha; busca un cable suelto
checked-has-been-down-for-over = lleva pulsado más de { $a } s; mira qué tiene encima
checked-does-not-do-what-it = no hace lo que se le manda ({ $a }); revisa su cableado
checked-the-system-gives-no-thread = el sistema no da ningún hilo ({ $a })

## What the system reports.
checked-no-such-file-or-directory = no existe ese fichero o carpeta (error 2)
checked-input-output-error-os-error = error de entrada o salida (error 5)
checked-permission-denied-os-error-13 = permiso denegado (error 13)
checked-file-exists-os-error-17 = el fichero ya existe (error 17)
checked-not-a-directory-os-error = no es una carpeta (error 20)
checked-is-a-directory-os-error = es una carpeta (error 21)
checked-no-space-left-on-device = no queda espacio en el disco (error 28)
checked-read-only-file-system-os = sistema de ficheros de solo lectura (error 30)

## Plans in the folder.
checked-is-not-there-any-more = { $a } ya no está; elige otro
checked-the-hub-does-not-answer = el hub en { $a } no responde; este rack trabaja solo y se pone al día después
checked-the-hub-knows-another-box = el hub conoce otro equipo como { $a }, o un registro posterior de este; no se envía nada, mira pinladder hub look
checked-the-hub-lets-not-in = el hub no deja entrar a este kiosco; mira pinladder hub look
checked-the-hub-failed = el hub ha fallado; este rack trabaja solo, mira pinladder hub look
checked-the-hub-of-another-rack = lo que el hub dice de { $a } no sigue a lo leído antes; mira pinladder hub look
