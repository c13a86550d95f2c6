package org.tugtest.compare.entry;

import org.jspecify.annotations.Nullable;

/** What a root says of the harness as a whole. */
public record Head(@Nullable String title, @Nullable String revision, boolean sketch) {}
