package org.tugtest.report.sheets;

import java.io.IOException;
import java.util.List;
import org.tugtest.report.Sink;

/** Something that people get in their hands: one page, and the tables that belong to it. */
public interface Document {
  /** What it is about. */
  Scope scope();

  /** Heading under which the index lists it: {@code Bench}, {@code Track}. */
  String heading();

  /** Its title. */
  String title();

  /** What it is for, in one sentence. */
  String purpose();

  /** The page to open first, then the other files that it writes, with the folder of its scope. */
  List<String> files();

  /**
   * Writes its files. Equal content gives equal bytes.
   *
   * @param stamp what every sheet shows
   * @param sink of the folder of the root
   * @throws IOException when the sink cannot take them
   */
  void write(Stamp stamp, Sink sink) throws IOException;
}
