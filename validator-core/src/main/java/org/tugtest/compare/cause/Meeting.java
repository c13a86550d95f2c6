package org.tugtest.compare.cause;

import java.util.List;
import org.tugtest.compare.change.Change;
import org.tugtest.finding.Finding;

/**
 * A finding that is in a merge and in neither parent, with the changes of both that meet in it.
 *
 * @param ours the least changes of ours without which it is not there; empty when it could not be
 *     tried
 * @param theirs the same of theirs
 * @param where the cavity, fuse, connector, net or bundle where they meet, in words; empty when
 *     nowhere in particular
 * @param sentence all of it in words
 */
public record Meeting(
    Finding finding, List<Change> ours, List<Change> theirs, String where, String sentence) {
  public Meeting {
    ours = List.copyOf(ours);
    theirs = List.copyOf(theirs);
  }
}
