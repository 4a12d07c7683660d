"""Problems and constraint models for cp_sat.py. Refuses: to import our own planners."""
