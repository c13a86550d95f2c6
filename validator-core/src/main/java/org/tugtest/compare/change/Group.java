package org.tugtest.compare.change;

import java.util.Comparator;
import org.tugtest.model.Word;
import org.tugtest.text.NaturalOrder;

/**
 * What a change is reported under.
 *
 * @param id of the connector, device or splice, or the section
 */
public record Group(Sort sort, String id) implements Comparable<Group> {
  private static final Comparator<Group> ORDER =
      Comparator.comparing(Group::sort).thenComparing(Group::id, NaturalOrder.NATURAL);

  /** What is demanded, which heads the list. */
  public static final Group POLICY = new Group(Sort.POLICY, "");

  /** The sort of group, in the order of the list. */
  public enum Sort implements Word {
    POLICY,
    CONNECTOR,
    DEVICE,
    SPLICE,
    WIRES,
    BODY,
    PARTS,
    HARNESS
  }

  @Override
  public int compareTo(Group other) {
    return ORDER.compare(this, other);
  }

  /** Its heading: {@code X1}, {@code policy}, {@code wires}. */
  public String title() {
    return id.isEmpty() ? sort.word() : id;
  }
}
