package org.tugtest.report.html;

/**
 * How much of its lists a root may put into a page, so that the page opens quickly whatever there
 * is to say; {@code compare.json} has all.
 *
 * @param entries of each list
 * @param cavities of all faces, before and after counted apart
 * @param rows of each table of figures
 */
record PageShare(int entries, int cavities, int rows) {
  private static final int ENTRIES = 400;
  private static final int CAVITIES = 1600;
  private static final int ROWS = 60;
  private static final int LEAST_ENTRIES = 6;
  private static final int LEAST_CAVITIES = 24;
  private static final int LEAST_ROWS = 3;
  private static final int SENTENCE = 700;

  /** The share of one root among so many. */
  static PageShare among(int roots) {
    int parts = Math.max(1, roots);
    return new PageShare(
        Math.max(LEAST_ENTRIES, ENTRIES / parts),
        Math.max(LEAST_CAVITIES, CAVITIES / parts),
        Math.max(LEAST_ROWS, ROWS / parts));
  }

  /** The greatest number of characters of one sentence. */
  static int sentence() {
    return SENTENCE;
  }
}
