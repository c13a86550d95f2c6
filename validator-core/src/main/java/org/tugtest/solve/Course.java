package org.tugtest.solve;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** One change on its way to rest. */
final class Course {
  /** Volts by which leaks and small resistances may falsify anything. */
  private static final double LEAST_MARGIN = 0.02;

  private static final double DEAD_VOLTS = 0.15;
  private static final double LITTLE = 1e-3;
  private static final double CORRECTED = 4;
  private static final double MOST_MOVED = 0.25;
  private static final int MOST_STEPS = 60;
  private static final int MOST_CORRECTIONS = 8;
  private final Nearby sound;
  private final Pieces pieces;
  private final boolean[] pulled;
  private final Set<Integer> fixed;
  private final double[] correctedAt;
  private final double[] now;
  private final Set<String> seen = new HashSet<>();
  private int corrections;
  private double lastMoved;

  /**
   * A change to a circuit.
   *
   * @param fixed branches that stay as the change makes them
   */
  Course(Nearby sound, Set<Integer> fixed) {
    this.sound = sound;
    this.pieces = sound.pieces.copy();
    this.pulled = sound.pulled.clone();
    this.fixed = fixed;
    this.correctedAt = sound.loadVolts.clone();
    this.now = sound.loadVolts.clone();
  }

  boolean run(Nearby.Certain certain) {
    for (int step = 0; step < MOST_STEPS; step++) {
      if (!settle()) {
        return false;
      }
      double within = within();
      boolean[] next = nextPulled(within);
      if (next != null && !Arrays.equals(next, pulled)) {
        if (!seen.add(Arrays.toString(next))) {
          return false;
        }
        move(next);
      } else if (next != null && certain.at(sound.network::across, within)) {
        return true;
      } else if (!correct()) {
        return false;
      }
    }
    return false;
  }

  /** Whether a coil certainly does not stay as it is now. */
  boolean refuted() {
    while (settle()) {
      double within = within();
      boolean all = true;
      for (int coil : sound.coils) {
        boolean next = next(coil, 0);
        boolean certain = next(coil, -within) == next && next(coil, within) == next;
        if (certain && next != pulled[coil]) {
          return true;
        }
        all &= certain;
      }
      if (all || !correct()) {
        return false;
      }
    }
    return false;
  }

  /** Finds the pieces of sources and diodes; false where that or a load goes another way. */
  private boolean settle() {
    for (int step = 0; step < MOST_STEPS; step++) {
      if (!sound.network.solve()) {
        return false;
      }
      boolean moved = false;
      for (int i : pieces.numbers()) {
        Pieces.Piece right =
            fixed.contains(i) ? pieces.of(i) : pieces.right(i, sound.network.across(i));
        if (right != pieces.of(i)) {
          pieces.set(i, right);
          pieces.lay(sound.scratch, i);
          sound.network.set(
              i,
              sound.scratch.siemens(i),
              sound.scratch.amps(i) - sound.scratch.siemens(i) * sound.scratch.emf(i));
          moved = true;
        }
      }
      if (!moved) {
        return followsLoads();
      }
    }
    return false;
  }

  /** Whether no load works where the volts might have another answer besides this. */
  private boolean followsLoads() {
    for (int i = 0; i < sound.loads.length; i++) {
      now[i] = sound.network.across(sound.loads[i]);
      double floor = sound.floors[i];
      boolean keeps =
          Math.abs(now[i] - sound.loadVolts[i]) <= MOST_MOVED * Math.abs(sound.loadVolts[i])
              && (Math.abs(now[i]) >= floor) == (Math.abs(sound.loadVolts[i]) >= floor);
      if (floor > 0 && Math.abs(now[i]) > DEAD_VOLTS && !keeps) {
        return false;
      }
    }
    return true;
  }

  /**
   * By how much volts may be wrong: a few times what the last correction changed, once each changes
   * less than half of what the one before did; infinite until then.
   */
  private double within() {
    double most = 0;
    for (int i = 0; i < sound.loads.length; i++) {
      most = Math.max(most, Math.abs(now[i] - correctedAt[i]));
    }
    boolean shrinks = most < LITTLE || (corrections > 0 && most < lastMoved / 2);
    lastMoved = most;
    return shrinks ? LEAST_MARGIN + CORRECTED * most : Double.POSITIVE_INFINITY;
  }

  /** The coils that these volts pull; null when one of them is not certain. */
  private boolean @Nullable [] nextPulled(double within) {
    boolean[] next = pulled.clone();
    for (int coil : sound.coils) {
      next[coil] = next(coil, 0);
      if (next(coil, -within) != next[coil] || next(coil, within) != next[coil]) {
        return null;
      }
    }
    return next;
  }

  /** Whether a coil would be pulled next with so many volts more. */
  private boolean next(int coil, double more) {
    double volts = Math.max(0, Math.abs(sound.network.across(coil)) + more);
    return ((Branch.Coil) sound.circuit.branches().get(coil)).pulled(volts, pulled[coil]);
  }

  /** Lets contacts follow their coils. */
  void move(boolean[] next) {
    for (int coil : sound.coils) {
      if (pulled[coil] != next[coil]) {
        pulled[coil] = next[coil];
        for (int number : sound.contactsOf.get(coil)) {
          if (!fixed.contains(number)) {
            Branch.Contact contact = (Branch.Contact) sound.circuit.branches().get(number);
            double ohms = Math.max(contact.ohms(), Nearby.SMALL_OHMS);
            sound.network.set(number, contact.closed(next[coil]) ? 1 / ohms : 0, 0);
          }
        }
      }
    }
  }

  /**
   * Lets loads draw what they draw at the present volts: those that moved little by a current
   * besides their line, the others by another line.
   */
  private boolean correct() {
    if (++corrections > MOST_CORRECTIONS) {
      return false;
    }
    double[] more = new double[sound.loads.length];
    for (int i = 0; i < sound.loads.length; i++) {
      if (!fixed.contains(sound.loads[i])) {
        Branch.Load load = (Branch.Load) sound.circuit.branches().get(sound.loads[i]);
        double size = Math.abs(now[i]);
        boolean near =
            Math.abs(now[i] - sound.loadVolts[i]) <= MOST_MOVED * Math.abs(sound.loadVolts[i]);
        boolean low = size < load.floorV();
        if (size < LITTLE || (near && low == Math.abs(sound.loadVolts[i]) < load.floorV())) {
          sound.network.set(sound.loads[i], sound.loadSiemens[i], 0);
          more[i] = load.amps(now[i]) - sound.loadSiemens[i] * now[i];
        } else {
          double slope = load.slope(now[i]);
          sound.network.set(sound.loads[i], slope, load.amps(now[i]) - slope * now[i]);
        }
      }
      correctedAt[i] = now[i];
    }
    sound.network.draw(sound.loads, more);
    return true;
  }
}
