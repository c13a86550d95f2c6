package org.tugtest.bench.rework;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.text.Quoted;

/** How a wire is told from others by eye. */
final class WireWords {
  private final Harness harness;

  WireWords(Harness harness) {
    this.harness = harness;
  }

  /** {@code RD/WH, 0.5 mm²}; empty when neither is told. */
  String looks(Wire wire) {
    return Stream.of(wire.colour() == null ? "" : wire.colour(), size(wire))
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(", "));
  }

  /** What is taken from the drum: {@code w0.5 RD/WH}. */
  String stuff(Wire wire) {
    String part = wire.part() == null ? size(wire) : wire.part();
    String stuff =
        Stream.of(part, wire.colour() == null ? "" : wire.colour())
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining(" "));
    return stuff.isEmpty() ? "the wire" : stuff;
  }

  private String size(Wire wire) {
    WirePart part = wire.part() == null ? null : harness.parts().wires().get(wire.part());
    return part == null ? size(wire.areaMm2(), wire.awg()) : size(part.areaMm2(), part.awg());
  }

  private static String size(@Nullable Double areaMm2, @Nullable String awg) {
    if (areaMm2 != null) {
      return Quoted.number(areaMm2) + " mm²";
    }
    return awg == null ? "" : "AWG " + awg;
  }
}
