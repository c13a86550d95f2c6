package org.tugtest.solve;

import java.util.List;
import java.util.function.IntUnaryOperator;

/** Why a circuit has no answer, or more than one, or one that a person should know of. */
public sealed interface Trouble {
  /** The branches it is about, by number, ascending. */
  List<Integer> branches();

  /** The same of a circuit in which the branches have other numbers, in the same order. */
  Trouble renumbered(IntUnaryOperator number);

  private static List<Integer> renumbered(List<Integer> branches, IntUnaryOperator number) {
    return branches.stream().map(branch -> number.applyAsInt(branch)).toList();
  }

  /**
   * Constant-power loads that what feeds them cannot feed: no volts exist at which they draw their
   * watts, so they fall below their floor.
   *
   * @param mostWatts the greatest power that can reach them: for a single load E²/4R, for several
   *     together what they get when all draw the same share of their watts
   * @param limits sources that give their greatest current, where without that limit all would be
   *     fed; empty where the resistance is too much
   */
  record Collapse(List<Integer> branches, double mostWatts, List<Integer> limits)
      implements Trouble {
    public Collapse {
      branches = List.copyOf(branches);
      limits = List.copyOf(limits);
    }

    @Override
    public Collapse renumbered(IntUnaryOperator number) {
      return new Collapse(
          Trouble.renumbered(branches, number), mostWatts, Trouble.renumbered(limits, number));
    }
  }

  /** Loads whose volts did not come to rest within the bound of rounds. */
  record LoadsUnsettled(List<Integer> branches) implements Trouble {
    public LoadsUnsettled {
      branches = List.copyOf(branches);
    }

    @Override
    public LoadsUnsettled renumbered(IntUnaryOperator number) {
      return new LoadsUnsettled(Trouble.renumbered(branches, number));
    }
  }

  /** Diodes and sources that found no state in which each is right. */
  record PiecesUnsettled(List<Integer> branches) implements Trouble {
    public PiecesUnsettled {
      branches = List.copyOf(branches);
    }

    @Override
    public PiecesUnsettled renumbered(IntUnaryOperator number) {
      return new PiecesUnsettled(Trouble.renumbered(branches, number));
    }
  }

  /**
   * Relays that come to no rest.
   *
   * @param cycle the coils that are pulled in each step, before it starts again
   * @param restsElsewhere whether there is a steady set of coils all the same, which was not
   *     reached by switching on
   */
  record Chatter(List<List<Integer>> cycle, boolean restsElsewhere) implements Trouble {
    public Chatter {
      cycle = cycle.stream().map(List::copyOf).toList();
    }

    @Override
    public Chatter renumbered(IntUnaryOperator number) {
      return new Chatter(
          cycle.stream().map(set -> Trouble.renumbered(set, number)).toList(), restsElsewhere);
    }

    /** The coils that do not stay as they are. */
    @Override
    public List<Integer> branches() {
      return cycle.stream()
          .flatMap(List::stream)
          .distinct()
          .filter(coil -> !cycle.stream().allMatch(step -> step.contains(coil)))
          .sorted()
          .toList();
    }
  }

  /**
   * Relays that rest in more than one way, depending on what was before, where nothing says that.
   *
   * @param branches the coils that differ
   * @param ends the coils that are pulled in each of the ways; the first is the one that was taken
   */
  record HoldsItself(List<Integer> branches, List<List<Integer>> ends) implements Trouble {
    public HoldsItself {
      branches = List.copyOf(branches);
      ends = ends.stream().map(List::copyOf).toList();
    }

    @Override
    public HoldsItself renumbered(IntUnaryOperator number) {
      return new HoldsItself(
          Trouble.renumbered(branches, number),
          ends.stream().map(set -> Trouble.renumbered(set, number)).toList());
    }
  }

  /** Sources that metal shorts: both ends of each are one. Their island is not solved. */
  record ShortedSources(List<Integer> branches) implements Trouble {
    public ShortedSources {
      branches = List.copyOf(branches);
    }

    @Override
    public ShortedSources renumbered(IntUnaryOperator number) {
      return new ShortedSources(Trouble.renumbered(branches, number));
    }
  }

  /** The figures are too far apart for the arithmetic. */
  record NotSolvable(List<Integer> branches) implements Trouble {
    public NotSolvable {
      branches = List.copyOf(branches);
    }

    @Override
    public NotSolvable renumbered(IntUnaryOperator number) {
      return new NotSolvable(Trouble.renumbered(branches, number));
    }
  }
}
