//! Plans as spreadsheets write them: LibreOffice's own files, blank plans, and bad ones of every
//! kind with every word that is told about them.
mod bad;
mod bent;
mod build;
mod formula;
mod good;
