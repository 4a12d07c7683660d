checked-block = bloque
checked-a-block = un bloque
checked-a-day-of-a-block = un día de un bloque
checked-a-lift-of-a-block = un ejercicio de un bloque
checked-no-block = ningún bloque
checked-add-programme-block-tables-or = añade tablas [[programme.block]], o déjalo fuera
checked-add-programme-block-day-tables = añade tablas [[programme.block.day]]
checked-rounds-without-block = "rounds" sin "block"
checked-beside-block = { $a } junto a "block"
checked-put-the-days-into-the = pon los días en los bloques
checked-leave-it-out-days-of = déjalo fuera: lo dicen los días de la semana
checked-leave-it-out-starts-of = déjalo fuera: lo dice "starts" del primer bloque
checked-the-first-block-without-starts = el primer bloque sin "starts"
checked-write-the-monday-of-its = escribe el lunes de su primera semana, como starts = "2026-01-05"
checked-which-is-no-monday = { $a }, que no es lunes
checked-write-the-monday-of-the = escribe el lunes de la primera semana, por ejemplo { $a }
checked-while-still-goes-on-to = { $a }, cuando { $b } dura aún hasta { $c }
checked-write-or-later-or-leave = escribe { $a } o más tarde, o déjalo fuera
checked-light-every-without-light = "light_every" sin "light"
checked-write-how-light-as-light = escribe cómo de ligera, como light = "60 %", o déjalo fuera
checked-a-light-week-in-a = una semana ligera en un bloque de una semana
checked-leave-it-out-or-give = déjalo fuera, o da más semanas al bloque
checked-the-again-on-the-same = { $a } otra vez el mismo día
checked-write-its-sets-as-one = escribe sus series como un solo esquema, o da a uno una pista propia
checked-a-day-without-a-lift = un día sin ejercicio
checked-for-a-second-day-of = { $a } para un segundo día del bloque
checked-a-block-without-a-day = un bloque sin día
checked-weeks-in-all-more-than = { $a } semanas en total, más del máximo, { $b }
checked-starts-of-a-later-block = "starts" de un bloque posterior junto a "rounds"
checked-scheme-beside-weeks = "scheme" junto a "weeks"
checked-a-lift-without-scheme-and = un ejercicio sin "scheme" y sin "weeks"
checked-write-scheme-3x5-for-all = escribe scheme = "3x5" para todas las semanas, o weeks = [...] con uno por semana
checked-a-lift-that-no-week = un ejercicio que no tiene ninguna semana
checked-schemes-for-weeks-in-a =
    { $a ->
        [one] esquemas para 1 semana en un bloque de { $b }
       *[other] esquemas para { $a } semanas en un bloque de { $b }
    }
checked-write-one-for-each-week = escribe uno por semana, "-" para una semana sin el ejercicio, o "scheme" para todas
checked-a-scheme-for-each-week = un esquema por semana junto a "light" del bloque
checked-write-the-light-weeks-own = escribe los esquemas de las semanas ligeras y quita "light", o un solo "scheme"
checked-a-share-of-a-training = un porcentaje de un máximo de entrenamiento en { $a } que { $b } no tiene el { $c }
