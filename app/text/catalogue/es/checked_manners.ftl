checked-write-four-down-bottom-up = escribe cuatro: bajar, abajo, subir, arriba, como "tempo 3-0-1-0", con X para subir lo más rápido posible
checked-a-tempo-of-figures =
    { $a ->
        [one] un tempo de 1 cifra
       *[other] un tempo de { $a } cifras
    }
checked-a-tempo-with-figures-that = un tempo con cifras que no son de 0 a { $a } segundos
checked-two-things-said-of-the = dos cosas sobre { $a } de las mismas series
checked-two-ways-of-doing-the = dos modos de hacer las mismas series
checked-not-a-pause-within-a = no es una pausa dentro de una rep.
checked-write-whole-seconds-from-1 = escribe segundos enteros de 1 a { $a }, como "pause 2 s"
checked-which-could-be-a-rest = que puede ser un descanso o una pausa en cada rep.
checked-a-mixed-grip-which-is = un agarre mixto, que no se usa en estos tirones
checked-write-double-overhand-hook-grip = escribe "double overhand", "hook grip" o "straps"
checked-a-hole-where-holes-count = un agujero { $a }, cuando los agujeros cuentan desde 1, abajo
checked-write-it-as-hole-6 = escríbelo como "hole 6"
checked-blocks-without-their-height = bloques sin su altura
checked-write-it-as-blocks-100 = escríbelo como "blocks 100 mm" o "blocks 4 in"
checked-a-bar-for-some-of = una barra para algunas de las series de un ejercicio
checked-write-the-sets-on-another = escribe las series con otra barra como un segundo ejercicio del día, con nombre propio en gym.toml
checked-not-understood-as-where-or = no se entiende como dónde o cómo se hacen las series
checked-write-hole-6-blocks-100 = escribe "hole 6", "blocks 100 mm", "tempo 3-0-1-0", "pause 2 s", "belt", "straps", "no belt" o "hook grip"
checked-which-could-be-a-load = que puede ser una carga o un tempo
checked-a-cell-that-says-otherwise = una celda que dice otra cosa que las series de al lado
checked-which-could-be-or = que puede ser { $a } o { $b }
checked-write-the-bar-s-whole = escribe el nombre entero de la barra
checked-a-hole-for-some-set = un agujero para algunos grupos de series del ejercicio y ninguno para otros
checked-write-the-hole-with-each = escribe el agujero en cada grupo de series
checked-blocks-for-some-set-groups = bloques para algunos grupos de series del ejercicio y ninguno para otros
checked-write-the-blocks-with-each = escribe los bloques en cada grupo de series, o "no blocks"
checked-which-the-has-not-it = que { $a } no tiene: empieza en el suelo
checked-write-blocks-100-mm-or = escribe "blocks 100 mm", o quita el agujero
checked-which-the-has-not-it-starts = que { $a } no tiene: empieza en el rack
checked-write-hole-6-or-leave = escribe "hole 6", o quita los bloques
checked-where-the-of-has-holes = cuando { $a } de { $b } tiene { $c } agujeros
checked-write-a-hole-from-1 = escribe un agujero de 1 a { $a }
checked-which-does-not-stand-by = que no está en { $a } de { $b }
checked-write-a-bar-of-that = escribe una barra de ese rack: { $a }
