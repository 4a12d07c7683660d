## Days of the week.
monday = lunes
tuesday = martes
wednesday = miércoles
thursday = jueves
friday = viernes
saturday = sábado
sunday = domingo
monday-short = lun
tuesday-short = mar
wednesday-short = mié
thursday-short = jue
friday-short = vie
saturday-short = sáb
sunday-short = dom

## Months.
january = enero
february = febrero
march = marzo
april = abril
may = mayo
june = junio
july = julio
august = agosto
september = septiembre
october = octubre
november = noviembre
december = diciembre
january-short = ene
february-short = feb
march-short = mar
april-short = abr
may-short = may
june-short = jun
july-short = jul
august-short = ago
september-short = sep
october-short = oct
november-short = nov
december-short = dic

## Dates.
date = { $day } { $n } de { $month }
short-date = { $n } { $month }
short-day = { $day } { $date } { $year }
day-of-year = { $n } de { $month }
week-day = { $day } { $n }
