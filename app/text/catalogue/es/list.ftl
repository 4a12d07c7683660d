list-for-all = lo que toca el { $date }, de todos
list-nobody = aún no se ha hecho nada de lo que algo se siga
list-hurt = con lesión
list-hurt-since = desde el { $date }: { $why }
list-wrong = parece un error
list-wrong-on = plan del { $date }: { $load }, el registro respalda { $supported }
list-untried-on = plan del { $date }: { $load }, y nada en el registro lo respalda
list-many-reps-on = plan del { $date }: { $n } reps. efectivas con { $load }
list-wrong-tap = toca si va en serio
list-over = sobrecarga
list-stuck = atascado
list-anew = empezar de nuevo
list-waits = te espera a ti
list-differs = plan y lo que toca difieren
list-differs-on = plan del { $date }: { $plan }; toca { $due }
list-away = fuera
list-due = toca
list-title = lo que toca, y quién espera
list-hint = quien espera al entrenador va primero; toca para decidir
list-waiting =
    { $n ->
        [one] 1 espera al entrenador
       *[other] { $n } esperan al entrenador
    }
list-none-waits = nadie espera
list-coach-code = la palabra del entrenador
list-health = lesión o enfermedad
list-health-hint = lo que dice cada cual; qué es, lo dice un médico
list-fit = bien
list-fit-again = bien otra vez
list-hurt-now = desde hoy: no toca nada hasta estar bien
list-ill = enfermo
list-ill-today = hoy
list-ill-days =
    { $n ->
        [one] el último día
       *[other] los últimos { $n } días
    }
list-ill-from-to = { $from } a { $to }
list-note-at-desk = apuntado en la mesa
list-note-on-page = apuntado en la página
list-as-due = lo que toca
list-as-before = como la última vez
list-as-planned = la del plan
list-more = { $n } más
