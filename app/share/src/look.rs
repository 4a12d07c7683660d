//! What of a lifter's page is asked for: which lift, which days, beside whom.
use crate::problem::Problem;
use crate::query::Query;
use chrono::NaiveDate;

/// Nothing said is all lifts of the latest half year, beside nobody.
#[derive(Debug, Clone, Default)]
pub(crate) struct Look {
    pub(crate) lift: Option<String>,
    pub(crate) from: Option<NaiveDate>,
    pub(crate) to: Option<NaiveDate>,
    pub(crate) beside: Option<String>,
}

impl Look {
    pub(crate) fn read(query: Option<&str>) -> Result<Self, Problem> {
        let query = Query::read(query)?;
        Ok(Self {
            lift: query.text("lift")?,
            from: query.day("from")?,
            to: query.day("to")?,
            beside: query.text("with")?,
        })
    }
}
