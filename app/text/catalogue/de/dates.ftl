## Days of the week.
monday = Montag
tuesday = Dienstag
wednesday = Mittwoch
thursday = Donnerstag
friday = Freitag
saturday = Samstag
sunday = Sonntag
monday-short = Mo
tuesday-short = Di
wednesday-short = Mi
thursday-short = Do
friday-short = Fr
saturday-short = Sa
sunday-short = So

## Months.
january = Januar
february = Februar
march = März
april = April
may = Mai
june = Juni
july = Juli
august = August
september = September
october = Oktober
november = November
december = Dezember
january-short = Jan
february-short = Feb
march-short = Mär
april-short = Apr
may-short = Mai
june-short = Jun
july-short = Jul
august-short = Aug
september-short = Sep
october-short = Okt
november-short = Nov
december-short = Dez

## Dates.
date = { $day }, { $n }. { $month }
short-date = { $n }. { $month }
short-day = { $day }, { $date } { $year }
day-of-year = { $n }. { $month }
week-day = { $day } { $n }.
