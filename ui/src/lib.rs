//! ui
#[allow(
    clippy::all,
    missing_debug_implementations,
    unreachable_pub,
    reason = "generated"
)]
mod generated {
    slint::include_modules!();
}
pub use generated::KioskWindow;
