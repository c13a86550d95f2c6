package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.solve.Branch;
import org.tugtest.solve.WhatIf;

/**
 * How one of several strands side by side carries most against what it may: its own contact has few
 * ohms, and that of the strand which took most has many. Which two these are follows from the
 * current divider; their currents then from the whole network with these two contacts in it.
 *
 * @param state in which this is so
 * @param strands all of the set
 * @param low number of the strand that carries more
 * @param high number of the strand that carries less
 * @param rating what the first may carry
 * @param amps what it carries then
 */
record UnevenShare(
    OperatingPoint state,
    List<Strand> strands,
    int low,
    int high,
    Strand.Rating rating,
    double amps) {
  /** Under this part of its rating by the divider a strand is not worth another solution. */
  private static final double NEAR = 0.9;

  private static final double SOME_OHMS = Branch.LEAST_OHMS * 100;

  /** How far over its rating it is; over 1 is too much. */
  double ratio() {
    return rating.amps() > 0 ? amps / rating.amps() : Double.POSITIVE_INFINITY;
  }

  /** What all of the set carry as they stand. */
  static double sum(OperatingPoint state, List<Strand> strands) {
    return strands.stream().mapToDouble(strand -> now(state, strand)).sum();
  }

  /** What a strand carries as it stands. */
  static double now(OperatingPoint state, Strand strand) {
    return Math.abs(state.amps(strand.edges().get(0)));
  }

  /**
   * The worst of a set in one state.
   *
   * @param least times its ohms that a good contact has
   * @param most times its ohms that a worn contact has
   * @return empty when none of them has a rating that it keeps as they stand
   */
  static Optional<UnevenShare> worst(
      Network network, OperatingPoint state, List<Strand> strands, double least, double most) {
    List<UnevenShare> all = new ArrayList<>();
    double sum = sum(state, strands);
    for (int low = 0; low < strands.size(); low++) {
      double now = now(state, strands.get(low));
      Strand.Rating rating =
          strands.get(low).ratings().stream()
              .filter(each -> each.amps() >= now)
              .min(Comparator.comparingDouble(Strand.Rating::amps))
              .orElse(null);
      if (rating != null) {
        int high = otherMost(strands, low, most);
        double amps = sum * share(strands, low, high, least, most);
        all.add(new UnevenShare(state, strands, low, high, rating, amps));
      }
    }
    return all.stream()
        .max(Comparator.comparingDouble(UnevenShare::ratio))
        .map(worst -> worst.ratio() < NEAR ? worst : worst.solved(network, least, most));
  }

  /** The other strand that lets go of most conductance when its contact is worn. */
  private static int otherMost(List<Strand> strands, int low, double most) {
    int best = -1;
    double lost = -1;
    for (int i = 0; i < strands.size(); i++) {
      Strand strand = strands.get(i);
      double less = 1 / floor(strand.ohms()) - 1 / floor(strand.ohmsAt(most));
      if (i != low && less > lost) {
        best = i;
        lost = less;
      }
    }
    return best;
  }

  private static double share(List<Strand> strands, int low, int high, double least, double most) {
    double sum = 0;
    for (int i = 0; i < strands.size(); i++) {
      double times = i == low ? least : i == high ? most : 1;
      sum += 1 / floor(strands.get(i).ohmsAt(times));
    }
    return 1 / floor(strands.get(low).ohmsAt(least)) / sum;
  }

  private static double floor(double ohms) {
    return Math.max(ohms, SOME_OHMS);
  }

  /** The same with the current that the whole network gives, where it can be computed. */
  private UnevenShare solved(Network network, double least, double most) {
    WhatIf whatIf = state.solution().whatIf().orElse(null);
    List<WhatIf.Change> changes = new ArrayList<>();
    Part one = change(network, strands.get(low), least, changes);
    Part other = change(network, strands.get(high), most, changes);
    if (whatIf == null || (one == null && other == null)) {
      return this;
    }
    WhatIf.Answer answer = whatIf.after(changes).orElse(null);
    Double solved = answer == null ? null : through(network, answer, one);
    return solved == null ? this : new UnevenShare(state, strands, low, high, rating, solved);
  }

  /** A contact with other ohms between the same two points. */
  private record Part(int a, int b, double ohms) {}

  private @Nullable Part change(
      Network network, Strand strand, double times, List<WhatIf.Change> changes) {
    Edge contact = strand.contact();
    if (contact == null) {
      return null;
    }
    double whole = state.resistance(contact).ohms();
    int a = network.index(contact.a());
    int b = network.index(contact.b());
    Part part = new Part(a, b, floor(whole + (times - 1) * strand.contactOhms()));
    changes.add(WhatIf.Change.open(network.number(contact)));
    changes.add(WhatIf.Change.joined(a, b, part.ohms()));
    return part;
  }

  private @Nullable Double through(Network network, WhatIf.Answer answer, @Nullable Part changed) {
    Edge contact = strands.get(low).contact();
    for (Edge edge : strands.get(low).edges()) {
      if (!edge.equals(contact) && state.resistance(edge).ohms() > SOME_OHMS) {
        return Math.abs(answer.amps(network.number(edge)));
      }
    }
    if (changed == null) {
      return null;
    }
    OptionalDouble from = answer.volts(changed.a());
    OptionalDouble to = answer.volts(changed.b());
    return from.isEmpty() || to.isEmpty()
        ? null
        : Math.abs(from.getAsDouble() - to.getAsDouble()) / changed.ohms();
  }
}
