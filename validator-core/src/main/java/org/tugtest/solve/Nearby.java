package org.tugtest.solve;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What becomes of a solved circuit when a few branches open or close, from the one factor of it.
 * Loads are taken at the amps per volt that they have, which is right for what stays as it is and
 * for what goes dead; diodes, sources and relays change as their volts say, and each such change is
 * one more rank. What moves a little is corrected, with a bound on the volts that are still open.
 * Where that bound leaves a watched branch undecided, or a load would work in a way that this does
 * not follow, there is no answer and the circuit has to be solved again.
 */
public final class Nearby {
  /** A resistance that stands for none in a branch that may change. */
  static final double SMALL_OHMS = 1e-5;

  final Circuit circuit;
  final Updated network;
  final Pieces pieces;
  final boolean[] pulled;
  final Linear scratch;
  final int[] loads;
  final double[] loadVolts;
  final double[] loadSiemens;

  /**
   * Of loads with two answers: of constant watts, with a floor under half the volts that feed them
   * (P over R has two answers for P under E²/4R, the lower of which is under E/2); 0 for others.
   */
  final double[] floors;

  final int[] coils;
  final List<List<Integer>> contactsOf = new ArrayList<>();

  private Nearby(
      Circuit circuit, Linear linear, Updated network, Pieces pieces, Collection<Integer> coilsOn) {
    this.circuit = circuit;
    this.network = network;
    this.pieces = pieces;
    this.scratch = linear;
    int count = circuit.branches().size();
    pulled = new boolean[count];
    coilsOn.forEach(coil -> pulled[coil] = true);
    loads = numbers(Branch.Load.class);
    coils = numbers(Branch.Coil.class);
    for (int i = 0; i < count; i++) {
      contactsOf.add(new ArrayList<>(0));
    }
    for (int contact : numbers(Branch.Contact.class)) {
      contactsOf.get(((Branch.Contact) circuit.branches().get(contact)).coil()).add(contact);
    }
    loadVolts = new double[loads.length];
    loadSiemens = new double[loads.length];
    floors = new double[loads.length];
    double most = 0;
    for (int source : numbers(Branch.Source.class)) {
      most = Math.max(most, Math.abs(((Branch.Source) circuit.branches().get(source)).volts()));
    }
    network.solve();
    for (int i = 0; i < loads.length; i++) {
      loadVolts[i] = network.across(loads[i]);
      loadSiemens[i] = linear.siemens(loads[i]);
      Branch.Load load = (Branch.Load) circuit.branches().get(loads[i]);
      floors[i] = load.watts() && 2 * load.floorV() < most ? load.floorV() : 0;
    }
  }

  /**
   * Changes to a solution.
   *
   * @param changing the branches that will be opened or closed
   * @return empty when something is wrong with the solution, so that it is no place to start from
   */
  public static Optional<Nearby> of(Solution sound, BitSet changing) {
    boolean steady =
        sound.troubles().stream().allMatch(trouble -> trouble instanceof Trouble.HoldsItself);
    return steady
        ? sound
            .flow()
            .flatMap(flow -> of(sound.circuit(), flow, sound.pieces(), sound.allPulled(), changing))
        : Optional.empty();
  }

  static Optional<Nearby> of(
      Circuit circuit, Flow flow, Pieces pieces, Collection<Integer> pulled, BitSet changing) {
    Linear linear = flow.linear().copy();
    for (int i = 0; i < linear.branches(); i++) {
      Branch branch = circuit.branches().get(i);
      if (branch instanceof Branch.Load load) {
        double volts = flow.inOneIsland(i) ? flow.across(i) : 0;
        linear.set(i, load.siemens(volts), 0, 0);
      } else if (linear.metal(i) && (changing.get(i) || branch instanceof Branch.Contact)) {
        linear.set(i, 1 / SMALL_OHMS, 0, 0);
      }
    }
    boolean[] grounded = new boolean[circuit.nodes()];
    Set<Integer> islands = new HashSet<>();
    for (int node = 0; node < grounded.length; node++) {
      grounded[node] =
          flow.powered(node)
              && flow.islands().isGround(node)
              && islands.add(flow.islands().islandOf(node));
    }
    return Updated.of(linear, grounded)
        .map(network -> new Nearby(circuit, linear, network, pieces, pulled));
  }

  private int[] numbers(Class<? extends Branch> kind) {
    List<Branch> branches = circuit.branches();
    return IntStream.range(0, branches.size())
        .filter(i -> kind.isInstance(branches.get(i)))
        .toArray();
  }

  /** Whether all that is asked is certain when volts are known to so many volts. */
  @FunctionalInterface
  public interface Certain {
    /**
     * Looks at the volts that were found.
     *
     * @param across volts of every branch, from its first to its other end
     * @param within by how much they may be wrong
     */
    boolean at(IntToDoubleFunction across, double within);
  }

  /**
   * The circuit after some branches are opened, or closed.
   *
   * @param closedOhms resistance of the changed branches then; infinite: they are opened
   * @param certain called with the answer; not called again once it says true
   * @return whether the answer is certain
   */
  public boolean after(Collection<Integer> changed, double closedOhms, Certain certain) {
    network.reset();
    Set<Integer> fixed = new HashSet<>(changed);
    changed.forEach(branch -> network.set(branch, 1 / closedOhms, 0));
    return new Course(this, fixed).run(certain);
  }

  /**
   * Whether the relays can certainly not rest like this.
   *
   * @param pulled for each branch whether it is a pulled coil
   */
  boolean refutes(boolean[] pulled) {
    network.reset();
    Course course = new Course(this, Set.of());
    course.move(pulled);
    return course.refuted();
  }
}
