package org.tugtest.rule;

import org.tugtest.facts.Facts;
import org.tugtest.heat.Ampacity;
import org.tugtest.heat.WireForm;
import org.tugtest.model.Wire;

/**
 * Wires that lie in air hotter than their class. They stand no current at all, no gauge puts that
 * right, and {@code material-too-cool} says so; other rules do not judge them.
 */
public final class OverClassByAir {
  /** Why they are not judged. */
  public static final String WHY = "the air by itself is over its class, as material-too-cool says";

  private OverClassByAir() {}

  /** Whether a wire is one of them, in the worst piece of its way. */
  public static boolean of(Facts facts, Wire wire, Ampacity ampacity) {
    double airC = ampacity.around().ambientC().value();
    return facts
        .ampacity()
        .forms()
        .of(wire)
        .map(WireForm::maxC)
        .filter(max -> airC > max)
        .isPresent();
  }
}
