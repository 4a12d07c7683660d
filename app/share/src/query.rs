//! The parts of a query by which a download is narrowed: since, from, to, lifter, lift.
//!
//! Refuses: a part that stands there twice or is no text; days that the calendar does not have.
use crate::form::{Form, fields, optional};
use crate::problem::Problem;
use crate::words as w;
use axum::http::StatusCode;
use chrono::NaiveDate;
use journal::SetsOf;

/// The parts of a query.
#[derive(Debug, Default)]
pub(crate) struct Query(Form);

impl Query {
    pub(crate) fn read(query: Option<&str>) -> Result<Self, Problem> {
        let broken = Problem::new(StatusCode::BAD_REQUEST, w::QUERY_TWICE);
        let parts = fields(query.unwrap_or_default()).ok_or(broken)?;
        Ok(Self(parts))
    }

    /// A part's text; `None` where it is not there, or empty.
    pub(crate) fn text(&self, name: &str) -> Result<Option<String>, Problem> {
        let twice = Problem::new(StatusCode::BAD_REQUEST, w::QUERY_TWICE);
        let text = optional(&self.0, name).map_err(|_| twice)?;
        Ok(Some(text).filter(|text| !text.is_empty()))
    }

    /// A part's day.
    pub(crate) fn day(&self, name: &str) -> Result<Option<NaiveDate>, Problem> {
        let Some(text) = self.text(name)? else {
            return Ok(None);
        };
        let is_day = text.len() == 10 && text.bytes().all(|b| b.is_ascii_digit() || b == b'-');
        let day = text.parse().ok().filter(|_| is_day);
        let none = Problem::new(StatusCode::BAD_REQUEST, w::QUERY_DAY);
        day.map(Some).ok_or(none)
    }

    /// The sets that are asked for.
    pub(crate) fn sets(&self) -> Result<SetsOf, Problem> {
        let since = self.day("since")?.or(self.day("from")?);
        Ok(SetsOf {
            since: since.map(|day| day.to_string()),
            upto: self.day("to")?.map(|day| day.to_string()),
            lifter: self.text("lifter")?,
            lift: self.text("lift")?,
        })
    }
}
