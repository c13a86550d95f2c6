package org.tugtest.report.json;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.heat.Ampacity;
import org.tugtest.model.Wire;
import org.tugtest.protect.Exposure;
import org.tugtest.protect.Protection;
import org.tugtest.rule.ReturnFault;

/** What a wire stands and what fuses let through it. */
final class WireProtection {
  private static final double HUNDREDTHS = 100;

  private WireProtection() {}

  /** Cut off to a hundredth of an ampere; null without its size. */
  static @Nullable Double ampacityA(Facts facts, Wire wire) {
    return facts
        .ampacity()
        .of(wire)
        .map(Ampacity::amps)
        .map(amps -> Math.floor(amps * HUNDREDTHS) / HUNDREDTHS)
        .orElse(null);
  }

  /** The greater of what can flow on the feed side and back from loads; null when not known. */
  static @Nullable Double limitA(Facts facts, Wire wire) {
    Protection protection = facts.protection();
    Optional<Exposure> feed = protection.exposure(wire.id());
    Optional<Exposure> back = ReturnFault.of(facts, wire.id()).map(ReturnFault::exposure);
    boolean unfused = protection.returnsUnfusedAlone(wire.id());
    if (unfused && feed.isEmpty()) {
      return null;
    }
    Double forth = feed.flatMap(Exposure::limitA).orElse(null);
    Double home = unfused ? null : back.flatMap(Exposure::limitA).orElse(null);
    if (feed.isPresent() && back.isPresent() && forth != null && home != null) {
      return Math.max(forth, home);
    }
    return feed.isPresent() ? forth : home;
  }

  /** Whether nothing limits it; null when it is on neither side. */
  static @Nullable Boolean unbounded(Facts facts, Wire wire) {
    Protection protection = facts.protection();
    Optional<Exposure> feed = protection.exposure(wire.id());
    if (feed.isPresent()) {
      return feed.get().unbounded();
    }
    return protection.returning(wire.id()).isPresent()
        ? Boolean.valueOf(protection.returnsUnfusedAlone(wire.id()))
        : null;
  }
}
