package org.tugtest.goal;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What {@code as-built} was asked for, as it was written; the goal says what each means. */
record AsBuiltOrder(
    @Nullable String plan,
    @Nullable String harness,
    @Nullable List<String> records,
    @Nullable List<String> readings,
    boolean accept,
    String failOn,
    @Nullable List<String> formats,
    @Nullable String today) {}
