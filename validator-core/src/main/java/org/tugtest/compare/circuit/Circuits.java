package org.tugtest.compare.circuit;

import java.util.List;
import org.tugtest.compare.match.Matches;
import org.tugtest.facts.Facts;

/**
 * The verdict on circuits. Two revisions are the same when the pins of all devices, and the open
 * cavities where the harness meets what it does not describe, fall into the same nets by wires,
 * plugged and bolted contacts and splices alone, and the same elements lie between them. Then they
 * are the same in every position of every switch. Ratings, gauges, colours and lengths are no part
 * of it. A pin that one side has not is held to be alone there.
 */
public final class Circuits {
  private final Side before;
  private final Side after;
  private final List<NetChange> nets;
  private final List<ElementChange> elements;

  private Circuits(Facts before, Facts after, Matches matches) {
    this.before = new Side(before, matches.renames());
    this.after = new Side(after, org.tugtest.compare.entry.Renames.NONE);
    this.nets =
        new NetDifference(this.before, this.after, new Joiners(matches, this.before)).changes();
    this.elements = Elements.changed(before.harness(), after.harness());
  }

  /** The verdict on two revisions; near linear in their size. */
  public static Circuits of(Facts before, Facts after, Matches matches) {
    return new Circuits(before, after, matches);
  }

  /** Whether the two are electrically the same. */
  public boolean same() {
    return nets.isEmpty() && elements.isEmpty();
  }

  /** The nets that changed, by their first pins. */
  public List<NetChange> nets() {
    return nets;
  }

  /** The elements that changed, by device and name. */
  public List<ElementChange> elements() {
    return elements;
  }

  /** What shows that the nets are these; made when asked for. */
  public Certificate certificate() {
    return new Certificate(before.trees(), after.trees());
  }

  /** The verdict in one sentence. */
  public String sentence() {
    if (same()) {
      return "Electrically the same: no circuit changes.";
    }
    String some =
        nets.isEmpty() ? "" : nets.size() == 1 ? "1 net changes" : nets.size() + " nets change";
    String others =
        elements.isEmpty()
            ? ""
            : elements.size() == 1
                ? "1 element inside a device changes"
                : elements.size() + " elements inside devices change";
    return "Circuits change: "
        + some
        + (some.isEmpty() || others.isEmpty() ? "" : ", ")
        + others
        + ".";
  }
}
