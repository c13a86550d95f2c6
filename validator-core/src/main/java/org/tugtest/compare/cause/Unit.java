package org.tugtest.compare.cause;

import java.util.List;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.entry.Leaf;

/**
 * Changes that can only be made together, such as all that was done to a thing that has another id.
 *
 * @param changes in words; empty for what files say otherwise without a change of its own
 * @param leaves the same in the entries
 */
record Unit(List<Change> changes, List<Leaf> leaves) {
  Unit {
    changes = List.copyOf(changes);
    leaves = List.copyOf(leaves);
  }
}
