package org.tugtest.compare.circuit;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the verdict on circuits rests on, so that it can be checked without computing it again: the
 * nets of each side, each with a tree of wires and contacts that joins its points. That every point
 * is in one tree, every link is there, and no wire or contact leads from one tree to another shows
 * that the trees are the nets; what the pins of the trees are called shows which are the same.
 *
 * @param before the nets before, by their first points
 * @param after the nets after, by their first points
 */
public record Certificate(List<Tree> before, List<Tree> after) {
  public Certificate {
    before = List.copyOf(before);
    after = List.copyOf(after);
  }

  /**
   * One net.
   *
   * @param points all its points, as its own files write them
   * @param pins those of them that have an identity, by the names that both sides know
   * @param links one less than the points, joining them
   */
  public record Tree(List<String> points, List<String> pins, List<Link> links) {
    public Tree {
      points = List.copyOf(points);
      pins = List.copyOf(pins);
      links = List.copyOf(links);
    }
  }

  /**
   * Something that joins two points.
   *
   * @param wire its id when it is a wire; null for contacts plugged or bolted together
   */
  public record Link(String from, String to, @Nullable String wire) {}
}
