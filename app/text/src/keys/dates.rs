//! Keys of days, months and dates.
use crate::phrase::{Phrase, keys};

keys! {
    MONDAY "monday";
    TUESDAY "tuesday";
    WEDNESDAY "wednesday";
    THURSDAY "thursday";
    FRIDAY "friday";
    SATURDAY "saturday";
    SUNDAY "sunday";
    MONDAY_SHORT "monday-short";
    TUESDAY_SHORT "tuesday-short";
    WEDNESDAY_SHORT "wednesday-short";
    THURSDAY_SHORT "thursday-short";
    FRIDAY_SHORT "friday-short";
    SATURDAY_SHORT "saturday-short";
    SUNDAY_SHORT "sunday-short";
    JANUARY "january";
    FEBRUARY "february";
    MARCH "march";
    APRIL "april";
    MAY "may";
    JUNE "june";
    JULY "july";
    AUGUST "august";
    SEPTEMBER "september";
    OCTOBER "october";
    NOVEMBER "november";
    DECEMBER "december";
    JANUARY_SHORT "january-short";
    FEBRUARY_SHORT "february-short";
    MARCH_SHORT "march-short";
    APRIL_SHORT "april-short";
    MAY_SHORT "may-short";
    JUNE_SHORT "june-short";
    JULY_SHORT "july-short";
    AUGUST_SHORT "august-short";
    SEPTEMBER_SHORT "september-short";
    OCTOBER_SHORT "october-short";
    NOVEMBER_SHORT "november-short";
    DECEMBER_SHORT "december-short";
    DATE "date" day n month;
    SHORT_DATE "short-date" n month;
    SHORT_DAY "short-day" day date year;
    WEEK_DAY "week-day" day n;
    DAY_OF_YEAR "day-of-year" n month;
}

/// Days of the week, Monday first.
pub const DAYS: [Phrase; 7] = [
    MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY, SATURDAY, SUNDAY,
];
/// The same, short.
pub const SHORT_DAYS: [Phrase; 7] = [
    MONDAY_SHORT,
    TUESDAY_SHORT,
    WEDNESDAY_SHORT,
    THURSDAY_SHORT,
    FRIDAY_SHORT,
    SATURDAY_SHORT,
    SUNDAY_SHORT,
];
/// Months.
pub const MONTHS: [Phrase; 12] = [
    JANUARY, FEBRUARY, MARCH, APRIL, MAY, JUNE, JULY, AUGUST, SEPTEMBER, OCTOBER, NOVEMBER,
    DECEMBER,
];
/// The same, short.
pub const SHORT_MONTHS: [Phrase; 12] = [
    JANUARY_SHORT,
    FEBRUARY_SHORT,
    MARCH_SHORT,
    APRIL_SHORT,
    MAY_SHORT,
    JUNE_SHORT,
    JULY_SHORT,
    AUGUST_SHORT,
    SEPTEMBER_SHORT,
    OCTOBER_SHORT,
    NOVEMBER_SHORT,
    DECEMBER_SHORT,
];
