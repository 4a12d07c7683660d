//! The JSON Schema beside the crate is the one of the types. `PINLADDER_RENEW=1` renews it.
use super::SetJson;
use schemars::JsonSchema;
use schemars::generate::SchemaSettings;
use std::fs;
use std::path::Path;

/// What stands of a gym's journal: every set, in the order of entry.
#[derive(JsonSchema)]
#[schemars(deny_unknown_fields, title = "Pinladder record")]
#[expect(dead_code, reason = "its fields are read by the schema's derive alone")]
struct RecordJson<'a> {
    /// Version of this form.
    #[schemars(range(min = 1, max = 1))]
    version: u32,
    /// Number of the last event of the journal that is in it, 0 for none.
    upto: u64,
    /// Every set that stands.
    sets: Vec<SetJson<'a>>,
}

#[test]
fn the_schema_is_up_to_date() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("schema/record.schema.json");
    let schema = SchemaSettings::draft2020_12()
        .for_serialize()
        .into_generator()
        .into_root_schema_for::<RecordJson<'_>>();
    let schema = serde_json::to_string_pretty(&schema).expect("writes") + "\n";
    if std::env::var_os("PINLADDER_RENEW").is_some() {
        fs::write(&path, &schema).expect("writes");
    }
    assert!(
        fs::read_to_string(&path).is_ok_and(|found| found == schema),
        "schema/record.schema.json is stale; PINLADDER_RENEW=1 cargo test -p share renews it"
    );
}
