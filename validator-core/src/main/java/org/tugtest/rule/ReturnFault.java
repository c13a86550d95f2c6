package org.tugtest.rule;

import java.util.List;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.protect.Exposure;
import org.tugtest.protect.OneFault;
import org.tugtest.protect.Protection;

/**
 * What flows through a wire of the return side for ever when one load that returns through it fails
 * inside: what the fuses of that load let through, beside what the others draw; but no more than
 * faults in all of them could send, and no more than a fuse on the way home lets through.
 *
 * @param exposure the most and the least of it, in amperes, and the fuses that bound it; the least
 *     is less where a rating, or what the others draw, is not known
 * @param loads the load that fails; all of them where faults in all would send no more
 * @param othersA what the others draw in it, in amperes; 0 where it makes no difference
 * @param drawKnown whether it is known what the others draw
 */
public record ReturnFault(
    Exposure exposure, List<Edge.OfElement> loads, double othersA, boolean drawKnown) {
  /** So little makes no difference, in amperes. */
  private static final double SOME_AMPS = 0.005;

  public ReturnFault {
    loads = List.copyOf(loads);
  }

  /** Of a wire; empty when no load returns through it. */
  public static Optional<ReturnFault> of(Facts facts, String wire) {
    Protection protection = facts.protection();
    Exposure all = protection.returning(wire).orElse(null);
    OneFault one = protection.oneFault(wire).orElse(null);
    if (all == null || one == null) {
      return Optional.empty();
    }
    Edge.OfElement load = one.load();
    Optional<LastingAmps> flow = LastingAmps.of(facts, all.wire());
    boolean known = flow.map(LastingAmps::known).orElse(true);
    double others = 0;
    if (load != null && flow.isPresent()) {
      others =
          flow.get().lasting().stream()
              .mapToDouble(state -> state.heatAmps(all.wire()) - state.heatAmps(load))
              .max()
              .orElse(0);
      others = others > SOME_AMPS ? others : 0;
    }
    double most = known ? one.mostA() + others : Double.POSITIVE_INFINITY;
    double least = Math.min(all.leastA(), one.leastA() + others);
    Edge.OfElement home = one.home();
    if (home != null && one.homeA() <= Math.min(all.mostA(), most)) {
      Exposure bounded =
          new Exposure(all.wire(), one.homeA(), Math.min(one.homeA(), least), List.of(home), null);
      return Optional.of(
          new ReturnFault(bounded, load == null ? List.of() : List.of(load), 0, known));
    }
    if (load == null || (known && most < all.mostA())) {
      Exposure alone = new Exposure(all.wire(), most, least, one.cut(), null);
      return Optional.of(
          new ReturnFault(alone, load == null ? List.of() : List.of(load), others, known));
    }
    List<Edge.OfElement> behind =
        all.mostA() == one.mostA() ? List.of(load) : protection.faultsBehind(wire);
    Exposure together =
        new Exposure(all.wire(), all.mostA(), least, protection.fusesBehind(wire), null);
    return Optional.of(new ReturnFault(together, behind, 0, known || behind.size() == 1));
  }
}
