package org.tugtest.route;

/** Where on the layout something is fixed: a node, or a point along a segment. */
public sealed interface Stand {
  /** As people say it: {@code node dash}, {@code segment e1 at 120 mm}. */
  String text();

  /** At a node. */
  record AtNode(String node) implements Stand {
    @Override
    public String text() {
      return "node " + node;
    }
  }

  /**
   * Along a segment.
   *
   * @param offsetMm from the start of the segment, 0 to its length
   */
  record OnSegment(String segment, double offsetMm) implements Stand {
    @Override
    public String text() {
      return "segment " + segment + " at " + org.tugtest.text.Quoted.number(offsetMm) + " mm";
    }
  }
}
