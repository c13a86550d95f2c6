package org.tugtest.report.sheets;

/** A part of a sheet: one below the other. */
public sealed interface Block permits Table, Drawing, Words {}
