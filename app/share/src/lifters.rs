//! Who there is: everybody of the gym, and everybody of the record.
use crate::documents_json::LifterJson;
use crate::programme::Laid;
use crate::stream::Stop;
use journal::RecordReader;
use std::collections::BTreeMap;

/// By name.
pub(crate) fn everybody(
    record: Option<&RecordReader>,
    laid: &Laid,
) -> Result<Vec<LifterJson>, Stop> {
    let mut all: BTreeMap<String, LifterJson> = BTreeMap::new();
    for (name, unit) in laid.units.iter() {
        all.insert(name.clone(), LifterJson::new(name, Some(*unit)));
    }
    for known in record.map_or(Ok(Vec::new()), RecordReader::lifters)? {
        let one = all
            .entry(known.lifter.clone())
            .or_insert_with(|| LifterJson::new(&known.lifter, None));
        one.sets = known.sets;
        one.last = Some(known.last).filter(|last| !last.is_empty());
    }
    Ok(all.into_values().collect())
}
