## What the hands have to do.
each-side = cada lado
take-off-line = quita { $plates }
put-on-line = pon { $plates }
then = , luego{" "}
look-first = mira primero la barra
strip-for-pins = descarga a { $load }, luego pasadores al agujero { $hole }
strip-for-hooks = descarga a { $load }, luego ganchos al agujero { $hole }
strip-for-the-hooks = descarga a { $load }, luego a los ganchos
strip-for-floor = descarga a { $load }, luego al suelo
each-side-holds = cada lado debe llevar { $plates }
must-hold = debe llevar { $plates }
no-plates = sin discos
left-right = izq. { $left }, der. { $right }
left-right-lines =
    izquierda { $left }
    derecha { $right }
weighs = { $plate }, pesa { $mass }
plates-elsewhere = { $plates } está en: { $bar }; tómalo de ahí
loaded = cargada
bar-holds = la barra lleva...

## What the bar holds, said by hand.
holds-question = { $bar }: ¿qué lleva ahora?
holds-empty = vacía
holds-wanted = como debe estar
holds-before = como antes
holds-plates = o disco a disco, cada lado, desde dentro
holds-none = aún sin discos
holds-save = la barra lleva esto
holds-total = { $load } con la barra
take-last = quitar el último
the-word = lo que lleva la barra

## Whose turn it is.
turn-pad = luego, omitir...
turn-question = { $lifter }: ¿y ahora?
later = más tarde
later-more = después del siguiente
skip-set = omitir esta serie
skip-set-more = { $set }
longer = necesito más tiempo
longer-more = un minuto más
leave = me voy
leave-more = el ejercicio queda abierto
mine = ahora yo
mine-more = antes que los demás
i-am-back = he vuelto
back-more = contad otra vez conmigo
away = fuera
also-up = { $bar }, { $rack }: le toca a { $lifter }
passed-over = no vino a las { $clock }
passed-over-once = no vino
place-next = luego
rests = pausa { $time }
raise = sube la barra { $mm } mm
not-raised = nada bajo los discos
waiting-load = carga la barra cuando te toque
x-longer = { $n } s no vale; pide de 1 a { $most } s
x-nothing-said = nadie dijo qué lleva esa barra; di qué lleva
