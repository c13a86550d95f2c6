package org.tugtest.goal;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What {@code check} was asked for, as it was written; the goal says what each means. */
record CheckOrder(
    String failOn,
    @Nullable List<String> formats,
    @Nullable String today,
    @Nullable List<String> rules,
    @Nullable List<String> skipRules,
    boolean failOnNoFiles,
    BaseOrder against,
    String coverageMin,
    String annotations) {}
