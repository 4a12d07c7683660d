//! kiosk
