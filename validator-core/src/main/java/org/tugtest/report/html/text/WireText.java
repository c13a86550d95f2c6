package org.tugtest.report.html.text;

import org.jspecify.annotations.Nullable;
import org.tugtest.model.Evidence;
import org.tugtest.model.Harness;
import org.tugtest.model.Loom;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.text.Quoted;

/** What pages print of a wire. */
public final class WireText {
  private final Harness harness;

  /** What is printed of the wires of a harness. */
  public WireText(Harness harness) {
    this.harness = harness;
  }

  /**
   * {@code 0.5 mm²} or {@code AWG 20}, as the wire or its part gives it; empty when neither does.
   */
  public String size(Wire wire) {
    WirePart part = wire.part() == null ? null : harness.parts().wires().get(wire.part());
    return part == null ? size(wire.areaMm2(), wire.awg()) : size(part.areaMm2(), part.awg());
  }

  private static String size(@Nullable Double areaMm2, @Nullable String awg) {
    if (areaMm2 != null) {
      return Quoted.number(areaMm2) + " mm²";
    }
    return awg == null ? "" : "AWG " + awg;
  }

  /** What the wire rests on, its loom's when it says nothing; null: not said. */
  public @Nullable Evidence evidence(Wire wire) {
    if (wire.evidence() != null) {
      return wire.evidence();
    }
    Loom loom = wire.loom() == null ? null : harness.looms().get(wire.loom());
    return loom == null ? null : loom.evidence();
  }

  /** Whether the wire is believed and not shown. */
  public boolean guessed(Wire wire) {
    return evidence(wire) == Evidence.GUESS;
  }

  /** What an end names, as written. */
  public static String end(@Nullable Ref ref) {
    return ref == null ? "" : ref.text();
  }
}
