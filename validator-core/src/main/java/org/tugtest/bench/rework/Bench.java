package org.tugtest.bench.rework;

import java.util.List;
import org.tugtest.facts.Facts;

/** Everything that a sheet is written from. */
record Bench(
    Facts now,
    Facts target,
    Bodies bodies,
    List<Piece> pieces,
    Sitting sitsNow,
    Sitting wanted,
    Jobs jobs,
    Reach reach) {}
