//! JSON fields to quantities, with the path of what is wrong.
//!
//! Refuses: unknown and double fields, wrong types, quantities that cannot be kept exactly.
use super::{exact, nearest};
use chrono::{Datelike as _, NaiveDate};
use domain::decimal::DecimalFault;
use domain::mass::QuantityFault;
use domain::solve::Refusal;
use domain::{Length, LengthUnit, Mass, MassUnit, Stress};
use serde::Serialize;
use serde::de::{Deserialize, Deserializer, Error as _, MapAccess, Visitor};
use serde_json::value::RawValue;
use std::fmt;

/// What is wrong, and where; written as it stands.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub(super) struct Fault {
    refused: String,
    field: String,
}

impl Fault {
    pub(super) fn new(field: impl Into<String>, text: impl fmt::Display) -> Self {
        let field = field.into();
        Self {
            refused: format!("{field}: {text}"),
            field,
        }
    }
}

impl From<Refusal> for Fault {
    fn from(refusal: Refusal) -> Self {
        Self::new(refusal.field, refusal.text)
    }
}

/// A value that is not yet read, and its path.
#[derive(Debug, Clone)]
pub(super) struct Value<'a> {
    pub path: String,
    raw: &'a str,
}

/// The fields of a JSON object.
#[derive(Debug)]
pub(super) struct Object<'a> {
    path: String,
    fields: Vec<(String, &'a RawValue)>,
}

/// Fields in the order of the text; of two with one name the name.
struct Fields<'a>(Result<Vec<(String, &'a RawValue)>, String>);

impl<'de> Deserialize<'de> for Fields<'de> {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        struct Each;
        impl<'de> Visitor<'de> for Each {
            type Value = Fields<'de>;

            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a JSON object")
            }

            fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Self::Value, A::Error> {
                let mut fields: Vec<(String, &RawValue)> = Vec::new();
                let mut twice = None;
                while let Some((name, value)) = map.next_entry::<String, &RawValue>()? {
                    if fields.len() > FIELDS_LIMIT {
                        return Err(A::Error::custom("too many fields"));
                    }
                    if fields.iter().any(|(known, _)| *known == name) {
                        twice = Some(name.clone());
                    }
                    fields.push((name, value));
                }
                Ok(Fields(twice.map_or(Ok(fields), Err)))
            }
        }
        from.deserialize_map(Each)
    }
}

/// No object here has so many; beyond, looking for double names would take long.
const FIELDS_LIMIT: usize = 100;

impl<'a> Object<'a> {
    /// The whole input.
    pub(super) fn root(input: &'a str) -> Result<Self, Fault> {
        Self::read(String::new(), input)
    }

    fn read(path: String, raw: &'a str) -> Result<Self, Fault> {
        let named = |path: String| {
            if path.is_empty() {
                "input".into()
            } else {
                path
            }
        };
        match serde_json::from_str(raw) {
            Ok(Fields(Ok(fields))) => Ok(Self { path, fields }),
            Ok(Fields(Err(twice))) => {
                let whole = Self {
                    path,
                    fields: Vec::new(),
                };
                Err(Fault::new(
                    whole.path_of(&twice),
                    "is given twice: leave one out",
                ))
            }
            Err(error) => Err(Fault::new(
                named(path),
                format!("is not a JSON object as described: {error}"),
            )),
        }
    }

    fn path_of(&self, name: &str) -> String {
        let dot = if self.path.is_empty() { "" } else { "." };
        format!("{}{dot}{}", self.path, shortened(name))
    }

    /// Whether all fields are among `known`.
    pub(super) fn only(&self, known: &[&str]) -> Result<(), Fault> {
        let unknown = |(name, _): &&(String, &RawValue)| !known.contains(&name.as_str());
        match self.fields.iter().find(unknown) {
            None => Ok(()),
            Some((name, _)) => {
                let hint = nearest::hint(name, known);
                Err(Fault::new(
                    self.path_of(name),
                    format!("is not known here: {hint}"),
                ))
            }
        }
    }

    /// A field that may be left out or null.
    pub(super) fn get(&self, name: &str) -> Option<Value<'a>> {
        let (_, raw) = self.fields.iter().find(|(known, _)| known == name)?;
        let value = Value {
            path: self.path_of(name),
            raw: raw.get(),
        };
        (value.raw != "null").then_some(value)
    }

    /// A field that must be there.
    pub(super) fn need(&self, name: &str) -> Result<Value<'a>, Fault> {
        let missing = || Fault::new(self.path_of(name), "is missing");
        self.get(name).ok_or_else(missing)
    }
}

impl<'a> Value<'a> {
    fn wrong(&self, wanted: &str) -> Fault {
        Fault::new(
            &self.path,
            format!("is {}: write {wanted}", shortened(self.raw)),
        )
    }

    fn parse<T: Deserialize<'a>>(&self, wanted: &str) -> Result<T, Fault> {
        serde_json::from_str(self.raw).map_err(|_| self.wrong(wanted))
    }

    /// A string.
    pub(super) fn text(&self, wanted: &str) -> Result<String, Fault> {
        self.parse(wanted)
    }

    /// True or false.
    pub(super) fn flag(&self) -> Result<bool, Fault> {
        self.parse("true or false")
    }

    /// A whole number of things.
    pub(super) fn count(&self) -> Result<u16, Fault> {
        self.parse("a whole number from 0 to 65535")
    }

    /// A whole number within limits.
    pub(super) fn whole(&self, least: u16, most: u16, of: &str) -> Result<u16, Fault> {
        let wanted = format!("a whole number of {of} from {least} to {most}");
        let number: u16 = self.parse(&wanted)?;
        if (least..=most).contains(&number) {
            return Ok(number);
        }
        Err(self.wrong(&wanted))
    }

    /// A day.
    pub(super) fn date(&self) -> Result<NaiveDate, Fault> {
        const WANTED: &str = "a day such as \"2026-12-01\", from 2000 to 2099";
        let text = self.text(WANTED)?;
        let date = NaiveDate::parse_from_str(&text, "%Y-%m-%d").ok();
        date.filter(|date| text.len() == 10 && (2000..=2099).contains(&date.year()))
            .ok_or_else(|| self.wrong(WANTED))
    }

    /// Whether it is null.
    pub(super) fn is_null(&self) -> bool {
        self.raw == "null"
    }

    /// A list; its members' paths end in `[0]` and so on.
    pub(super) fn list(&self) -> Result<Vec<Self>, Fault> {
        let members: Vec<&RawValue> = self.parse("a list")?;
        let value = |(at, raw): (usize, &'a RawValue)| Self {
            path: format!("{}[{at}]", self.path),
            raw: raw.get(),
        };
        Ok(members.into_iter().enumerate().map(value).collect())
    }

    /// An object.
    pub(super) fn object(&self) -> Result<Object<'a>, Fault> {
        Object::read(self.path.clone(), self.raw)
    }

    /// A mass with the unit that it was written in.
    pub(super) fn mass(&self) -> Result<(Mass, MassUnit), Fault> {
        const WANTED: &str = "a mass with its unit, such as \"45 lb\" or \"20 kg\"";
        let text = self.text(WANTED)?;
        let mass = Mass::read(&text).map_err(|fault| self.misread(&text, fault, WANTED))?;
        let pounds = text
            .trim()
            .to_lowercase()
            .trim_end_matches('s')
            .ends_with("lb");
        Ok((mass, if pounds { MassUnit::Lb } else { MassUnit::Kg }))
    }

    /// A length with the unit that it was written in.
    pub(super) fn length(&self) -> Result<(Length, LengthUnit), Fault> {
        const WANTED: &str = "a length with its unit, such as \"27 mm\" or \"1 1/4 in\"";
        let text = self.text(WANTED)?;
        let length = Length::read(&text).map_err(|fault| self.misread(&text, fault, WANTED))?;
        let unit = text.trim().trim_start_matches(|c: char| !c.is_alphabetic());
        let unit = match unit {
            "mm" => LengthUnit::Mm,
            "cm" => LengthUnit::Cm,
            "m" => LengthUnit::M,
            _ => LengthUnit::In,
        };
        Ok((length, unit))
    }

    fn misread(&self, text: &str, fault: QuantityFault, wanted: &str) -> Fault {
        let text = shortened(&format!("{text:?}"));
        Fault::new(&self.path, format!("{text} {fault}: write {wanted}"))
    }

    /// Seconds as nanoseconds, at most `limit_ns`.
    pub(super) fn seconds(&self, limit_ns: u64) -> Result<u64, Fault> {
        let limit = i64::try_from(limit_ns).unwrap_or(i64::MAX);
        let read = |number: &str| exact::nanoseconds(number, limit);
        let most = format!("{} s", exact::decimal(limit.into(), 9));
        let ns = self.number(read, "a number of seconds such as 12.5", "nine", &most)?;
        Ok(u64::try_from(ns).unwrap_or_default())
    }

    /// A stress or stiffness as a number of a unit of `scale` pascals, a power of ten.
    pub(super) fn stress(&self, scale: i64, unit: &str) -> Result<Stress, Fault> {
        let read = |number: &str| exact::count(number, scale, Stress::LIMIT.pa());
        let (finest, example) = if scale == 1_000_000 {
            ("six", "950")
        } else {
            ("nine", "205")
        };
        let wanted = format!("a number of {unit} such as {example}");
        let most = format!("{} {unit}", Stress::LIMIT.pa() / scale);
        self.number(read, &wanted, finest, &most)
            .map(Stress::from_pa)
    }

    /// A number that is not less than nothing, as the whole count that `read` makes of it.
    fn number(
        &self,
        read: impl Fn(&str) -> Result<i64, DecimalFault>,
        wanted: &str,
        decimals: &str,
        most: &str,
    ) -> Result<i64, Fault> {
        let is_number = |c: char| c.is_ascii_digit() || c == '-';
        if !self.raw.starts_with(is_number) {
            return Err(self.wrong(wanted));
        }
        read(self.raw).map_err(|fault| {
            let what = match fault {
                DecimalFault::NotANumber => String::from("is less than nothing"),
                DecimalFault::TooFine => format!("has more than {decimals} decimals"),
                DecimalFault::TooLarge => format!("is more than {most}"),
            };
            Fault::new(&self.path, format!("{} {what}", shortened(self.raw)))
        })
    }
}

/// No more than a line of what was read goes into a message.
pub(super) fn shortened(text: &str) -> String {
    const KEPT: usize = 60;
    let mut short: String = text.chars().take(KEPT).collect();
    if short.len() < text.len() {
        short.push_str("...");
    }
    short
}
