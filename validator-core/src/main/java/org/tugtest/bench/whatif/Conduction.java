package org.tugtest.bench.whatif;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.solve.Branch;

/** What conducts from node to node in the circuit of one state. */
final class Conduction {
  private final List<Branch> branches;
  private final BitSet users = new BitSet();
  private final int[] start;
  private final int[] at;

  /**
   * What a fault changes.
   *
   * @param opened branches that do not conduct
   * @param closed branches that conduct both ways
   * @param relays coils that are pulled
   */
  record Changed(BitSet opened, BitSet closed, Set<Integer> relays) {
    /** The same with one more branch that does not conduct. */
    Changed without(int branch) {
      BitSet more = (BitSet) opened.clone();
      more.set(branch);
      return new Changed(more, closed, relays);
    }
  }

  Conduction(Network network, List<Branch> branches) {
    this.branches = branches;
    for (int i = 0; i < branches.size(); i++) {
      // A load of a given resistance is solved as one, and is no joint all the same.
      users.set(
          i,
          network.edges().get(i) instanceof Edge.OfElement inside
              && (inside.element() instanceof Element.Load
                  || inside.element() instanceof Element.Coil));
    }
    int nodes = network.points().size();
    start = new int[nodes + 1];
    for (Branch branch : branches) {
      start[branch.a() + 1]++;
      start[branch.b() + 1]++;
    }
    for (int node = 0; node < nodes; node++) {
      start[node + 1] += start[node];
    }
    int[] next = start.clone();
    at = new int[2 * branches.size()];
    for (int i = 0; i < branches.size(); i++) {
      at[next[branches.get(i).a()]++] = i;
      at[next[branches.get(i).b()]++] = i;
    }
  }

  /**
   * Adds what conducts on from a set.
   *
   * @param forth from the plus: diodes lead from anode to cathode; else the other way
   * @param loads through loads and coils too
   * @param stop is not entered
   * @param changed what is not as in the state
   */
  void spread(BitSet set, boolean forth, boolean loads, BitSet stop, Changed changed) {
    List<Integer> open = new ArrayList<>(set.stream().filter(i -> !stop.get(i)).boxed().toList());
    while (!open.isEmpty()) {
      int node = open.remove(open.size() - 1);
      for (int k = start[node]; k < start[node + 1]; k++) {
        Branch branch = branches.get(at[k]);
        int other = branch.a() == node ? branch.b() : branch.a();
        if (!set.get(other)
            && !stop.get(other)
            && !changed.opened().get(at[k])
            && conducts(at[k], branch, changed, loads, (branch.a() == node) == forth)) {
          set.set(other);
          open.add(other);
        }
      }
    }
  }

  private boolean conducts(
      int number, Branch branch, Changed changed, boolean loads, boolean forwards) {
    if (changed.closed().get(number)) {
      return true;
    }
    if (branch instanceof Branch.Open || branch instanceof Branch.Source) {
      return false;
    }
    if (users.get(number)) {
      return loads;
    }
    if (branch instanceof Branch.Contact contact) {
      return contact.closed(changed.relays().contains(contact.coil()));
    }
    return forwards || !(branch instanceof Branch.Diode);
  }
}
