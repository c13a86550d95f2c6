package org.tugtest.files;

import java.util.List;
import org.tugtest.read.SourceFiles;

/** The files of a harness, wherever they come from, and what a person should know of them. */
public interface HarnessFiles extends SourceFiles {
  /** Every file that could have been chosen, sorted by path. */
  List<String> all();

  /** What was passed over and a person may wonder about, each a sentence. */
  List<String> remarks();
}
