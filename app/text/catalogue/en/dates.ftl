## Days of the week.
monday = Monday
tuesday = Tuesday
wednesday = Wednesday
thursday = Thursday
friday = Friday
saturday = Saturday
sunday = Sunday
monday-short = Mon
tuesday-short = Tue
wednesday-short = Wed
thursday-short = Thu
friday-short = Fri
saturday-short = Sat
sunday-short = Sun

## Months.
january = January
february = February
march = March
april = April
may = May
june = June
july = July
august = August
september = September
october = October
november = November
december = December
january-short = Jan
february-short = Feb
march-short = Mar
april-short = Apr
may-short = May
june-short = Jun
july-short = Jul
august-short = Aug
september-short = Sep
october-short = Oct
november-short = Nov
december-short = Dec

## Dates.
date = { $day } { $n } { $month }
short-date = { $n } { $month }
short-day = { $day } { $date } { $year }
day-of-year = { $n } { $month }
week-day = { $day } { $n }
