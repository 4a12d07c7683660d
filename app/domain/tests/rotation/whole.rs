//! Whole evenings: four lifters of six turns over seven denominations.
