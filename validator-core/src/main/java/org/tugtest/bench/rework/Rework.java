package org.tugtest.bench.rework;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;

/**
 * In which steps a loom is changed into another one. At no step does a cavity hold two ends.
 *
 * @param order that was asked for
 * @param steps what to do, one after the other
 * @param parked how many terminals wait out of any cavity that is their own while others move
 * @param cautions what to think of before the first step, such as loops that may be interlocks
 * @param besides what is done though no end moves, each a sentence: fuses, coverings, splices that
 *     are made anew elsewhere, wires whose length has to be seen to
 * @param open what the sheet cannot do, since the loom that is wanted does not say it rightly, and
 *     what could not be judged
 */
public record Rework(
    Order order,
    List<Step> steps,
    int parked,
    List<String> cautions,
    List<String> besides,
    List<String> open) {
  public Rework {
    steps = List.copyOf(steps);
    cautions = List.copyOf(cautions);
    besides = List.copyOf(besides);
    open = List.copyOf(open);
  }

  /**
   * The steps from one loom to another; near linear in their size. Equal looms give no steps.
   *
   * @param now the loom as it is, or the donor
   * @param target the loom that is wanted
   */
  public static Rework of(Facts now, Facts target, Matching matching, Order order) {
    return of(now, target, matching, order, false);
  }

  /** The same from a loom as built: wires that were built too short or too long are named too. */
  public static Rework back(Facts built, Facts target, Matching matching, Order order) {
    return of(built, target, matching, order, true);
  }

  private static Rework of(
      Facts now, Facts target, Matching matching, Order order, boolean asBuilt) {
    List<Piece> pieces = Pieces.of(now, target, matching);
    Bodies bodies = new Bodies(now, target, matching);
    Sitting sitsNow = Sitting.now(now, pieces, bodies);
    Sitting wanted = Sitting.target(target, pieces, bodies);
    Jobs jobs = new Jobs(sitsNow, wanted, new Reuse(now, target, bodies));
    Bench bench =
        new Bench(now, target, bodies, pieces, sitsNow, wanted, jobs, new Reach(now, target, jobs));
    Writer writer = new Writer(bench);
    int parked =
        order == Order.BY_CONNECTOR
            ? new ByConnector(bench, writer).write()
            : new FewestParked(bench, writer).write();
    writer.finish();
    List<Step> steps = new Locks(bench).around(writer.steps());
    List<String> open = new ArrayList<>(wanted.refused());
    for (PieceEnd end : wanted.loose()) {
      if (end.target().isPresent() && end.target().get().ref() != null) {
        open.add(
            end.piece().name()
                + " shall end on "
                + end.target().get().ref()
                + ", which is no place in the loom that is wanted: the end stays loose, tagged");
      } else if (end.target().isPresent()) {
        open.add(end.piece().name() + " has no \"" + end.target().get().field() + "\": loose end");
      }
    }
    open.addAll(bench.reach().unjudged());
    List<String> besides = new ArrayList<>(new Besides(now, target).sentences());
    besides.addAll(new Ways(now, target, matching, pieces, jobs, asBuilt).sentences());
    return new Rework(
        order, steps, parked, Interlocks.cautions(now, target, matching), besides, open);
  }
}
